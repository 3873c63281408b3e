package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PackIn;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step.Phase;

/** The person decides: pieces are named, rounds read, a pack chosen, a clearance accepted. The entries carry the working they were decided on. */
public final class Decisions {
    private Decisions() {}

    /**
     * The entry for a pack.
     *
     * @param session the session; there must be a reading of it that is proof
     * @param pieces the pieces chosen
     * @param because why, where the pack is not proven to come out in; may be empty for one that is
     * @return refused without a settled reading, after the one-way step that closes over the pack, with too few or too many
     *     pieces, with pieces that do not lie even and free in the drawer of that place, or unproven without a reason
     */
    public static Outcome<PackChosen> choose(Session session, List<PieceIn> pieces, String because) {
        Advice advice = session.advice();
        if (advice == null) {
            Measured measured = session.current().measured();
            String more = measured == null ? "" : measured.advice();
            return Outcome.refused(Refusal.at(
                    session.clearance().name(),
                    session.trialWanted()
                            ? "the trial reading is not settled, so it proves nothing yet"
                            : "nothing is read yet, so no pack can be judged",
                    more));
        }
        List<Refusal> faults = faults(session, advice, pieces);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Outcome<Worked<PackOffer>> judged = PackAdviser.judge(session.clearance(), advice, pieces);
        return judged.flatMap(worked -> chosen(session.clearance(), advice, pieces, worked, because));
    }

    private static List<Refusal> faults(Session session, Advice advice, List<PieceIn> pieces) {
        Position position = advice.position();
        PackChosen now = session.chosen().get(position.id());
        boolean other = now == null || !now.pieces().equals(pieces);
        if (!session.change().open() && other) {
            return List.of(Refusal.at(
                    session.clearance().name(),
                    session.change().closedBy(),
                    "Undo " + String.join(", ", session.change().undoFirst()) + " first"));
        }
        Optional<Refusal> count = count(position, pieces);
        if (count.isPresent()) {
            return List.of(count.get());
        }
        return pieces.stream()
                .filter(piece -> advice.drawer().stream().noneMatch(p -> p.id().equals(piece.piece())))
                .map(piece -> new Refusal(
                        "pack",
                        "piece " + piece.piece(),
                        "it does not lie ready in the drawer for this place",
                        "Take one that is on offer, or measure it again first"))
                .toList();
    }

    private static Optional<Refusal> count(Position position, List<PieceIn> pieces) {
        if (pieces.size() >= position.fewest() && pieces.size() <= position.most()) {
            return Optional.empty();
        }
        String wanted = position.fewest() == position.most()
                ? String.valueOf(position.most())
                : position.fewest() + " to " + position.most();
        return Optional.of(new Refusal(
                "pack",
                position.where(),
                pieces.size() + (pieces.size() == 1 ? " piece" : " pieces") + " chosen, " + wanted + " can go in",
                "Tap one of the packs on offer, or choose pieces"));
    }

