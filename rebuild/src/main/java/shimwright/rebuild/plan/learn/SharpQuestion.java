package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.edit.StripDownOrder;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A question that is worth asking once a strip-down is done: whether anything but what was named was in the way of one thing.
 *
 * @param entry what came off, by its entry
 * @param gone in the words of the person
 * @param minutes work that need not wait for it any more where nothing else was
 */
public record SharpQuestion(String entry, String gone, double minutes) {
    /** So many are asked at most. */
    public static final int MOST = 10;

    /** The work in words. */
    public String work() {
        return Math.round(minutes) + " min";
    }

    /**
     * The questions of a strip-down, the one that sets most work free first.
     *
     * @param type the file that the strip-down is put into
     * @param strip what came off, in order
     * @return empty where nothing more can be asked
     */
    public static List<SharpQuestion> of(UnitType type, List<Said<Entry.TakenOff>> strip) {
        StripDownOrder order = StripDown.order(strip);
        UnitType learned = order.on(type) instanceof Outcome.Ok<UnitType> ok ? ok.value() : type;
        List<Set<String>> nodes = order.turned(learned);
        Map<String, Step> steps = new HashMap<>();
        learned.steps().forEach(step -> steps.put(step.id(), step));
        List<SharpQuestion> all = new ArrayList<>();
        for (int k = 0; k < strip.size(); k++) {
            double free = 0;
            int known = order.strip().get(k).knownFrom(k);
            for (int over = 0; over < known; over++) {
                for (String then : nodes.get(over)) {
                    Step step = steps.get(then);
                    boolean bound = nodes.get(k).stream()
                            .anyMatch(mine -> binding(steps, then).contains(mine));
                    free += step == null || bound ? 0 : step.duration() / 60;
                }
            }
            if (free > 0) {
                all.add(new SharpQuestion(strip.get(k).id(), strip.get(k).what().gone(), free));
            }
        }
        all.sort(Comparator.comparingDouble(SharpQuestion::minutes).reversed());
        return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
    }

    /** What a step waits for whatever is answered. */
    private static Set<String> binding(Map<String, Step> steps, String id) {
        Set<String> found = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(id));
        while (!open.isEmpty()) {
            Step step = steps.get(open.remove(open.size() - 1));
            if (step != null) {
                step.after().forEach((before, why) -> {
                    if (why != Step.Why.HABIT && found.add(before)) {
                        open.add(before);
                    }
                });
            }
        }
        return found;
    }
}
