package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.rebuild.unit.model.Measurable;

/**
 * A piece beside its fellows: a play that a worn part could have, and that is a tenth or a twenty-fifth of what all its fellows have,
 * was rather read in another unit or with a slipped point. Limits of a size see that by themselves; limits of a play do not.
 */
public final class FellowPieces {
    private static final double INCH = 25.4;
    private static final double[] SLIPS = {10, 100, 1000, INCH};
    /** So near to its fellows once the slip is taken out; common practice, no source. */
    private static final double NEAR = 0.25;

    private FellowPieces() {}

    /**
     * What is asked, by piece; nothing of fewer than three pieces, which have no middle to be far from.
     *
     * @param read what was read of each piece in one go
     */
    public static Map<JudgedPiece, Refusal> asked(Measurable measured, Map<JudgedPiece, GaugeReadings> read) {
        Map<JudgedPiece, Double> values = new LinkedHashMap<>();
        read.forEach((piece, readings) -> value(measured, readings).ifPresent(value -> values.put(piece, value)));
        Map<JudgedPiece, Refusal> asked = new LinkedHashMap<>();
        if (values.size() < 3) {
            return asked;
        }
        double middle = middle(values);
        values.forEach((piece, value) -> {
            slip(measured, value, middle)
                    .ifPresent(meant -> asked.put(piece, question(measured, piece, value, middle, meant)));
        });
        return asked;
    }

    private static Refusal question(Measurable measured, JudgedPiece piece, double value, double middle, String meant) {
        return new Refusal(
                "values",
                piece.name() + ", " + measured.what(),
                shown(measured, value) + " is far from its fellows, about " + shown(measured, middle),
                meant + " If it is right all the same, say why");
    }

    private static Optional<Double> value(Measurable measured, GaugeReadings readings) {
        Outcome<Map<String, List<Double>>> pieces = GaugeReadings.byPiece(measured, readings.values());
        return pieces.isOk()
                ? Optional.of(JudgedValue.of(measured, pieces.orElseThrow(), Optional.empty()).stream()
                        .mapToDouble(JudgedValue::value)
                        .average()
                        .orElseThrow())
                : Optional.empty();
    }

    /** The middle one of all, which a single slip among three or more does not move away from its fellows. */
    private static double middle(Map<JudgedPiece, Double> values) {
        List<Double> sorted = new ArrayList<>(values.values());
        sorted.sort(null);
        return sorted.get(sorted.size() / 2);
    }

    /** What was probably meant. */
    private static Optional<String> slip(Measurable measured, double value, double middle) {
        if (value != 0 && near(-value, middle)) {
            return Optional.of("Did you mean " + shown(measured, -value) + "? Look which way it counts.");
        }
        for (double factor : SLIPS) {
            boolean inch = factor == INCH;
            if (inch && measured.kind().quantity() != Kind.LENGTH) {
                continue;
            }
            if (near(value * factor, middle)) {
                return Optional.of(
                        inch
                                ? "In inches it would fit, as " + shown(measured, value * factor)
                                        + ". Did the gauge read inches?"
                                : "Did you mean " + shown(measured, value * factor) + "?");
            }
            if (near(value / factor, middle)) {
                return Optional.of(
                        inch
                                ? "Did you mean " + shown(measured, value / factor)
                                        + ", read in millimeters and taken for inches?"
                                : "Did you mean " + shown(measured, value / factor) + "?");
            }
        }
        return Optional.empty();
    }

    private static boolean near(double value, double middle) {
        return middle != 0 && Math.abs(value / middle - 1) <= NEAR;
    }

    private static String shown(Measurable measured, double si) {
        return Quantities.brief(si, measured.bareUnit());
    }
}
