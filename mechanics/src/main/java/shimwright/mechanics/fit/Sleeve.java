package shimwright.mechanics.fit;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A sleeve between the housing and a race; there is none when outside and housing bore are left out.
 *
 * @param outside its outside diameter before fitting at 20 °C, metres
 * @param housingBore bore of the housing it sits in at 20 °C, metres
 * @param material what it is made of
 * @param expansion its expansion coefficient, 1/K; null takes that of the material
 */
public record Sleeve(
        @Input(kind = Kind.LENGTH, meaning = "outside diameter before fitting", min = 1e-3, max = 2) @Nullable
        Double outside,

        @Input(kind = Kind.LENGTH, meaning = "housing bore it sits in", min = 1e-3, max = 2) @Nullable
        Double housingBore,

        @Input(meaning = "material", orElse = "steel") Material material,

        @Input(kind = Kind.EXPANSION, meaning = "expansion, else typical", min = 1e-7, max = 1e-4) @Nullable
        Double expansion) {

    /** Its data. */
    Material.Data data() {
        return new PartMaterial(material, null, null, null, expansion, null).data();
    }
}
