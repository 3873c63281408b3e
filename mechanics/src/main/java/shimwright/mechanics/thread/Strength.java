package shimwright.mechanics.thread;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.reference.Table;

/**
 * Strength of a bolt by the mark on its head. Stresses in Pa.
 *
 * @param proof stress of the proof load
 * @param yield stress at 0.2 % set, smallest
 * @param tensile strength, smallest
 * @param source where it stands
 */
record Strength(double proof, double yield, double tensile, String source) {
    private static final double MPA = 1e6;
    private static final double KSI = 6894757.293168361;
    private static final Table METRIC = Table.read("iso-898-1-2013/strength.csv");
    private static final Table INCH = Table.read("sae-j429-2014/strength.csv");

    /**
     * From the mark.
     *
     * @param mark such as {@code 8.8} or {@code grade 5}; empty when nothing is known
     * @param diameter nominal, m
     * @return empty for an empty mark; refused for a mark or size that is in no table
     */
    static Outcome<Optional<Strength>> of(String mark, double diameter) {
        if (mark.isBlank()) {
            return Outcome.ok(Optional.empty());
        }
        String wanted = mark.strip().toLowerCase(Locale.ROOT);
        List<Strength> known = Stream.concat(
                        in(METRIC, wanted, diameter, MPA).stream(), in(INCH, wanted, diameter, KSI).stream())
                .toList();
        if (!known.isEmpty()) {
            return Outcome.ok(Optional.of(known.get(0)));
        }
        String marks = Stream.of(METRIC, INCH)
                .flatMap(table -> table.rows().stream())
                .map(row -> row.text("class"))
                .distinct()
                .collect(Collectors.joining(", "));
        return Outcome.refused(Refusal.of(
                "strengthClass",
                "\"" + mark + "\" is not a class known for this diameter",
                "Known: " + marks + ". A bolt without a readable mark counts as the lowest, or is replaced"));
    }

    private static Optional<Strength> in(Table table, String mark, double diameter, double unit) {
        double mm = diameter * 1000;
        return table.rows().stream()
                .filter(row -> row.text("class").equals(mark) && mm > row.number("over") && mm <= row.number("upTo"))
                .findFirst()
                .map(row -> new Strength(
                        row.number("proof") * unit,
                        row.number("yield") * unit,
                        row.number("tensile") * unit,
                        table.name()));
    }
}
