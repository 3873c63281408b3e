package shimwright.mechanics.tooth;

import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Working;

/**
 * Two pins or balls in opposite spaces, forward and back (ISO 21771-1:2022 clause on dimensions over balls and pins;
 * ANSI B92.1 and DIN 5480-1 use the same geometry for straight splines). Helical teeth are measured with balls.
 */
final class Pins {
    private static final String SOURCE = "ISO 21771-1:2022, size over balls and pins";
    /** Below this the pin centre lies on the base circle and no reading tells anything. */
    private static final double LEAST_INVOLUTE = 1e-9;

    private Pins() {}

    /**
     * Keys of the inputs, for refusals.
     *
     * @param pin of the pin diameter
     * @param reading of the size read
     * @param arc of the thickness or space width
     */
    record Keys(String pin, String reading, String arc) {}

    /**
     * A pin in its space.
     *
     * @param involute of the transverse angle at the pin centre
     * @param centreAngle that angle, radians
     * @param centreDiameter circle through the pin centres, metres
     * @param size over or between two pins, metres
     * @param contactDiameter circle on which the pin touches the flanks, metres
     * @param perArc change of the size per change of the normal arc
     * @param perPin change of the size per change of the pin diameter
     */
    record Seat(
            double involute,
            double centreAngle,
            double centreDiameter,
            double size,
            double contactDiameter,
            double perArc,
            double perPin) {}

    /** What an odd count makes of the diameter: 1, or cos(90°/teeth). */
    private static double chord(Toothing t) {
        return t.teeth() % 2 == 0 ? 1 : Math.cos(Math.PI / (2 * t.teeth()));
    }

    private static double bulge(Toothing t, double pin) {
        return pin / (t.base() * Math.cos(t.baseHelix()));
    }

    /**
     * Where the pins lie in teeth of a known arc.
     *
     * @param arc normal tooth thickness (outside) or space width (inside) at the reference circle, metres
     * @param pin diameter, metres, above 0
     * @return the seat; refused where the arc leaves no tooth or no space, or the pin misses the involute flank
     */
    static Outcome<Seat> seat(Working w, Side side, Toothing t, double arc, double pin, Keys keys) {
        if (!(arc > 0 && arc < t.normalPitch())) {
            return Outcome.refused(Refusal.of(
                    keys.arc(),
                    Quantities.brief(arc, Units.MM) + " leaves no tooth or no space in a pitch of "
                            + Quantities.brief(t.normalPitch(), Units.MM),
                    "Look at tooth size, count and thickness"));
        }
        boolean out = side == Side.EXTERNAL;
        double turned = arc / (t.teeth() * t.normalModule());
        double involute = turned
                + Involute.of(t.transverseAngle())
                - (out ? Math.PI / t.teeth() : 0)
                + side.sign() * bulge(t, pin);
        if (involute < LEAST_INVOLUTE) {
            return Outcome.refused(Refusal.of(
                    keys.pin(),
                    "a pin of " + Quantities.brief(pin, Units.MM) + " does not touch the involute flanks",
                    out ? "Take a thicker pin" : "Take a thinner pin"));
        }
        w.line(
                "involute at the pin centre",
                out
                        ? "thickness/(teeth × module) + inv(at) − π/teeth + pin/(db × cos bb)"
                        : "space/(teeth × module) + inv(at) − pin/(db × cos bb)",
                involute,
                Kind.NUMBER,
                SOURCE);
        double angle = w.line("angle at the pin centre", "inverse involute", Involute.inverse(involute), Kind.ANGLE);
        double touch = Math.tan(angle) - side.sign() * pin * Math.cos(t.baseHelix()) / t.base();
        if (!(touch > 0)) {
            return Outcome.refused(Refusal.of(
                    keys.pin(),
                    "a pin of " + Quantities.brief(pin, Units.MM) + " would touch below the base circle",
                    "Take a thicker pin"));
        }
        double centre =
                w.line("diameter of the pin centres", "db / cos(angle)", t.base() / Math.cos(angle), Kind.LENGTH);
        double contact = w.line(
                "diameter where the pin touches",
                out
                        ? "db / cos(arctan(tan(angle) − pin × cos(bb)/db))"
                        : "db / cos(arctan(tan(angle) + pin × cos(bb)/db))",
                t.base() * Math.hypot(1, touch),
                Kind.LENGTH,
                "involute geometry");
        double size = centre * chord(t) + side.sign() * pin;
        if (!(size > 0)) {
            return Outcome.refused(Refusal.of(keys.pin(), "the pins would meet in the middle", "Take a thinner pin"));
        }
        double perArc = chord(t) * t.base() / (t.teeth() * t.normalModule() * Math.sin(angle));
        double perPin = side.sign() * (1 + chord(t) / (Math.sin(angle) * Math.cos(t.baseHelix())));
        w.line(
                out ? "size over pins" : "size between pins",
                (t.teeth() % 2 == 0 ? "centres" : "centres × cos(90°/teeth)") + (out ? " + pin" : " − pin"),
                size,
                Kind.LENGTH,
                SOURCE);
        return Outcome.ok(new Seat(involute, angle, centre, size, contact, perArc, perPin));
    }

