package shimwright.mechanics.shaft;

/**
 * A serration with straight flanks that meet in points: the shaft's teeth fill the hub's spaces, and the pitch circle lies midway
 * between the two circles of points.
 *
 * @param teeth how many
 * @param tooth half of the angle between the flanks of a tooth of the shaft, which is a space of the hub, in rad
 * @param pitch radius of the pitch circle, in m
 */
record SerrationProfile(int teeth, double tooth, double pitch) {
    /** Half of a step, in rad. */
    double halfStep() {
        return Math.PI / teeth;
    }

    /** Half of the angle of a space of the shaft: a tooth of the shaft and a step, in rad. */
    double space() {
        return tooth + halfStep();
    }

    /** Radius of the outer points, where the flanks of a tooth meet. */
    double outer() {
        return 2 * pitch - inner();
    }

    /** Radius of the inner points: the sine rule in the triangle of both points and the middle. */
    double inner() {
        return 2 * pitch * Math.sin(tooth) / (Math.sin(tooth) + Math.sin(space()));
    }

    /** From an outer point along its flank to the pitch circle. */
    private double fromOuter() {
        double across = outer() * Math.sin(tooth);
        return outer() * Math.cos(tooth) - Math.sqrt(pitch * pitch - across * across);
    }

    /** From an inner point along its flank to the pitch circle. */
    private double fromInner() {
        double across = inner() * Math.sin(space());
        return Math.sqrt(pitch * pitch - across * across) - inner() * Math.cos(space());
    }

    /** A flank from point to point. */
    double flank() {
        return inner() * Math.sin(halfStep()) / Math.sin(tooth);
    }

    /** Angle between a flank and the radius, where it crosses the pitch circle. */
    double slope() {
        double along = fromOuter();
        return tooth + Math.atan2(along * Math.sin(tooth), outer() - along * Math.cos(tooth));
    }

    /** Diameter of the wire that touches at the pitch circle, between teeth of the shaft. */
    double shaftWire() {
        return 2 * fromInner() * Math.tan(space());
    }

    /** Diameter of the wire that touches at the pitch circle, in the hub. */
    double hubWire() {
        return 2 * fromOuter() * Math.tan(tooth);
    }

    /** How far along its flank, from the point at the bottom, a wire of that diameter touches in a space of that half angle. */
    static double touches(double wire, double half) {
        return wire / 2 / Math.tan(half);
    }

    /** Size over wires of that diameter, one on either side; with an odd count as far across as can be. */
    double over(double wire) {
        return 2 * (inner() + wire / 2 / Math.sin(space())) * across() + wire;
    }

    /** Size between wires of that diameter in the hub. */
    double between(double wire) {
        return 2 * (outer() - wire / 2 / Math.sin(tooth)) * across() - wire;
    }

    /** What is off each flank, square to it, of a shaft that reads that: the bottom of a space moves by that over the sine. */
    double offShaft(double reading, double wire) {
        return (over(wire) - reading) / (2 * across()) * Math.sin(space());
    }

    /** What is off each flank of a hub, likewise. */
    double offHub(double reading, double wire) {
        return (reading - between(wire)) / (2 * across()) * Math.sin(tooth);
    }

    private double across() {
        return teeth % 2 == 0 ? 1 : Math.cos(halfStep() / 2);
    }
}
