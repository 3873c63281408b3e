package shimwright.rebuild.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.rules.Rules;

/** What was found and is not surely within its limit waits for a verdict; what is found later asks for another. */
class FindingsTest {
    private static void found(DemoWorkbench bench, String verdict) {
        bench.keep(new Entry.Found(
                "C14",
                List.of("rail_34"),
                "rail diameter",
                List.of(0.01395),
                Kind.LENGTH,
                "",
                "",
                List.of(),
                Map.of("verdict", verdict)));
    }

    private static void decided(DemoWorkbench bench, Decision decision) {
        bench.keep(new Entry.Judged("C14", List.of("rail_34"), "rail diameter", decision, "looked at again", ""));
    }

    private static List<String> open(DemoWorkbench bench) {
        return Rules.check(bench.lying(), new Entry.HandedBack("12 months", "", "")).stream()
                .filter(r -> r.place().equals("rail diameter"))
                .map(Refusal::sentence)
                .toList();
    }

    @Test
    void whatIsWithinItsLimitNeedsNoVerdict() {
        DemoWorkbench bench = DemoWorkbench.open();
        found(bench, "IN");
        assertThat(open(bench)).isEmpty();
    }

    @Test
    void whatIsNotProvenIsDecidedBeforeHandBack() {
        DemoWorkbench bench = DemoWorkbench.open();
        found(bench, "NOT_PROVEN");
        assertThat(open(bench))
                .containsExactly("rail diameter: it was not proven within its limit and nothing was decided since. "
                        + "Say under Inspect what becomes of it.");
        decided(bench, Decision.REUSE);
        assertThat(open(bench)).isEmpty();
        assertThat(OverruledAdvice.of(bench.lying().job()))
                .anyMatch(said -> said.contains("although not proven within its limit: looked at again"));
    }

    @Test
    void aLaterFindingOutsideTheLimitAsksForAnotherVerdict() {
        DemoWorkbench bench = DemoWorkbench.open();
        found(bench, "IN");
        decided(bench, Decision.REUSE);
        found(bench, "OUT");
        assertThat(open(bench)).singleElement().asString().contains("found outside its limit");
        decided(bench, Decision.REPLACE);
        found(bench, "IN");
        assertThat(open(bench)).isEmpty();
    }
}
