package shimwright.rebuild.reuse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.backout.BackOut;
import shimwright.rebuild.plan.backout.Target;
import shimwright.rebuild.reuse.Weighing.Option;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.PinnedUnit;
import shimwright.rebuild.workbench.Workbench;

/**
 * What stands beside a verdict. The sums are worked out by hand beside each; the normal distribution from any printed table (Φ(1.05) =
 * 0.8531, Φ(1.06) = 0.8554). The unit is invented, its limits with it.
 */
class WeighingTest {
    private static final Unit A = DemoUnit.A;
    private static final JudgedPiece RAIL = new JudgedPiece("rail_12", "rail 1/2", List.of("rail_12"));

    private final EntryStream log = EntryStream.of(DemoWorkbench.opening());

    private Weighing weigh(String rate) {
        Shop shop = new Shop(
                Map.of(), Map.of(), Map.of(), rate.isEmpty() ? Map.of() : Map.of("rate", rate), Map.of(), Map.of());
        Workbench bench = new Workbench(
                log.job(), new PinnedUnit("a".repeat(64), DemoUnit.type()), shop, EntryStream.BEGIN, ZoneOffset.UTC);
        return Weighing.of(bench, Optional.of(A.wearLimit("C14")), "C14", RAIL);
    }

    private static Option of(Weighing weighing, Decision decision) {
        return weighing.options().stream()
                .filter(option -> option.decision() == decision)
                .findFirst()
                .orElseThrow();
    }

    private void measured(boolean withGauge) {
        Working working = new Working();
        List<Line> lines = new ArrayList<>();
        working.line("deciding reading", "smallest of the readings", 13.946e-3, Kind.LENGTH);
        if (withGauge) {
            working.line("standard uncertainty", "step, error limit and repeatability", 2e-6, Kind.LENGTH);
        }
        lines.addAll(working.worked("").working());
        log.add(new Entry.Found(
                "C14",
                List.of(),
                "rail diameter",
                List.of(13.946e-3),
                Kind.LENGTH,
                "",
                "",
                lines,
                Map.of("verdict", "IN"),
                "rail_12"));
    }

    private void stakes() {
        log.add(new Entry.Weighed("", "", Map.of("distance", 60_000.0, "scatter", 0.3, "vehicle", 14_400.0), ""));
    }

    private void said(Map<String, Double> numbers) {
        log.add(new Entry.Weighed("C14", "rail_12", numbers, "asked the agent"));
    }

    @Test
    void whatNobodySaidIsNamedAndNothingIsMadeUp() {
        Weighing weighing = weigh("");
        assertThat(weighing.comingBack()).isEmpty();
        assertThat(weighing.evens()).isEmpty();
        assertThat(weighing.cheapest()).isEmpty();
        assertThat(weighing.options()).allMatch(option -> option.total().isEmpty());
        assertThat(weighing.say())
                .contains(
                        "What coming back costs is not known.",
                        "out of the vehicle",
                        "the shop's rate an hour",
                        "price");
        assertThat(of(weighing, Decision.REUSE).unknown())
                .containsExactly("chance that it fails within the promised life: nothing was measured on it");
        assertThat(weighing.kept()).doesNotContainKey("least");
    }

    @Test
    void theChanceComesFromItsWearWithTheDoubtOfReadingAndRate() {
        measured(false);
        assertThat(of(weigh("60"), Decision.REUSE).unknown().get(0)).contains("say how far it is to last");
        stakes();
        assertThat(of(weigh("60"), Decision.REUSE).unknown().get(0)).contains("no gauge is named");
        measured(true);
        // 13.946 − 0.006 × 0.6 = 13.9424; √(0.002² + (0.0036 × 0.3)²) = 0.002273; z = 1.056
        assertThat(of(weigh("60"), Decision.REUSE).chance().orElseThrow()).isCloseTo(1 - 0.8545, within(0.0006));
        said(Map.of("chance.reuse", 0.5));
        assertThat(of(weigh("60"), Decision.REUSE).chance()).hasValue(0.5);
    }

