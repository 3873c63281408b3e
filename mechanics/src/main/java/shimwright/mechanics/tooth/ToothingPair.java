package shimwright.mechanics.tooth;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;

/** Two outside toothings on parallel shafts with the same basis. */
record ToothingPair(Toothing first, Toothing second) {
    static final String SOURCE = "ISO 21771-1:2022, cylindrical gear pairs";

    /** What both share: pressure angle and helix in radians, and the plane they are given in. */
    record Basis(double pressureAngle, double helix, Plane plane) {}

    static Optional<ToothingPair> read(
            int teeth1,
            int teeth2,
            @Nullable Double module,
            @Nullable Double diametralPitch,
            Basis basis,
            List<Refusal> faults) {
        Optional<Toothing> first = Toothing.read(
                teeth1, module, diametralPitch, basis.pressureAngle(), basis.helix(), basis.plane(), faults);
        return first.map(
                one -> new ToothingPair(one, new Toothing(teeth2, one.normalModule(), one.normalAngle(), one.helix())));
    }

    /** Reference centre distance, metres. */
    double reference() {
        return (first.reference() + second.reference()) / 2;
    }

    /** Transverse pressure angle, radians. */
    double at() {
        return first.transverseAngle();
    }

    private int teeth() {
        return first.teeth() + second.teeth();
    }

    /** Working transverse angle at a centre distance beyond the base circles. */
    double angle(double distance) {
        return Math.acos(reference() * Math.cos(at()) / distance);
    }

    /** Centre distance of a working transverse angle. */
    double distance(double angle) {
        return reference() * Math.cos(at()) / Math.cos(angle);
    }

    /** Sum of normal shifts that runs without backlash at a working transverse angle. */
    double shiftSum(double angle) {
        return teeth() * (Involute.of(angle) - Involute.of(at())) / (2 * Math.tan(first.normalAngle()));
    }

    /** Involute of the working angle of a sum of normal shifts; may be negative. */
    double involuteOf(double shiftSum) {
        return 2 * shiftSum * Math.tan(first.normalAngle()) / teeth() + Involute.of(at());
    }

    static int commonFactor(int one, int two) {
        return BigInteger.valueOf(one).gcd(BigInteger.valueOf(two)).intValueExact();
    }
}
