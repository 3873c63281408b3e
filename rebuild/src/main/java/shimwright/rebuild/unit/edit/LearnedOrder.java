package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Step;

/**
 * What steps wait for, from what was in the way when their parts came off: what had to be off first goes in after. Two parts are
 * free of each other only where both came off and it is known that the other was not in the way, see {@link Removal#knownFrom}; of
 * all others the order seen and the order that the file had stay, as habit.
 */
final class LearnedOrder {
    /** Reasons of the file by which the next strip-down knows what an earlier one wrote. */
    static final String STRIPPED = "stripped";

    static final String SEEN = "seen";

    static final Map<String, String> REASONS = Map.of(
            STRIPPED, "It had to be off before the other could come off.",
            SEEN, "As it came apart or stood before; nobody said that it has to be so.");

    private final List<Step> was;
    private final boolean usual;
    private final List<Removal> strip;
    private final List<Set<String>> nodes;
    private final Map<String, Integer> off = new HashMap<>();
    private final Map<String, Map<String, Step.Why>> after = new LinkedHashMap<>();
    private final Map<String, Map<String, String>> because = new LinkedHashMap<>();

    private LearnedOrder(List<Step> was, boolean usual, List<Removal> strip, List<Set<String>> nodes) {
        this.was = was;
        this.usual = usual;
        this.strip = strip;
        this.nodes = nodes;
        for (int k = 0; k < nodes.size(); k++) {
            for (String node : nodes.get(k)) {
                off.putIfAbsent(node, k);
            }
        }
        was.forEach(step -> {
            after.put(step.id(), new LinkedHashMap<>());
            because.put(step.id(), new LinkedHashMap<>());
        });
    }

    /**
     * The steps in the order learned.
     *
     * @param was steps of the file
     * @param usual true where their order is only what is usual for such a box: what came off the other way round refutes it
     * @param strip what came off, in order
     * @param nodes the steps that each thing turns round
     * @return refused where steps would wait for each other
     */
    static Outcome<List<Step>> of(List<Step> was, boolean usual, List<Removal> strip, List<Set<String>> nodes) {
        LearnedOrder order = new LearnedOrder(was, usual, strip, nodes);
        order.keepWhatBinds();
        order.learn();
        Optional<Refusal> circle = order.circle();
        if (circle.isPresent()) {
            return Outcome.refused(circle.get());
        }
        order.keepWhatWasSeen();
        order.keepHabits();
        order.keepWhatStood();
        return Outcome.ok(was.stream().map(order::written).toList());
    }

    private Step written(Step step) {
        return Component.with(Component.with(step, "after", get(after, step.id())), "because", get(because, step.id()));
    }

    private static <V> Map<String, V> get(Map<String, Map<String, V>> by, String id) {
        Map<String, V> found = by.get(id);
        if (found == null) {
            throw new IllegalArgumentException("no step " + id);
        }
        return found;
    }

    private void put(String step, String before, Step.Why why, String reason) {
        get(after, step).put(before, why);
        if (reason.isEmpty()) {
            get(because, step).remove(before);
        } else {
            get(because, step).put(before, reason);
        }
    }

    /** True where an earlier strip-down bound two of which this one knows only that the first came off. */
    private boolean unsaid(Step step, String before) {
        return learned(step, before) && asked(before) && !off.containsKey(step.id());
    }

    private boolean asked(String step) {
        Integer k = off.get(step);
        return k != null && strip.get(k).asked();
    }

    /** True where the strip-down says everything of the two: whether the first must be there before the second. */
    private boolean settled(String before, String then) {
        Integer first = off.get(then);
        Integer later = off.get(before);
        return first != null
                && later != null
                && (later < first || (later > first && first >= strip.get(later).knownFrom(later)));
    }

    private boolean cameOffFirst(String one, String other) {
        Integer first = off.get(one);
        Integer later = off.get(other);
        return first != null && later != null && first < later;
    }

    private static boolean learned(Step step, String before) {
        return step.because().getOrDefault(before, "").equals(STRIPPED);
    }

    private void keepWhatBinds() {
        for (Step step : was) {
            step.after().forEach((before, why) -> {
                boolean earlier = learned(step, before);
                boolean refuted = usual
                        && (why == Step.Why.BLOCKED || why == Step.Why.SAME_PART)
                        && cameOffFirst(before, step.id());
                boolean again = earlier && asked(before);
                if (why != Step.Why.HABIT && !refuted && !again) {
                    put(step.id(), before, why, step.because().getOrDefault(before, ""));
                }
            });
        }
    }

