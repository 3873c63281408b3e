package shimwright.mechanics.oil;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Working;

/** Viscosity index from the viscosities at 40 and 100 °C. */
final class ViscosityIndex {
    static final String SOURCE = "ASTM D2270, procedures A and B, with its fitted coefficients for L and H";
    private static final Table COEFFICIENTS = Table.read("astm-d2270/coefficients.csv");
    private static final double STEP = 0.00715;

    private ViscosityIndex() {}

    /** The index, not rounded; null where the oil is so thin at 100 °C that it has none. Viscosities in m²/s. */
    static @Nullable Double of(double atForty, double atHundred, Working w) {
        double u = atForty * 1e6;
        double y = atHundred * 1e6;
        for (Table.Row row : COEFFICIENTS.rows()) {
            if (y >= row.number("from") && y < row.number("to")) {
                double low = w.line("L", "a Y² + b Y + c", square(row, y, "a", "b", "c"), Kind.NUMBER, SOURCE);
                double high = w.line("H", "d Y² + e Y + f", square(row, y, "d", "e", "f"), Kind.NUMBER, SOURCE);
                if (u >= high) {
                    return w.line("VI", "100 (L − U)/(L − H)", 100 * (low - u) / (low - high), Kind.NUMBER, SOURCE);
                }
                double n = w.line("N", "(log H − log U)/log Y", Math.log(high / u) / Math.log(y), Kind.NUMBER, SOURCE);
                return w.line(
                        "VI", "(10^N − 1)/0.00715 + 100", (Math.pow(10, n) - 1) / STEP + 100, Kind.NUMBER, SOURCE);
            }
        }
        w.caution("Under 2 mm²/s at 100 °C an oil has no viscosity index.");
        return null;
    }

    private static double square(Table.Row row, double y, String two, String one, String none) {
        return row.number(two) * y * y + row.number(one) * y + row.number(none);
    }
}
