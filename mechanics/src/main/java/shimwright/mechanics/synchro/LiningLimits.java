package shimwright.mechanics.synchro;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Working;

/** What a lining is usually asked to bear. The figures are from memory and say so. */
final class LiningLimits {
    private static final Table GUIDE = Table.read("synchro-guide/linings.csv");

    private LiningLimits() {}

    /** A sentence for each figure over its guide value; speed in m/s, pressure in Pa, work in J/mm², power in W/mm². */
    static void cautions(
            Working w,
            SynchroCapacity.Lining lining,
            @Nullable Double speed,
            double pressure,
            @Nullable Double work,
            @Nullable Double power) {
        GUIDE.rows().stream()
                .filter(row -> row.text("lining").equals(lining.name()))
                .forEach(row -> {
                    over(w, "sliding speed", speed, row.number("speed"), "m/s");
                    over(w, "pressure", pressure * 1e-6, row.number("pressure"), "MPa");
                    over(w, "specific work", work, row.number("work"), "J/mm²");
                    over(w, "specific power", power, row.number("power"), "W/mm²");
                    w.caution("Guide values of this lining are from memory, unconfirmed: the maker's come first.");
                });
    }

    private static void over(Working w, String what, @Nullable Double found, double guide, String unit) {
        if (found != null && found > guide) {
            w.caution("The " + what + " is over the usual " + guide + " " + unit
                    + " of this lining: it wears fast or glazes.");
        }
    }
}
