package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.SideChoices.Ranked;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.Side;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * The sides and the order found for small units against every order of every combination of sides, each order followed by the check of
 * {@link StrangersCheck}. More of them with {@code -Dshimwright.planned=10000}, from {@code -Dshimwright.planned.from} on.
 */
class SmallUnitsTest {
    private static final int FIRST = Integer.getInteger("shimwright.planned.from", 0);
    private static final SearchBudget ENOUGH = new SearchBudget(4096, 1_000_000);

    /** Every order of one problem. */
    private static final class Every {
        private final SequencingProblem problem;
        private final List<String> order = new ArrayList<>();
        private double best = Double.POSITIVE_INFINITY;

        private Every(SequencingProblem problem) {
            this.problem = problem;
        }

        static double least(SequencingProblem problem) {
            Every every = new Every(problem);
            every.extend();
            return every.best;
        }

        private void extend() {
            if (order.size() == problem.tasks().size()) {
                StrangersCheck.Verdict verdict = StrangersCheck.check(problem, order);
                best = verdict.lawful() ? Math.min(best, verdict.cost().total()) : best;
            }
            for (Task task : problem.tasks()) {
                if (!order.contains(task.id()) && order.containsAll(task.after())) {
                    order.add(task.id());
                    extend();
                    order.remove(order.size() - 1);
                }
            }
        }
    }

    private static List<Map<String, String>> combinations(Unit unit) {
        List<Map<String, String>> all = List.of(Map.of());
        for (Choice choice : unit.type().choices()) {
            List<Map<String, String>> more = new ArrayList<>();
            for (Map<String, String> sides : all) {
                for (String side : choice.sides().keySet()) {
                    Map<String, String> one = new LinkedHashMap<>(sides);
                    one.put(choice.id(), side);
                    more.add(one);
                }
            }
            all = more;
        }
        return all;
    }

    /** What the file adds to the minutes of the steps for these sides, in seconds, unless all that a side names is done. */
    private static double extra(SmallUnits.Case one, Map<String, String> sides) {
        double sum = 0;
        for (Choice choice : one.unit().type().choices()) {
            Side side = Objects.requireNonNull(choice.sides().get(sides.get(choice.id())));
            Set<String> named = new HashSet<>(side.skips());
            side.before().forEach(named::addAll);
            side.drops().forEach(named::addAll);
            boolean past = !named.isEmpty() && one.present().done().containsAll(named);
            sum += past ? 0 : side.extra();
        }
        return sum;
    }

    private static double least(Unit unit, Map<String, String> sides, BuildState present, Set<String> late) {
        return Every.least(UnitProblem.of(unit, Order.of(unit, sides), present, late));
    }

    private static Set<Set<String>> subsets(Set<String> of) {
        Set<Set<String>> all = new HashSet<>(Set.of(Set.of()));
        for (String one : of) {
            for (Set<String> known : List.copyOf(all)) {
                Set<String> with = new HashSet<>(known);
                with.add(one);
                all.add(with);
            }
        }
        return all;
    }

    @Test
    void sidesAndOrderFoundAreTheBestOfAllOrdersOfAllCombinations() {
        int count = Integer.getInteger("shimwright.planned", 150);
        int chosen = 0;
        int late = 0;
        for (int seed = FIRST; seed < FIRST + count; seed++) {
            SmallUnits.Case one = SmallUnits.of(seed);
            List<Map<String, String>> all = combinations(one.unit());
            Outcome<List<Ranked>> found =
                    SideChoices.of(one.unit(), all.get(0), Set.of(), one.present(), ENOUGH, SearchObserver.nobody());
            if (!found.isOk()) {
                assertThat(none(one, all.get(0)))
                        .as("unit %d has no order", seed)
                        .isTrue();
                continue;
            }
            List<Ranked> ranked = found.orElseThrow();
            double best = Double.POSITIVE_INFINITY;
            for (Map<String, String> sides : all) {
                List<Ranked> its =
                        ranked.stream().filter(r -> r.sides().equals(sides)).toList();
                if (its.isEmpty()) {
                    assertThat(none(one, sides))
                            .as("unit %d, %s has no order", seed, sides)
                            .isTrue();
                } else {
                    Plan plan = its.get(0).plan();
                    best = Math.min(best, checked(one, sides, plan, "unit " + seed + " " + sides));
                    late += plan.late().isEmpty() ? 0 : 1;
                }
            }
            Ranked first = ranked.get(0);
            assertThat(first.plan().cost().total() + extra(one, first.sides()))
                    .as("unit %d", seed)
                    .isCloseTo(best, within(1e-3));
            chosen += first.taken() ? 0 : 1;
        }
        assertThat(chosen).isGreaterThan(count / 10);
        assertThat(late).isPositive();
    }

    /** What the best order of these sides costs with what the file adds to them; fails where the plan is not as good as that. */
    private static double checked(SmallUnits.Case one, Map<String, String> sides, Plan plan, String name) {
        Set<String> late = plan.late().stream().map(Window::id).collect(Collectors.toSet());
        SequencingProblem problem = UnitProblem.of(one.unit(), Order.of(one.unit(), sides), one.present(), late);
        double least = Every.least(problem);
        assertThat(plan.proven()).as(name).isTrue();
        assertThat(plan.cost().total()).as(name).isCloseTo(least, within(1e-3));
        List<String> order = plan.ahead().stream().map(Step::id).toList();
        StrangersCheck.Verdict verdict = StrangersCheck.check(problem, order);
        assertThat(verdict.reasons()).as(name).isEmpty();
        assertThat(verdict.against(plan.cost())).as(name).isEmpty();
        if (!late.isEmpty()) {
            assertThat(least(one.unit(), sides, one.present(), Set.of()))
                    .as("%s keeps no window that is called late", name)
                    .isInfinite();
        }
        return least + extra(one, sides);
    }

    /** True where there is no order even when every window that is open is given up. */
    private static boolean none(SmallUnits.Case one, Map<String, String> sides) {
        Set<String> open = UnitProblem.of(one.unit(), Order.of(one.unit(), sides), one.present(), Set.of())
                .start()
                .open()
                .keySet();
        return subsets(open).stream()
                .allMatch(late -> Double.isInfinite(least(one.unit(), sides, one.present(), late)));
    }
}
