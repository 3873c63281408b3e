package shimwright.rebuild.plan.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.evening.Tonight.NotTonight;
import shimwright.rebuild.plan.evening.Tonight.Timed;
import shimwright.rebuild.plan.evening.Tonight.Why;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Step;

/** Evenings of the demo unit: common practice, no source. */
class EveningPlanTest {
    private static final Order ORDER = Order.of(DemoUnit.A, Map.of());

    private static Plan plan(BuildState present) {
        return Planner.lay(DemoUnit.A, Map.of(), present, SearchBudget.page(), SearchObserver.nobody(), List.of())
                .orElseThrow();
    }

    private static Tonight tonight(BuildState present, double minutes, int persons) {
        return EveningPlan.tonight(DemoUnit.A, Map.of(), present, plan(present), new Evening(60 * minutes, persons));
    }

    private static List<String> steps(Tonight tonight) {
        return tonight.steps().stream().map(timed -> timed.step().id()).toList();
    }

    /** Evening after evening to the last step: possible, in time, every window opened is closed the same evening. */
    @Test
    void eveningsOfFourHoursEndTheJobAndNoWindowRunsOverNight() {
        List<String> done = new ArrayList<>();
        Map<String, Double> ago = new HashMap<>();
        int evenings = 0;
        while (done.size() < ORDER.steps().size()) {
            ago.replaceAll((id, seconds) -> seconds + 86_400);
            Tonight tonight = tonight(new BuildState(done, true, ago, Map.of()), 240, 2);
            assertThat(++evenings).as("evenings, at " + done.size()).isLessThan(12);
            assertThat(tonight.left()).isNotNegative();
            double now = 0;
            for (Timed timed : tonight.steps()) {
                assertThat(timed.begins()).isEqualTo(now);
                assertThat(ORDER.waitsFor(timed.step().id(), done)).isEmpty();
                done.add(timed.step().id());
                ago.put(timed.step().id(), 0.0);
                now = timed.ends();
            }
            DemoUnit.A
                    .type()
                    .windows()
                    .forEach(w -> assertThat(
                                    done.contains(w.opens()) && ORDER.steps().containsKey(w.closes()))
                            .as(w.id() + " is not open at the end of evening " + done.size())
                            .isEqualTo(
                                    done.contains(w.closes()) && ORDER.steps().containsKey(w.closes())));
        }
    }

    @Test
    void aWindowThatDoesNotFitIsNotOpened() {
        List<String> done = new ArrayList<>(ORDER.leadingTo("R02"));
        Tonight tonight = tonight(BuildState.inOrder(done), 20, 2);
        assertThat(steps(tonight)).doesNotContain("R02");
        assertThat(tonight.notTonight())
                .filteredOn(n -> n.step().id().equals("R02"))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.why()).isEqualTo(Why.WINDOW);
                    assertThat(n.words()).contains("closed by R04").contains("20 min are left");
                });
        List<String> opened = new ArrayList<>(done);
        opened.add("R02");
        assertThat(steps(tonight(BuildState.inOrder(opened), 5, 2))).startsWith("R03", "R04");
    }

    @Test
    void whatIsAwaitedIsPassedOverAndTheRestGoesOn() {
        List<String> first = plan(BuildState.inOrder(List.of())).ahead().stream()
                .map(Step::id)
                .toList();
        String awaited = first.get(4);
        BuildState present = new BuildState(first.subList(0, 4), true, Map.of(), Map.of(awaited, 3 * 86_400.0));
        Tonight tonight = tonight(present, 180, 2);
        assertThat(steps(tonight)).isNotEmpty().doesNotContain(awaited);
        assertThat(tonight.notTonight())
                .filteredOn(n -> n.step().id().equals(awaited))
                .allSatisfy(n -> assertThat(n.words()).contains("3 days"));
    }

    @Test
    void whatNeedsTwoPeopleWaitsForThem() {
        for (NotTonight not : tonight(BuildState.inOrder(List.of()), 100_000, 1).notTonight()) {
            assertThat(not.why()).isIn(Why.HANDS, Why.BEHIND, Why.SPARED, Why.CURES);
        }
        assertThat(tonight(BuildState.inOrder(List.of()), 100_000, 1).notTonight())
                .extracting(NotTonight::why)
                .contains(Why.HANDS);
        assertThat(tonight(BuildState.inOrder(List.of()), 100_000, 2).notTonight())
                .extracting(NotTonight::why)
                .doesNotContain(Why.HANDS);
    }

    @Test
    void noTimeNothingBegun() {
        Tonight tonight = tonight(BuildState.inOrder(List.of()), 0, 1);
        assertThat(tonight.steps()).isEmpty();
        assertThat(tonight.stop()).isEmpty();
        assertThat(tonight.notTonight()).isNotEmpty();
    }
}
