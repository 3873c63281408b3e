package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about a clearance. */
final class ClearanceRules {
    private ClearanceRules() {}

    private static List<Refusal> known(Workbench bench, String clearance) {
        return bench.clearance(clearance).isPresent()
                ? List.of()
                : Rules.one(
                        "clearance",
                        "clearance " + clearance,
                        "this unit has no such clearance",
                        "Go back to the clearances");
    }

    static List<Refusal> packIn(Workbench bench, Entry.PackIn e) {
        Optional<Clearance> clearance = bench.clearance(e.clearance());
        if (clearance.isEmpty()) {
            return known(bench, e.clearance());
        }
        List<Refusal> refusals = new ArrayList<>();
        Set<String> places =
                clearance.get().positions().stream().map(Position::id).collect(Collectors.toSet());
        e.pieces().forEach((place, pieces) -> {
            if (!places.contains(place)) {
                refusals.add(new Refusal(
                        "in." + place,
                        "place " + place,
                        "this clearance has no such place",
                        "Go back to the clearance"));
            }
            pieces.forEach(piece -> free(bench, piece, "in." + place).ifPresent(refusals::add));
        });
        return refusals;
    }

    static List<Refusal> chosen(Workbench bench, Entry.PackChosen e) {
        Optional<Clearance> clearance = bench.clearance(e.clearance());
        if (clearance.isEmpty()) {
            return known(bench, e.clearance());
        }
        List<Refusal> refusals = new ArrayList<>();
        if (clearance.get().positions().stream().map(Position::id).noneMatch(e.position()::equals)) {
            refusals.add(new Refusal(
                    "at." + e.position(),
                    "place " + e.position(),
                    "this clearance has no such place",
                    "Go back to the clearance"));
        }
        e.pieces().forEach(piece -> free(bench, piece, "at." + e.position()).ifPresent(refusals::add));
        return refusals;
    }

    /** A piece must be known, whole and not in another unit. */
    private static Optional<Refusal> free(Workbench bench, PieceIn in, String key) {
        Shop.Piece piece = bench.shop().pieces().get(in.piece());
        String place = "piece " + in.piece();
        if (piece == null) {
            return Optional.of(new Refusal(key, place, "there is no such piece in the drawer", "Look at its tag"));
        }
        String number = bench.job().opened().number();
        if (!piece.freeFor(number)) {
            String fact = piece.takenBy() != null && !piece.takenBy().equals(number)
                    ? "it is in unit " + piece.takenBy()
                    : "it left the drawer: " + piece.goneBecause();
            return Optional.of(new Refusal(key, place, fact, "Take another piece"));
        }
        return Optional.empty();
    }

    /** One piece cannot be chosen for two places of one unit, as it is once the whole act is kept: two places may swap. */
    static List<Refusal> twice(Workbench bench, List<? extends Entry.OfJob> act) {
        Map<String, List<PieceIn>> chosen = new LinkedHashMap<>();
        for (Entry.OfJob entry : act) {
            if (entry instanceof Entry.PackChosen e) {
                chosen.put(e.position(), e.pieces());
            }
        }
        List<Refusal> refusals = new ArrayList<>();
        chosen.forEach((place, pieces) ->
                pieces.forEach(piece -> elsewhere(bench, place, chosen, piece).ifPresent(refusals::add)));
        return refusals;
    }

    private static Optional<Refusal> elsewhere(
            Workbench bench, String at, Map<String, List<PieceIn>> chosen, PieceIn piece) {
        return bench.unit().positions().stream()
                .filter(place -> !place.equals(at))
                .filter(place -> pack(bench, chosen, place).stream()
                        .anyMatch(p -> p.piece().equals(piece.piece())))
                .findFirst()
                .map(place -> new Refusal(
                        "at." + at,
                        "piece " + piece.piece(),
                        "it is chosen for " + bench.unit().position(place).where(),
                        "Take another, or choose that place anew first"));
    }

    private static List<PieceIn> pack(Workbench bench, Map<String, List<PieceIn>> chosen, String place) {
        List<PieceIn> anew = chosen.get(place);
        return anew != null
                ? anew
                : bench.job().packIn(place).map(said -> said.what().pieces()).orElse(List.of());
    }

    static List<Refusal> round(Workbench bench, Entry.RoundRead e) {
        List<Refusal> refusals = new ArrayList<>(early(bench, e.clearance(), e.phase()));
        if (e.values().isEmpty() || e.values().stream().anyMatch(value -> !Double.isFinite(value))) {
            refusals.add(new Refusal("v", "reading", "a reading is not a number", "Read it again"));
        }
        return refusals;
    }

    static List<Refusal> accepted(Workbench bench, Entry.ClearanceAccepted e) {
        List<Refusal> early = early(bench, e.clearance(), e.phase());
        if (!early.isEmpty()) {
            return early;
        }
        return bench.session(e.clearance()).closing() == null
                ? Rules.one("", "clearance " + e.clearance(), "there is no settled reading to accept", "Read it first")
                : List.of();
    }

    /** A reading taken before the steps that lead to it would tell of another state of the unit. */
    private static List<Refusal> early(Workbench bench, String clearance, Phase phase) {
        Set<String> done = bench.job().stepsDone();
        List<Step> reading = bench.unit().stepsReading(clearance, phase).stream()
                .filter(step -> bench.step(step.id()).isPresent())
                .toList();
        if (reading.isEmpty() || reading.stream().anyMatch(step -> bench.order().free(step.id(), done))) {
            return known(bench, clearance);
        }
        String names = StepRules.named(
                bench.order().waitsFor(reading.get(0).id(), done).keySet());
        return Rules.one(
                "",
                "clearance " + clearance,
                "its reading waits for " + names,
                "Do these first, or mark them done if they are");
    }
}