    /**
     * The entry that names the pieces that are in for a reading. It may name them anew: what was read with other pieces then
     * no longer counts. Places left out keep the shim that the job has fitted there.
     *
     * @param phase which reading
     * @param pieces by position; an empty list says that none is in
     * @param shop the drawer
     * @param number the job's number: its own pieces may be in
     * @return refused with a place that the clearance has not, a piece that is not in the drawer or not of the place's family,
     *     a piece in two places, or places left empty that need one; all faults at once
     */
    public static Outcome<PackIn> packIn(
            Session session, Phase phase, Map<String, List<PieceIn>> pieces, Shop shop, String number) {
        List<Refusal> faults = new ArrayList<>();
        Map<String, Position> places = new LinkedHashMap<>();
        session.clearance().positions().forEach(p -> places.put(p.id(), p));
        Set<String> seen = new HashSet<>();
        pieces.forEach((id, in) -> {
            Position place = places.get(id);
            if (place == null) {
                faults.add(new Refusal(
                        "in." + id, "place " + id, "this clearance has no such place", "Look at its places"));
            } else if (!in.isEmpty() || place.fewest() == 0) {
                in.forEach(piece -> named(place, piece, shop, number).ifPresent(faults::add));
                in.stream()
                        .filter(piece -> !seen.add(piece.piece()))
                        .forEach(piece -> faults.add(new Refusal(
                                "in." + id,
                                "piece " + piece.piece(),
                                "it is named twice",
                                "A piece can lie in one place only")));
            }
        });
        for (Position place : phase == Phase.TRIAL ? places.values() : List.<Position>of()) {
            List<PieceIn> in = pieces.get(place.id());
            boolean named = in != null && (!in.isEmpty() || place.fewest() == 0);
            if (!named && session.toName().contains(place.id())) {
                faults.add(new Refusal(
                        "in." + place.id(),
                        place.where(),
                        "it is not said which piece is in",
                        "Say which pieces are in, then read"));
            }
        }
        Position own = session.clearance().positions().get(0);
        if (phase != Phase.TRIAL
                && own.fewest() > 0
                && pieces.getOrDefault(own.id(), List.of()).isEmpty()) {
            faults.add(new Refusal(
                    "in." + own.id(),
                    own.where(),
                    "it is not said which piece is in",
                    "Say which piece is in, then read"));
        }
        return faults.isEmpty()
                ? Outcome.ok(new PackIn(session.clearance().id(), phase, pieces))
                : Outcome.refused(faults);
    }

    private static Optional<Refusal> named(Position place, PieceIn in, Shop shop, String number) {
        Shop.Piece piece = shop.pieces().get(in.piece());
        String key = "in." + place.id();
        String at = "piece " + in.piece();
        if (piece == null) {
            return Optional.of(new Refusal(key, at, "there is no such piece in the drawer", "Look at its tag"));
        }
        if (!piece.family().equals(place.family())) {
            return Optional.of(new Refusal(
                    key, at, "it is of family " + piece.family() + ", here goes " + place.family(), "Look at its tag"));
        }
        return piece.freeFor(number)
                ? Optional.empty()
                : Optional.of(new Refusal(
                        key,
                        at,
                        piece.goneBecause() == null
                                ? "it is in unit " + piece.takenBy()
                                : "it is gone: " + piece.goneBecause(),
                        "Take another piece"));
    }

