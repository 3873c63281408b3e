package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.inspect.GaugeError;
import shimwright.rebuild.inspect.GaugeReadings;

/** Readings typed one behind the other. */
public final class TypedReadings {
    private static final int MOST = 24;
    private static final Pattern AND_ANOTHER = Pattern.compile("(?<=[.,]\\d{1,6}),\\s+(?=[-+.,\\d])");

    private TypedReadings() {}

    /**
     * Readings apart by a space, a semicolon or a new line; each may carry its unit.
     *
     * @param text as typed
     * @param bare the unit of a bare number
     * @param place for a refusal
     * @return SI values; refused with none, with more than 24, or where one cannot be read
     */
    public static Outcome<List<Double>> parse(String text, Kind kind, MeasureUnit bare, String place) {
        if (text.isBlank()) {
            return Outcome.refused(new Refusal(
                    "values", place, "nothing typed", "Type the readings, apart by a space or a semicolon"));
        }
        List<String> typed = parts(text);
        if (typed.size() > MOST) {
            return Outcome.refused(
                    new Refusal("values", place, typed.size() + " readings in one line", "Type at most " + MOST));
        }
        List<Outcome<Double>> values = new ArrayList<>();
        for (String part : typed) {
            String at = place + ", reading " + (values.size() + 1);
            values.add(Quantities.parse(part, kind, bare, at, range(kind))
                    .placed("values", at)
                    .map(ParsedQuantity::si));
        }
        return Outcome.all(values);
    }

    /** The texts of readings typed one behind the other; a comma with a blank behind it parts two as well, also behind a decimal one. */
    static List<String> parts(String text) {
        String apart = AND_ANOTHER.matcher(text).replaceAll(" ");
        String[] parts =
                apart.contains(";") || apart.contains("\n") ? apart.split("[;\n]+") : apart.split("\\s+(?=[-+.,\\d])");
        return Stream.of(parts)
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /**
     * Readings with the gauge that was in the hand, or the one that the file names, where the shop has it.
     *
     * @return refused with a gauge typed that the shop has not, or not any more: its uncertainty would count as none
     */
    static Outcome<GaugeReadings> read(List<Double> values, String gauge, String usual, ActContext around) {
        GaugeReadings readings = GaugeReadings.of(values);
        Optional<GaugeReadings> with = around.floor()
                .shop()
                .inUse(gauge.isBlank() ? usual : gauge)
                .map(used -> readings.with(GaugeError.of(used)));
        return with.isEmpty() && !gauge.isBlank()
                ? Outcome.refused(new Refusal(
                        "gauge", "gauge " + gauge, "this shop has no such gauge in use", "Look at the list of gauges"))
                : Outcome.ok(with.orElse(readings));
    }

    /** What was said beside a reading, and why an unlikely size is right. */
    static String remark(String words, String confirmed) {
        return confirmed.isBlank() ? words : (words + " Confirmed: " + confirmed).strip();
    }

    /** Sizes a bench can meet; what lies beyond is a slip of the point or the unit. */
    static Range range(Kind kind) {
        return switch (kind) {
            case LENGTH -> new Range(-2, 2);
            case TORQUE -> new Range(-5_000, 5_000);
            case FORCE -> new Range(-200_000, 200_000);
            case PRESSURE -> new Range(-1e6, 1e7);
            default -> new Range(-1e6, 1e6);
        };
    }

    /** Adds the reasons of something refused, and gives its value or a stand-in that is never kept. */
    static <T> T take(Outcome<T> outcome, List<Refusal> refusals, T standIn) {
        if (outcome instanceof Outcome.Ok<T> ok) {
            return ok.value();
        }
        refusals.addAll(outcome.refusals());
        return standIn;
    }
}
