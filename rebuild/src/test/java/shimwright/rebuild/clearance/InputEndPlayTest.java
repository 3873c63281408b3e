package shimwright.rebuild.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.axial.reading.Seating;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * The input end play of the demo scenario from trial to acceptance. Values named by their id there: invented scenario,
 * recomputed.
 */
class InputEndPlayTest {
    /** What the trial leaves without any shim, by the unit's true sizes: gap_input. */
    private static final double TRUE_GAP = 1.076 * MM;

    private static final List<Double> LIMITS = List.of(0.02 * MM, 0.08 * MM, 0.05 * MM);

    private DemoWorkbench bench = DemoWorkbench.open();

    @BeforeEach
    void trialPieceIsIn() {
        bench = DemoWorkbench.open();
        bench.packIn("c", Phase.TRIAL, "sI=d52-10");
    }

    private Session read() {
        bench.round("c", Phase.TRIAL, 0.24, 0.32);
        bench.round("c", Phase.TRIAL, 0.25, 0.31);
        bench.round("c", Phase.TRIAL, 0.24, 0.31);
        return bench.session("c");
    }

    private Session chosen() {
        bench.keep(
                Decisions.choose(read(), bench.pieces("d52-03", "d52-09"), "").orElseThrow());
        return bench.session("c");
    }

    private Session readWithPack() {
        chosen();
        bench.round("c", Phase.FINAL, 0.03, 0.05);
        bench.round("c", Phase.FINAL, 0.04, 0.05);
        bench.round("c", Phase.FINAL, 0.04, 0.05);
        return bench.session("c");
    }

    private static ShimPack.Result packs(Session session) {
        return Objects.requireNonNull(Objects.requireNonNull(session.advice()).result());
    }

    private static Reading.Measured measured(Reading reading) {
        return Objects.requireNonNull(reading.measured());
    }

    private static Closing closing(Session session) {
        return Objects.requireNonNull(session.closing());
    }

    @Test
    void bothIndicatorsOfThreeRoundsGiveTheMeanAndNameTheTilt() {
        Session session = read();
        // E02_trial of the demo source: mean 0.2783
        assertThat(measured(session.trial()).value()).isCloseTo(0.2783 * MM, within(0.00005 * MM));
        assertThat(measured(session.trial()).tilt()).isCloseTo(0.07 * MM, within(1e-9));
        assertThat(session.stage()).isEqualTo(Stage.CHOOSE);
    }

