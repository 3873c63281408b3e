package shimwright.mechanics.tooth;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;

/**
 * Straight or helical involute teeth by their normal section (ISO 21771-1:2022 clauses 4 and 5).
 *
 * @param teeth count, 2 or more
 * @param normalModule metres, above 0
 * @param normalAngle normal pressure angle, radians, 0 to below π/2
 * @param helix angle at the reference cylinder, radians, 0 for straight teeth; the hand does not matter, no sign
 */
public record Toothing(int teeth, double normalModule, double normalAngle, double helix) {
    static final String SOURCE = "ISO 21771-1:2022";
    static final double INCH = 0.0254;
    static final double LEAST_ANGLE = Math.PI / 36;
    static final double MOST_ANGLE = Math.PI / 3;
    static final double MOST_HELIX = Math.PI / 3;

    public Toothing {
        if (teeth < 2 || !(normalModule > 0) || !(normalAngle > 0) || !(helix >= 0) || helix > MOST_HELIX + 1e-9) {
            throw new IllegalArgumentException("no toothing: " + teeth + ", " + normalModule + ", " + normalAngle);
        }
    }

    /**
     * From inputs as given; faults are added to the list.
     *
     * @param teeth count
     * @param module metres, or null
     * @param diametralPitch teeth per inch of reference diameter, or null; exactly one of the two must be there
     * @param angle pressure angle, radians, in the plane of {@code plane}
     * @param helix radians, 0 or more
     * @param plane where module, pitch and angle are measured
     */
    static Optional<Toothing> read(
            int teeth,
            @Nullable Double module,
            @Nullable Double diametralPitch,
            double angle,
            double helix,
            Plane plane,
            List<Refusal> faults) {
        if ((module == null) == (diametralPitch == null)) {
            faults.add(Refusal.of(
                    "module",
                    module == null ? "no tooth size given" : "module and diametralPitch both given",
                    "Give module, or diametralPitch for inch teeth, one of them"));
            return Optional.empty();
        }
        double size = module != null ? module : INCH / orZero(diametralPitch);
        if (plane == Plane.NORMAL) {
            return Optional.of(new Toothing(teeth, size, angle, helix));
        }
        double normal = Math.atan(Math.tan(angle) * Math.cos(helix));
        return Optional.of(new Toothing(teeth, size * Math.cos(helix), normal, helix));
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    /** Whether the teeth are straight. */
    public boolean straight() {
        return helix == 0;
    }

    /** Transverse module, metres. */
    public double transverseModule() {
        return normalModule / Math.cos(helix);
    }

    /** Transverse pressure angle, radians. */
    public double transverseAngle() {
        return straight() ? normalAngle : Math.atan(Math.tan(normalAngle) / Math.cos(helix));
    }

    /** Reference diameter, metres. */
    public double reference() {
        return teeth * transverseModule();
    }

    /** Base diameter, metres. */
    public double base() {
        return reference() * Math.cos(transverseAngle());
    }

    /** Helix angle at the base cylinder, radians. */
    public double baseHelix() {
        return Math.asin(Math.sin(helix) * Math.cos(normalAngle));
    }

    /** Normal pitch at the reference cylinder, metres. */
    public double normalPitch() {
        return Math.PI * normalModule;
    }

    /**
     * Normal tooth thickness of a shift, or space width of an internal toothing, metres.
     *
     * @param shift profile shift coefficient; more shift is a thicker tooth outside and a wider space inside
     */
    public double arc(double shift) {
        return normalModule * (Math.PI / 2 + 2 * shift * Math.tan(normalAngle));
    }

    /** The shift that belongs to a normal arc (tooth outside, space inside), metres in, plain number out. */
    public double shift(double arc) {
        return (arc / normalModule - Math.PI / 2) / (2 * Math.tan(normalAngle));
    }

    /** Writes the diameters every tooth calculation starts from. */
    void show(Working w) {
        w.line(
                "reference diameter d",
                straight() ? "teeth × module" : "teeth × module / cos(helix)",
                reference(),
                Kind.LENGTH,
                SOURCE);
        if (!straight()) {
            w.line(
                    "transverse pressure angle at",
                    "arctan(tan(pressure angle) / cos(helix))",
                    transverseAngle(),
                    Kind.ANGLE,
                    SOURCE);
            w.line("base helix bb", "arcsin(sin(helix) × cos(pressure angle))", baseHelix(), Kind.ANGLE, SOURCE);
        }
        w.line("base diameter db", straight() ? "d × cos(pressure angle)" : "d × cos(at)", base(), Kind.LENGTH, SOURCE);
    }
}
