package shimwright.rebuild.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.ActContext;
import shimwright.rebuild.act.ActResult;
import shimwright.rebuild.act.Acts;
import shimwright.rebuild.act.StripActs;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.Van7;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.plan.learn.AsFound;
import shimwright.rebuild.workbench.ShopFloor;

/** What is read before it comes apart is named by what ends it, held against its limits, and stands beside the same at the end. */
class BeforeAndAfterTest {
    private static final String PLAY = "input shaft end play";

    private static Outcome<ActResult> read(DemoWorkbench bench, String what, String play, String drag, String count) {
        return Acts.decide(
                bench.lying(),
                new StripActs.ReadAsFound(what, play, drag, count, ""),
                new ActContext(
                        new ShopFloor(bench.shop(), Map.of(), new LinkedHashSet<>()),
                        UnitSystem.METRIC,
                        bench.lying().now()));
    }

    private static String kept(DemoWorkbench bench, String what, String play, String drag, String count) {
        Entry.OfJob entry = (Entry.OfJob)
                read(bench, what, play, drag, count).orElseThrow().entries().get(0);
        bench.keep(entry);
        return ((Entry.Found) entry).outcome();
    }

    private static AsFound named(DemoWorkbench bench, String name) {
        return AsFound.of(DemoUnit.A, bench.job()).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Entry.TakenOff off(String gone, String item, Map<String, String> shims) {
        return new Entry.TakenOff(gone, List.of(item), "", List.of(), List.of(), "", "", "", "", shims, "");
    }

    @Test
    void theUnitNamesFloatsGapsTurnsAndDragsBesideItsClearances() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(AsFound.of(DemoUnit.A, bench.job()))
                .extracting(AsFound::name)
                .contains(PLAY, "crown wheel backlash", "pinion bearing preload, drag", "float of 1st wheel")
                .contains("gap of ring 5", "turning torque at the input, in neutral")
                .contains("4th, one flange held: input turns for 10 turns of the other")
                .doesNotContain("turns of the input for ten of the output, gear by gear");
        assertThat(named(bench, "float of 5th driving gear".replace("of 5th", "of the 5th"))
                        .endedBy())
                .containsExactly("end_nut");
    }

    /** A reading ends with what ends it; one that was never taken is missed, and the record says so. */
    @Test
    void whatIsOffEndsItsReadings() {
        DemoWorkbench bench = DemoWorkbench.open();
        kept(bench, "float of the 5th driving gear", "0.34", "", "");
        bench.keep(off("end nut", "end_nut", Map.of()));
        assertThat(named(bench, "float of the 5th driving gear").missed()).isFalse();
        assertThat(named(bench, "gap of ring 5").missed()).isTrue();
        assertThat(BeforeAndAfter.of(bench.job(), DemoUnit.A))
                .extracting(row -> row.reading().name())
                .contains("gap of ring 5", "float of the 5th driving gear");
    }

    /** 0.31 is 0.23 over the upper limit of 0.08; 15.4 turns are within; half a turn out is another box. */
    @Test
    void aReadingIsHeldAgainstItsLimitsAtOnce() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(kept(bench, PLAY, "0.30 0.31 0.32", "", "")).startsWith("0.230 mm over 0.080 mm");
        assertThat(kept(bench, "5th, one flange held: input turns for 10 turns of the other", "", "", "15.4"))
                .isEqualTo("Within limits as found.");
        assertThat(kept(bench, "gap of ring 3", "0.61; 0.60; 0.59", "", "")).startsWith("0.350 mm under 0.950 mm");
        assertThat(read(bench, PLAY, "0.31", "0.5", "").refusals())
                .extracting(Refusal::key)
                .containsExactly("drag");
        assertThat(read(bench, PLAY, "31", "", "").refusals())
                .extracting(Refusal::key)
                .containsExactly("play");
        assertThat(read(bench, PLAY, "0.31 31", "", "").refusals())
                .extracting(Refusal::key)
                .containsExactly("play");
    }

    /** The change of the play is that of the shims and a rest; the three add up. */
    @Test
    void theRecordShowsItBesideTheSameAtTheEndAndWhatChanged() {
        DemoWorkbench bench = Van7.before("");
        kept(bench, PLAY, "0.31", "", "");
        kept(bench, "pinion bearing preload, drag", "", "0.35", "");
        kept(bench, "gap of ring 3", "0.62", "", "");
        bench.keep(off("shim behind the input rear cup", "sI", Map.of("sizes", "0.95 mm")));
        List<BeforeAndAfter> rows = HandBackRecord.of(bench.job(), DemoUnit.A).asFound();
        BeforeAndAfter play = rows.stream()
                .filter(row -> row.reading().name().equals(PLAY))
                .findFirst()
                .orElseThrow();
        double now =
                Objects.requireNonNull(bench.job().accepted().get("c")).what().value();
        double pack = bench.job().packIn("sI").orElseThrow().what().pieces().stream()
                .mapToDouble(Entry.PieceIn::thickness)
                .sum();
        assertThat(play.now()).hasValueSatisfying(value -> assertThat(value).isCloseTo(now, within(1e-12)));
        assertThat(play.shims().orElseThrow().now()).isCloseTo(pack, within(1e-12));
        assertThat(play.changed(UnitSystem.METRIC))
                .contains(" by shims (0.950 mm found, ", " by new parts, seats and wear");
        assertThat(play.says(DemoUnit.A.clearance("c"), UnitSystem.METRIC))
                .isEqualTo(
                        "As found 0.310 mm: with the same parts a pack 0.260 mm thicker than the one found would have "
                                + "brought it to 0.050 mm.");
        assertThat(rows)
                .filteredOn(row -> row.reading().name().equals("gap of ring 3"))
                .singleElement()
                .satisfies(row -> assertThat(row.now()).isPresent());
        assertThat(rows)
                .filteredOn(row -> row.reading().name().equals("pinion bearing preload, drag"))
                .singleElement()
                .satisfies(row -> assertThat(row.now())
                        .hasValueSatisfying(value -> assertThat(value).isBetween(0.8, 1.9)));
        assertThat(HandBackRecord.of(bench.job(), DemoUnit.A).decisions())
                .noneMatch(decision -> decision.what().startsWith(AsFound.LEAD));
    }
}
