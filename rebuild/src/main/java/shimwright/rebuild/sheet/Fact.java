package shimwright.rebuild.sheet;

import java.util.List;
import java.util.stream.Collectors;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;

/**
 * An input of a worksheet that is known.
 *
 * @param text as it would be typed, with its unit
 * @param from where it comes from, in words
 */
public record Fact(String text, String from) {
    /** Begins where it is from, where a person typed it. */
    static final String TYPED = "typed by ";

    /** Digits that no gauge at a bench goes beyond. */
    private static final int DIGITS = 7;

    /** A quantity in SI. */
    static Fact of(double si, Kind kind, UnitSystem units, String from) {
        return new Fact(text(si, kind, units), from);
    }

    /** Several quantities in SI. */
    static Fact of(List<Double> si, Kind kind, UnitSystem units, String from) {
        return new Fact(si.stream().map(one -> text(one, kind, units)).collect(Collectors.joining("; ")), from);
    }

    /** True where a person typed it into a sheet before. */
    public boolean typed() {
        return from.startsWith(TYPED);
    }

    private static String text(double si, Kind kind, UnitSystem units) {
        return Quantities.brief(si, units.display(kind).unit(), DIGITS);
    }
}
