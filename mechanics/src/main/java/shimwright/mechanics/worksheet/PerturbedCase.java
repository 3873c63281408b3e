package shimwright.mechanics.worksheet;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.working.Worked;

/** A case and the places where its uncertainties move it. */
final class PerturbedCase<C extends Record, R extends Record> {
    private record Place(List<Object> steps, double value, Range range) {}

    private final Worksheet<C, R> sheet;
    private final C value;
    private final Map<String, Place> places = new HashMap<>();

    PerturbedCase(Worksheet<C, R> sheet, C value, List<Influence> influences) {
        this.sheet = sheet;
        this.value = value;
        List<SheetField> inputs = sheet.inputs();
        influences.forEach(influence -> influence
                .moves()
                .keySet()
                .forEach(path -> places.computeIfAbsent(
                        path,
                        at -> new Place(
                                Records.steps(at),
                                Records.number(value, at),
                                Fields.at(inputs, at).range()))));
    }

    List<SheetField> outputs() {
        return sheet.outputs();
    }

    /**
     * The result with inputs moved by so much, SI, by path; refused where one leaves its range or the sheet refuses.
     *
     * @throws CancellationException where the thread was interrupted: nobody waits for the result any more
     */
    Outcome<R> by(Map<String, Double> moves) {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("nobody waits for " + sheet.name() + " any more");
        }
        C at = value;
        for (Map.Entry<String, Double> move : moves.entrySet()) {
            Place place = places.get(move.getKey());
            if (place == null) {
                throw new IllegalArgumentException("nothing moves " + move.getKey());
            }
            double to = place.value() + move.getValue();
            if (!place.range().holds(to)) {
                return Outcome.refused(Refusal.of(move.getKey(), "leaves its range", ""));
            }
            at = Records.with(at, place.steps(), to, sheet.caseType());
        }
        return sheet.compute().apply(at).map(Worked::result);
    }

    /** Moved by so many standard uncertainties of one influence; empty where refused. */
    Optional<R> along(Influence influence, double times) {
        Map<String, Double> moves = new LinkedHashMap<>();
        influence.moves().forEach((path, u) -> moves.put(path, times * u));
        Outcome<R> outcome = by(moves);
        return outcome.isOk() ? Optional.of(outcome.orElseThrow()) : Optional.empty();
    }
}
