package shimwright.rebuild.plan.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.crew.ConflictLimit;
import shimwright.rebuild.plan.people.CrewPlan.Why;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** The demo unit with one and with more people, followed by a check of its own. */
class PeopleTest {
    private static Plan plan(Unit unit, List<String> done) {
        return Planner.lay(
                        unit,
                        Map.of(),
                        BuildState.inOrder(done),
                        SearchBudget.page(),
                        SearchObserver.nobody(),
                        List.of())
                .orElseThrow();
    }

    private static CrewPlan share(Unit unit, List<String> done, int persons, long effort) {
        Outcome<CrewPlan> found = People.share(
                unit,
                Map.of(),
                BuildState.inOrder(done),
                plan(unit, done),
                persons,
                new ConflictLimit(effort),
                () -> false);
        CrewPlan share = found.orElseThrow();
        assertThat(PeopleCheck.faults(unit, Order.of(unit, Map.of()), share, Set.copyOf(done)))
                .isEmpty();
        assertThat(share.bound()).isLessThanOrEqualTo(share.seconds());
        assertThat(share.proven()).isEqualTo(share.bound() == share.seconds());
        assertThat(share.gap()).isEqualTo(share.seconds() - share.bound());
        return share;
    }

    @Test
    void twoAreFasterThanOneButNotTwiceBecauseTheCaseIsOne() {
        for (Unit unit : List.of(DemoUnit.A, DemoUnit.B)) {
            long began = System.nanoTime();
            CrewPlan alone = share(unit, List.of(), 1, 100);
            CrewPlan two = share(unit, List.of(), 2, 2000);
            if (Boolean.getBoolean("shimwright.figures")) {
                System.out.printf(
                        Locale.ROOT,
                        "| %s | %.0f, %.0f | %.0f, %.0f | %s | %.2f |%n",
                        unit.variant(),
                        alone.seconds() / 60,
                        alone.bound() / 60,
                        two.seconds() / 60,
                        two.bound() / 60,
                        two.bounds(),
                        (System.nanoTime() - began) / 1e9);
            }
            double work = unit.type().steps().stream()
                    .filter(step -> Order.of(unit, Map.of()).steps().containsKey(step.id()))
                    .mapToDouble(Step::duration)
                    .sum();
            assertThat(alone.seconds()).isGreaterThan(work);
            assertThat(two.seconds()).isLessThan(0.8 * alone.seconds()).isGreaterThan(0.5 * alone.seconds());
            assertThat(two.gap()).isLessThan(0.05 * two.seconds());
            assertThat(two.bounds().get(Why.WORK)).isGreaterThan(work / 2);
            assertThat(two.bounds().get(Why.CASE)).isLessThanOrEqualTo(two.bound());
            // demo source: differential in, out and in again, rear cover, bellhousing; the pinion case by the hoist
            assertThat(alone.fetched())
                    .extracting(Step::id)
                    .containsExactlyInAnyOrder("T07", "T11", "D03", "D07", "D08", "R03", "B02");
            assertThat(two.fetched()).isEmpty();
        }
    }

    @Test
    void theRestIsSharedFromWhereverTheBuildStands() {
        List<String> whole =
                plan(DemoUnit.A, List.of()).ahead().stream().map(Step::id).toList();
        for (int done : List.of(20, 45, whole.indexOf("R02") + 1, 80, whole.size() - 1, whole.size())) {
            List<String> before = whole.subList(0, done);
            CrewPlan alone = share(DemoUnit.A, before, 1, 50);
            CrewPlan two = share(DemoUnit.A, before, 2, 200);
            assertThat(two.seconds()).isLessThanOrEqualTo(alone.seconds());
            assertThat(two.parts().stream().filter(part -> part.step().isPresent()))
                    .hasSize(whole.size() - done);
        }
    }

    @Test
    void itIsTheSameEachTimeAndStopsWhenTold() {
        assertThat(share(DemoUnit.B, List.of(), 2, 100)).isEqualTo(share(DemoUnit.B, List.of(), 2, 100));
        Outcome<CrewPlan> stopped = People.share(
                DemoUnit.B,
                Map.of(),
                BuildState.of(Set.of()),
                plan(DemoUnit.B, List.of()),
                2,
                new ConflictLimit(1_000_000),
                () -> true);
        stopped.refusals().forEach(refusal -> assertThat(refusal.fact()).contains("not proven"));
    }

    @Test
    void aWindowThatCannotBeKeptAnyMoreIsLeftOutAsInThePlan() {
        List<String> whole =
                plan(DemoUnit.A, List.of()).ahead().stream().map(Step::id).toList();
        List<String> done = whole.subList(0, whole.indexOf("R02") + 1);
        BuildState late = new BuildState(done, true, Map.of("R02", 3600.0), Map.of());
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), late, SearchBudget.page(), SearchObserver.nobody(), List.of())
                .orElseThrow();
        assertThat(plan.late()).hasSize(1);
        CrewPlan two = People.share(DemoUnit.A, Map.of(), late, plan, 2, new ConflictLimit(100), () -> false)
                .orElseThrow();
        assertThat(PeopleCheck.faults(DemoUnit.A, Order.of(DemoUnit.A, Map.of()), two, Set.copyOf(done)))
                .isEmpty();
    }
}
