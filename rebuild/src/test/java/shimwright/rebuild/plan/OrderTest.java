package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;

class OrderTest {
    private final Order usual = Order.of(DemoUnit.A, Map.of());

    @Test
    void theUsualSideHoldsWhereNothingIsChosen() {
        assertThat(usual).isEqualTo(Order.of(DemoUnit.A, Map.of("O1", "early", "O4", "last")));
        // O1 early of the demo source: D06 before G00
        assertThat(usual.before().get("G00")).containsKeys("D06", "F03", "D07");
    }

    @Test
    void aSideAddsDropsAndLeavesOut() {
        Order late = Order.of(DemoUnit.A, Map.of("O1", "late"));
        assertThat(late.steps()).doesNotContainKeys("D04", "D07", "D08");
        assertThat(late.before().get("D03")).containsEntry("Q07", Why.HABIT);
        assertThat(late.before().get("G00")).doesNotContainKeys("D06", "D03", "D07");
        // whoever waited for D08 waits for what D08 waited for
        assertThat(late.before().get("D10")).containsKey("G08");
        Order once = Order.of(DemoUnit.A, Map.of("O5", "once"));
        assertThat(once.before().get("K01")).containsKey("J01");
        assertThat(once.before().get("F01")).doesNotContainKey("K03");
    }

    @Test
    void everyEdgeIsThatOfTheFile() {
        Map<String, Set<String>> edges = PlanCheck.edges(DemoUnit.A, Map.of("O1", "late"));
        Order late = Order.of(DemoUnit.A, Map.of("O1", "late"));
        assertThat(late.before().keySet()).isEqualTo(edges.keySet());
        late.before().forEach((step, before) -> assertThat(before.keySet()).isEqualTo(edges.get(step)));
    }

    @Test
    void aStepWaitsForWhatIsNotDoneInFileOrderWithWhy() {
        Map<Step, Why> waits = usual.waitsFor("K01", Set.of("P02"));
        assertThat(waits).containsExactly(Map.entry(DemoUnit.A.step("P04"), Why.MEASURE_FIRST));
        assertThat(usual.waitsFor("K01", Set.of())).hasSize(2);
        assertThat(usual.waitsFor("K01", Set.of("P02", "P04"))).isEmpty();
        assertThat(usual.waitsFor("no such step", Set.of())).isEmpty();
    }

    @Test
    void freeIsWhatWaitsForNothing() {
        assertThat(usual.free("P01", Set.of())).isTrue();
        assertThat(usual.free("P02", Set.of())).isFalse();
        assertThat(usual.free("P02", Set.of("P01"))).isTrue();
    }

    @Test
    void whoWaitsForAStepIsNamed() {
        assertThat(usual.waiting("F03")).extracting(Step::id).containsExactly("F04", "D04", "G00");
    }

    @Test
    void leadingToIsEverythingBeforeAStepAndNotItself() {
        assertThat(usual.leadingTo("K03")).containsExactlyInAnyOrder("K02", "K01", "P02", "P01", "P04", "P03");
        assertThat(usual.leadingTo("P01")).isEmpty();
        assertThat(usual.leadingTo("X07")).hasSize(94);
    }
}
