package shimwright.mechanics.tooth;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** The tooth table of a gearbox as the ratio sheet takes it. */
public final class GearTable {
    private GearTable() {}

    /** Two gears in mesh. */
    public record Mesh(
            @Input(meaning = "teeth of the driving gear", min = 4, max = 500, example = "24")
            int driving,

            @Input(meaning = "teeth of the driven gear", min = 4, max = 500, example = "29")
            int driven) {}

    /** On which shaft the gear that is not fixed runs. */
    public enum Loose {
        DRIVEN,
        DRIVING,
        /** Both are fixed; a sliding gear makes the mesh. */
        NONE
    }

    /** One gear of the box. */
    public record Gear(
            @Input(meaning = "name", example = "1st") String name,

            @Input(meaning = "teeth of the driving gear; 0 in a direct gear", min = 0, max = 500, example = "17")
            int driving,

            @Input(meaning = "teeth of the driven gear; 0 in a direct gear", min = 0, max = 500, example = "36")
            int driven,

            @Input(meaning = "teeth of a reverse idler between them, 0 for none", orElse = "0", min = 0, max = 500)
            int idler,

            @Input(meaning = "gear that runs loose when not engaged", orElse = "driven")
            Loose loose,

            @Input(kind = Kind.LENGTH, meaning = "normal module", min = 5e-5, max = 0.1) @Nullable
            Double module,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "helix angle at the reference circle",
                    orElse = "0°",
                    min = 0,
                    max = Toothing.MOST_HELIX)
            double helix) {
        /** Straight through, without countershaft. */
        boolean direct() {
            return driving == 0 && driven == 0;
        }
    }

    /** Driven teeth by driving teeth of the meshes, 1 for none. */
    static double ratio(List<Mesh> meshes) {
        double ratio = 1;
        for (Mesh mesh : meshes) {
            ratio *= (double) mesh.driven() / mesh.driving();
        }
        return ratio;
    }
}
