package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.Clearance;
import shimwright.rebuild.unit.Unit;

/** Acceptances that no longer stand: the clearance, or one that it depends on, got another pack afterwards. */
public final class Reopened {
    private Reopened() {}

    /**
     * Why an acceptance no longer stands.
     *
     * @return empty where it stands
     */
    public static Optional<String> since(Job job, Unit unit, String clearance, Said<Entry.ClearanceAccepted> accepted) {
        Set<String> upstream = upstream(unit, clearance);
        return job.chosen().entrySet().stream()
                .filter(e -> upstream.contains(e.getKey().clearance())
                        && e.getValue().number() > accepted.number())
                .map(e -> "the pack of clearance " + e.getKey().clearance() + " was changed after it was accepted")
                .findFirst();
    }

    private static Set<String> upstream(Unit unit, String clearance) {
        Set<String> found = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(clearance));
        while (!open.isEmpty()) {
            String id = open.remove(open.size() - 1);
            if (found.add(id)) {
                Clearance c = unit.clearance(id);
                open.addAll(c.dependsOn());
            }
        }
        return found;
    }
}
