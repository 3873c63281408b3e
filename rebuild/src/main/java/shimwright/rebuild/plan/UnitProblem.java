package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.plan.model.InitialState;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** The planning problem of a unit as it stands: what is left to do, and under which rules. */
final class UnitProblem {
    /** A window as long as this or shorter is served alone: nothing is begun in it that does not lead to its closing. */
    static final double ALONE_WITHIN = 3600;

    private final Unit unit;
    private final Order order;
    private final BuildState present;
    private final Set<String> done;
    private final boolean handsOn;
    /** Of each step all that leads to it. */
    private final Map<String, Set<String>> leading = new HashMap<>();

    private final Map<String, Set<String>> inside = new HashMap<>();

    private UnitProblem(Unit unit, Order order, BuildState present) {
        this.unit = unit;
        this.order = order;
        this.present = present;
        this.done = new LinkedHashSet<>(present.done());
        done.retainAll(order.steps().keySet());
        this.handsOn = straight(order);
        order.steps().keySet().forEach(id -> leading.put(id, order.leadingTo(id)));
        unit.type().windows().forEach(window -> inside.put(window.id(), inside(window)));
    }

    /**
     * The problem.
     *
     * @param late windows that are open and need not be kept any more, by id
     */
    static SequencingProblem of(Unit unit, Order order, BuildState present, Set<String> late) {
        return new UnitProblem(unit, order, present).problem(late);
    }

    private boolean ahead(String id) {
        return order.steps().containsKey(id) && !done.contains(id);
    }

    private SequencingProblem problem(Set<String> late) {
        UnitType type = unit.type();
        List<Task> tasks = new ArrayList<>();
        order.steps().values().stream().filter(step -> ahead(step.id())).forEach(step -> tasks.add(task(step)));
        Map<String, Double> waits = new HashMap<>();
        present.arrives().forEach((id, seconds) -> {
            if (ahead(id) && seconds > 0) {
                waits.put(id, seconds);
            }
        });
        List<Lag> lags = new ArrayList<>();
        order.steps().keySet().stream().filter(this::ahead).forEach(to -> cures(to, lags, waits));
        Map<String, Double> open = new HashMap<>();
        List<Window> windows = windows(type, late, open);
        Set<String> orientations = type.stations().entrySet().stream()
                .filter(e -> e.getValue().holdsCase())
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        InitialState start = new InitialState(
                last(step -> orientations.contains(step.at()) ? step.at() : "").orElse(""),
                last(Step::at).orElse(""),
                last(step -> tools(step).isEmpty() ? "" : step.id())
                        .map(id -> tools(step(id)))
                        .orElse(Set.of()),
                unit.itemsIn(known()).stream()
                        .filter(type.heavy()::containsKey)
                        .toList()
                        .size(),
                waits,
                open);
        return new SequencingProblem(
                tasks,
                lags,
                windows,
                LateFindRisk.of(unit, order, done, leading),
                setUps(type, orientations),
                start,
                present.weights().later());
    }

    private List<String> known() {
        return present.done().stream()
                .filter(id -> unit.findStep(id).isPresent())
                .toList();
    }

    private Step step(String id) {
        return Objects.requireNonNull(order.steps().get(id));
    }

    private Optional<String> last(java.util.function.Function<Step, String> what) {
        String found = "";
        for (String id : present.done()) {
            String one = order.steps().containsKey(id) ? what.apply(step(id)) : "";
            found = one.isEmpty() ? found : one;
        }
        return Optional.of(found).filter(text -> !text.isEmpty());
    }

    /** Tools to lay out: for a step in a window that is served alone all that the window needs, before it is opened. */
    private Set<String> tools(Step step) {
        Set<String> tools = new LinkedHashSet<>(step.tools());
        for (UnitType.Window window : unit.type().windows()) {
            Set<String> within = inside.getOrDefault(window.id(), Set.of());
            if (window.longest() <= ALONE_WITHIN && within.contains(step.id())) {
                within.stream().filter(this::ahead).forEach(id -> tools.addAll(step(id).tools()));
            }
        }
        return tools;
    }

    /** Steps from the one that opens a window to the one that closes it. */
    private Set<String> inside(UnitType.Window window) {
        Set<String> within = new LinkedHashSet<>();
        if (ahead(window.closes()) && order.steps().containsKey(window.opens())) {
            leading.getOrDefault(window.closes(), Set.of()).stream()
                    .filter(id -> leading.getOrDefault(id, Set.of()).contains(window.opens()))
                    .forEach(within::add);
            within.add(window.opens());
            within.add(window.closes());
        }
        return within;
    }

