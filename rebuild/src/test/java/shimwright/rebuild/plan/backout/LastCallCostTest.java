package shimwright.rebuild.plan.backout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.LastCall.Call;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.backout.LastCallCost.Jump;
import shimwright.rebuild.plan.backout.Target.OfItem;
import shimwright.rebuild.plan.backout.Target.Want;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

class LastCallCostTest {
    private static final Unit A = DemoUnit.A;

    private static final List<String> PLAN = Planner.lay(A, Map.of(), Set.of()).orElseThrow().ahead().stream()
            .map(Step::id)
            .toList();

    private static LastCallCost before(String step) {
        return LastCallCost.by(A, Map.of(), PLAN.subList(0, PLAN.indexOf(step)), step)
                .orElseThrow();
    }

    @Test
    void theSelectorBoxShutsTheWindowOnTheIdler() {
        LastCallCost shut = before("X01");
        assertThat(shut.jumps().get(0).item().id()).isIn("idler", "idler_shaft", "reverse_bracket");
        assertThat(shut.jumps())
                .filteredOn(Jump::lost)
                .extracting(jump -> jump.item().id())
                .contains("idler", "reverse_bracket");
        // demo source B19 and R06: the float is read through the window before the box is on
        assertThat(shut.calls()).extracting(call -> call.step().id()).contains("R06");
        assertThat(shut.losses()).extracting(Loss::what).containsExactly("silicone of the selector box");
    }

    @Test
    void theStakeMakesTheStackDearerByANut() {
        LastCallCost shut = before("G10");
        assertThat(shut.calls()).extracting(Call::measured).containsExactly(true);
        assertThat(shut.jumps()).extracting(jump -> jump.item().id()).contains("stack_nut", "wheel_1", "W0");
        assertThat(shut.losses())
                .singleElement()
                .satisfies(loss -> assertThat(loss.part()).isEqualTo("74-3031"));
        Step stake = A.step("G10");
        assertThat(shut.jumps())
                .allSatisfy(jump ->
                        assertThat(jump.by()).isCloseTo((stake.undoTime() + stake.duration()) / 60, within(1e-9)));
    }

    @Test
    void aStepThatShutsNothingInHasNoJumpsAndAnUnknownOneIsRefused() {
        LastCallCost first = LastCallCost.by(A, Map.of(), List.of(), "P01").orElseThrow();
        assertThat(first.jumps()).isEmpty();
        assertThat(first.losses()).isEmpty();
        assertThat(LastCallCost.by(A, Map.of(), List.of(), "Z1").refusals()).hasSize(1);
        // left out on this side of the choice
        assertThat(LastCallCost.by(A, Map.of("O1", "late"), List.of(), "D08").isOk())
                .isFalse();
    }

    @Property(tries = 30)
    void everyJumpIsTheDifferenceOfTwoBackOuts(@ForAll @IntRange(max = 88) int at) {
        List<String> now = PLAN.subList(0, at);
        List<String> then = new ArrayList<>(now);
        then.add(PLAN.get(at));
        LastCallCost shut = LastCallCost.by(A, Map.of(), now, PLAN.get(at)).orElseThrow();
        for (Jump jump : shut.jumps()) {
            OfItem target = new OfItem(jump.item().id(), Want.REACH);
            BackOut before = BackOut.to(A, Map.of(), now, target).orElseThrow();
            BackOut after = BackOut.to(A, Map.of(), then, target).orElseThrow();
            assertThat(jump.before()).isCloseTo(before.undoMinutes() + before.redoMinutes(), within(1e-9));
            assertThat(jump.after()).isCloseTo(after.undoMinutes() + after.redoMinutes(), within(1e-9));
            assertThat(jump.by()).isPositive();
            assertThat(jump.lost()).isEqualTo(before.free() && !after.free());
        }
    }
}
