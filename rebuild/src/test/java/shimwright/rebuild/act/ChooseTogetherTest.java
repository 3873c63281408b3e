package shimwright.rebuild.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.Van7;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.workbench.ShopFloor;

/** Packs of clearances that share shims are chosen by one act, and its rules see it as a whole. */
class ChooseTogetherTest {
    private static final Map<String, String> FIRST =
            Map.of("sP", "d80-11", "SP", "d38-03", "sL", "d80-16", "sR", "d80-13");

    private static Outcome<ActResult> choose(DemoWorkbench bench, Map<String, String> at) {
        ShopFloor floor = new ShopFloor(bench.shop(), Map.of(), new LinkedHashSet<>());
        return Acts.decide(
                bench.lying(),
                new ClearanceActs.ChooseTogether("d", at, "for the test"),
                new ActContext(floor, UnitSystem.METRIC, bench.lying().now()));
    }

    @Test
    void twoPlacesSwapTheirPieces() {
        DemoWorkbench bench = Van7.before("J01");
        choose(bench, FIRST).orElseThrow().entries().forEach(entry -> bench.keep((Entry.OfJob) entry));
        Map<String, String> swapped = Map.of("sP", "d80-11", "SP", "d38-03", "sL", "d80-13", "sR", "d80-16");
        assertThat(choose(bench, swapped).refusals()).isEmpty();
    }

    @Test
    void onePieceIsNotTakenTwice() {
        DemoWorkbench bench = Van7.before("J01");
        choose(bench, FIRST).orElseThrow().entries().forEach(entry -> bench.keep((Entry.OfJob) entry));
        Map<String, String> twice = Map.of("sP", "d80-11", "SP", "d38-03", "sL", "d80-13", "sR", "d80-13");
        assertThat(choose(bench, twice).refusals())
                .extracting(Refusal::fact)
                .containsAnyElementsOf(List.of("it is chosen for two places"));
        // alone, the other place holds it still
        assertThat(Acts.decide(
                                bench.lying(),
                                new ClearanceActs.ChoosePack("d", "d80-16", "for the test"),
                                new ActContext(
                                        new ShopFloor(bench.shop(), Map.of(), new LinkedHashSet<>()),
                                        UnitSystem.METRIC,
                                        bench.lying().now()))
                        .refusals())
                .isNotEmpty();
    }
}
