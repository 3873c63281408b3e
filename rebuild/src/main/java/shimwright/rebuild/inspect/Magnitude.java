package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * The sense of magnitude: a reading that no such part can have is asked about before it is judged, with what was
 * probably meant. Whoever stands behind it confirms it with a reason.
 */
public final class Magnitude {
    private static final String CONFIRM = "If it is right all the same, say why";
    private static final double INCH = 25.4;
    private static final double[] SLIPPED_POINT = {0.1, 10, 0.01, 100, 0.001, 1000};
    /** A reading further from the middle one than this many times the allowed spread was not read there. */
    private static final double STRAY = 50;
    /** A place of a mean is never so many times another; common practice, no source. */
    private static final double HIDDEN = 8;

    private final Measurable measured;
    private final Set<Refusal> asked = new LinkedHashSet<>();

    private Magnitude(Measurable measured) {
        this.measured = measured;
    }

    /**
     * What is asked about readings; empty where all are of a size that the part can have. Readings that are too few are
     * not asked about here.
     *
     * @param measured a check or wear limit of a kind other than NONE
     * @param readings as taken; whether they are confirmed does not matter
     */
    public static List<Refusal> asked(Measurable measured, GaugeReadings readings) {
        Outcome<Map<String, List<Double>>> pieces = GaugeReadings.byPiece(measured, readings.values());
        if (!pieces.isOk()) {
            return List.of();
        }
        Magnitude magnitude = new Magnitude(measured);
        magnitude.ask(pieces.orElseThrow(), readings.before());
        return List.copyOf(magnitude.asked);
    }

    private void ask(Map<String, List<Double>> pieces, List<Double> before) {
        if (measured.judgedOn() == Statistic.DIFFERENCE) {
            JudgedValue.of(measured, pieces, Optional.empty()).forEach(d -> size("", d.value(), expected(0)));
            return;
        }
        Map<String, Double> references = EarlierReadings.of(measured, before);
        int piece = 0;
        for (Map.Entry<String, List<Double>> one : pieces.entrySet()) {
            List<ExpectedSize> expected = expected(piece++);
            if (measured.judgedOn() == Statistic.RANGE) {
                size(one.getKey(), JudgedValue.range(one.getValue()), expected);
            } else {
                double reference = references.getOrDefault(one.getKey(), 0.0);
                one.getValue().forEach(r -> size(one.getKey(), measured.value(r) - reference, expected));
            }
            stray(one.getKey(), one.getValue());
            if (measured.judgedOn() == Statistic.MEAN) {
                ofMean(one.getKey(), one.getValue(), expected);
            }
        }
    }

    /** A reading of a mean that is an eighth of the middle one, or eight times it: the mean would hide that it slipped. */
    private void ofMean(String piece, List<Double> readings, List<ExpectedSize> expected) {
        boolean above = !expected.isEmpty() && expected.stream().allMatch(e -> e.low() >= 0);
        if (!above || readings.size() < 3) {
            return;
        }
        boolean least = expected.stream().allMatch(e -> e.low() > 0);
        double middle = measured.value(middle(readings));
        for (double reading : readings) {
            double ratio = measured.value(reading) / middle;
            if (middle > 0 && (ratio >= HIDDEN || (least && ratio > 0 && ratio <= 1 / HIDDEN))) {
                ask(
                        piece,
                        shown(reading) + " is far from the others of its mean, about " + shown(middle(readings)),
                        "Look at its digits and its unit");
            }
        }
    }

    private static double middle(List<Double> readings) {
        List<Double> sorted = new ArrayList<>(readings);
        sorted.sort(null);
        return sorted.get(sorted.size() / 2);
    }

    private List<ExpectedSize> expected(int piece) {
        if (measured instanceof Check check) {
            return ExpectedSize.of(check, piece);
        }
        if (measured instanceof LimitsAlone alone) {
            return ExpectedSize.of(alone);
        }
        return measured instanceof WearLimit wear
                ? ExpectedSize.of(wear).stream().toList()
                : List.of();
    }

    private void size(String piece, double value, List<ExpectedSize> expected) {
        boolean believed = expected.isEmpty() || expected.stream().anyMatch(e -> e.believes(value));
        boolean sound = expected.stream().anyMatch(e -> e.sound(value));
        double reading = measured.reading(value);
        boolean counted = !sound
                && expected.stream()
                        .filter(ExpectedSize::size)
                        .anyMatch(e -> fits(2 * reading, e) || fits(reading / 2, e));
        if (believed && !counted) {
            return;
        }
        String range = expected.stream()
                .map(e -> shown(e.low()) + " to " + shown(e.high()))
                .collect(Collectors.joining(" or "));
        ask(
                piece,
                shown(value) + " is no size that such a part has; " + range + " is expected",
                slip(reading, expected).orElse("Look at the part, the place and the gauge"));
    }

    private void ask(String piece, String fact, String hint) {
        asked.add(new Refusal(
                "values",
                measured.what() + (piece.isEmpty() ? "" : ", " + piece),
                fact,
                (hint.endsWith("?") ? hint : hint + ".") + " " + CONFIRM));
    }

    /** A reading far from its fellows, where only their spread is judged. */
    private void stray(String piece, List<Double> readings) {
        double allowed = measured.judgedOn() == Statistic.RANGE
                ? measured.stated().stream().map(Quantity::si).findFirst().orElse(0.0)
                : measured instanceof Check check
                        ? check.spread().map(Quantity::si).orElse(0.0)
                        : 0;
        if (allowed <= 0 || readings.size() < 3) {
            return;
        }
        double middle = middle(readings);
        for (double reading : readings) {
            if (Math.abs(measured.readingFactor() * (reading - middle)) > STRAY * allowed) {
                ask(
                        piece,
                        shown(reading) + " was not read where the others were, about " + shown(middle),
                        "Look at its digits");
            }
        }
    }

    private boolean fits(double reading, ExpectedSize expected) {
        return expected.sound(measured.value(reading));
    }

    private boolean fits(double reading, List<ExpectedSize> expected) {
        return expected.stream().anyMatch(e -> fits(reading, e));
    }

    /** What was probably meant. */
    private Optional<String> slip(double reading, List<ExpectedSize> expected) {
        if (reading < 0 && fits(-reading, expected)) {
            return Optional.of("Did you mean " + shown(-reading) + "? Look which way it counts");
        }
        for (double factor : SLIPPED_POINT) {
            if (fits(factor * reading, expected)) {
                return Optional.of("Did you mean " + shown(factor * reading) + "?");
            }
        }
        if (measured.kind().quantity() == Kind.LENGTH && fits(INCH * reading, expected)) {
            return Optional.of("In inches it would fit, as " + shown(INCH * reading) + ". Did the gauge read inches?");
        }
        if (measured.kind().quantity() == Kind.LENGTH && fits(reading / INCH, expected)) {
            return Optional.of("Did you mean " + shown(reading / INCH) + ", read in millimeters and taken for inches?");
        }
        if (fits(reading / 2, expected)) {
            return Optional.of("It is twice what is expected: counted double, both sides turned together, or a diameter"
                    + " for a radius?");
        }
        if (fits(2 * reading, expected)) {
            return Optional.of("It is half of what is expected: one side only, or a radius for a diameter?");
        }
        return Optional.empty();
    }

    private String shown(double si) {
        return Quantities.brief(si, measured.bareUnit());
    }
}