    private void learn() {
        for (int k = 0; k < strip.size(); k++) {
            for (int over : strip.get(k).inTheWay()) {
                for (String then : over == Removal.STRUCK ? Set.<String>of() : nodes.get(over)) {
                    for (String before : nodes.get(k)) {
                        if (!then.equals(before) && !get(after, then).containsKey(before)) {
                            put(then, before, Step.Why.BLOCKED, STRIPPED);
                        }
                    }
                }
            }
        }
    }

    /** Habits of the file of which the strip-down says nothing; one that would close a circle with what is known yields. */
    private void keepHabits() {
        for (Step step : was) {
            step.after().forEach((before, why) -> {
                boolean unsaid = unsaid(step, before);
                boolean habit = (why == Step.Why.HABIT && !settled(before, step.id())) || unsaid;
                if (habit && !get(after, step.id()).containsKey(before) && !leads(step.id(), before)) {
                    put(
                            step.id(),
                            before,
                            Step.Why.HABIT,
                            unsaid ? SEEN : step.because().getOrDefault(before, ""));
                }
            });
        }
    }

    /** What came off in order stays so where nobody said that it is free; it goes before any habit, for it was possible. */
    private void keepWhatWasSeen() {
        Map<String, Set<String>> seen = new HashMap<>();
        for (int k = 0; k < strip.size(); k++) {
            for (int over = 0; over < strip.get(k).knownFrom(k); over++) {
                for (String then : nodes.get(over)) {
                    seen.computeIfAbsent(then, none -> new HashSet<>()).addAll(nodes.get(k));
                }
            }
        }
        keep(seen);
    }

    /** What stood in order before stays so where the strip-down does not settle it. */
    private void keepWhatStood() {
        Map<String, Map<String, Step.Why>> earlier = new HashMap<>();
        was.forEach(step -> earlier.put(step.id(), step.after()));
        Map<String, Set<String>> stood = new HashMap<>();
        was.forEach(step -> stood.put(step.id(), led(step.id(), earlier)));
        keep(stood);
    }

    /** Binds, as habit, what is not settled and not bound yet, the nearest first; what would close a circle yields. */
    private void keep(Map<String, Set<String>> pairs) {
        List<Step> nearest = new ArrayList<>(was);
        Collections.reverse(nearest);
        for (Step step : was) {
            Set<String> open = new HashSet<>(pairs.getOrDefault(step.id(), Set.of()));
            open.remove(step.id());
            open.removeIf(before -> settled(before, step.id()));
            for (Step near : nearest) {
                String before = near.id();
                if (open.contains(before) && !leads(before, step.id()) && !leads(step.id(), before)) {
                    put(step.id(), before, Step.Why.HABIT, SEEN);
                }
            }
        }
    }

    /** True where the first must be done before the second as it stands now. */
    private boolean leads(String first, String then) {
        return led(then, after).contains(first);
    }

    private static Set<String> led(String step, Map<String, Map<String, Step.Why>> order) {
        Set<String> found = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(step));
        while (!open.isEmpty()) {
            for (String before :
                    order.getOrDefault(open.remove(open.size() - 1), Map.of()).keySet()) {
                if (found.add(before)) {
                    open.add(before);
                }
            }
        }
        return found;
    }

    private Optional<Refusal> circle() {
        for (Step step : was) {
            Optional<String> back = get(after, step.id()).keySet().stream()
                    .filter(before ->
                            get(because, step.id()).getOrDefault(before, "").equals(STRIPPED))
                    .filter(before -> before.equals(step.id()) || leads(step.id(), before))
                    .findFirst();
            if (back.isPresent()) {
                return Optional.of(Refusal.of(
                        "strip",
                        "\"" + words(step.id()) + "\" had to be off before \"" + words(back.get())
                                + "\", but the unit says that it goes in before it",
                        "Put right what was in its way, or take that order out of the unit"));
            }
        }
        return Optional.empty();
    }

    private String words(String id) {
        return was.stream()
                .filter(step -> step.id().equals(id))
                .map(step ->
                        StripWords.bare(step.todo()).replaceFirst("^Fit ", "").replaceFirst("[.]$", ""))
                .findFirst()
                .orElse(id);
    }
}
