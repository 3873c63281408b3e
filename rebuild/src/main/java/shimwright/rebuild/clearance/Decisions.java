package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;

/** The person decides: a pack is chosen, a clearance accepted. The entry carries the working it was decided on. */
public final class Decisions {
    private Decisions() {}

    /**
     * The entry for a pack.
     *
     * @param session the session; its trial reading must have settled
     * @param pieces the pieces chosen
     * @param because why, where the pack is not proven to come out in; may be empty for one that is
     * @return refused without a settled reading, with too few or too many pieces, with pieces that do not lie even and
     *     free in the drawer of that place, or unproven without a reason
     */
    public static Outcome<PackChosen> choose(Session session, List<PieceIn> pieces, String because) {
        Advice advice = session.advice();
        if (advice == null) {
            Measured measured = session.trial().measured();
            String more = measured == null ? "" : measured.advice();
            return Outcome.refused(
                    session.clearance().name(), "the trial reading is not settled, so it proves nothing yet", more);
        }
        Position position = advice.position();
        if (pieces.size() < position.fewest() || pieces.size() > position.most()) {
            String wanted = position.fewest() == position.most()
                    ? String.valueOf(position.most())
                    : position.fewest() + " to " + position.most();
            return Outcome.refused(
                    position.where(),
                    pieces.size() + (pieces.size() == 1 ? " piece" : " pieces") + " chosen, " + wanted + " can go in",
                    "Tap one of the packs on offer, or choose pieces");
        }
        List<Refusal> strange = pieces.stream()
                .filter(piece -> advice.drawer().stream().noneMatch(p -> p.id().equals(piece.piece())))
                .map(piece -> new Refusal(
                        "piece " + piece.piece(),
                        "it does not lie ready in the drawer for this place",
                        "Take one that is on offer, or measure it again first"))
                .toList();
        if (!strange.isEmpty()) {
            return Outcome.refused(strange);
        }
        Outcome<Worked<PackOffer>> judged = Adviser.judge(session.clearance(), advice, session.trial(), pieces);
        return judged.flatMap(worked -> chosen(session.clearance(), advice, pieces, worked, because));
    }

    private static Outcome<PackChosen> chosen(
            Clearance clearance, Advice advice, List<PieceIn> pieces, Worked<PackOffer> worked, String because) {
        PackOffer offer = worked.result();
        if (offer.verdict() != Verdict.IN && because.isBlank()) {
            return Outcome.refused(
                    clearance.name(),
                    offer.verdict() == Verdict.OUT
                            ? "this pack leaves the clearance outside its limits"
                            : "this pack is not proven to leave the clearance within its limits",
                    "Take another pack, or say why you take this one; it stands on the record");
        }
        return Outcome.ok(new PackChosen(
                clearance.id(),
                advice.position().id(),
                pieces,
                offer.predicted(),
                offer.u(),
                offer.probability(),
                offer.verdict(),
                offer.verdict() == Verdict.IN ? "" : because,
                worked.working()));
    }

    /**
     * The entry that accepts the clearance.
     *
     * @param session the session; its last reading must have settled
     * @param because why, where it is not proven in or differs from the prediction; may be empty otherwise
     * @return refused without a settled reading, or with doubt and without a reason
     */
    public static Outcome<ClearanceAccepted> accept(Session session, String because) {
        Closing closing = session.closing();
        if (closing == null || (session.stage() != Stage.ACCEPT && session.stage() != Stage.ACCEPT_AGAIN)) {
            String more = Optional.ofNullable(session.current().measured())
                    .map(Measured::advice)
                    .orElse("");
            return Outcome.refused(session.clearance().name(), "there is no settled reading to accept", more);
        }
        boolean doubt = closing.verdict() != Verdict.IN || !closing.finding().isBlank();
        if (doubt && because.isBlank()) {
            return Outcome.refused(
                    session.clearance().name(),
                    closing.verdict() == Verdict.IN ? closing.finding() : closing.advice(),
                    "Find the cause, or say why you accept it; it stands on the record");
        }
        return Outcome.ok(new ClearanceAccepted(
                session.clearance().id(),
                closing.phase(),
                closing.value(),
                closing.u(),
                closing.probability(),
                closing.verdict(),
                closing.predicted(),
                closing.finding(),
                doubt ? because : "",
                closing.working()));
    }
}
