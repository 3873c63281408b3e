package shimwright.rebuild.unit.sense;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.Side;

/**
 * The steps of one variant with the choices taken, and what each waits for. Whoever waited for a step that is left out
 * waits for what that one waited for.
 *
 * @param steps by id, in file order
 * @param before the steps that each one waits for
 */
public record StepGraph(Map<String, Step> steps, Map<String, Set<String>> before) {

    /**
     * The graph.
     *
     * @param type filtered for one variant
     * @param taken side by choice; a choice without an entry takes its usual side
     */
    public static StepGraph of(UnitType type, Map<String, String> taken) {
        Map<String, Step> all = new LinkedHashMap<>();
        type.steps().forEach(step -> all.putIfAbsent(step.id(), step));
        List<Side> sides = sides(type, taken);
        Map<String, Step> steps = new LinkedHashMap<>(all);
        sides.forEach(side -> side.skips().forEach(steps::remove));
        Map<String, Set<String>> before = new LinkedHashMap<>();
        steps.keySet().forEach(id -> before.put(id, waitsFor(id, all, steps)));
        for (Side side : sides) {
            for (List<String> pair : side.before()) {
                if (pair.size() == 2 && steps.containsKey(pair.get(0))) {
                    before.getOrDefault(pair.get(1), new LinkedHashSet<>()).add(pair.get(0));
                }
            }
        }
        for (Side side : sides) {
            for (List<String> pair : side.drops()) {
                if (pair.size() == 2) {
                    before.getOrDefault(pair.get(1), new LinkedHashSet<>()).remove(pair.get(0));
                }
            }
        }
        return new StepGraph(steps, before);
    }

    private static List<Side> sides(UnitType type, Map<String, String> taken) {
        List<Side> sides = new ArrayList<>();
        for (Choice choice : type.choices()) {
            Side side = choice.sides().get(taken.getOrDefault(choice.id(), choice.usual()));
            if (side != null) {
                sides.add(side);
            }
        }
        return sides;
    }

    private static Set<String> waitsFor(String id, Map<String, Step> all, Map<String, Step> live) {
        Set<String> found = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>(Set.of(id));
        Deque<String> open = new ArrayDeque<>(after(id, all));
        while (!open.isEmpty()) {
            String next = open.remove();
            if (live.containsKey(next)) {
                found.add(next);
            } else if (seen.add(next)) {
                open.addAll(after(next, all));
            }
        }
        return found;
    }

    private static Set<String> after(String id, Map<String, Step> all) {
        Step step = all.get(id);
        return step == null ? Set.of() : step.after().keySet();
    }

    /** Steps that wait for each other in a circle, each for the next and the last for the first; empty where none do. */
    public List<String> cycle() {
        Map<String, Integer> waiting = new HashMap<>();
        Map<String, List<String>> after = new HashMap<>();
        before.forEach((id, needs) -> {
            waiting.put(id, needs.size());
            needs.forEach(need ->
                    after.computeIfAbsent(need, none -> new ArrayList<>()).add(id));
        });
        Deque<String> free = new ArrayDeque<>();
        waiting.forEach((id, n) -> {
            if (n == 0) {
                free.add(id);
            }
        });
        Set<String> left = new LinkedHashSet<>(steps.keySet());
        while (!free.isEmpty()) {
            String id = free.remove();
            left.remove(id);
            for (String other : after.getOrDefault(id, List.of())) {
                if (waiting.merge(other, -1, Integer::sum) == 0) {
                    free.add(other);
                }
            }
        }
        return left.isEmpty() ? List.of() : circle(left);
    }

    private List<String> circle(Set<String> left) {
        List<String> path = new ArrayList<>();
        String at = left.iterator().next();
        while (!path.contains(at)) {
            path.add(at);
            at = before.getOrDefault(at, Set.of()).stream()
                    .filter(left::contains)
                    .findFirst()
                    .orElseThrow();
        }
        return List.copyOf(path.subList(path.indexOf(at), path.size()));
    }

    /** A circle in the words of its steps. */
    public String words(List<String> circle) {
        String chain = circle.stream()
                .map(id -> id + " (" + firstSentence(id) + ")")
                .collect(Collectors.joining(" waits for "));
        return chain + " waits for " + circle.get(0);
    }

    private String firstSentence(String id) {
        Step step = steps.get(id);
        return step == null ? "" : step.todo().split("\\.", 2)[0];
    }

    /** True where the later step waits for the earlier one, straight or by others. */
    boolean leads(String earlier, String later) {
        return leadingTo(later).contains(earlier);
    }

    private Set<String> leadingTo(String id) {
        Set<String> found = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(before.getOrDefault(id, Set.of()));
        while (!open.isEmpty()) {
            String next = open.remove();
            if (found.add(next)) {
                open.addAll(before.getOrDefault(next, Set.of()));
            }
        }
        return found;
    }

    /**
     * Seconds that must pass between two steps at least: the longest chain from the end of the first to the end of the
     * second.
     */
    double between(String first, String second) {
        Map<String, Double> done = new HashMap<>();
        Set<String> inside = new LinkedHashSet<>();
        leadingTo(second).stream().filter(id -> leads(first, id)).forEach(inside::add);
        inside.add(second);
        for (String id : steps.keySet()) {
            if (!inside.contains(id)) {
                done.put(id, 0.0);
            }
        }
        return chainTo(second, done);
    }

    private double chainTo(String id, Map<String, Double> done) {
        Double known = done.get(id);
        if (known != null) {
            return known;
        }
        double longest = 0;
        for (String need : before.getOrDefault(id, Set.of())) {
            longest = Math.max(longest, chainTo(need, done));
        }
        Step step = steps.get(id);
        double total = longest + (step == null ? 0 : step.duration());
        done.put(id, total);
        return total;
    }
}
