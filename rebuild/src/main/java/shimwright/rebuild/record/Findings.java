package shimwright.rebuild.record;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LastAsked;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Mistakes;

/**
 * Findings by what they are about: the wear limit or, without one, the thing itself; and which piece of those that the limit
 * judges. What was found or decided of all pieces alike holds for each until it has something newer of its own.
 */
public final class Findings {
    private static final LastAsked<List<LogEntry>> GROUNDS = new LastAsked<>();

    private Findings() {}

    /** The key under which findings about the same thing meet. */
    public static String key(Entry.Found found) {
        return key(found.limit().isBlank() ? found.what() : found.limit(), found.piece());
    }

    /** The key under which a verdict stands in the job. */
    public static String key(Entry.Judged judged) {
        return key(judged.limit().isBlank() ? judged.what() : judged.limit(), judged.piece());
    }

    private static String key(String about, String piece) {
        return piece.isEmpty() ? about : about + "/" + piece;
    }

    /** The latest finding about something, whichever piece of it. */
    public static Optional<Entry.Found> latest(Job job, String about) {
        return last(job, found -> about(found).equals(about)).map(Said::what);
    }

    /** The latest finding about one piece: its own, or one about all of them alike. */
    public static Optional<Said<Entry.Found>> latest(Job job, String about, JudgedPiece piece) {
        return last(job, found -> about(found).equals(about) && speaksOf(found.piece(), piece));
    }

    private static Optional<Said<Entry.Found>> last(Job job, Predicate<Entry.Found> of) {
        return job.found().stream().filter(said -> of.test(said.what())).reduce((first, second) -> second);
    }

    private static String about(Entry.Found found) {
        return found.limit().isBlank() ? found.what() : found.limit();
    }

    private static boolean speaksOf(String said, JudgedPiece piece) {
        return said.isEmpty() || said.equals(piece.id());
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

    /** The verdict on something as a whole, while it stands. */
    public static Optional<Said<Entry.Judged>> verdict(Job job, String about) {
        return verdict(job, about, new JudgedPiece("", "", List.of()));
    }

    /**
     * The verdict on one piece, while it stands: the latest on it, on all pieces of its limit, or on the part itself,
     * whatever was found on it; of parts that are read together none speaks for the others. What is found later and is not within its limit asks for another; so does a finding that it stood
     * on and that was struck since.
     */
    public static Optional<Said<Entry.Judged>> verdict(Job job, String about, JudgedPiece piece) {
        return job.judged().values().stream()
                .filter(said -> on(said.what(), about, piece))
                .reduce((one, other) -> one.number() > other.number() ? one : other)
                .filter(said -> latest(job, about, piece)
                        .filter(found -> needsVerdict(found.what()) && found.number() > said.number())
                        .isEmpty())
                .filter(said -> !lostItsGround(job, about, piece, said));
    }

    private static boolean on(Entry.Judged judged, String about, JudgedPiece piece) {
        if (judged.limit().equals(Entry.Judged.PART)) {
            return piece.parts().equals(List.of(judged.piece()));
        }
        return (judged.limit().isBlank() ? judged.what() : judged.limit()).equals(about)
                && speaksOf(judged.piece(), piece);
    }

    /** True where all that was found before a verdict was struck after it. */
    private static boolean lostItsGround(Job job, String about, JudgedPiece piece, Said<Entry.Judged> judged) {
        Set<String> mistakes = Mistakes.of(job);
        if (mistakes.isEmpty()) {
            return false;
        }
        Set<String> ground = new LinkedHashSet<>();
        boolean struck = false;
        for (LogEntry kept : groundsAndStrikes(job)) {
            boolean before = kept.number() < judged.number();
            boolean mistake = mistakes.contains(kept.draft().id());
            if (before
                    && kept.body() instanceof Entry.Found found
                    && about(found).equals(about)
                    && speaksOf(found.piece(), piece)) {
                if (!mistake) {
                    return false;
                }
                ground.add(kept.draft().id());
            } else if (!before && !mistake && kept.body() instanceof Entry.EntryStruck strike) {
                struck |= ground.contains(strike.entry());
            }
        }
        return struck;
    }

    private static List<LogEntry> groundsAndStrikes(Job job) {
        return GROUNDS.of(
                job,
                job,
                () -> job.entries().stream()
                        .filter(kept -> kept.body() instanceof Entry.Found || kept.body() instanceof Entry.EntryStruck)
                        .toList());
    }

    /** What needs a verdict and has none that stands, of things that no limit of a unit file is about. */
    public static List<Entry.Found> undecided(Job job) {
        Map<String, Entry.Found> latest = new LinkedHashMap<>();
        job.found().forEach(said -> latest.put(key(said.what()), said.what()));
        return latest.values().stream()
                .filter(found -> needsVerdict(found)
                        && verdict(job, about(found), new JudgedPiece(found.piece(), found.what(), parts(found)))
                                .isEmpty())
                .toList();
    }

    /** Single parts of a finding about one part; what a limit reads together is judged with its limit. */
    private static List<String> parts(Entry.Found found) {
        return found.piece().isEmpty() || found.piece().contains("+") ? List.of() : List.of(found.piece());
    }
}
