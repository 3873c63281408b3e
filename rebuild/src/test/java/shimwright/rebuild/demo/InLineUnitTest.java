package shimwright.rebuild.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.sheet.JobSheets;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** The second invented unit, as unlike the first as we could make it, from its file to its hand-back. */
class InLineUnitTest {
    static final List<String> GAUGES = List.of(
            "PLUNGE | plunge indicator | 0.01 | 0.005 | 0.003 | 10",
            "DEPTH | depth micrometer | 0.01 | 0.004 | 0 | 100",
            "MIKE | micrometer | 0.001 | 0.003 | 0 | 100",
            "BLADES | feeler blades | 0.01 | 0.005 | 0 | 1");

    static List<String> drawer() {
        List<String> pieces = new ArrayList<>();
        fill(pieces, "RT71", 200, 700, 25);
        fill(pieces, "CS61", 150, 700, 25);
        fill(pieces, "MR46", 2300, 2550, 20);
        fill(pieces, "TW50", 1800, 2400, 50);
        return pieces;
    }

    /** Pieces of a family in steps of micrometers, each a little off its stamp. */
    private static void fill(List<String> pieces, String family, int from, int to, int step) {
        for (int i = 0, t = from; t <= to; i++, t += step) {
            String size = String.format(Locale.ROOT, "%.3f", (t + i % 3 - 1) / 1000.0);
            pieces.add(family.toLowerCase(Locale.ROOT) + "-" + i + " " + family + " "
                    + String.format(Locale.ROOT, "%.2f", t / 1000.0) + " " + size + " " + size + " " + size);
        }
    }

    private static DemoWorkbench open(Unit unit) {
        DemoWorkbench bench = new DemoWorkbench(unit, GAUGES, drawer());
        boolean isShort = unit.variant().equals("S");
        Map<String, String> tales = new LinkedHashMap<>();
        tales.put("I2", isShort ? "open, splined shaft inside a bush" : "flange with four holes and one nut");
        tales.put("I3", isShort ? "26" : "30");
        tales.put("I4", isShort ? "7.8" : "8.4");
        bench.keep(new Entry.JobOpened(
                "H-12",
                unit.type().id(),
                unit.variant(),
                "the quarry",
                List.of("growls in all but top"),
                tales,
                "",
                ""));
        return bench;
    }

    @Test
    void theFileIsSound() {
        assertThat(UnitFiles.read("hb5", DemoUnit.inLineText()).problems()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"S", "L"})
    void thePlanIsProvenAndEverythingIsInAtTheEnd(String variant) {
        Unit unit = DemoUnit.inLine().resolve(variant);
        Plan plan = Planner.lay(unit, Map.of(), Set.of()).orElseThrow();
        assertThat(plan.proven()).as("gap %s", plan.gap()).isTrue();
        Set<String> in = unit.itemsIn(plan.ahead().stream().map(s -> s.id()).toList());
        assertThat(in).containsAll(unit.type().items().stream().map(Item::id).toList());
    }

    /** Whatever the true sizes are, within what the drawer spans, every clearance is right at the end. */
    @ParameterizedTest
    @CsvSource({"S, 0.043, 0.462, 0.501, 0.203", "S, 0.005, 0.331, 0.402, 0.061", "L, 0.112, 0.713, 0.688, 0.377"})
    void aJobIsBuiltToItsHandBackWithEveryClearanceRight(
            String variant, double mid, double counter, double retainer, double fifth) {
        Unit unit = DemoUnit.inLine().resolve(variant);
        DemoWorkbench bench = open(unit);
        HiddenTruth truth = new HiddenTruth(
                bench,
                Map.of(
                        "mid", (2.42 + mid) * 1e-3,
                        "cs", counter * 1e-3,
                        "ret", retainer * 1e-3,
                        "fl5", (2.00 + fifth) * 1e-3));
        truth.build();
        assertThat(bench.job().closed()).isTrue();
        assertThat(bench.job().stepsDone()).hasSize(unit.type().steps().size());
        unit.type()
                .clearances()
                .forEach(c -> assertThat(truth.play(c.id())).as(c.id()).isBetween(c.lower(), c.upper()));
    }

    /** Each joint opens its sheets at the steps where it goes together; what was read at a hold point stands in them. */
    @ParameterizedTest
    @CsvSource({"S, 8", "L, 10"})
    void theJointsOpenTheirSheetsAtTheirSteps(String variant, int joints) {
        Unit unit = DemoUnit.inLine().resolve(variant);
        DemoWorkbench bench = open(unit);
        bench.keep(new Entry.CheckRead(
                "P02",
                "Q1",
                "counter_seat",
                List.of(0.05197, 0.05197, 0.05197),
                Kind.LENGTH,
                false,
                Verdict.IN,
                "within",
                List.of()));
        JobSheets sheets = JobSheets.of(bench.lying(), UnitSystem.METRIC);
        assertThat(unit.type().joints()).hasSize(joints).allSatisfy(joint -> {
            assertThat(joint.steps()).isNotEmpty();
            joint.steps()
                    .forEach(step -> assertThat(sheets.at(unit.findStep(step).orElseThrow()))
                            .anyMatch(sheet -> sheet.about().equals("joint " + joint.id())
                                    && sheet.sheet().name().equals("interference")));
        });
        assertThat(String.valueOf(sheets.find("joint front-cup", "interference")
                        .orElseThrow()
                        .typed()))
                .contains("51.97");
    }
}
