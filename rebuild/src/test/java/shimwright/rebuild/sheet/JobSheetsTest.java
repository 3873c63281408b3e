package shimwright.rebuild.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Answer;
import shimwright.rebuild.act.ActContext;
import shimwright.rebuild.act.ActResult;
import shimwright.rebuild.act.Acts;
import shimwright.rebuild.act.SheetActs;
import shimwright.rebuild.clearance.DragAdvice;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.Van7;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Joint;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.workbench.ShopFloor;

/** The sheets of a job know what unit and job know, ask for what is missing, and are kept. */
class JobSheetsTest {
    private static final String HEAD_CONE = "joint head-cone";

    private static JobSheets sheets(DemoWorkbench bench) {
        return JobSheets.of(bench.lying(), UnitSystem.METRIC);
    }

    private static Joint joint(String id) {
        return DemoUnit.A.type().joints().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Outcome<ActResult> keep(
            DemoWorkbench bench, String about, String sheet, String step, Map<String, String> given) {
        return Acts.decide(
                bench.lying(),
                new SheetActs.KeepSheet(about, step, sheet, given),
                new ActContext(
                        new ShopFloor(bench.shop(), Map.of(), new LinkedHashSet<>()),
                        UnitSystem.METRIC,
                        bench.lying().now()));
    }

    private static void kept(DemoWorkbench bench, Outcome<ActResult> done) {
        done.orElseThrow().entries().forEach(entry -> bench.keep((Entry.OfJob) entry));
    }

    /** The interference is that of the very readings; heat, force and time follow and stand in the line of the step. */
    @Test
    void aJointSaysWhatTheMeasuredPartsNeed() {
        DemoWorkbench bench = Van7.before("F01");
        List<Double> seat =
                bench.job().check("P02", "head_seat").orElseThrow().what().values();
        List<Double> cup =
                bench.job().check("P04", "PH_outside").orElseThrow().what().values();
        double tightest = Collections.max(cup) - Collections.min(seat);
        JobSheet heat = sheets(bench).find("joint head-cup", "heat-to-fit").orElseThrow();
        assertThat(tightest).isPositive();
        assertThat(Objects.requireNonNull(heat.facts().get("interference")).text())
                .startsWith(String.format(java.util.Locale.ROOT, "%.4f", tightest * 1000)
                        .replaceAll("0+$", ""));
        Step step = DemoUnit.A.step("F01");
        assertThat(sheets(bench).advice(step)).singleElement().satisfies(advice -> {
            assertThat(advice.asks()).isEmpty();
            assertThat(advice.says())
                    .contains(
                            " tight: an interference fit.",
                            "Outer part to ",
                            " in the air until it grabs, about ",
                            " once it touches.")
                    .contains("By their classes from ", "at the press: above that stop and look, never over ");
        });
        Answer press = sheets(bench)
                .find("joint head-cup", "interference")
                .orElseThrow()
                .answer(UnitSystem.METRIC)
                .orElseThrow();
        assertThat(press.working()).isNotEmpty();
    }

    /** One fact is missing of the cone: the seat of the pinion, which nothing in the file reads. */
    @Test
    void whatIsMissingIsAskedOnceAndKnownToTheOtherSheets() {
        DemoWorkbench bench = Van7.before("T01");
        JobSheet press = sheets(bench).find(HEAD_CONE, "interference").orElseThrow();
        assertThat(press.asks(UnitSystem.METRIC)).hasSize(1).first().asString().startsWith("shaft diameter");
        assertThat(press.facts()).containsKeys("bore", "hubOutside", "length", "hub.material", "shaft.material");
        Map<String, String> given = new LinkedHashMap<>(press.typed());
        assertThat(keep(bench, HEAD_CONE, "interference", "T01", given).refusals())
                .extracting(Refusal::key)
                .containsExactly("given.diameter");
        given.put("diameter", "40.008, 40.010 mm");
        kept(bench, keep(bench, HEAD_CONE, "interference", "T01", given));
        JobSheet heat = sheets(bench).find(HEAD_CONE, "heat-to-fit").orElseThrow();
        assertThat(heat.asks(UnitSystem.METRIC)).isEmpty();
        assertThat(JointAdvice.of(bench.job(), DemoUnit.A, joint("head-cone"), UnitSystem.METRIC)
                        .says())
                .contains("Outer part to ", "stop and look, never over ");
        assertThat(Objects.requireNonNull(sheets(bench)
                                .find(HEAD_CONE, "interference")
                                .orElseThrow()
                                .facts()
                                .get("diameter"))
                        .from())
                .startsWith("typed by ");
    }

    @Test
    void whatIsKeptHoldsItsWorkingAndItsOriginsUntilItIsStruckOrKeptAgain() {
        DemoWorkbench bench = Van7.before("T01");
        Map<String, String> given = new LinkedHashMap<>(
                sheets(bench).find("fastener V4", "thread-strip").orElseThrow().typed());
        given.put("engagement", "14 mm");
        kept(bench, keep(bench, "fastener V4", "thread-strip", "", given));
        Entry.SheetWorked worked = Objects.requireNonNull(bench.job().worked().get("fastener V4/thread-strip"))
                .what();
        assertThat(worked.working()).extracting("symbol").contains("hole area", "safe load");
        assertThat(worked.results()).isNotEmpty();
        assertThat(worked.from()).containsEntry("engagement", "typed").containsEntry("diameter", "unit file");
        given.put("engagement", "12 mm");
        kept(bench, keep(bench, "fastener V4", "thread-strip", "", given));
        assertThat(bench.job().worked().get("fastener V4/thread-strip").what().given())
                .containsEntry("engagement", "12 mm");
        String last = bench.job().worked().get("fastener V4/thread-strip").id();
        bench.keep(new Entry.EntryStruck(last, "measured again"));
        assertThat(bench.job().worked().get("fastener V4/thread-strip").what().given())
                .containsEntry("engagement", "14 mm");
    }

    /** Thread, pitch, mark, torque and alloy from the file; only the length in engagement is nobody's yet. */
    @Test
    void aBoltBringsItsOwnData() {
        DemoWorkbench bench = Van7.before("T01");
        JobSheet strip = sheets(bench).find("fastener V4", "thread-strip").orElseThrow();
        assertThat(strip.typed())
                .containsEntry("diameter", "8 mm")
                .containsEntry("pitch", "1.25 mm")
                .containsEntry("strengthClass", "8.8")
                .containsEntry("torque", "20 N·m")
                .containsEntry("parent", "A380");
        assertThat(strip.asks(UnitSystem.METRIC)).containsExactly("length of thread in engagement");
        JobSheet nut = sheets(bench).find("fastener V8", "tightening").orElseThrow();
        assertThat(nut.typed()).containsEntry("diameter", "30 mm").containsEntry("pitch", "1.5 mm");
        assertThat(nut.says(UnitSystem.METRIC)).get().asString().contains("preload");
    }

    /** Every sheet that every step opens can be found again by its address, and none of them throws. */
    @Test
    void everySheetOfEveryStepOpens() {
        DemoWorkbench bench = Van7.before("F01");
        JobSheets sheets = sheets(bench);
        assertThat(sheets.all()).hasSizeGreaterThan(80);
        for (Step step : DemoUnit.A.type().steps()) {
            for (JobSheet sheet : sheets.at(step)) {
                assertThat(sheets.find(sheet.about(), sheet.sheet().name())).isPresent();
                assertThat(sheet.says(UnitSystem.INCH).isPresent()
                                || !sheet.answer(UnitSystem.INCH).refusals().isEmpty())
                        .isTrue();
            }
        }
        assertThat(sheets.at(DemoUnit.A.step("D02")).stream().map(s -> s.sheet().name()))
                .contains("seal-seat");
        assertThat(sheets.at(DemoUnit.A.step("S01")).stream().map(s -> s.sheet().name()))
                .contains("spring-test");
        assertThat(sheets.at(DemoUnit.A.step("F03")).stream().map(s -> s.sheet().name()))
                .contains("preload-drag");
        assertThat(DemoUnit.A.type().steps().stream()
                        .flatMap(step -> sheets.at(step).stream())
                        .map(s -> s.sheet().name()))
                .contains("oil-fill", "oil-viscosity", "leak-test", "housing-grip");
    }

    /** 0.30 without preload and 26 N·m a millimeter: 2.30 is 0.0769 of preload, 0.0369 more than 0.04; the spacer opens by as much. */
    @Test
    void aDragThatIsOutSaysWhichPieceBringsItThere() {
        Check check = DemoUnit.A.holdPoint("H18").checks().get(0);
        DragAdvice drag = DragAdvice.of(DemoUnit.A, check).orElseThrow();
        assertThat(drag.says(2.30, UnitSystem.METRIC))
                .get()
                .asString()
                .contains("26.00 N·m a millimeter", "a preload of 0.077 mm", "0.037 mm more than aimed at")
                .contains("0.037 mm thicker between the pinion cones", "bearings");
        assertThat(drag.says(0.60, UnitSystem.METRIC)).get().asString().contains("0.028 mm thinner");
        assertThat(drag.says(0.25, UnitSystem.METRIC)).get().asString().contains("there is no preload");
        assertThat(drag.says(1.34, UnitSystem.METRIC)).isEmpty();
    }

    /** So tight that no heat under the ceiling does it: the step says that and not only what the press takes. */
    @Test
    void aFitThatHeatAloneDoesNotDoSaysSo() {
        DemoWorkbench bench = Van7.before("T01");
        JobSheet press = sheets(bench).find(HEAD_CONE, "interference").orElseThrow();
        Map<String, String> given = new LinkedHashMap<>(press.typed());
        given.put("diameter", "40.098, 40.100 mm");
        kept(bench, keep(bench, HEAD_CONE, "interference", "T01", given));
        assertThat(JointAdvice.of(bench.job(), DemoUnit.A, joint("head-cone"), UnitSystem.METRIC)
                        .says())
                .contains("By heat: no possible heat", "Cold it takes ")
                .doesNotContain("Outer part to ");
    }

    /** A preload whose rise nobody has said, as in a unit that was begun on the bench: which way, and how the rise is found. */
    @Test
    void aDragOfAnUnknownRiseSaysWhichWayAndHowToFindIt() {
        Clearance stack = DemoUnit.A.type().clearances().stream()
                .filter(one -> one.drag().stream().anyMatch(drag -> drag.lower() == 0.8))
                .findFirst()
                .orElseThrow();
        DragAdvice advice = new DragAdvice(stack, new Clearance.Drag("by hand", 0.8, 1.9, 0, 0, Set.of()));
        assertThat(stack.positions().get(0).effect()).isPositive();
        assertThat(advice.says(2.3, UnitSystem.METRIC))
                .get()
                .asString()
                .contains("Too much preload", "a thicker piece", "read again", "bearings: dirt");
        assertThat(advice.says(0.3, UnitSystem.METRIC))
                .get()
                .asString()
                .contains("Too little preload", "a thinner piece", "used ones turn easier");
        assertThat(advice.says(1.2, UnitSystem.METRIC)).isEmpty();
        Check neutral = DemoUnit.A.holdPoint("H35").checks().stream()
                .filter(check -> check.id().equals("torque"))
                .findFirst()
                .orElseThrow();
        assertThat(DragAdvice.look(neutral, true)).get().asString().contains("a seal on the shaft");
        assertThat(sheets(Van7.before("F01")).all())
                .filteredOn(sheet -> sheet.about().equals("check H35/torque"))
                .extracting(sheet -> sheet.sheet().name())
                .containsExactly("preload-drag");
    }

    /** Gears, bearings and splines open their sheets from the part, with the teeth, modules and sizes of the file. */
    @Test
    void gearsBearingsAndSplinesBringTheirOwnData() {
        JobSheets sheets = sheets(Van7.before("F01"));
        assertThat(sheets.ofItem("wheel_3"))
                .extracting(sheet -> sheet.sheet().name())
                .contains("tooth-strength", "mesh-frequencies");
        JobSheet teeth = sheets.find("gears g3", "tooth-strength").orElseThrow();
        assertThat(teeth.typed()).containsEntry("pinionTeeth", "25").containsEntry("gearTeeth", "33");
        assertThat(teeth.asks(UnitSystem.METRIC)).contains("torque on the pinion", "speed of the pinion");
        assertThat(sheets.find("bearing PH", "bearing-frequencies")
                        .orElseThrow()
                        .typed())
                .containsEntry("bore", "40 mm")
                .containsEntry("outside", "80 mm");
        JobSheet spline = sheets.find("spline G23", "over-pins").orElseThrow();
        assertThat(spline.typed()).containsEntry("teeth", "23").containsEntry("pin", "1.8 mm");
        assertThat(sheets.ofItem("wheel_5")).extracting(JobSheet::about).contains("spline G23");
        assertThat(sheets.all()).extracting(JobSheet::about).contains("spline CL", "gears g1", "bearing PT");
    }
}
