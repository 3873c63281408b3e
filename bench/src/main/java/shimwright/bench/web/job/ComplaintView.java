package shimwright.bench.web.job;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.desk.JobOnBench;
import shimwright.rebuild.complaint.Advice;
import shimwright.rebuild.complaint.CaseBefore;
import shimwright.rebuild.complaint.CauseTables;
import shimwright.rebuild.complaint.CheckQuestion;
import shimwright.rebuild.complaint.LookOrder;
import shimwright.rebuild.complaint.OwnersWords;
import shimwright.rebuild.complaint.Ranking;
import shimwright.rebuild.complaint.StripDepth;
import shimwright.rebuild.complaint.Suspect;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/**
 * The complaint as its page words it.
 *
 * @param answers that stand now, by question
 * @param symptoms that stand now
 * @param apart how far it was apart; empty where nobody said
 * @param looked what was looked at, the newest first
 * @param proposed what the owner's words say, while nobody has kept anything
 * @param all false while earlier boxes are still being read
 */
public record ComplaintView(
        CauseTables tables,
        Advice advice,
        Map<String, String> answers,
        List<String> symptoms,
        String apart,
        List<Said<Entry.SuspectLooked>> looked,
        OwnersWords proposed,
        boolean all) {
    /** So many suspects are shown at once. */
    private static final int SHOWN = 8;

    static ComplaintView of(CauseTables tables, Advice advice, JobOnBench bench, boolean all) {
        Job job = bench.job();
        Said<Entry.ComplaintSaid> complaint = job.inspection().complaint();
        List<Said<Entry.SuspectLooked>> looked = job.inspection().looked().values().stream()
                .sorted((one, other) -> Long.compare(other.number(), one.number()))
                .toList();
        return new ComplaintView(
                tables,
                advice,
                complaint == null ? Map.of() : complaint.what().answers(),
                complaint == null ? List.of() : complaint.what().symptoms(),
                complaint == null ? "" : complaint.what().apart(),
                looked,
                OwnersWords.of(
                        bench.unit().type(), complaint == null ? job.opened().said() : List.of()),
                all);
    }

    /** What stands ticked for a question: what was kept, or what the owner's words say. */
    public String answer(String question) {
        return answers.getOrDefault(question, proposed.answers().getOrDefault(question, ""));
    }

    /** Whether a symptom of the unit stands ticked. */
    public boolean ticked(String symptom) {
        return symptoms.contains(symptom) || proposed.symptoms().contains(symptom);
    }

    /** What is ticked from the owner's words, in the words of the check. */
    public List<String> proposedWords() {
        return tables.questions().stream()
                .map(question ->
                        question.answers().getOrDefault(proposed.answers().getOrDefault(question.id(), ""), ""))
                .filter(words -> !words.isEmpty())
                .toList();
    }

    /** What else the owner complains of, in the words of the check. */
    public List<String> otherComplaints() {
        Map<String, String> kinds =
                tables.question("kind").map(CheckQuestion::answers).orElse(Map.of());
        return proposed.others().stream()
                .map(kind -> kinds.getOrDefault(kind, kind))
                .toList();
    }

    /** Whether anything was said or seen yet. */
    public boolean told() {
        return !answers.isEmpty() || !symptoms.isEmpty();
    }

    /** What earlier boxes had, the most frequent first, and in how many cases. */
    public Map<String, Long> before() {
        return CaseBefore.summed(advice.evidence().before());
    }

    /** How many cases of the type are known from before. */
    public String cases() {
        int cases = advice.evidence().before().size();
        return cases == 1 ? "1 case" : cases + " cases";
    }

    /** How much those cases count for; empty where there are none. */
    public String worth() {
        int cases = advice.evidence().before().size();
        return cases == 0
                ? ""
                : "Each box of this type before is a case, and each that came back one more: " + cases() + " with "
                        + percent(Ranking.worth(cases))
                        + " of the say in how often each cause is met; the general list has the rest.";
    }

    /** The likeliest. */
    public List<Suspect> first() {
        return advice.suspects().subList(0, Math.min(SHOWN, advice.suspects().size()));
    }

    /** The first looks. */
    public List<LookOrder.Look> looks() {
        return advice.looks().subList(0, Math.min(SHOWN, advice.looks().size()));
    }

    /** Looks that come later, and causes that are very unlikely. */
    public int more() {
        return Math.max(0, advice.looks().size() - SHOWN);
    }

    /** A chance as whole percents; less than one as such. */
    public static String percent(double chance) {
        return chance < 0.005 ? "under 1 %" : Math.round(100 * chance) + " %";
    }

    /** Names of those whom a look shows. */
    public static String names(LookOrder.Look look) {
        return look.suspects().stream().map(Suspect::name).collect(Collectors.joining("; "));
    }

    /** What must be opened for a look. */
    public static String opens(LookOrder.Look look) {
        return look.opens().stream().map(StripDepth::name).collect(Collectors.joining(", "));
    }

    /** How far it can be apart, as a person would say it. */
    public List<StripDepth> states() {
        Set<String> part = Set.of("drained", "final");
        return tables.openings().stream()
                .filter(opening -> !part.contains(opening.id()))
                .toList();
    }
}
