package shimwright.rebuild.unit.fault;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.unit.model.Quantity;

/**
 * Quantities as a unit file writes them: {@code 0.02 mm}; the same twice, {@code 0.50 mm (0.0197 in)}, which must agree
 * to the digits written; several with one unit, {@code 92 115 mm}.
 */
public final class QuantityText {
    private static final String DIGITS = "[+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d{1,3})?";
    private static final Pattern ONE = Pattern.compile("(" + DIGITS + ")\\s*(\\S.*)?");
    private static final Pattern TWICE = Pattern.compile("([^()]+?)\\s*\\(([^()]+)\\)");
    private static final Pattern NUMBER = Pattern.compile(DIGITS);

    /** Most quantities of a file stand in it again and again, and in every other; beyond so many all are forgotten. */
    private static final int MOST = 4096;

    private static final Map<Typed, Outcome<Written>> KNOWN = new ConcurrentHashMap<>();

    private record Typed(String text, Kind kind) {}

    private QuantityText() {}

    /** One quantity in SI; the unit must be written, except for a plain number. */
    public static Outcome<Double> one(String text, Kind kind) {
        return stated(text, kind).map(Quantity::si);
    }

    /** One quantity with its unit and as it is written; the unit must be written, except for a plain number. */
    public static Outcome<Quantity> stated(String text, Kind kind) {
        String typed = text.strip();
        Matcher twice = TWICE.matcher(typed);
        if (twice.matches()) {
            Outcome<Written> first = written(twice.group(1), kind);
            Outcome<Written> second = written(twice.group(2), kind);
            if (!first.isOk() || !second.isOk()) {
                return Outcome.refused(first.isOk() ? second.refusals() : first.refusals());
            }
            return agreed(typed, first.orElseThrow(), second.orElseThrow());
        }
        return written(typed, kind).map(w -> new Quantity(w.si(), w.unit(), typed));
    }

    /** Several quantities that share the unit at the end. */
    public static Outcome<List<Double>> row(String text, Kind kind) {
        String[] words = text.strip().split("\\s+");
        int numbers = 0;
        while (numbers < words.length && NUMBER.matcher(words[numbers]).matches()) {
            numbers++;
        }
        if (numbers == 0 || numbers == words.length) {
            return Outcome.refused(Refusal.at(
                    "",
                    "\"" + text + "\" is not a row of " + kind.words() + (numbers == 0 ? "" : ", it has no unit"),
                    "Write the numbers with blanks between and the unit once at the end, such as 92 115 "
                            + usual(kind)));
        }
        String unit = String.join(" ", List.of(words).subList(numbers, words.length));
        List<Outcome<Double>> all = new ArrayList<>();
        for (int i = 0; i < numbers; i++) {
            all.add(written(words[i] + " " + unit, kind).map(Written::si));
        }
        return Outcome.all(all);
    }

    /** A value and half of its last written digit, both in SI. */
    private record Written(double si, double half, MeasureUnit unit) {}

    private static Outcome<Written> written(String text, Kind kind) {
        Typed typed = new Typed(text, kind);
        Outcome<Written> known = KNOWN.get(typed);
        if (known == null) {
            known = readAnew(text, kind);
            if (known.isOk()) {
                if (KNOWN.size() >= MOST) {
                    KNOWN.clear();
                }
                KNOWN.put(typed, known);
            }
        }
        return known;
    }

    private static Outcome<Written> readAnew(String text, Kind kind) {
        Matcher parts = ONE.matcher(text.strip());
        if (parts.matches() && parts.group(2) == null && kind != Kind.NUMBER) {
            return Outcome.refused(
                    Refusal.at("", "\"" + text + "\" has no unit", "Write it as " + text.strip() + " " + usual(kind)));
        }
        Outcome<ParsedQuantity> parsed =
                hinted(Quantities.parse(text, kind, Units.of(kind).get(0), ""), kind);
        if (parsed instanceof Outcome.Ok<ParsedQuantity> ok && ok.value().u().isPresent()) {
            return Outcome.refused(Refusal.at("", "\"" + text + "\" carries an uncertainty", "Write the value alone"));
        }
        return parsed.map(p -> new Written(p.si(), half(parts, p), p.unit()));
    }

    /** The same, with something to do where a refusal only says the fact. */
    private static Outcome<ParsedQuantity> hinted(Outcome<ParsedQuantity> parsed, Kind kind) {
        if (parsed.isOk()) {
            return parsed;
        }
        String such = kind == Kind.NUMBER ? "Write a number without a unit" : "Write it in " + usual(kind);
        return Outcome.refused(parsed.refusals().stream()
                .map(r -> r.hint().isBlank() ? Refusal.at(r.place(), r.fact(), such) : r)
                .toList());
    }

    private static double half(Matcher parts, ParsedQuantity parsed) {
        if (!parts.matches()) {
            return 0;
        }
        BigDecimal number = new BigDecimal(parts.group(1).replace(',', '.'));
        return number.ulp().doubleValue() / 2 * parsed.unit().factor();
    }

    private static Outcome<Quantity> agreed(String text, Written first, Written second) {
        double apart = Math.abs(first.si() - second.si());
        if (apart <= (first.half() + second.half()) * 1.000001) {
            return Outcome.ok(new Quantity(first.si(), first.unit(), text));
        }
        return Outcome.refused(Refusal.at(
                "", "\"" + text + "\": the two do not agree", "Look it up again and write the one that is right"));
    }

    /** The unit that is usual for a kind, as typed on any keyboard. */
    public static String usual(Kind kind) {
        return kind == Kind.EXPANSION
                ? "um/m/K"
                : Units.of(kind).get(0).symbol().replace("·", ".").replace("°", "deg");
    }
}
