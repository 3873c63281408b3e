package shimwright.mechanics.fit;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * What a part is made of. Typed as {@code steel} or {@code steel: 210 GPa: 0.29}.
 *
 * @param material gives every number left out
 * @param modulus Young's modulus, Pa
 * @param poisson Poisson's ratio
 * @param yield yield strength, Pa
 * @param expansion mean expansion coefficient on heating, 1/K
 * @param coldExpansion mean expansion coefficient on cooling, 1/K
 */
public record PartMaterial(
        @Input(meaning = "material", example = "steel") Material material,

        @Input(kind = Kind.PRESSURE, unit = "GPa", meaning = "modulus, else typical", min = 1e9, max = 1e12) @Nullable
        Double modulus,

        @Input(meaning = "Poisson's ratio, else typical", min = 0, max = 0.49) @Nullable
        Double poisson,

        @Input(kind = Kind.PRESSURE, meaning = "yield strength, else typical", min = 1e6, max = 5e9) @Nullable
        Double yield,

        @Input(kind = Kind.EXPANSION, meaning = "expansion on heating, else typical", min = 1e-7, max = 1e-4) @Nullable
        Double expansion,

        @Input(kind = Kind.EXPANSION, meaning = "expansion on cooling, else typical", min = 1e-7, max = 1e-4) @Nullable
        Double coldExpansion) {

    /** The typical data with what was given put in their place. */
    Material.Data data() {
        Material.Data typical = material.data();
        return new Material.Data(
                given(modulus, typical.modulus()),
                given(poisson, typical.poisson()),
                given(yield, typical.yield()),
                given(expansion, typical.expansion()),
                given(coldExpansion, typical.coldExpansion()),
                typical.density(),
                typical.specificHeat(),
                typical.conductivity());
    }

    private static double given(@Nullable Double own, double typical) {
        return own == null ? typical : own;
    }
}