    /**
     * The entry for one round of readings, with the gauge that was in the hand.
     *
     * @param phase which reading
     * @param gauges id of the gauge, of a difference one for each length
     * @param values as read, m
     * @param typed as typed
     * @return refused with a gauge that the shop has not or that is too coarse for these limits, with other than the numbers
     *     that one round has, or with a number beyond the range of its gauge
     */
    public static Outcome<RoundRead> round(
            Session session, Phase phase, List<String> gauges, Shop shop, List<Double> values, String typed) {
        Clearance clearance = session.clearance();
        List<Refusal> faults = new ArrayList<>();
        List<Gauge> used = new ArrayList<>();
        for (String gauge : gauges) {
            shop.inUse(gauge).ifPresentOrElse(used::add, () -> faults.add(GaugeChoice.unknown(gauge)));
        }
        if (gauges.size() != clearance.gauges(phase).size()) {
            faults.add(
                    new Refusal("gauge", "gauge", "it is not said with which gauge each length was read", "Name both"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        GaugeChoice.tooCoarse(clearance, GaugeChoice.together(used))
                .ifPresent(fact -> faults.add(new Refusal(
                        "gauge",
                        "gauge " + String.join(" and ", gauges),
                        fact.substring(0, fact.indexOf(". Take")),
                        "Take a finer gauge")));
        if (values.size() != clearance.numbers()) {
            faults.add(new Refusal(
                    "v",
                    "round",
                    values.size() + " of " + clearance.numbers() + " numbers",
                    "Read every one of them once"));
        }
        for (int i = 0; i < values.size(); i++) {
            Gauge gauge = used.get(Math.min(i, used.size() - 1));
            boolean low = clearance.method() != Method.SERIES && values.get(i) < 0;
            if (low || Math.abs(values.get(i)) > gauge.range()) {
                faults.add(new Refusal(
                        "v",
                        "round",
                        "a reading lies outside what gauge " + gauge.id() + " can show",
                        "Look at the comma, or take another gauge"));
            }
        }
        if (clearance.method() == Method.FEELER && values.size() == 2 && values.get(0) > values.get(1)) {
            faults.add(new Refusal(
                    "v",
                    "feelers",
                    "the one that enters is thicker than the one that does not",
                    "Type the one that enters first"));
        }
        return faults.isEmpty()
                ? Outcome.ok(new RoundRead(
                        clearance.id(),
                        phase,
                        String.join(" and ", new LinkedHashSet<>(gauges)),
                        values,
                        typed,
                        used.stream().map(GaugeChoice::then).toList()))
                : Outcome.refused(faults.stream().distinct().toList());
    }

    private static Outcome<PackChosen> chosen(
            Clearance clearance, Advice advice, List<PieceIn> pieces, Worked<PackOffer> worked, String because) {
        PackOffer offer = worked.result();
        boolean waits = advice.result() == null && !advice.refusals().isEmpty();
        if (waits && because.isBlank()) {
            return Outcome.refused(advice.refusals());
        }
        if (offer.verdict() != Verdict.IN && because.isBlank()) {
            return Outcome.refused(new Refusal(
                    "because",
                    clearance.name(),
                    offer.verdict() == Verdict.OUT
                            ? "this pack leaves the clearance outside its limits"
                            : "this pack is not proven to leave the clearance within its limits",
                    "Take another pack, or say why you take this one; it stands on the record"));
        }
        return Outcome.ok(new PackChosen(
                clearance.id(),
                advice.position().id(),
                pieces,
                offer.predicted(),
                offer.u(),
                offer.probability(),
                offer.verdict(),
                offer.verdict() == Verdict.IN && !waits ? "" : because,
                worked.working(),
                new Basis(
                                clearance.lower(),
                                clearance.upper(),
                                clearance.aim(),
                                offer.nu(),
                                offer.predicted() + clearance.growth(),
                                PackAdviser.RULE)
                        .kept()));
    }

    /**
     * The entry that accepts the clearance.
     *
     * @param session the session; its last reading must have settled
     * @param because why, where it is not proven within limits or differs from the prediction; may be empty otherwise
     * @return refused without a settled reading, or unproven and without a reason
     */
    public static Outcome<ClearanceAccepted> accept(Session session, String because) {
        Closing closing = session.closing();
        if (closing == null || (session.stage() != Stage.ACCEPT && session.stage() != Stage.ACCEPT_AGAIN)) {
            String more = Optional.ofNullable(session.current().measured())
                    .map(Measured::advice)
                    .orElse("");
            return Outcome.refused(
                    Refusal.at(session.clearance().name(), "there is no settled reading to accept", more));
        }
        boolean unproven = closing.verdict() != Verdict.IN || !closing.finding().isBlank();
        if (unproven && because.isBlank()) {
            return Outcome.refused(new Refusal(
                    "because",
                    session.clearance().name(),
                    closing.verdict() == Verdict.IN ? closing.finding() : closing.advice(),
                    "Find the cause, or say why you accept it; it stands on the record"));
        }
        Clearance clearance = session.clearance();
        return Outcome.ok(new ClearanceAccepted(
                clearance.id(),
                closing.phase(),
                closing.value(),
                closing.u(),
                closing.probability(),
                closing.verdict(),
                closing.predicted(),
                closing.finding(),
                unproven ? because : "",
                closing.working(),
                new Basis(
                                clearance.lower(),
                                clearance.upper(),
                                clearance.aim(),
                                closing.nu(),
                                closing.hot(),
                                closing.rule())
                        .kept()));
    }
}
