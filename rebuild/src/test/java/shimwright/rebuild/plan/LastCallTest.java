package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.LastCall.Call;
import shimwright.rebuild.unit.model.Step;

/** What a step shuts in, by the reasons of the demo source. */
class LastCallTest {
    private final Order order = Order.of(DemoUnit.A, Map.of());

    @Test
    void theRearCoverShutsInInterlockIdlerAndDetentPlate() {
        // R02 after S07: M7, S08: B5, S06A: B15; G11 and R01 are parts of it, not shut in
        assertThat(LastCall.at(order, "R02"))
                .containsExactlyInAnyOrder(call("S07", true), call("S08", false), call("S06A", false));
    }

    private static Call call(String step, boolean measured) {
        return new Call(DemoUnit.A.step(step), measured);
    }

    @Test
    void theStakeIsTheLastCallForTheFloats() {
        assertThat(LastCall.at(order, "G10")).containsExactly(call("G09", true));
    }

    @Test
    void whatIsLeftOutOfThisBuildIsNotNamed() {
        Order late = Order.of(DemoUnit.A, Map.of("O1", "late"));
        assertThat(LastCall.at(late, "D09A"))
                .extracting(Call::step)
                .extracting(Step::id)
                .doesNotContain("D08");
        assertThat(LastCall.at(order, "D09A"))
                .extracting(Call::step)
                .extracting(Step::id)
                .contains("D08");
    }

    @Test
    void aStepThatShutsNothingInHasNone() {
        assertThat(LastCall.at(order, "P01")).isEmpty();
        assertThat(LastCall.at(order, "no such step")).isEmpty();
    }
}
