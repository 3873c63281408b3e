package shimwright.rebuild.plan.learn;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.learn.StripDownPlayer.Learned;
import shimwright.rebuild.unit.model.Unit;

/**
 * A strip-down writes the plan: a shipped unit comes apart against its true order, and a person who knows only the names of its parts
 * says of each what was in its way, as the file has it. The order learned is compared with that of the file, pair by pair.
 */
class StripDownPlanTest {
    private static final Unit IN_LINE = DemoUnit.inLine().resolve("S");

    private static void is(Learned learned, Integer... figures) {
        assertThat(learned.freed()).isEmpty();
        assertThat(List.of(
                        learned.things(),
                        learned.pairs(),
                        learned.right(),
                        learned.unseen(),
                        learned.taps(),
                        learned.most()))
                .as(
                        "things, pairs, right, bound by a reading or heat alone and not seen, taps, most taps besides that on the part")
                .isEqualTo(List.of(figures));
    }

    @Test
    void whoNamesAllThatWasInTheWayLearnsTheOrderOfTheFile() {
        Learned transaxle = new StripDownPlayer(DemoUnit.A).learn(true);
        is(transaxle, 47, 2162, 2160, 273, 150, 7);
        // the file puts the seal of the flange into the differential's cover and brings both in as one
        assertThat(transaxle.bound()).containsExactlyInAnyOrder("D02 before D09A", "D02 before D08");
    }

    @Test
    void whoNamesAllOfTheBoxInLineLearnsTheOrderOfTheFile() {
        Learned inLine = new StripDownPlayer(IN_LINE).learn(true);
        is(inLine, 28, 756, 756, 114, 90, 6);
        assertThat(inLine.bound()).isEmpty();
    }

    @Test
    void oneAnswerAThingFreesNothingThatIsNotFree() {
        is(new StripDownPlayer(DemoUnit.A).learn(false), 47, 2162, 2023, 75, 82, 3);
    }

    @Test
    void oneAnswerAThingOfTheBoxInLine() {
        is(new StripDownPlayer(IN_LINE).learn(false), 28, 756, 708, 26, 51, 2);
    }
}
