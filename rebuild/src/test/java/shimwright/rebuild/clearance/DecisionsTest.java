package shimwright.rebuild.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.rebuild.demo.DemoWorkbench.MM;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.unit.model.Step.Phase;

class DecisionsTest {
    private final DemoWorkbench bench = DemoWorkbench.open();

    /** The trial of the demo source on clearance c: 0.2783 on d52-10. */
    private Session read() {
        bench.packIn("c", Phase.TRIAL, "sI=d52-10");
        bench.round("c", Phase.TRIAL, 0.24, 0.32);
        bench.round("c", Phase.TRIAL, 0.25, 0.31);
        bench.round("c", Phase.TRIAL, 0.24, 0.31);
        return bench.session("c");
    }

    private PackChosen choose(Session session, String because, String... tags) {
        return Decisions.choose(session, bench.pieces(tags), because).orElseThrow();
    }

    private List<String> refused(Session session, String because, String... tags) {
        return Decisions.choose(session, bench.pieces(tags), because).refusals().stream()
                .map(Refusal::sentence)
                .toList();
    }

    @Test
    void aPackThatLeavesTheNominalOutsideNeedsAReasonAndItsVerdictStands() {
        Session session = read();
        // 0.797 + 0.2783 - (0.303 + 0.602) = 0.17: out
        assertThat(refused(session, "", "d52-02", "d52-08"))
                .containsExactly("input shaft end play: this pack leaves the clearance outside its limits. "
                        + "Take another pack, or say why you take this one; it stands on the record.");
        PackChosen pack = choose(session, "only for the trial run", "d52-02", "d52-08");
        assertThat(pack.verdict()).isEqualTo(Verdict.OUT);
        assertThat(pack.overruledBecause()).isEqualTo("only for the trial run");
        assertThat(pack.predicted())
                .isCloseTo((0.797 + 0.835 / 3 - 0.9083333333 / 3 - 1.807 / 3) * MM, within(0.0005 * MM));
    }

    @Test
    void outsideIsAlsoSaidWithItsRealProbabilityAndItsWorking() {
        Session session = read();
        // just outside: 0.797 + 0.27833 - 1.0607 = 0.0147 under 0.02
        PackChosen pack = choose(session, "nothing nearer", "d52-02", "d52-10");
        double thickness =
                bench.piece("d52-02").thickness() + bench.piece("d52-10").thickness();
        Advice advice = Objects.requireNonNull(session.advice());
        assertThat(pack.predicted())
                .isCloseTo(advice.measured() + bench.piece("d52-10").thickness() - thickness, within(1e-12));
        assertThat(pack.verdict()).isEqualTo(Verdict.OUT);
        double nu = Objects.requireNonNull(session.trial().measured()).nu();
        assertThat(pack.probability())
                .isCloseTo(
                        Conformity.probability(pack.predicted(), pack.u(), nu, new Limits(0.02 * MM, 0.08 * MM)),
                        within(0.005));
        assertThat(pack.working()).extracting(Line::value).contains(pack.predicted(), pack.u(), pack.probability());
    }

    @Test
    void aPackThatIsInsideButNotProvenNeedsAReasonToo() {
        Session session = read();
        PackOffer doubtful = Objects.requireNonNull(
                        Objects.requireNonNull(session.advice()).result())
                .offers()
                .stream()
                .filter(offer -> offer.verdict() == Verdict.NOT_PROVEN)
                .findFirst()
                .orElseThrow();
        String[] tags = doubtful.pieces().toArray(String[]::new);
        assertThat(refused(session, "", tags))
                .singleElement()
                .satisfies(s -> assertThat(s).contains("this pack is not proven to leave the clearance within"));
        PackChosen pack = choose(session, "will be read again", tags);
        assertThat(pack.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        assertThat(pack.predicted()).isEqualTo(doubtful.predicted());
        assertThat(pack.probability()).isEqualTo(doubtful.probability());
    }

    @Test
    void theSamePiecesGiveTheSameNumbersAsTheOffer() {
        Session session = read();
        for (PackOffer offer : Objects.requireNonNull(
                        Objects.requireNonNull(session.advice()).result())
                .offers()) {
            PackChosen pack = choose(session, "tried", offer.pieces().toArray(String[]::new));
            assertThat(pack.predicted()).isEqualTo(offer.predicted());
            assertThat(pack.u()).isEqualTo(offer.u());
            assertThat(pack.probability()).isEqualTo(offer.probability());
            assertThat(pack.verdict()).isEqualTo(offer.verdict());
        }
    }

    @Test
    void aReasonTypedWithoutNeedIsNotAnOverruling() {
        assertThat(choose(read(), "looks good", "d52-03", "d52-09").overruledBecause())
                .isEmpty();
    }

    @Test
    void tooFewAndTooManyPiecesAreRefused() {
        Session session = read();
        assertThat(refused(session, "no"))
                .containsExactly("between the rear cup and the retainer plate: 0 pieces chosen, 1 to 2 can go in. "
                        + "Tap one of the packs on offer, or choose pieces.");
        assertThat(refused(session, "no", "d52-01", "d52-02", "d52-03"))
                .singleElement()
                .satisfies(s -> assertThat(s).contains("3 pieces chosen, 1 to 2 can go in"));
    }

    @Test
    void onePieceTwiceIsRefused() {
        assertThat(refused(read(), "there is a second", "d52-06", "d52-06")).isNotEmpty();
    }

    @Test
    void piecesThatDoNotLieInTheDrawerForThisPlaceAreRefused() {
        Session session = read();
        assertThat(refused(session, "it will do", "d52-07", "d80-01"))
                .containsExactly(
                        "piece d52-07: it does not lie ready in the drawer for this place. "
                                + "Take one that is on offer, or measure it again first.",
                        "piece d80-01: it does not lie ready in the drawer for this place. "
                                + "Take one that is on offer, or measure it again first.");
    }

    @Test
    void thePiecesInNowCanBeChosenAgainAndAreOnOfferAgain() {
        bench.keep(choose(read(), "", "d52-03", "d52-09"));
        Session session = bench.session("c");
        assertThat(Objects.requireNonNull(
                                Objects.requireNonNull(session.advice()).result())
                        .offers()
                        .get(0)
                        .pieces())
                .containsExactly("d52-03", "d52-09");
        assertThat(choose(session, "", "d52-03", "d52-09").verdict()).isEqualTo(Verdict.IN);
    }

    @Test
    void nothingIsAcceptedTwice() {
        bench.keep(choose(read(), "", "d52-03", "d52-09"));
        for (int i = 0; i < 3; i++) {
            bench.round("c", Phase.FINAL, 0.04, 0.05);
        }
        Entry.ClearanceAccepted accepted =
                Decisions.accept(bench.session("c"), "").orElseThrow();
        bench.lay(accepted);
        assertThat(Decisions.accept(bench.session("c"), "").isOk()).isFalse();
    }
}
