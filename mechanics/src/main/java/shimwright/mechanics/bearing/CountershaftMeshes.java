package shimwright.mechanics.bearing;

import shimwright.mechanics.bearing.MeshForces.Case;
import shimwright.mechanics.bearing.MeshForces.Gear;

/** The meshes of a countershaft gearbox as they act on the countershaft. */
final class CountershaftMeshes {
    private static final double INCH = 0.0254;

    private CountershaftMeshes() {}

    /** Normal module of the input pair, metres. */
    static double module(Case c) {
        Double module = c.module();
        Double pitch = c.diametralPitch();
        return module != null ? module : pitch == null ? 0 : INCH / pitch;
    }

    /** Reference radius of a gear of this pair, metres. */
    static double radius(Case c, Gear gear, int teeth) {
        Double own = gear.module();
        return teeth * (own != null ? own : module(c)) / (2 * Math.cos(gear.helix()));
    }

    static double torque(Case c) {
        return c.way() * c.inputTorque() * c.drivenTeeth() / c.inputTeeth();
    }

    /** The input mesh as it acts on the countershaft that takes a torque from it. */
    static Shaft.Mesh input(Case c, String name, double torque) {
        return new Shaft.Mesh(
                name,
                c.position(),
                c.drivenTeeth() * module(c) / (2 * Math.cos(c.helix())),
                0,
                -torque,
                Math.tan(c.pressureAngle()) / Math.cos(c.helix()),
                c.hand().sign() * Math.tan(c.helix()));
    }

    static Shaft.Mesh input(Case c, Gear gear) {
        return input(c, gear.name() + ", input mesh", gear.direct() ? 0 : torque(c));
    }

    /** The mesh of a gear as it acts on the countershaft. */
    static Shaft.Mesh output(Case c, Gear gear) {
        return new Shaft.Mesh(
                gear.name() + ", gear mesh",
                gear.position(),
                radius(c, gear, Math.max(4, gear.driving())),
                gear.around(),
                gear.direct() ? 0 : torque(c),
                Math.tan(c.pressureAngle()) / Math.cos(gear.helix()),
                gear.hand().sign() * Math.tan(gear.helix()));
    }
}