    /**
     * The normal arc behind a reading, exactly.
     *
     * @param reading size over (outside) or between (inside) two pins, metres
     * @param pin diameter, metres, above 0
     * @return thickness or space width at the reference circle, metres; refused where the reading puts the pin centres
     *     inside the base circle or leaves no tooth or no space
     */
    static Outcome<Double> arc(Working w, Side side, Toothing t, double reading, double pin, Keys keys) {
        boolean out = side == Side.EXTERNAL;
        double centre = (reading - side.sign() * pin) / chord(t);
        if (!(centre > t.base())) {
            return Outcome.refused(Refusal.of(
                    keys.reading(),
                    Quantities.brief(reading, Units.MM) + " puts the pin centres inside the base circle of "
                            + Quantities.brief(t.base(), Units.MM),
                    "Look at the reading, the pin and the tooth data"));
        }
        w.line(
                "diameter of the pin centres",
                (out ? "(size − pin)" : "(size + pin)") + (t.teeth() % 2 == 0 ? "" : " / cos(90°/teeth)"),
                centre,
                Kind.LENGTH);
        double angle =
                w.line("angle at the pin centre", "arccos(db / centres)", Math.acos(t.base() / centre), Kind.ANGLE);
        double turned = Involute.of(angle)
                - Involute.of(t.transverseAngle())
                + (out ? Math.PI / t.teeth() : 0)
                - side.sign() * bulge(t, pin);
        double arc = turned * t.teeth() * t.normalModule();
        if (!(arc > 0 && arc < t.normalPitch())) {
            return Outcome.refused(Refusal.of(
                    keys.reading(),
                    Quantities.brief(reading, Units.MM) + " would mean a "
                            + (out ? "tooth thickness" : "space width") + " of " + Quantities.brief(arc, Units.MM)
                            + " in a pitch of " + Quantities.brief(t.normalPitch(), Units.MM),
                    "Look at the pin, the tooth count and the pressure angle"));
        }
        w.line(
                out ? "tooth thickness" : "space width",
                out
                        ? "teeth × module × (inv(angle) − inv(at) + π/teeth − pin/(db × cos bb))"
                        : "teeth × module × (inv(angle) − inv(at) + pin/(db × cos bb))",
                arc,
                Kind.LENGTH,
                SOURCE);
        return Outcome.ok(arc);
    }

    /**
     * The pin that touches at the reference circle.
     *
     * @param arc normal thickness or space width, metres
     * @return its diameter in metres, NaN where there is none
     */
    static double pitchPin(Side side, Toothing t, double arc) {
        double gap = side == Side.EXTERNAL ? t.normalPitch() - arc : arc;
        double half = gap / (t.teeth() * t.normalModule());
        double at = t.transverseAngle();
        double lean = Math.cos(t.baseHelix());
        double pin = 0;
        for (int i = 0; i < 200; i++) {
            double angle = at + side.sign() * (half - pin / t.base() * (1 / lean - lean));
            double next = side.sign() * (Math.tan(angle) - Math.tan(at)) * t.base() / lean;
            if (!(angle > 0 && angle < Math.PI / 2 && next > 0)) {
                return Double.NaN;
            }
            if (Math.abs(next - pin) <= 1e-14 * next) {
                return next;
            }
            pin = next;
        }
        return Double.NaN;
    }
}
