package shimwright.mechanics.thread;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.reference.Table;

/** Length of a wire insert in bolt diameters, so that the bolt breaks before the case strips. */
final class WireInsert {
    private static final Table LENGTHS = Table.read("wire-insert-table/insert-length.csv");
    private static final List<Integer> TENSILE = List.of(390, 490, 590, 790, 980, 1180, 1370);
    private static final double MPA = 1e6;
    private static final double DUST = 1e-6;

    static final String SOURCE = LENGTHS.name();

    private WireInsert() {}

    /**
     * The next lower row of the case, the next higher column of the bolt.
     *
     * @param caseShear Pa
     * @param boltTensile Pa
     * @return bolt diameters; empty where the table prints no length
     */
    static Optional<Double> diameters(double caseShear, double boltTensile) {
        Optional<Table.Row> row = LENGTHS.rows().stream()
                .filter(r -> r.number("shear") <= caseShear / MPA + DUST)
                .max(Comparator.comparingDouble(r -> r.number("shear")));
        Optional<String> column = TENSILE.stream()
                .filter(t -> t >= boltTensile / MPA - DUST)
                .findFirst()
                .map(String::valueOf);
        if (row.isEmpty() || column.isEmpty() || !row.get().has(column.get())) {
            return Optional.empty();
        }
        return Optional.of(row.get().number(column.get()));
    }
}
