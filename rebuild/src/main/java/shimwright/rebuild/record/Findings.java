package shimwright.rebuild.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/** Findings by what they are about: the wear limit or, without one, the thing itself. */
public final class Findings {
    private Findings() {}

    /** The key under which a finding and its verdict meet. */
    public static String key(Entry.Found found) {
        return found.limit().isBlank() ? found.what() : found.limit();
    }

    /** The latest finding about something. */
    public static Optional<Entry.Found> latest(Job job, String key) {
        return job.found().stream()
                .map(Said::what)
                .filter(found -> key(found).equals(key))
                .reduce((first, second) -> second);
    }

    /** Whether a finding lies outside its limit; entries of before said so in their words alone. */
    public static boolean isOut(Entry.Found found) {
        String verdict = found.basis().getOrDefault("verdict", "");
        return verdict.isEmpty() ? found.outcome().contains("rework or replace") : verdict.equals("OUT");
    }

    /** Whether somebody must say what becomes of it: it lies outside its limit, or the gauge cannot prove that it does not. */
    public static boolean needsVerdict(Entry.Found found) {
        return isOut(found) || found.basis().getOrDefault("verdict", "").equals("NOT_PROVEN");
    }

    /** The verdict on something, while it stands: what is found later and is not within its limit asks for another. */
    public static Optional<Said<Entry.Judged>> verdict(Job job, String key) {
        return Optional.ofNullable(job.judged().get(key))
                .filter(judged -> job.found().stream()
                        .filter(found -> key(found.what()).equals(key))
                        .reduce((first, second) -> second)
                        .filter(found -> needsVerdict(found.what()) && found.number() > judged.number())
                        .isEmpty());
    }

    /** What needs a verdict and has none that stands, by key. */
    public static List<Entry.Found> undecided(Job job) {
        Map<String, Entry.Found> latest = new LinkedHashMap<>();
        job.found().forEach(said -> latest.put(key(said.what()), said.what()));
        return latest.entrySet().stream()
                .filter(e ->
                        needsVerdict(e.getValue()) && verdict(job, e.getKey()).isEmpty())
                .map(Map.Entry::getValue)
                .toList();
    }
}
