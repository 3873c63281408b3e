package shimwright.rebuild.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.Decisions;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.Van7;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.rules.HoldPoints.Standing;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;

class HoldPointsTest {
    private static final double[] SPLIT = {0.270, 0.275, 0.280, 0.275, 0.270, 0.260, 0.255, 0.260};

    private static Map<String, Standing> standings(DemoWorkbench bench, String step) {
        return HoldPoints.of(bench.lying(), bench.unit().step(step)).stream()
                .collect(Collectors.toMap(s -> s.check().id(), HoldPoints.CheckStanding::standing));
    }

    private static List<String> open(DemoWorkbench bench, String step) {
        return HoldPoints.open(bench.lying(), bench.unit().step(step)).stream()
                .map(Refusal::sentence)
                .toList();
    }

    private static void drag(DemoWorkbench bench, String step, Verdict verdict) {
        bench.keep(new Entry.CheckRead(
                step,
                bench.unit().step(step).hold(),
                "drag",
                List.of(1.5, 1.55, 1.5),
                Kind.TORQUE,
                false,
                verdict,
                "",
                List.of()));
    }

    @Test
    void aStepWithoutAHoldPointHasNothingToRead() {
        assertThat(standings(DemoWorkbench.open(), "P01")).isEmpty();
        assertThat(open(DemoWorkbench.open(), "P01")).isEmpty();
    }

