package shimwright.rebuild.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** A clearance that is the difference of two lengths, each with its gauge; and gauges as they were when something was read. */
class DifferenceTest {
    private static final Unit UNIT = DemoUnit.inLine().resolve("S");
    private static final List<String> GAUGES = List.of(
            "PLUNGE | plunge indicator | 0.01 | 0.005 | 0.003 | 10",
            "DEPTH | depth micrometer | 0.01 | 0.004 | 0 | 100");

    private final DemoWorkbench bench = bench();

    private static DemoWorkbench bench() {
        DemoWorkbench bench = new DemoWorkbench(UNIT, GAUGES, List.of("rt-1 RT71 0.20 0.200 0.200 0.200"));
        bench.lay(new Entry.JobOpened("H-1", UNIT.type().id(), "S", "the quarry", List.of(), Map.of(), "", ""));
        bench.lay(new Entry.PackIn("ret", Phase.TRIAL, Map.of("RT", List.of(bench.piece("rt-1")))));
        return bench;
    }

    private Outcome<RoundRead> round(List<String> gauges, double first, double second) {
        return Decisions.round(
                bench.session("ret"), Phase.TRIAL, gauges, bench.shop(), List.of(first * MM, second * MM), "");
    }

    private Measured read() {
        for (double depth : new double[] {5.55, 5.56, 5.56}) {
            bench.lay(round(List.of("DEPTH", "PLUNGE"), depth, 5.01).orElseThrow());
        }
        return Objects.requireNonNull(bench.session("ret").trial().measured());
    }

    @Test
    void theFirstLessTheSecondCountsWithTheUncertaintyOfBothGauges() {
        Measured measured = read();
        assertThat(measured.settled()).isTrue();
        assertThat(measured.value()).isCloseTo((0.54 + 0.55 + 0.55) / 3 * MM, within(1e-10));
        // JCGM 100:2008 4.2.3, 4.3.7, 5.1.2, µm: s²/3, each gauge's step read twice, error limit and retrace
        double repeat = 2.0 / 3 * 10 * 10 / 2 / 3;
        double depth = 100.0 / 6 + 16.0 / 3;
        double plunge = 100.0 / 6 + 25.0 / 3 + 9.0 / 3;
        assertThat(measured.u()).isCloseTo(Math.sqrt(repeat + depth + plunge) * 1e-6, within(1e-9));
    }

    @Test
    void eachLengthHasItsGaugeAndItsRange() {
        RoundRead kept = round(List.of("DEPTH", "PLUNGE"), 5.55, 5.01).orElseThrow();
        assertThat(kept.gauge()).isEqualTo("DEPTH and PLUNGE");
        assertThat(kept.readWith()).extracting(Entry.GaugeThen::gauge).containsExactly("DEPTH", "PLUNGE");
        assertThat(bench.session("ret").inHand()).hasSize(2);
        // 40 lies within the depth micrometer and beyond the indicator
        assertThat(round(List.of("DEPTH", "DEPTH"), 40.5, 40.0).isOk()).isTrue();
        assertThat(round(List.of("DEPTH", "PLUNGE"), 40.5, 40.0).refusals())
                .extracting(Refusal::fact)
                .containsExactly("a reading lies outside what gauge PLUNGE can show");
        assertThat(round(List.of("DEPTH"), 5.55, 5.01).isOk()).isFalse();
        assertThat(round(List.of("DEPTH", "none"), 5.55, 5.01).isOk()).isFalse();
    }

    /** A round of which it is not said what the second length was read with proves nothing. */
    @Test
    void withoutTheSecondGaugeNothingIsMeasured() {
        bench.lay(new RoundRead("ret", Phase.TRIAL, "DEPTH", List.of(5.55 * MM, 5.01 * MM), ""));
        Reading trial = bench.session("ret").trial();
        assertThat(trial.measured()).isNull();
        assertThat(trial.refusals()).extracting(Refusal::fact).anyMatch(fact -> fact.contains("no data of this gauge"));
    }

    @Test
    void anotherFigureOfAGaugeMovesNothingThatWasReadBefore() {
        double before = read().u();
        bench.keepInShop(
                new Entry.GaugeAdded("DEPTH", "depth micrometer", Kind.LENGTH, 0.01 * MM, 0.02 * MM, 0, 0, 100 * MM));
        Measured after = Objects.requireNonNull(bench.session("ret").trial().measured());
        assertThat(after.u()).isEqualTo(before);
        // an entry of before is read with the gauge as it is now
        DemoWorkbench old = DemoWorkbench.open();
        old.packIn("c", Phase.TRIAL, "sI=d52-10");
        for (int i = 0; i < 3; i++) {
            old.lay(new RoundRead("c", Phase.TRIAL, "DI", List.of(0.24 * MM, 0.32 * MM), ""));
        }
        double was = Objects.requireNonNull(old.session("c").trial().measured()).u();
        old.keepInShop(new Entry.GaugeAdded("DI", "dial", Kind.LENGTH, 0.01 * MM, 0.02 * MM, 0, 0, 10 * MM));
        assertThat(Objects.requireNonNull(old.session("c").trial().measured()).u())
                .isGreaterThan(was);
    }

    /** Through the aluminum of the case and the iron of the plate, each with its own expansion and hot state. */
    @Test
    void aLoopThroughTwoCastingsGrowsByBoth() {
        Clearance stated = UNIT.clearance("cs");
        double case_ = 231.00e-3 * 21.8e-6 * 60;
        double plate = 31.40e-3 * 11e-6 * 65;
        double steel = (16.20 + 229.54 + 16.20 + 0.36) * 1e-3 * 11.5e-6 * 75;
        assertThat(stated.growth()).isCloseTo(case_ + plate - steel, within(2e-6));
        String text = DemoUnit.inLineText();
        String silent = text.replace(
                "    growth: 0.0984 mm\n    growth_note: The aluminum case grows more than the shaft, the iron plate"
                        + " less; 0.10 cold is 0.20 hot.\n",
                "");
        assertThat(silent).isNotEqualTo(text);
        UnitType type = UnitFiles.read("hb5.yaml", silent).outcome().orElseThrow();
        Clearance derived = type.resolve("S").clearance("cs");
        assertThat(derived.growth()).isCloseTo(case_ + plate - steel, within(1e-12));
        assertThat(derived.growthNote()).contains("their materials");
        assertThat(UnitFiles.read("hb5.yaml", text.replace("growth: 0.0984 mm", "growth: 0.1170 mm"))
                        .problems())
                .anySatisfy(problem -> assertThat(problem.fact()).contains("the materials of the loop give"));
    }
}