    @Test
    void comingBackIsTheWayBackOfThePlanAndTheVehicle() {
        stakes();
        said(Map.of(
                "chance.reuse",
                0.2,
                "chance.replace",
                0.01,
                "price.replace",
                35.0,
                "days.replace",
                0.0,
                "minutes.replace",
                300.0));
        Weighing weighing = weigh("60 EUR");
        BackOut back = BackOut.to(
                        A,
                        Map.of(),
                        List.copyOf(Order.of(A, Map.of()).steps().keySet()),
                        new Target.OfItem("rail_12", Target.Want.RENEW))
                .orElseThrow();
        // at 60 an hour a minute costs 1
        double money = back.minutes() + 240 + weighing.back().parts();
        assertThat(weighing.comingBack().orElseThrow()).isCloseTo(money, within(1e-9));
        assertThat(of(weighing, Decision.REUSE).total().orElseThrow()).isCloseTo(0.2 * money, within(1e-9));
        assertThat(of(weighing, Decision.REPLACE).total().orElseThrow()).isCloseTo(40 + 0.01 * money, within(1e-9));
        assertThat(of(weighing, Decision.REWORK).total()).isEmpty();
        assertThat(weighing.cheapest()).map(Option::decision).contains(Decision.REPLACE);
        assertThat(weighing.kept()).containsEntry("least", "REPLACE");
        assertThat(weighing.working())
                .extracting(Line::symbol)
                .contains("coming back costs at least", "replace in all");
    }

    @Test
    void aDayThatNobodyPricedLeavesTheDelayOpen() {
        stakes();
        said(Map.of("price.replace", 35.0, "days.replace", 3.0, "minutes.replace", 0.0));
        assertThat(of(weigh("60"), Decision.REPLACE).unknown()).contains("what a day's delay costs");
        log.add(new Entry.Weighed("", "", Map.of("vehicle", 14_400.0, "day", 20.0), ""));
        assertThat(of(weigh("60"), Decision.REPLACE).now()).hasValue(35 + 3 * 20);
    }

    @Property(tries = 20)
    void atTheEvenChanceBothCostTheSame(@ForAll @DoubleRange(min = 1, max = 200) double price) {
        WeighingTest again = new WeighingTest();
        again.stakes();
        again.said(Map.of("price.replace", price, "days.replace", 0.0, "minutes.replace", 0.0, "chance.replace", 0.0));
        double even = again.weigh("60").evens().orElseThrow();
        again.said(Map.of(
                "price.replace",
                price,
                "days.replace",
                0.0,
                "minutes.replace",
                0.0,
                "chance.replace",
                0.0,
                "chance.reuse",
                even));
        Weighing weighing = again.weigh("60");
        assertThat(of(weighing, Decision.REUSE).total().orElseThrow())
                .isCloseTo(of(weighing, Decision.REPLACE).total().orElseThrow(), within(1e-9 * price));
    }

    @Test
    void whatRanInTogetherStaysTogether() {
        assertThat(RunTogether.of(A))
                .contains(
                        Set.of("hub_34", "slider_34"),
                        Set.of("hub_12", "slider_12"),
                        Set.of("hub_5", "slider_5"),
                        Set.of("crown", "pinion"),
                        Set.of("PH_cone", "PH_cup"))
                .noneMatch(set -> set.contains("needles_1"));
        log.add(new Entry.Judged(
                "C08", List.of(), "tips", Decision.REPLACE, "rounded", "", "slider_12", Map.of(), List.of()));
        assertThat(RunTogether.asked(A, log.job()))
                .extracting(RunTogether.Asked::sentence)
                .containsExactly(
                        "hub 1/2 runs with sliding sleeve 1/2 with the reverse teeth, which is to be replaced");
        log.add(new Entry.Judged("part", List.of(), "hub", Decision.REUSE, "tried", "", "hub_12", Map.of(), List.of()));
        assertThat(RunTogether.asked(A, log.job())).isEmpty();
        // thought over: the sleeve is judged again, and so the hub is asked for again
        log.add(new Entry.Judged(
                "C08", List.of(), "tips", Decision.REPLACE, "chipped", "", "slider_12", Map.of(), List.of()));
        assertThat(RunTogether.asked(A, log.job())).hasSize(1);
        // a cup that is renewed in any case is not asked for
        log.add(new Entry.Judged(
                "part", List.of(), "cone", Decision.REPLACE, "pitted", "", "PH_cone", Map.of(), List.of()));
        assertThat(RunTogether.asked(A, log.job())).hasSize(1);
    }
}