    private Task task(Step step) {
        Set<String> after = new LinkedHashSet<>();
        needs(step.id(), after, new HashSet<>());
        unit.type().windows().stream()
                .filter(window -> window.closes().equals(step.id()) && ahead(window.opens()))
                .filter(window -> !backwards(window))
                .forEach(window -> after.add(window.opens()));
        int in = (int) step.installs().stream()
                .filter(unit.type().heavy()::containsKey)
                .count();
        int out = (int)
                step.removes().stream().filter(unit.type().heavy()::containsKey).count();
        return new Task(step.id(), plain(step.todo()), step.duration(), step.at(), tools(step), after, in - out);
    }

    /** A step's first sentence without its full stop, to stand within another. */
    static String plain(String todo) {
        String first = todo.split("\\. ", 2)[0];
        return first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    }

    /** True where the steps wait for each other in no circle, done ones included. */
    private static boolean straight(Order order) {
        Set<String> left = new LinkedHashSet<>(order.steps().keySet());
        boolean moved = true;
        while (moved) {
            moved = left.removeIf(step -> Collections.disjoint(
                    order.before().getOrDefault(step, Map.of()).keySet(), left));
        }
        return left.isEmpty();
    }

    /** Steps ahead that it waits for; one done before its time hands on what it should have waited for. */
    private void needs(String id, Set<String> after, Set<String> seen) {
        for (String need : order.before().getOrDefault(id, Map.of()).keySet()) {
            if (ahead(need)) {
                after.add(need);
            } else if (handsOn && seen.add(need)) {
                needs(need, after, seen);
            }
        }
    }

    /** True where the step that opens a window waits for the one that closes it, as sides that contradict each other may have it. */
    private boolean backwards(UnitType.Window window) {
        if (handsOn && leading.getOrDefault(window.closes(), Set.of()).contains(window.opens())) {
            return false;
        }
        Set<String> found = new LinkedHashSet<>();
        List<String> further = new ArrayList<>(List.of(window.opens()));
        while (!further.isEmpty()) {
            Set<String> needed = new LinkedHashSet<>();
            needs(further.remove(further.size() - 1), needed, new HashSet<>());
            needed.stream().filter(found::add).forEach(further::add);
        }
        return found.contains(window.closes());
    }

    private void cures(String to, List<Lag> lags, Map<String, Double> waits) {
        order.before().getOrDefault(to, Map.of()).forEach((from, why) -> {
            Consumable cure = why == Why.WAITS ? cure(from) : null;
            if (cure != null && ahead(from)) {
                lags.add(new Lag(from, to, cure.cure(), cure.name() + " cures"));
            } else if (cure != null) {
                double left = cure.cure() - present.ago().getOrDefault(from, 0.0);
                waits.merge(to, Math.max(0, left), Math::max);
            }
        });
    }

    private @org.jspecify.annotations.Nullable Consumable cure(String from) {
        Consumable longest = null;
        for (String id : step(from).consumables()) {
            Consumable one = unit.consumable(id);
            longest = one.cure() > (longest == null ? 0 : longest.cure()) ? one : longest;
        }
        return longest;
    }

    private List<Window> windows(UnitType type, Set<String> late, Map<String, Double> open) {
        List<Window> windows = new ArrayList<>();
        for (UnitType.Window window : type.windows()) {
            boolean opened = done.contains(window.opens());
            if (ahead(window.closes()) && (opened || (ahead(window.opens()) && !backwards(window)))) {
                boolean passed = late.contains(window.id());
                double gone = present.ago().getOrDefault(window.opens(), 0.0);
                windows.add(new Window(
                        window.id(),
                        window.name(),
                        opened ? "" : window.opens(),
                        window.closes(),
                        passed ? gone + 1e8 : window.longest(),
                        window.longest() <= ALONE_WITHIN));
                if (opened) {
                    open.put(window.id(), Math.max(0, gone));
                }
            }
        }
        return windows;
    }

    private static SetUps setUps(UnitType type, Set<String> orientations) {
        Map<String, Map<String, Double>> turn = new LinkedHashMap<>();
        for (String from : orientations) {
            Map<String, Double> row = new LinkedHashMap<>();
            for (String to : orientations) {
                row.put(to, type.turnOver().getOrDefault(from + "-" + to, 0.0));
            }
            turn.put(from, row);
        }
        double heavy = type.heavy().values().stream().mapToDouble(x -> x).max().orElse(1);
        return new SetUps(orientations, turn, Math.max(1, heavy), type.stationChange(), type.toolTimes());
    }
}
