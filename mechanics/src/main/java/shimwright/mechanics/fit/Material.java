package shimwright.mechanics.fit;

import shimwright.mechanics.reference.Table;
import shimwright.mechanics.reference.Table.Row;

/** Materials with typical data, from {@code reference/materials/typical.csv}; every number may be overridden. */
public enum Material {
    STEEL,
    CASE_HARDENED_STEEL,
    BEARING_STEEL,
    STEEL_4140_NORMALIZED,
    STEEL_4140_TEMPERED_540,
    STEEL_4140_TEMPERED_425,
    DUCTILE_IRON_400,
    DUCTILE_IRON_500,
    DUCTILE_IRON_600,
    ALUMINUM_A380,
    ALUMINUM_383,
    MAGNESIUM_AZ91D,
    BRONZE;

    private static final Table TYPICAL = Table.read("materials/typical.csv");

    /**
     * Typical data of a material, SI.
     *
     * @param modulus Young's modulus, Pa
     * @param poisson Poisson's ratio
     * @param yield yield strength, Pa
     * @param expansion mean expansion coefficient on heating from 20 °C, 1/K
     * @param coldExpansion the same on cooling from 20 °C, smaller
     * @param density kg/m³
     * @param specificHeat J/(kg·K)
     * @param conductivity W/(m·K)
     */
    public record Data(
            double modulus,
            double poisson,
            double yield,
            double expansion,
            double coldExpansion,
            double density,
            double specificHeat,
            double conductivity) {}

    private Row row() {
        return TYPICAL.rows().stream()
                .filter(row -> row.text("material").equals(name()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no data of " + this));
    }

    /** Its data. */
    public Data data() {
        Row row = row();
        return new Data(
                row.number("E") * 1e9,
                row.number("nu"),
                row.number("yield") * 1e6,
                row.number("alpha") * 1e-6,
                row.number("alpha_cold") * 1e-6,
                row.number("density"),
                row.number("heat"),
                row.number("conductivity"));
    }

    /** Where its data come from. */
    public String source() {
        return row().text("source");
    }

    /** Hardened rings crack before they yield. */
    boolean cracks() {
        return this == BEARING_STEEL;
    }
}
