package shimwright.mechanics.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Text to quantity and back. The only place where a number meets its unit. */
public final class Quantities {
    private static final int LONGEST = 160;
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?)\\s*(\\d[\\d.,]*|[.,]\\d[\\d.,]*)([eE][+-]?\\d{1,3})?(?![\\d])");
    private static final Pattern UNCERTAINTY = Pattern.compile("±|\\+/-|\\+-");
    private static final Pattern BRACKETED = Pattern.compile("\\((.*)\\)\\s*(\\S.*)?");
    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
    /** Twelve digits are more than any gauge gives; what lies beyond is binary dust. */
    private static final MathContext DUST = new MathContext(12, RoundingMode.HALF_EVEN);

    private Quantities() {}

    /** As {@link #parse(String, Kind, MeasureUnit, String, Range)} with any finite value allowed. */
    public static Outcome<ParsedQuantity> parse(String text, Kind kind, MeasureUnit assumedWhenNoUnit, String place) {
        return parse(text, kind, assumedWhenNoUnit, place, Range.ANY);
    }

    /**
     * Reads one quantity: {@code 0.0412 in}, {@code 41.2 thou}, {@code ,293}, {@code 33 ft-lb}, {@code 0.24 ± 0.01 mm}.
     *
     * <p>The number may have a decimal point or one decimal comma; {@code 1,234} could mean either and is refused. What
     * follows ± (or {@code +-}, {@code +/-}) is a standard uncertainty (JCGM 100:2008 2.3.1) in its own unit, else in
     * that of the value, or in % of the value; with {@code k=2} behind it an expanded one (6.2.1), with
     * {@code rectangular}, {@code triangular} or {@code u-shaped} a half-width (4.3.7, 4.3.9, H.1.3.4), with
     * {@code nu=4} or {@code n=5} the scale of a t (G.3.2), with {@code shared=NAME} one that moves all that name it
     * (F.1.2.3). Several may follow each other, each behind its ±. Refused, with a sentence: nothing typed, no number,
     * two separators, an unknown unit or one of another kind, a negative uncertainty, a value out of range, words that
     * contradict each other.
     *
     * @param text as typed
     * @param kind what is needed
     * @param assumedWhenNoUnit unit of a bare number; of the same kind
     * @param place for the refusal
     * @param range allowed SI values
     */
    public static Outcome<ParsedQuantity> parse(
            String text, Kind kind, MeasureUnit assumedWhenNoUnit, String place, Range range) {
        if (assumedWhenNoUnit.kind() != kind) {
            throw new IllegalArgumentException(assumedWhenNoUnit + " is not a unit of " + kind);
        }
        String typed = Normalizer.normalize(text, Normalizer.Form.NFKC)
                .replace('−', '-')
                .strip();
        if (typed.isEmpty()) {
            return Outcome.refused(
                    Refusal.at(place, "nothing typed", "Type " + kind.words() + suchAs(kind, assumedWhenNoUnit)));
        }
        if (typed.length() > LONGEST) {
            return Outcome.refused(
                    Refusal.at(place, "the text is too long for one number", "Type one number and its unit"));
        }
        Door door = new Door(text.strip(), kind, assumedWhenNoUnit, place);
        UncertaintyWords trailing =
                UncertaintyWords.peel(UNCERTAINTY.matcher(typed).find() ? typed : "");
        Matcher bracket = BRACKETED.matcher(trailing.rest().isEmpty() ? typed : trailing.rest());
        String outerUnit = "";
        if (bracket.matches()) {
            String words = typed.substring(bracket.end());
            typed = bracket.group(1).strip() + (words.isBlank() ? "" : " " + words.strip());
            outerUnit = bracket.group(2) == null ? "" : bracket.group(2).strip();
        }
        String[] halves = UNCERTAINTY.split(typed, -1);
        Outcome<Piece> value = door.piece(halves[0].strip(), outerUnit);
        if (halves.length == 1) {
            return value.flatMap(v -> door.checked(v, List.of(), range));
        }
        List<UncertaintyWords> words = new ArrayList<>();
        List<Outcome<Piece>> uncertainties = new ArrayList<>();
        for (String half : List.of(halves).subList(1, halves.length)) {
            UncertaintyWords here = UncertaintyWords.peel(half);
            words.add(here);
            uncertainties.add(door.piece(here.rest(), outerUnit));
        }
        Outcome<List<Piece>> pieces = Outcome.all(uncertainties);
        if (!value.isOk() || !pieces.isOk()) {
            return Outcome.refused(value.isOk() ? pieces.refusals() : value.refusals());
        }
        return door.withUncertainties(value.orElseThrow(), pieces.orElseThrow(), words, range);
    }

    /** A number and the unit typed behind it; no unit when none was typed. */
    private record Piece(BigDecimal number, Optional<MeasureUnit> unit) {}

    private record Door(String text, Kind kind, MeasureUnit assumed, String place) {
        Outcome<Piece> piece(String typed, String outerUnit) {
            Matcher number = NUMBER.matcher(typed);
            if (!number.lookingAt()) {
                return refused("is not a number", "Type " + kind.words() + suchAs(kind, assumed));
            }
            String digits = number.group(2);
            String unitText = typed.substring(number.end()).strip();
            if (digits.chars().filter(c -> c == '.' || c == ',').count() > 1) {
                return refused("has more than one decimal sign", "Type one number, with one point");
            }
            if (THOUSANDS.matcher(digits).matches()) {
                return refused(
                        "can be read in two ways",
                        "Type " + digits.replace(',', '.') + " or " + digits.replace(",", ""));
            }
            String exponent = number.group(3) == null ? "" : number.group(3);
            BigDecimal value = new BigDecimal(number.group(1) + digits.replace(',', '.') + exponent);
            return unit(unitText.isEmpty() ? outerUnit : unitText).map(unit -> new Piece(value, unit));
        }

        private Outcome<Optional<MeasureUnit>> unit(String typed) {
            if (typed.isEmpty()) {
                return Outcome.ok(Optional.empty());
            }
            Optional<MeasureUnit> own = Units.find(typed, kind);
            if (own.isPresent()) {
                return Outcome.ok(own);
            }
            Optional<MeasureUnit> other = Units.findAny(typed);
            if (other.isPresent() && other.get().equals(Units.PERCENT)) {
                return Outcome.ok(other);
            }
            if (other.isPresent()) {
                return refused("is " + other.get().kind().words() + "; " + kind.words() + " is needed here", "");
            }
            return refused("has an unknown unit \"" + typed + "\"", unitsOf(kind));
        }

        Outcome<ParsedQuantity> checked(Piece value, List<Uncertainty> uncertainties, Range range) {
            MeasureUnit unit = value.unit().orElse(assumed);
            if (unit.kind() != kind) {
                return refused("is a percentage; " + kind.words() + " is needed here", "");
            }
            double si = si(value.number(), unit) + unit.offset();
            if (!Double.isFinite(si)) {
                return refused("is beyond any size", "Look at the exponent");
            }
            if (!range.holds(si)) {
                boolean low = si < range.min();
                double limit = low ? range.min() : range.max();
                return refused(
                        (low ? "is below " : "is above ") + brief(limit, unit),
                        low ? "The smallest value taken here is that" : "The largest value taken here is that");
            }
            return Outcome.ok(new ParsedQuantity(si, unit, uncertainties));
        }

        Outcome<ParsedQuantity> withUncertainties(
                Piece value, List<Piece> typed, List<UncertaintyWords> words, Range range) {
            Optional<MeasureUnit> none = Optional.empty();
            MeasureUnit shared = value.unit()
                    .or(() -> typed.stream()
                            .map(Piece::unit)
                            .filter(unit ->
                                    unit.filter(known -> known.kind() == kind).isPresent())
                            .findFirst()
                            .orElse(none))
                    .orElse(assumed);
            Piece settled = new Piece(value.number(), Optional.of(shared));
            List<Uncertainty> uncertainties = new ArrayList<>();
            for (int i = 0; i < typed.size(); i++) {
                Piece uncertainty = typed.get(i);
                if (uncertainty.number().signum() < 0) {
                    return refused("has a negative uncertainty", "Type it as a positive number behind ±");
                }
                if (!words.get(i).faults().isEmpty()) {
                    return refused(words.get(i).faults().get(0), UncertaintyWords.HELP);
                }
                boolean relative = kind != Kind.NUMBER && uncertainty.unit().equals(Optional.of(Units.PERCENT));
                double size = relative
                        ? Math.abs(si(value.number(), shared))
                                * uncertainty.number().doubleValue()
                                / 100
                        : si(uncertainty.number(), uncertainty.unit().orElse(shared));
                if (!Double.isFinite(size)) {
                    return refused("has an uncertainty beyond any size", "Look at the exponent");
                }
                uncertainties.add(words.get(i).uncertainty(size));
            }
            return checked(settled, uncertainties, range);
        }

        private <T> Outcome<T> refused(String fact, String hint) {
            return Outcome.refused(Refusal.at(place, "\"" + text + "\" " + fact, hint));
        }
    }

    /** Decimal product, so that 1.046 mm is the double nearest to 0.001046. */
    private static double si(BigDecimal number, MeasureUnit unit) {
        return number.multiply(BigDecimal.valueOf(unit.factor())).doubleValue();
    }

    private static String suchAs(Kind kind, MeasureUnit unit) {
        return kind == Kind.NUMBER ? ", such as 0.95" : ", such as 0.24" + gap(unit) + unit.symbol();
    }

    private static String unitsOf(Kind kind) {
        if (kind == Kind.NUMBER) {
            return "Type a number without a unit";
        }
        return "Known for " + kind.words() + ": "
                + Units.of(kind).stream().map(MeasureUnit::symbol).collect(Collectors.joining(", "));
    }

    /**
     * A value in a unit with fixed decimals, rounded half up; never {@code -0.000}.
     *
     * @param si finite value in SI
     * @param unit to print in
     * @param decimals digits after the point, 0 or more
     */
    public static String print(double si, MeasureUnit unit, int decimals) {
        return rounded(unit.fromSi(si), decimals).toPlainString() + gap(unit) + unit.symbol();
    }

    /** A value in the unit and decimals of a system. */
    public static String print(double si, Kind kind, UnitSystem system) {
        UnitSystem.Display display = system.display(kind);
        return print(si, display.unit(), display.decimals());
    }

    /**
     * A value and its standard uncertainty, {@code 0.2783 ± 0.0041 mm}: the uncertainty with two significant digits,
     * rounded up, the value to the same place (JCGM 100:2008 7.2.6). Without uncertainty the value is printed with the
     * decimals given.
     *
     * @param si finite value in SI
     * @param u standard uncertainty in SI, finite, 0 or more
     * @param unit to print in
     * @param decimalsWithoutUncertainty digits after the point when {@code u} is 0
     */
    public static String print(double si, double u, MeasureUnit unit, int decimalsWithoutUncertainty) {
        if (!(u >= 0) || !Double.isFinite(u)) {
            throw new IllegalArgumentException("uncertainty " + u);
        }
        BigDecimal inUnit = new BigDecimal(u / unit.factor()).round(DUST);
        if (inUnit.signum() == 0) {
            return print(si, unit, decimalsWithoutUncertainty);
        }
        BigDecimal shown = inUnit.round(new MathContext(2, RoundingMode.UP));
        BigDecimal value = rounded(unit.fromSi(si), shown.scale());
        return value.toPlainString() + " ± " + shown.toPlainString() + gap(unit) + unit.symbol();
    }

    /** A value with as many digits as it needs, up to six: for limits and examples. */
    public static String brief(double si, MeasureUnit unit) {
        return brief(si, unit, 6);
    }

    /** A value with as many digits as it needs, up to a number of significant ones. */
    public static String brief(double si, MeasureUnit unit, int digits) {
        BigDecimal value = new BigDecimal(unit.fromSi(si)).round(new MathContext(digits, RoundingMode.HALF_UP));
        BigDecimal shown = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        int magnitude = shown.precision() - shown.scale();
        String text = magnitude > 9 || magnitude < -6 ? shown.toString() : shown.toPlainString();
        return text + gap(unit) + unit.symbol();
    }

    private static BigDecimal rounded(double number, int decimals) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("not a finite number: " + number);
        }
        return new BigDecimal(number).round(DUST).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static String gap(MeasureUnit unit) {
        return unit.symbol().isEmpty() || unit.equals(Units.DEGREE) || unit.equals(Units.ARC_MINUTE) ? "" : " ";
    }
}