    @Test
    void aCheckIsOpenUntilReadAndFailedUntilItIsIn() {
        DemoWorkbench bench = DemoWorkbench.open();
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.OPEN);
        assertThat(open(bench, "F03"))
                .containsExactly("hold point H18: not read yet: turning torque at the stack nut, oiled, three pulls. "
                        + "Read it before the step counts as done.");
        drag(bench, "F03", Verdict.OUT);
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.FAILED);
        assertThat(open(bench, "F03"))
                .containsExactly("hold point H18: read and not within limits: turning torque at the stack nut, oiled, "
                        + "three pulls. Mend it and read again, or pass it with your reason.");
        drag(bench, "F03", Verdict.NOT_PROVEN);
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.NOT_PROVEN);
        assertThat(open(bench, "F03")).singleElement().asString().startsWith("hold point H18: ");
        drag(bench, "F03", Verdict.IN);
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.ACCEPTED);
        assertThat(open(bench, "F03")).isEmpty();
    }

    @Test
    void theSameHoldPointAtAnotherStepIsReadForItself() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.in("T01", "feeler");
        assertThat(standings(bench, "T01")).containsEntry("feeler", Standing.ACCEPTED);
        assertThat(standings(bench, "G11")).containsEntry("feeler", Standing.OPEN);
    }

    @Test
    void anOverruledHoldPointIsPassedWithAllItsChecks() {
        DemoWorkbench bench = DemoWorkbench.open();
        bench.keep(new Entry.HoldOverruled("K03", "H08", "no depth micrometer today"));
        assertThat(standings(bench, "K03"))
                .containsOnly(
                        Map.entry("front_depth", Standing.OVERRULED), Map.entry("tail_depth", Standing.OVERRULED));
        assertThat(open(bench, "K03")).isEmpty();
        assertThat(standings(bench, "F02")).containsEntry("depth", Standing.OPEN);
    }

    @Test
    void aTrialReadingMustHaveSettled() {
        DemoWorkbench bench = Van7.before("T08");
        bench.packIn("d", Phase.TRIAL, "sR=d80-05 sL=d80-08");
        bench.round("d", Phase.TRIAL, 0.22, 0.22);
        bench.round("d", Phase.TRIAL, 0.22, 0.23);
        assertThat(standings(bench, "T08")).containsEntry("float", Standing.OPEN);
        bench.round("d", Phase.TRIAL, 0.22, 0.22);
        assertThat(standings(bench, "T08")).containsEntry("float", Standing.ACCEPTED);
    }

    @Test
    void theSecondSplitNeedsItsOwnReading() {
        DemoWorkbench bench = Van7.before("T10");
        // both T09 and T10 read clearance e; what was read for T09 does not pass T10
        assertThat(standings(bench, "T10")).containsEntry("places", Standing.OPEN);
        bench.packIn("e", Phase.TRIAL, "sL=d80-08+d80-01 sR=d80-15 sP=d80-06");
        assertThat(standings(bench, "T10")).containsEntry("places", Standing.OPEN);
        bench.round("e", Phase.TRIAL, SPLIT);
        assertThat(standings(bench, "T10")).containsEntry("places", Standing.OPEN);
        bench.round("e", Phase.TRIAL, SPLIT);
        assertThat(standings(bench, "T10")).containsEntry("places", Standing.ACCEPTED);
    }

    @Test
    void theLastReadingMustBeAcceptedAfterTheStepsBeforeIt() {
        DemoWorkbench bench = Van7.before("F04");
        assertThat(standings(bench, "F04")).containsEntry("depth", Standing.OPEN);
        for (double gap : new double[] {32.08, 32.09, 32.08}) {
            bench.round("a", Phase.FINAL, gap);
        }
        assertThat(standings(bench, "F04")).containsEntry("depth", Standing.OPEN);
        bench.keep(Decisions.accept(bench.session("a"), "").orElseThrow());
        assertThat(standings(bench, "F04")).containsEntry("depth", Standing.ACCEPTED);
    }

    @Test
    void afterTheLockerTheEndPlayNeedsItsOwnReading() {
        DemoWorkbench bench = Van7.before("E04");
        assertThat(bench.session("c").accepted()).isNotNull();
        assertThat(standings(bench, "E04")).containsEntry("play", Standing.OPEN);
        for (int i = 0; i < 3; i++) {
            bench.round("c", Phase.AGAIN, 0.04, 0.05);
        }
        assertThat(standings(bench, "E04")).containsEntry("play", Standing.OPEN);
        bench.keep(Decisions.accept(bench.session("c"), "").orElseThrow());
        assertThat(standings(bench, "E04")).containsEntry("play", Standing.ACCEPTED);
    }

    @Test
    void aLateAcceptanceOfTheReadingBeforeTheLockerDoesNotPassTheOneAfter() {
        DemoWorkbench bench = Van7.before("E03");
        bench.keep(new Entry.HoldOverruled("E03", "H31", "read later"));
        bench.keep(Decisions.choose(bench.session("c"), bench.pieces("d52-03", "d52-09"), "")
                .orElseThrow());
        bench.keep(new Entry.StepDone("E03", ""));
        for (int i = 0; i < 3; i++) {
            bench.keep(bench.read("c", Phase.FINAL, 0.04, 0.05));
        }
        bench.keep(Decisions.accept(bench.session("c"), "").orElseThrow());
        assertThat(standings(bench, "E04")).containsEntry("play", Standing.OPEN);
    }

    @Test
    void roundsReadBeforeTheStepBeforeWasMarkedAreMadeUpForByNewOnes() {
        DemoWorkbench bench = Van7.before("T09");
        bench.packIn("e", Phase.TRIAL, "sL=d80-08+d80-01 sR=d80-15 sP=d80-06");
        bench.keep(bench.read("e", Phase.TRIAL, SPLIT));
        bench.keep(bench.read("e", Phase.TRIAL, SPLIT));
        bench.keep(new Entry.StepDone("T09", ""));
        assertThat(standings(bench, "T10")).containsEntry("places", Standing.OPEN);
        bench.keep(bench.read("e", Phase.TRIAL, SPLIT));
        bench.keep(bench.read("e", Phase.TRIAL, SPLIT));
        assertThat(standings(bench, "T10")).containsEntry("places", Standing.ACCEPTED);
    }

    @Test
    void anAcceptanceThatNoLongerStandsPassesNothing() {
        DemoWorkbench bench = Van7.before("D06");
        assertThat(standings(bench, "D05")).containsEntry("mean", Standing.ACCEPTED);
        bench.lay(new Entry.PackChosen(
                "a", "sP", bench.pieces("d80-12"), 52.094e-3, 5e-6, 0.9, Verdict.IN, "", List.of(), Map.of()));
        assertThat(standings(bench, "D05")).containsEntry("mean", Standing.OPEN);
    }

    @Test
    void undoneAndRedoneAStepIsReadAnew() {
        DemoWorkbench bench = Van7.before("F04");
        bench.keep(new Entry.StepUndone("F03", "spacer out again"));
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.OPEN);
        drag(bench, "F03", Verdict.IN);
        bench.keep(new Entry.StepDone("F03", ""));
        assertThat(bench.job().stepsDone()).contains("F03");
    }

    @Test
    void aTrialUndoneAndRedoneIsReadAnewAndOnlyTheNewRoundsCount() {
        DemoWorkbench bench = Van7.before("T05");
        bench.keep(new Entry.StepUndone("T04", "cone stood off"));
        bench.keep(new Entry.StepUndone("T03", "cone stood off"));
        bench.keep(new Entry.StepDone("T03", ""));
        assertThat(standings(bench, "T04")).containsEntry("lift", Standing.OPEN);
        for (int i = 0; i < 3; i++) {
            bench.round("b", Phase.TRIAL, 0.17, 0.18);
        }
        assertThat(standings(bench, "T04")).containsEntry("lift", Standing.ACCEPTED);
        assertThat(bench.session("b").trial().rounds()).hasSize(3);
        bench.keep(new Entry.StepDone("T04", ""));
    }

    /** Both splits are kept, so nobody is asked whether the slope was right. */
    @Test
    void theSlopeFollowsFromBothSplits() {
        DemoWorkbench bench = Van7.before("T10");
        assertThat(standings(bench, "T10")).containsEntry("slope", Standing.OPEN);
        bench.packIn("e", Phase.TRIAL, "sL=d80-08+d80-01 sR=d80-15 sP=d80-06");
        // as with the first split, though a foil changed sides
        double[] unmoved = {0.355, 0.360, 0.365, 0.365, 0.355, 0.350, 0.345, 0.350};
        bench.keep(bench.read("e", Phase.TRIAL, unmoved));
        bench.keep(bench.read("e", Phase.TRIAL, unmoved));
        assertThat(standings(bench, "T10"))
                .containsEntry("slope", Standing.FAILED)
                .containsEntry("odd", Standing.ACCEPTED);
        assertThat(bench.against(new Entry.CheckRead(
                        "T10", "H42", "slope", List.of(), Kind.NUMBER, true, Verdict.IN, "", List.of())))
                .extracting(Refusal::fact)
                .containsExactly("it is a clearance");
        assertThat(standings(Van7.before("T11"), "T10")).containsEntry("slope", Standing.ACCEPTED);
    }

    /** Limits that were added to a reading are open again once that reading is another. */
    @Test
    void aCheckAgainstAnEarlierReadingIsOpenAgainWithThatReading() {
        DemoWorkbench bench = Van7.before("F03");
        assertThat(standings(bench, "F06"))
                .containsEntry("front_depth", Standing.ACCEPTED)
                .containsEntry("tail_depth", Standing.ACCEPTED);
        Entry.CheckRead read =
                bench.job().check("K03", "front_depth").orElseThrow().what();
        bench.lay(read);
        assertThat(standings(bench, "F06"))
                .containsEntry("front_depth", Standing.OPEN)
                .containsEntry("tail_depth", Standing.ACCEPTED);
    }

    /** What was accepted on one etched deviation is open again on another. */
    @Test
    void anotherEtchedDeviationOpensTheDepthAgain() {
        DemoWorkbench bench = Van7.before("D01");
        assertThat(bench.session("a").accepted()).isNotNull();
        Entry.CheckRead read = bench.job().check("P08", "etched").orElseThrow().what();
        bench.lay(read);
        assertThat(bench.session("a").accepted())
                .as("the same figure once more")
                .isNotNull();
        bench.lay(new Entry.CheckRead(
                "P08", "H07", "etched", List.of(-9.0), Kind.NUMBER, false, Verdict.IN, "", List.of(), Map.of()));
        assertThat(bench.session("a").accepted()).isNull();
        assertThat(bench.session("a").reopened()).contains("etched");
    }

    /** A hand-back tapped by mistake is struck as long as nothing but remarks came after it. */
    @Test
    void aHandBackByMistakeIsStruckAtOnce() {
        DemoWorkbench bench = Van7.handedBack();
        String id = Objects.requireNonNull(bench.job().handedBack()).id();
        bench.keep(new Entry.EntryStruck(id, "the wrong job"));
        assertThat(bench.job().closed()).isFalse();
        bench.keep(new Entry.TakenOff("a cover", List.of(), ""));
        // the strike itself lies under something now, and what came before it as well
        String strike = bench.entries().get(bench.entries().size() - 2).draft().id();
        assertThat(bench.against(new Entry.EntryStruck(strike, "it was right")))
                .extracting(Refusal::fact)
                .containsExactly("something was kept after it, so it cannot be struck any more");
    }

    /** The demo unit whose check of a hold point rests on something, and so does each torque. */
    private static DemoWorkbench restingOn(String hold, String origin) {
        UnitType type = DemoWorkbench.open().unit().type();
        List<HoldPoint> holds = type.holdPoints().stream()
                .map(point -> point.id().equals(hold)
                        ? Component.with(
                                point,
                                "checks",
                                point.checks().stream()
                                        .map(check -> Component.with(check, "origin", origin))
                                        .toList())
                        : point)
                .toList();
        List<Fastener> fasteners = type.fasteners().stream()
                .map(fastener -> Component.with(fastener, "origin", origin))
                .toList();
        UnitType other = Component.with(Component.with(type, "hold_points", holds), "fasteners", fasteners);
        DemoWorkbench bench =
                new DemoWorkbench(new Unit(other, DemoWorkbench.open().unit().variant()));
        bench.keep(DemoWorkbench.opening());
        return bench;
    }

    @Test
    void aLimitThatIsAGuessPassesOnlyWithAReason() {
        DemoWorkbench bench = restingOn("H18", "guess: feels right");
        drag(bench, "F03", Verdict.IN);
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.GUESSED);
        assertThat(open(bench, "F03")).singleElement().asString().contains("the limit is a guess", "with your reason");
        bench.keep(new Entry.HoldOverruled("F03", "H18", "the same as on the last three"));
        assertThat(standings(bench, "F03")).containsEntry("drag", Standing.OVERRULED);
        assertThat(open(bench, "F03")).isEmpty();
        DemoWorkbench printed = restingOn("H18", "printed: book, page 12");
        drag(printed, "F03", Verdict.IN);
        assertThat(standings(printed, "F03")).containsEntry("drag", Standing.ACCEPTED);
    }

    @Test
    void aTorqueThatIsAGuessIsTightenedOnlyWithAWordAboutIt() {
        DemoWorkbench guess = restingOn("H18", "guess");
        Step step = guess.unit().type().steps().stream()
                .filter(one -> !one.fasteners().isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(HoldPoints.guessedTorques(guess.lying(), step, ""))
                .isNotEmpty()
                .allMatch(fault -> fault.key().equals("note") && fault.fact().contains("a guess"));
        assertThat(StepRules.done(guess.lying(), new Entry.StepDone(step.id(), "")))
                .anyMatch(fault -> fault.place().startsWith("torque of"));
        assertThat(HoldPoints.guessedTorques(guess.lying(), step, "as the last one"))
                .isEmpty();
        DemoWorkbench told = restingOn("H18", "told: the last owner");
        assertThat(HoldPoints.guessedTorques(told.lying(), step, "")).isEmpty();
    }
}
