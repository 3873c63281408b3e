package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.reuse.Stakes;
import shimwright.rebuild.reuse.Weighing;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about what a verdict hangs on. */
final class ReuseRules {
    private static final Set<String> OF_JOB = Set.of(Stakes.DISTANCE, Stakes.SCATTER, Stakes.VEHICLE, Stakes.DAY);
    private static final Set<String> OF_PIECE = Weighing.SAID.stream()
            .flatMap(what -> Stream.of(Decision.values()).map(decision -> Weighing.name(what, decision)))
            .collect(Collectors.toUnmodifiableSet());

    private ReuseRules() {}

    static List<Refusal> weighed(Workbench bench, Entry.Weighed e) {
        List<Refusal> refusals =
                new ArrayList<>(e.limit().isEmpty() ? List.of() : IntakeRules.limit(bench, e.limit(), e.piece()));
        if (e.limit().isEmpty() && !e.piece().isEmpty()) {
            refusals.add(Refusal.of("piece", "a piece of no limit", "Go back to the inspection"));
        }
        Set<String> known = e.limit().isEmpty() ? OF_JOB : OF_PIECE;
        e.numbers().forEach((name, value) -> {
            boolean share = name.startsWith("chance") || name.equals(Stakes.SCATTER);
            if (!known.contains(name)) {
                refusals.add(Refusal.of(name, "nothing of that name is weighed", "Leave it out"));
            } else if (!(value >= 0) || !Double.isFinite(value) || (share && value > 1)) {
                refusals.add(Refusal.of(
                        name,
                        value + " cannot be",
                        share ? "Give a share from 0 to 100 percent" : "Give a number, 0 or more"));
            }
        });
        return refusals;
    }
}
