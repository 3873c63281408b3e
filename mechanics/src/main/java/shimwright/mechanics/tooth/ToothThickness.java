package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code tooth-thickness}: from the shift, along the circle, straight across, and at another diameter. */
public final class ToothThickness {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "tooth-thickness",
            "Tooth thickness",
            "Tooth thickness from the profile shift and back, the caliper setting, and the thickness at another diameter.",
            List.of("ISO 21771-1:2022, tooth thickness and chordal dimensions"),
            Case.class,
            Result.class,
            ToothThickness::work);

    private ToothThickness() {}

    /** Lengths in metres, angles in radians; exactly one of shift and thickness. */
    public record Case(
            @Input(meaning = "number of teeth", min = 3, max = 1000, example = "12")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "module", min = 5e-5, max = 0.1, example = "10 mm") @Nullable
            Double module,

            @Input(meaning = "diametral pitch, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "pressure angle",
                    min = Toothing.LEAST_ANGLE,
                    max = Toothing.MOST_ANGLE,
                    example = "20°")
            double pressureAngle,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "helix angle at the reference circle",
                    orElse = "0°",
                    min = 0,
                    max = Toothing.MOST_HELIX)
            double helix,

            @Input(meaning = "plane in which module, pressure angle and shift are given", orElse = "normal")
            Plane plane,

            @Input(meaning = "profile shift coefficient", min = -5, max = 5, example = "0.3") @Nullable
            Double shift,

            @Input(kind = Kind.LENGTH, meaning = "normal tooth thickness", min = 1e-6, max = 0.5) @Nullable
            Double thickness,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "height of the tip over the reference circle",
                    min = 0,
                    max = 0.5,
                    example = "13 mm")
            @Nullable
            Double addendum,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "another diameter at which the thickness is wanted",
                    min = 1e-5,
                    max = 5)
            @Nullable
            Double atDiameter) {}

    /** Lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "normal tooth thickness at the reference circle", decimals = 4)
            double thickness,

            @Output(kind = Kind.LENGTH, meaning = "transverse tooth thickness at the reference circle", decimals = 4)
            double thicknessTransverse,

            @Output(meaning = "normal profile shift coefficient")
            double shift,

            @Output(kind = Kind.ANGLE, meaning = "half tooth angle of the equivalent straight tooth", decimals = 4)
            double halfAngle,

            @Output(kind = Kind.LENGTH, meaning = "chordal thickness for the gear-tooth caliper", decimals = 4)
            double chordalThickness,

            @Output(kind = Kind.LENGTH, meaning = "chordal height for the gear-tooth caliper", decimals = 4) @Nullable
            Double chordalAddendum,

            @Output(
                    kind = Kind.LENGTH,
                    meaning = "transverse thickness at the other diameter, 0 where the tooth is pointed",
                    decimals = 4)
            @Nullable
            Double thicknessThere) {}

    /**
     * Thickness from shift or shift from thickness, with the caliper setting.
     *
     * @param c the case; refused where no tooth or no space is left, or the other diameter lies under the base circle.
     *     Source: ISO 21771-1:2022, tooth thickness; caliper setting of the equivalent spur gear, z/cos³(helix)
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        ExactlyOne.one(faults, List.of("shift", "thickness"), c.shift(), c.thickness());
        Optional<Toothing> read = Toothing.read(
                c.teeth(), c.module(), c.diametralPitch(), c.pressureAngle(), c.helix(), c.plane(), faults);
        if (read.isEmpty() || !faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Toothing t = read.get();
        Double given = c.thickness();
        Double shift = c.shift();
        double normalShift = shift == null ? 0 : c.plane() == Plane.NORMAL ? shift : shift / Math.cos(t.helix());
        double arc = given != null ? given : t.arc(normalShift);
        if (!(arc > 0 && arc < t.normalPitch())) {
            return Outcome.refused(Refusal.of(
                    given != null ? "thickness" : "shift",
                    "leaves no tooth or no space in a pitch of " + PinMeasurement.mm(t.normalPitch()),
                    "Look at tooth size and shift"));
        }
        Double there = c.atDiameter();
        if (there != null && there < t.base()) {
            return Outcome.refused(Refusal.of(
                    "atDiameter",
                    "lies under the base circle of " + PinMeasurement.mm(t.base()),
                    "Give a larger diameter"));
        }
        return Outcome.ok(worked(c, t, arc));
    }

    private static Worked<Result> worked(Case c, Toothing t, double arc) {
        Working w = new Working();
        t.show(w);
        w.line(
                "normal tooth thickness",
                c.thickness() != null ? "as given" : "module × (π/2 + 2 × shift × tan(pressure angle))",
                arc,
                Kind.LENGTH,
                Toothing.SOURCE);
        double across = w.line(
                "teeth of the equivalent straight gear", "teeth / cos³(helix)", virtual(t), Kind.NUMBER, "geometry");
        double half = w.line(
                "half tooth angle",
                "thickness / (module × equivalent teeth)",
                arc / (t.normalModule() * across),
                Kind.ANGLE);
        double radius = t.normalModule() * across / 2;
        double chord = w.line(
                "chordal thickness",
                "module × equivalent teeth × sin(half angle)",
                2 * radius * Math.sin(half),
                Kind.LENGTH);
        Double addendum = c.addendum();
        Double height = addendum == null
                ? null
                : (Double) w.line(
                        "chordal height",
                        "addendum + module × equivalent teeth / 2 × (1 − cos(half angle))",
                        addendum + radius * (1 - Math.cos(half)),
                        Kind.LENGTH);
        double transverse = arc / Math.cos(t.helix());
        Double at = c.atDiameter();
        Double there = at == null ? null : (Double) Math.max(0, at(w, t, transverse, at));
        if (there != null && there == 0) {
            w.caution("At that diameter the tooth has come to a point.");
        }
        return w.worked(new Result(arc, transverse, t.shift(arc), half, chord, height, there));
    }

    private static double virtual(Toothing t) {
        return t.teeth() / Math.pow(Math.cos(t.helix()), 3);
    }

    /** Transverse thickness at a diameter not under the base circle; negative beyond the point. */
    static double at(Working w, Toothing t, double transverse, double diameter) {
        double angle = Math.acos(Math.min(1, t.base() / diameter));
        double thick = diameter * (transverse / t.reference() + Involute.of(t.transverseAngle()) - Involute.of(angle));
        return w.line(
                "thickness at " + PinMeasurement.mm(diameter),
                "diameter × (thickness/d + inv(at) − inv(arccos(db/diameter)))",
                thick,
                Kind.LENGTH,
                Toothing.SOURCE);
    }
}
