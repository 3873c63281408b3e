package shimwright.mechanics.fit;

import shimwright.mechanics.reference.Table;
import shimwright.mechanics.reference.Table.Row;

/** What goes into the oven, with its ceiling from {@code reference/heat/ceilings.csv}. */
public enum HeatedPart {
    STRUCTURAL_STEEL,
    TEMPERED_STEEL,
    SURFACE_HARDENED,
    CASE_HARDENED,
    OPEN_BEARING,
    PRECISION_BEARING,
    SEALED_BEARING,
    BARE_RING,
    LIGHT_ALLOY_CASE,
    POLYAMIDE_CAGE,
    FRICTION_LINED_RING,
    SEAL_OR_ADHESIVE;

    private static final Table CEILINGS = Table.read("heat/ceilings.csv");
    private static final double ZERO = 273.15;

    private Row row() {
        return CEILINGS.rows().stream()
                .filter(row -> row.text("part").equals(name()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no ceiling of " + this));
    }

    /** Highest temperature allowed, K. */
    double ceiling() {
        return row().number("ceiling") + ZERO;
    }

    /** Where the ceiling comes from. */
    String source() {
        return row().text("source");
    }
}
