package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;

/**
 * Whatever is really done, in whatever order: the plan from there is possible and whole. More of each with
 * {@code -Dshimwright.times=10}.
 */
class PlannerPropertyTest {
    private static final int TIMES = Integer.getInteger("shimwright.times", 1);

    private static Unit unit(Random random) {
        return random.nextBoolean() ? DemoUnit.A : DemoUnit.B;
    }

    private static Map<String, String> sides(Unit unit, Random random) {
        Map<String, String> sides = new LinkedHashMap<>();
        for (Choice choice : unit.type().choices()) {
            List<String> names = new ArrayList<>(choice.sides().keySet());
            if (random.nextInt(3) > 0) {
                sides.put(choice.id(), names.get(random.nextInt(names.size())));
            }
        }
        return sides;
    }

    private static void possible(Unit unit, Map<String, String> sides, Set<String> done) {
        Outcome<Plan> outcome = Planner.lay(unit, sides, done);
        if (outcome instanceof Outcome.Ok<Plan> ok) {
            PlanCheck.check(unit, sides, done, ok.value());
            double minutes =
                    ok.value().ahead().stream().mapToDouble(Step::duration).sum() / 60;
            assertThat(ok.value().minutes()).isEqualTo(minutes);
            assertThat(ok.value().done() + ok.value().ahead().size())
                    .isEqualTo(ok.value().total());
        } else {
            assertThat(circular(unit, sides, done)).isTrue();
        }
        assertThat(Planner.lay(unit, sides, done)).isEqualTo(outcome);
    }

    /** True where what is left cannot be laid: taking away whatever is free leaves something. */
    private static boolean circular(Unit unit, Map<String, String> sides, Set<String> done) {
        Map<String, Set<String>> edges = PlanCheck.edges(unit, sides);
        Set<String> left = new LinkedHashSet<>(edges.keySet());
        left.removeAll(done);
        boolean moved = true;
        while (moved) {
            moved = left.removeIf(step -> Collections.disjoint(edges.get(step), left));
        }
        return !left.isEmpty();
    }

    @Property(tries = 10)
    void fromAnyStateReachedInOrder(@ForAll long seed) {
        for (int k = 0; k < TIMES; k++) {
            reachedInOrder(new Random(seed + k));
        }
    }

    private static void reachedInOrder(Random random) {
        Unit unit = unit(random);
        Map<String, String> sides = sides(unit, random);
        Map<String, Set<String>> edges = PlanCheck.edges(unit, sides);
        Set<String> done = new LinkedHashSet<>();
        int wanted = random.nextInt(edges.size() + 1);
        while (done.size() < wanted) {
            List<String> free = edges.keySet().stream()
                    .filter(step -> !done.contains(step) && done.containsAll(edges.get(step)))
                    .toList();
            if (free.isEmpty()) {
                break;
            }
            done.add(free.get(random.nextInt(free.size())));
        }
        possible(unit, sides, done);
    }

    @Property(tries = 10)
    void fromAnyStateAtAll(@ForAll long seed) {
        for (int k = 0; k < TIMES; k++) {
            anyState(new Random(seed + k));
        }
    }

    private static void anyState(Random random) {
        Unit unit = unit(random);
        Map<String, String> sides = sides(unit, random);
        List<String> steps = new ArrayList<>(PlanCheck.edges(unit, sides).keySet());
        Collections.shuffle(steps, random);
        possible(unit, sides, new LinkedHashSet<>(steps.subList(0, random.nextInt(steps.size() + 1))));
    }

    /** What is left of an order can be gone on with, and what is found from there is never dearer. */
    @Property(tries = 4)
    void doneStepByStepThePlanNeverContradictsItself(@ForAll long seed) {
        for (int k = 0; k < TIMES; k++) {
            stepByStep(new Random(seed + k));
        }
    }

    private static void stepByStep(Random random) {
        Unit unit = unit(random);
        Map<String, String> sides = Map.of();
        Set<String> done = new LinkedHashSet<>();
        List<Step> first = Planner.lay(unit, sides, done).orElseThrow().ahead();
        int stop = random.nextInt(first.size());
        for (int i = 0; i < stop; i++) {
            done.add(first.get(i).id());
        }
        List<String> rest =
                first.subList(stop, first.size()).stream().map(Step::id).toList();
        BuildState present = BuildState.inOrder(List.copyOf(done));
        Plan onward = Planner.onward(unit, sides, present, rest).orElseThrow();
        assertThat(onward.ahead()).isEqualTo(first.subList(stop, first.size()));
        Plan anew = Planner.lay(unit, sides, present, SearchBudget.page(), SearchObserver.nobody(), rest)
                .orElseThrow();
        assertThat(anew.cost().total()).isLessThanOrEqualTo(onward.cost().total() + 1e-6);
    }
}
