package shimwright.rebuild.complaint;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.WearLimit;

/** What a job and the earlier ones of its type say for one cause or another. */
public final class JobEvidence {
    private JobEvidence() {}

    /**
     * Everything that was said and seen in a job.
     *
     * @param unit what it stands on
     * @param earlier other jobs of the type; the job itself is passed over
     */
    public static Evidence of(Unit unit, Job job, List<Job> earlier) {
        Map<String, Entry.Seen> looked = new LinkedHashMap<>();
        job.inspection()
                .looked()
                .forEach((id, said) -> looked.put(id, said.what().seen()));
        Set<String> outside = outside(unit, job);
        List<CaseBefore> before = earlier.stream()
                .filter(other -> !other.id().equals(job.id()))
                .flatMap(other -> CaseBefore.of(unit, other).stream())
                .toList();
        Job.Said<Entry.ComplaintSaid> complaint = job.inspection().complaint();
        return new Evidence(
                complaint == null ? Map.of() : known(complaint.what().answers()),
                complaint == null ? Set.of() : Set.copyOf(complaint.what().symptoms()),
                looked,
                outside,
                before);
    }

    /** Openings that are there, as the complaint says. */
    public static Set<String> there(Job job) {
        Job.Said<Entry.ComplaintSaid> complaint = job.inspection().complaint();
        return complaint == null || complaint.what().apart().isEmpty()
                ? Set.of()
                : Set.of(complaint.what().apart());
    }

    /** Answers that the list of today still has; an older log may hold others. */
    private static Map<String, String> known(Map<String, String> answers) {
        Map<String, String> known = new LinkedHashMap<>();
        answers.forEach((question, answer) -> CauseTables.shipped()
                .question(question)
                .filter(asked -> asked.answers().containsKey(answer))
                .ifPresent(asked -> known.put(question, answer)));
        return known;
    }

    /** Names of what was measured outside its limit or is to be reworked or replaced. */
    static Set<String> outside(Unit unit, Job job) {
        Set<String> outside = new LinkedHashSet<>();
        for (WearLimit wear : unit.type().wearLimits()) {
            judge(unit, job, wear, outside);
        }
        return outside;
    }

    private static void judge(Unit unit, Job job, WearLimit wear, Set<String> outside) {
        List<Standings.Standing> worn =
                Standings.of(unit, job, wear).stream().filter(JobEvidence::worn).toList();
        if (worn.isEmpty()) {
            return;
        }
        outside.add(wear.what());
        worn.stream()
                .flatMap(standing -> standing.piece().items().stream())
                .filter(item ->
                        unit.type().items().stream().anyMatch(one -> one.id().equals(item)))
                .forEach(item -> outside.add(unit.item(item).name()));
    }

    private static boolean worn(Standings.Standing standing) {
        return standing.judged()
                .map(said -> said.what().decision() != Entry.Decision.REUSE)
                .orElseGet(() -> standing.found()
                        .filter(said -> Findings.isOut(said.what()))
                        .isPresent());
    }
}
