package shimwright.mechanics.bearing;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Output;

/** A stiff shaft in two bearings, loaded by gear meshes (statics). */
final class Shaft {
    static final String SOURCE = "statics of a stiff shaft";

    private Shaft() {}

    /**
     * One mesh as it acts on the shaft.
     *
     * @param name for the working
     * @param position along the shaft, metres
     * @param radius of the working circle, metres, above 0
     * @param around direction from the shaft to the mesh, radians
     * @param torque of the mesh on the shaft, N·m, positive clockwise seen from the input end
     * @param separation tangent of the transverse working angle: radial by tangential force
     * @param thrust tangent of the helix at the working circle, positive for a right-hand helix
     */
    record Mesh(
            String name,
            double position,
            double radius,
            double around,
            double torque,
            double separation,
            double thrust) {
        /** Tangential force, N, signed with the torque. */
        double tangential() {
            return torque / radius;
        }

        /** Radial force away from the mate, N, 0 or more. */
        double radial() {
            return Math.abs(tangential()) * separation;
        }

        /** Force along the shaft, N, positive to the rear. */
        double axial() {
            return -tangential() * thrust;
        }

        double along() {
            return -radial() * Math.cos(around) - tangential() * Math.sin(around);
        }

        double across() {
            return -radial() * Math.sin(around) + tangential() * Math.cos(around);
        }
    }

    /**
     * Force of a bearing on the shaft.
     *
     * @param along in the direction of angle 0, N
     * @param across in the direction of 90° clockwise, N
     */
    public record Reaction(
            @Output(kind = Kind.FORCE, meaning = "radial load", decimals = 1)
            double radial,

            @Output(kind = Kind.FORCE, meaning = "part in the direction of angle 0", decimals = 1)
            double along,

            @Output(kind = Kind.FORCE, meaning = "part a quarter turn clockwise from it", decimals = 1)
            double across) {
        static Reaction of(double along, double across) {
            return new Reaction(Math.hypot(along, across), along, across);
        }
    }

    /**
     * A force straight onto the axis of the shaft, as of a bearing.
     *
     * @param position along the shaft, metres
     * @param along in the direction of angle 0, N
     * @param across in the direction of 90° clockwise, N
     */
    record Push(double position, double along, double across) {}

    /** Both reactions and what is left along the shaft, positive to the rear. */
    record Reactions(Reaction a, Reaction b, double axial) {}

    /** Reactions of bearings A and B at two different positions. */
    static Reactions solve(Working w, List<Mesh> meshes, double bearingA, double bearingB) {
        for (Mesh m : meshes) {
            w.line(m.name() + ": tangential force", "torque / working radius", m.tangential(), Kind.FORCE, SOURCE);
            w.line(m.name() + ": radial force", "tangential × tan(working angle)", m.radial(), Kind.FORCE, SOURCE);
            w.line(m.name() + ": axial force", "tangential × tan(helix), + to the rear", m.axial(), Kind.FORCE, SOURCE);
        }
        Reactions found = balance(meshes, List.of(), bearingA, bearingB);
        w.line("bearing A", "balance of forces", found.a().radial(), Kind.FORCE, SOURCE);
        w.line(
                "bearing B",
                "balance of moments about A, thrust tilting the shaft",
                found.b().radial(),
                Kind.FORCE,
                SOURCE);
        w.line("left along the shaft", "sum of axial forces, + to the rear", found.axial(), Kind.FORCE, SOURCE);
        return found;
    }

    /** Forces of bearings at two different positions that hold a shaft against meshes and pushes. */
    static Reactions balance(List<Mesh> meshes, List<Push> pushes, double bearingA, double bearingB) {
        double along = 0;
        double across = 0;
        double axial = 0;
        double turnAlong = 0;
        double turnAcross = 0;
        for (Mesh m : meshes) {
            double lever = m.position() - bearingA;
            along += m.along();
            across += m.across();
            axial += m.axial();
            turnAlong += lever * m.along() - m.radius() * Math.cos(m.around()) * m.axial();
            turnAcross += lever * m.across() - m.radius() * Math.sin(m.around()) * m.axial();
        }
        for (Push push : pushes) {
            along += push.along();
            across += push.across();
            turnAlong += (push.position() - bearingA) * push.along();
            turnAcross += (push.position() - bearingA) * push.across();
        }
        double span = bearingB - bearingA;
        Reaction b = Reaction.of(-turnAlong / span, -turnAcross / span);
        Reaction a = Reaction.of(-along - b.along(), -across - b.across());
        return new Reactions(a, b, axial);
    }
}