    @Test
    void theWantedPackAndTheBestOfTheDrawerAreThoseOfTheSource() {
        ShimPack.Result packs = packs(read());
        // needs.sI of the demo source: 1.0253
        assertThat(packs.wantedThickness()).isCloseTo(1.0253 * MM, within(0.00005 * MM));
        PackOffer best = packs.offers().get(0);
        assertThat(best.pieces()).containsExactly("d52-03", "d52-09");
        assertThat(best.thickness()).isCloseTo(1.033 * MM, within(1e-9));
        // EP-2, by calculation
        assertThat(best.predicted()).isCloseTo(0.0423 * MM, within(0.0005 * MM));
        assertThat(best.verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void everyPackOnOfferIsWithinLimitsAndOfOneOrTwoEvenPieces() {
        for (PackOffer offer : packs(read()).offers()) {
            assertThat(offer.predicted()).isBetween(0.02 * MM, 0.08 * MM);
            assertThat(offer.pieces()).hasSizeBetween(1, 2).doesNotContain("d52-07");
        }
    }

    @Test
    void theChoiceIsKeptWithItsPredictionAndItsWorking() {
        Session session = chosen();
        Entry.PackChosen pack = Objects.requireNonNull(session.chosen().get("sI"));
        assertThat(pack.predicted()).isCloseTo(0.0423 * MM, within(0.0005 * MM));
        assertThat(pack.verdict()).isEqualTo(Verdict.IN);
        assertThat(pack.overruledBecause()).isEmpty();
        Basis basis = Basis.of(pack.basis()).orElseThrow();
        assertThat(List.of(basis.lower(), basis.upper(), basis.aim())).isEqualTo(LIMITS);
        assertThat(basis.rule()).isEqualTo(0.95);
        assertThat(basis.hot()).isEqualTo(pack.predicted() + session.clearance().growth());
        assertThat(pack.working()).extracting("value").contains(pack.predicted(), pack.u(), pack.probability());
        assertThat(session.stage()).isEqualTo(Stage.READ_LAST);
        assertThat(session.last().pack()).containsKey("sI");
    }

    @Test
    void theLastReadingIsInAndAsPredictedColdAndKnownHot() {
        Session session = readWithPack();
        Closing closing = closing(session);
        // E03_final of the demo source: mean 0.0433
        assertThat(closing.value()).isCloseTo(0.0433 * MM, within(0.00005 * MM));
        assertThat(closing.verdict()).isEqualTo(Verdict.IN);
        assertThat(closing.finding()).isEmpty();
        assertThat(closing.difference()).isCloseTo(0.001 * MM, within(0.0005 * MM));
        // TH-2, c hot
        assertThat(closing.hot()).isCloseTo(0.1586 * MM, within(0.0005 * MM));
        assertThat(closing.working()).extracting("value").contains(closing.hot(), closing.probability());
        assertThat(session.stage()).isEqualTo(Stage.ACCEPT);
        assertThat(session.say()).isEqualTo("Within limits, and as predicted. Accept it.");
    }

    @Test
    void acceptedItIsDoneAndTheEntryHoldsTheNumbersItWasAcceptedOn() {
        Session session = readWithPack();
        Entry.ClearanceAccepted accepted = Decisions.accept(session, "").orElseThrow();
        Closing closing = closing(session);
        assertThat(accepted.value()).isEqualTo(closing.value());
        assertThat(accepted.predicted()).isEqualTo(closing.predicted());
        assertThat(accepted.probability()).isEqualTo(closing.probability());
        assertThat(accepted.working()).isEqualTo(closing.working());
        Basis basis = Basis.of(accepted.basis()).orElseThrow();
        assertThat(List.of(basis.lower(), basis.upper(), basis.aim())).isEqualTo(LIMITS);
        assertThat(basis.nu()).isEqualTo(measured(session.last()).nu());
        assertThat(basis.hot()).isEqualTo(closing.hot());
        assertThat(basis.rule()).isEqualTo(0.95);
        bench.lay(accepted);
        assertThat(bench.session("c").stage()).isEqualTo(Stage.DONE);
        assertThat(bench.session("c").say()).isEqualTo("Set and accepted. Go on with the build.");
    }

    @Test
    void afterThePlateBoltsItIsReadAndAcceptedOnceMore() {
        bench.lay(Decisions.accept(readWithPack(), "").orElseThrow());
        bench.layDone("E03");
        assertThat(bench.session("c").stage()).isEqualTo(Stage.READ_AGAIN);
        bench.round("c", Phase.AGAIN, 0.03, 0.05);
        bench.round("c", Phase.AGAIN, 0.04, 0.05);
        assertThat(bench.session("c").stage()).isEqualTo(Stage.READ_AGAIN);
        bench.round("c", Phase.AGAIN, 0.04, 0.05);
        Session session = bench.session("c");
        assertThat(session.stage()).isEqualTo(Stage.ACCEPT_AGAIN);
        assertThat(session.current()).isSameAs(session.again());
        Entry.ClearanceAccepted again = Decisions.accept(session, "").orElseThrow();
        // after_locker of the demo source: 0.0433
        assertThat(again.value()).isCloseTo(0.0433 * MM, within(0.00005 * MM));
        assertThat(again.phase()).isEqualTo(Phase.AGAIN);
        bench.lay(again);
        assertThat(bench.session("c").stage()).isEqualTo(Stage.DONE);
        assertThat(bench.session("c").current().phase()).isEqualTo(Phase.AGAIN);
    }

    @ParameterizedTest
    @CsvSource({"0.24, 0.089", "0.32, 0.009"})
    void oneIndicatorBelievedWouldLeaveItOutAndProvesNoPack(double reading, double left) {
        for (int i = 0; i < 3; i++) {
            bench.round("c", Phase.TRIAL, reading);
        }
        Session session = bench.session("c");
        ShimPack.Result packs = packs(session);
        // EP-3: the pack that one indicator asks for leaves this by the true sizes, outside 0.02 to 0.08
        assertThat(TRUE_GAP - packs.wantedThickness()).isCloseTo(left * MM, within(0.0005 * MM));
        assertThat(packs.offers()).extracting(PackOffer::verdict).doesNotContain(Verdict.IN);
        assertThat(measured(session.trial()).cautions()).anyMatch(c -> c.contains("One indicator alone"));
        assertThat(Decisions.choose(session, bench.pieces("d52-03", "d52-09"), "")
                        .isOk())
                .isFalse();
    }

    @Test
    void fewerThanThreeRoundsAreNeverProofAndTheSentenceSaysHowManyMore() {
        assertThat(bench.session("c").say()).contains("At least 3 rounds");
        bench.round("c", Phase.TRIAL, 0.24, 0.32);
        assertThat(bench.session("c").stage()).isEqualTo(Stage.READ_TRIAL);
        assertThat(bench.session("c").say()).contains("at least 2 more rounds");
        bench.round("c", Phase.TRIAL, 0.24, 0.32);
        Session two = bench.session("c");
        assertThat(two.stage()).isEqualTo(Stage.READ_TRIAL);
        assertThat(two.say()).contains("at least one more round");
        assertThat(measured(two.trial()).seating()).isEqualTo(Seating.TOO_FEW);
        assertThat(two.advice()).isNull();
        assertThat(Decisions.choose(two, bench.pieces("d52-03"), "in a hurry").refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.sentence())
                        .contains("the trial reading is not settled")
                        .contains("at least one more round"));
    }

    @Test
    void fewerThanThreeRoundsWithThePackCannotBeAcceptedNotEvenWithAReason() {
        chosen();
        bench.round("c", Phase.FINAL, 0.04, 0.05);
        bench.round("c", Phase.FINAL, 0.04, 0.05);
        Session session = bench.session("c");
        assertThat(session.stage()).isEqualTo(Stage.READ_LAST);
        assertThat(session.closing()).isNull();
        assertThat(Decisions.accept(session, "it is late").refusals())
                .singleElement()
                .satisfies(r -> assertThat(r.fact()).isEqualTo("there is no settled reading to accept"));
    }

    @Test
    void beforeAnythingIsInTheSentenceAsksForTrialPieces() {
        DemoWorkbench fresh = DemoWorkbench.open();
        Session session = fresh.session("c");
        assertThat(session.stage()).isEqualTo(Stage.TRIAL_PACK);
        assertThat(session.say()).contains("Say which pieces are in for the trial");
        assertThat(session.current()).isSameAs(session.trial());
        assertThat(Decisions.choose(session, List.of(), "").isOk()).isFalse();
        assertThat(Decisions.accept(session, "").isOk()).isFalse();
    }
}
