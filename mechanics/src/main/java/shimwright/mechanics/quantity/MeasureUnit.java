package shimwright.mechanics.quantity;

import java.util.List;

/**
 * A unit of one kind: {@code si = number × factor + offset}.
 *
 * @param symbol as printed
 * @param kind what it measures
 * @param factor SI units per unit, greater than 0
 * @param offset SI value of the unit's zero; 0 except for temperatures
 * @param source where the factor stands
 * @param aliases other ways to type it
 */
public record MeasureUnit(String symbol, Kind kind, double factor, double offset, String source, List<String> aliases) {
    public MeasureUnit {
        aliases = List.copyOf(aliases);
        if (!(factor > 0)) {
            throw new IllegalArgumentException("factor of " + symbol);
        }
    }

    /** The SI value of a number in this unit. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** The number in this unit of an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
