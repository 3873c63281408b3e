package shimwright.mechanics.bearing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/**
 * What {@code mesh-forces} finds; rows in the order of the gears.
 *
 * @param input the input mesh
 * @param gears forces on the countershaft by gear
 * @param main input and output shaft by gear; empty where their bearings were not given
 * @param loads of every bearing in every gear
 * @param worst each bearing where it is loaded most
 */
public record MeshForcesResult(
        @Output(meaning = "input mesh, in every gear but a direct one")
        InputMesh input,

        @Output(meaning = "gears, on the countershaft") List<Row> gears,

        @Output(meaning = "input and output shaft") List<Main> main,

        @Output(meaning = "bearings of the countershaft, A and B, and of the main shafts")
        List<Load> loads,

        @Output(meaning = "each bearing where it is loaded most")
        List<Worst> worst) {
    public MeshForcesResult {
        gears = List.copyOf(gears);
        main = List.copyOf(main);
        loads = List.copyOf(loads);
        worst = List.copyOf(worst);
    }

    /** Amounts in newtons; the axial force as it acts on the countershaft. */
    public record InputMesh(
            @Output(kind = Kind.FORCE, meaning = "tangential", decimals = 1)
            double tangential,

            @Output(kind = Kind.FORCE, meaning = "radial", decimals = 1)
            double radial,

            @Output(kind = Kind.FORCE, meaning = "axial on the countershaft, + to the rear", decimals = 1)
            double axial) {}

    /** Input and output shaft in one gear; torque in N·m, forces in newtons. */
    public record Main(
            @Output(meaning = "gear") String name,

            @Output(kind = Kind.TORQUE, meaning = "output torque, + clockwise seen from the input end")
            double torque,

            @Output(kind = Kind.FORCE, meaning = "thrust left on the input shaft, + to the rear", decimals = 1)
            double inputThrust,

            @Output(kind = Kind.FORCE, meaning = "thrust left on the output shaft, + to the rear", decimals = 1)
            double outputThrust) {}

    /** One gear's forces on the countershaft in newtons. */
    public record Row(
            @Output(meaning = "gear") String name,

            @Output(kind = Kind.FORCE, meaning = "tangential", decimals = 1)
            double tangential,

            @Output(kind = Kind.FORCE, meaning = "radial", decimals = 1)
            double radial,

            @Output(kind = Kind.FORCE, meaning = "axial, + to the rear", decimals = 1)
            double axial,

            @Output(kind = Kind.FORCE, meaning = "thrust left on the countershaft, + to the rear", decimals = 1)
            double thrust,

            @Output(
                    kind = Kind.ANGLE,
                    meaning = "helix of this gear that would leave no thrust, same hand",
                    decimals = 3)
            @Nullable
            Double balancedHelix) {}

    /**
     * Force of a bearing on its shaft in one gear; of a spigot on the shaft that has one bearing of its own, of the idler
     * pin on the idler.
     */
    public record Load(
            @Output(meaning = "gear") String gear,
            @Output(meaning = "bearing") String bearing,

            @Output(kind = Kind.LENGTH, meaning = "position")
            double position,

            @Output(kind = Kind.FORCE, meaning = "radial load", decimals = 1)
            double radial,

            @Output(kind = Kind.FORCE, meaning = "part in the direction of angle 0", decimals = 1)
            double along,

            @Output(kind = Kind.FORCE, meaning = "part a quarter turn clockwise from it", decimals = 1)
            double across) {
        static Load of(MeshForces.Gear gear, String bearing, double position, Shaft.Reaction force) {
            return new Load(gear.name(), bearing, position, force.radial(), force.along(), force.across());
        }
    }

    /** Where a bearing is loaded most. */
    public record Worst(
            @Output(meaning = "bearing") String bearing,
            @Output(meaning = "gear that loads it most") String gear,

            @Output(kind = Kind.FORCE, meaning = "radial load then", decimals = 1)
            double radial) {}
}
