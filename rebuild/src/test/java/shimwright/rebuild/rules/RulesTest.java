package shimwright.rebuild.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.Van7;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.workbench.Workbench;

class RulesTest {
    private static List<String> said(List<Refusal> refusals) {
        return refusals.stream().map(Refusal::sentence).toList();
    }

    private static List<String> against(DemoWorkbench bench, Entry.OfJob entry) {
        return said(bench.against(entry));
    }

    @Test
    void aJobIsOpenedOnce() {
        DemoWorkbench bench = new DemoWorkbench(DemoUnit.A);
        bench.keep(DemoWorkbench.opening());
        assertThat(against(bench, DemoWorkbench.opening()))
                .containsExactly("job: this job is already open. Open a new job.");
    }

    @Test
    void aStepIsRefusedWhileOthersMustComeFirstAndTheyAreNamed() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.StepDone("K01", "")))
                .containsExactly(
                        "step K01: it waits for P02 (Gauge faces, dowels and every bearing seat of the main case); "
                                + "P04 (Goods in. Read bore, outside and assembled width of every bearing, try seals against "
                                + "their lands, count). Do these first, mark them done if they are, or say that it was done out of order.");
        bench.layDone("P02");
        assertThat(against(bench, new Entry.StepDone("K01", "")))
                .singleElement()
                .satisfies(s -> assertThat(s).contains("P04").doesNotContain("P02"));
        bench.layDone("P04");
        assertThat(against(bench, new Entry.StepDone("K01", ""))).isEmpty();
    }

    @Test
    void allFaultsOfAStepComeAtOnce() {
        assertThat(against(DemoWorkbench.open(), new Entry.StepDone("K03", "")))
                .containsExactly(
                        "step K03: it waits for K02 (Case out of the oven, rear up. Drop cup 55 into its blind seat and "
                                + "cup 72 on the lip, back faces down. Press down until below 45 degC). Do these first, "
                                + "mark them done if they are, or say that it was done out of order.",
                        "hold point H08: not read yet: input front cup, its rim below face G, three places. "
                                + "Read it before the step counts as done.",
                        "hold point H08: not read yet: pinion tail cup, its rim below face G, three places. "
                                + "Read it before the step counts as done.");
    }

    @Test
    void aStepIsDoneOnceAndOnlyOneThatThisUnitHas() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.keep(new Entry.StepDone("P01", ""));
        assertThat(against(bench, new Entry.StepDone("P01", "")))
                .containsExactly("step P01: this step is already done.");
        assertThat(against(bench, new Entry.StepDone("D09B", "")))
                .containsExactly(
                        "step D09B: this unit has no such step with the choices taken, or it is left out. Go back to the build page.");
        bench.keep(new Entry.ChoiceTaken("O1", "late", "the pair is proved"));
        assertThat(against(bench, new Entry.StepDone("D04", ""))).hasSize(1);
    }

    @Test
    void aStepIsNotUndoneWhileOthersStandOnIt() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.StepUndone("P01", ""))).containsExactly("step P01: this step is not done.");
        bench.layDone("P01", "P02", "S01");
        assertThat(against(bench, new Entry.StepUndone("P01", "dirt")))
                .containsExactly("step P01: done after it and standing on it: "
                        + "P02 (Gauge faces, dowels and every bearing seat of the main case); "
                        + "S01 (Read forks, rails, springs and plugs against their limits). Undo these first.");
        bench.keep(new Entry.StepUndone("P02", "dirt"));
        bench.keep(new Entry.StepUndone("S01", "dirt"));
        assertThat(against(bench, new Entry.StepUndone("P01", "dirt"))).isEmpty();
    }

    @Test
    void aReadingIsStruckWithAReasonAndOnce() {
        DemoWorkbench bench = DemoWorkbench.open();
        LogEntry round = bench.round("c", Phase.TRIAL, 0.24, 0.32);
        String id = round.draft().id();
        assertThat(against(bench, new Entry.RoundStruck(id, " ")))
                .containsExactly("reason: nothing typed. Say why the reading does not count; it stays in the record.");
        assertThat(against(bench, new Entry.RoundStruck("entry-1", "not a reading")))
                .hasSize(1);
        bench.keep(new Entry.RoundStruck(id, "slipped"));
        assertThat(against(bench, new Entry.RoundStruck(id, "slipped")))
                .containsExactly("reading: there is no such reading that counts. It may have been struck already.");
    }

    @Test
    void aClearanceIsReadAndAcceptedOnceTheStepsBeforeItsReadingAreDone() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, bench.read("c", Phase.TRIAL, 0.24, 0.32)))
                .containsExactly(
                        "clearance c: its reading waits for E01 (Slip the rear cup in, back face up, trial shim on it, "
                                + "plate dry with four bolts at 20 N.m). Do these first, or mark them done if they are.");
        bench.layDone("E01");
        assertThat(against(bench, bench.read("c", Phase.TRIAL, 0.24, 0.32))).isEmpty();
        assertThat(against(bench, bench.read("c", Phase.AGAIN, 0.24, 0.32))).hasSize(1);
        Entry.ClearanceAccepted accepted = new Entry.ClearanceAccepted(
                "c", Phase.FINAL, 4e-5, 5e-6, 0.97, Verdict.IN, 4e-5, "", "", List.of(), Map.of());
        assertThat(against(bench, accepted))
                .singleElement()
                .satisfies(s -> assertThat(s).startsWith("clearance c: its reading waits for E02 ("));
        bench.layDone("E02");
        assertThat(against(bench, accepted))
                .containsExactly("clearance c: there is no settled reading to accept. Read it first.");
    }

    @Test
    void ofTwoStepsThatReadAClearanceOneIsEnough() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.layDone("T05", "T08");
        assertThat(against(bench, bench.read("e", Phase.TRIAL, 0.3))).isEmpty();
    }

    @Test
    void aClearanceThatThisUnitDoesNotHaveIsNotRead() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.RoundRead("z", Phase.TRIAL, "DI", List.of(1e-4), "")))
                .containsExactly("clearance z: this unit has no such clearance. Go back to the clearances.");
        assertThat(against(bench, new Entry.PackIn("z", Phase.TRIAL, Map.of()))).hasSize(1);
    }

    private static List<String> against(Map<String, String> taken, Entry.OfJob entry) {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.keepInShop(new Entry.ShimRemoved("d52-09", "bent"));
        Workbench lying = bench.lying();
        Shop shop = Shop.of(bench.shopEntries(), taken);
        return said(Rules.check(new Workbench(lying.job(), lying.file(), shop, lying.now(), ZoneOffset.UTC), entry));
    }

    @Test
    void aPieceThatIsInAnotherUnitIsNeitherNamedNorChosen() {
        Map<String, String> taken = Map.of("d52-03", "V-0094", "d52-05", "V-0093");
        List<PieceIn> pieces = DemoWorkbench.open().pieces("d52-03", "d52-05", "d52-09");
        String[] refused = {
            "piece d52-03: it is in unit V-0094. Take another piece.",
            "piece d52-09: it left the drawer: bent. Take another piece."
        };
        assertThat(against(taken, new Entry.PackIn("c", Phase.TRIAL, Map.of("sI", pieces))))
                .containsExactly(refused);
        assertThat(against(
                        taken,
                        new Entry.PackChosen("c", "sI", pieces, 5e-5, 5e-6, 0.97, Verdict.IN, "", List.of(), Map.of())))
                .containsExactly(refused);
        assertThat(against(
                        taken,
                        new Entry.PackChosen(
                                "c", "sX", List.of(), 5e-5, 5e-6, 0.97, Verdict.IN, "", List.of(), Map.of())))
                .containsExactly("place sX: this clearance has no such place. Go back to the clearance.");
    }

    @Test
    void findingsVerdictsAndPicturesAreAskedForWhatTheyLack() {
        Map<String, String> none = Map.of();
        assertThat(against(
                        none,
                        new Entry.Found("C99", List.of(), "gap", List.of(Double.NaN), Kind.LENGTH, "", "", List.of())))
                .containsExactly(
                        "limit C99: this unit has no such limit. Go back to the inspection.",
                        "gap: a reading is not a number. Read it again.");
        assertThat(against(none, new Entry.Found("", List.of(), " ", List.of(), Kind.NUMBER, "seen", "", List.of())))
                .containsExactly("item: nothing typed. Name the part or feature.");
        assertThat(against(none, new Entry.Judged("C99", List.of(), "gap", Entry.Decision.REUSE, "", "")))
                .containsExactly(
                        "reason: nothing typed. Say why, so that the record can be stood behind.",
                        "limit C99: this unit has no such limit. Go back to the inspection.");
        assertThat(against(none, new Entry.PictureAdded("job", "no hash", "image/png", 3, "")))
                .containsExactly("picture: it is not kept. Take or choose it again.");
        assertThat(against(none, new Entry.NoteMade("job", " ")))
                .containsExactly("note: nothing typed. Type the note.");
    }

    @Test
    void passingAHoldPointNeedsAReason() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.HoldOverruled("P02", "H01", "")))
                .containsExactly("reason: nothing typed. Say why it may be passed; it stands on the record.");
        assertThat(against(bench, new Entry.HoldOverruled("P02", "H01", "gauged last week")))
                .isEmpty();
    }

    @Test
    void aChoiceMustBeOneOfTheUnits() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(against(bench, new Entry.ChoiceTaken("O9", "late", "")))
                .containsExactly("choice O9: this unit has no such choice. Go back to the plan.");
        assertThat(against(bench, new Entry.ChoiceTaken("O1", "lately", "")))
                .containsExactly("choice O1: it has no side lately. Take early or late.");
    }

    @Test
    void aChoiceThatLeavesNoPossibleOrderIsRefusedWithTheCircle() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.keep(new Entry.ChoiceTaken("O1", "late", "the pair is proved"));
        // PL-6 of the demo source, invented scenario, recomputed
        assertThat(against(bench, new Entry.ChoiceTaken("O4", "first", "no tall stand")))
                .singleElement()
                .satisfies(s -> assertThat(s).startsWith("plan: these steps wait for each other: "));
        bench.keep(new Entry.ChoiceTaken("O1", "early", "then not"));
        assertThat(against(bench, new Entry.ChoiceTaken("O4", "first", "no tall stand")))
                .isEmpty();
    }

    @Test
    void handBackIsRefusedWithStepsLeftAndTheyAreNamed() {
        DemoWorkbench bench = Van7.before("X06");
        assertThat(against(bench, new Entry.HandedBack("12 months", "", "")))
                .containsExactly("hand-back: 2 steps are not done: X06, X07. Finish the build first.");
        bench.keep(new Entry.StepDone("X06", ""));
        assertThat(against(bench, new Entry.HandedBack("12 months", "", "")))
                .containsExactly("hand-back: 1 step is not done: X07. Finish the build first.");
    }

    @Test
    void handBackIsRefusedWhileWhatWasFoundOutsideItsLimitHasNoVerdict() {
        DemoWorkbench bench = DemoWorkbench.open();
        String undecided =
                ": it was found outside its limit and nothing was decided since. Say under Inspect what becomes of it.";
        bench.keep(found("C01", "ring gap", "0.42 mm is below the limit", Map.of("verdict", "OUT")));
        bench.keep(found("C02", "of before", "0.3 mm is below the limit of 0.5 mm: rework or replace.", Map.of()));
        bench.keep(found("C03", "read again", "", Map.of("verdict", "OUT")));
        bench.keep(found("C03", "read again", "", Map.of("verdict", "IN")));
        assertThat(against(bench, new Entry.HandedBack("12 months", "", "")))
                .contains("ring gap" + undecided, "of before" + undecided)
                .noneMatch(s -> s.startsWith("read again"));
        bench.keep(new Entry.Judged("C01", List.of(), "ring gap", Entry.Decision.REPLACE, "worn", ""));
        assertThat(against(bench, new Entry.HandedBack("12 months", "", ""))).noneMatch(s -> s.startsWith("ring gap"));
    }

    private static Entry.Found found(String limit, String what, String outcome, Map<String, String> basis) {
        return new Entry.Found(limit, List.of(), what, List.of(0.0004), Kind.LENGTH, "", outcome, List.of(), basis);
    }

    @Test
    void handBackIsRefusedWhileAnAcceptanceNoLongerStands() {
        DemoWorkbench bench = Van7.before("");
        assertThat(against(bench, new Entry.HandedBack("12 months", "", ""))).isEmpty();
        bench.lay(new Entry.PackChosen(
                "c",
                "sI",
                bench.pieces("d52-05", "d52-08"),
                2e-5,
                5e-6,
                0.6,
                Verdict.NOT_PROVEN,
                "why",
                List.of(),
                Map.of()));
        assertThat(against(bench, new Entry.HandedBack("12 months", "", "")))
                .containsExactly("clearance c: the pack of clearance c was changed after it was accepted. "
                        + "Read it again and accept it.");
    }

    @Test
    void afterTheHandBackOnlyNotesPicturesAndTheFollowUpAreKept() {
        DemoWorkbench bench = Van7.handedBack();
        List<Entry.OfJob> possible = List.of(
                new Entry.NoteMade("job", "the owner called"),
                new Entry.PictureAdded("job", "aa".repeat(32), "image/png", 3, ""),
                new Entry.FollowedUp("quiet; fifth stays", "3 100 km"));
        List<Entry.OfJob> impossible = List.of(
                new Entry.StepUndone("X07", "forgot a bolt"),
                new Entry.StepDone("X07", ""),
                new Entry.StepCannot("X07", ""),
                new Entry.HandedBack("24 months", "", ""),
                new Entry.RoundStruck("entry-9", "odd"),
                new Entry.RoundRead("c", Phase.FINAL, "DI", List.of(1e-4), ""),
                new Entry.PackIn("c", Phase.FINAL, Map.of()),
                new Entry.HoldOverruled("X05", "H36", "dry"),
                new Entry.ChoiceTaken("O1", "late", ""),
                new Entry.TakenOff("fluid", List.of(), ""),
                new Entry.Judged("", List.of(), "hub", Entry.Decision.REUSE, "", ""),
                new Entry.Found("", List.of(), "hub", List.of(), Kind.NUMBER, "", "", List.of()));
        possible.forEach(entry -> assertThat(against(bench, entry)).isEmpty());
        impossible.forEach(entry -> assertThat(against(bench, entry))
                .containsExactly("job V-0093: this unit was handed back and its record stands. "
                        + "Add a note or a follow-up, or open a new job."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"T06", "D01", "R03", "X07"})
    void whatThePlanOffersNextIsNeverRefusedForItsOrder(String step) {
        DemoWorkbench bench = Van7.before(step);
        assertThat(against(bench, new Entry.StepDone(step, ""))).noneMatch(s -> s.contains("it waits for"));
    }
}
