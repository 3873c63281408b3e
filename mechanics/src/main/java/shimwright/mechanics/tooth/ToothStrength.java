package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code tooth-strength}: bending and contact stress of a spur or helical pair, as a check. */
public final class ToothStrength {
    private static final String BOOK = "AGMA 2001-D04 as in Shigley 9th ed., chapter 14";
    private static final double FOOT_PER_MINUTE = 0.3048 / 60;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "tooth-strength",
            "Tooth bending and contact",
            "Bending and contact stress of a spur or helical pair by the AGMA method, as a check of a pair that exists.",
            List.of(BOOK, "geometry factor J: charts of AGMA 908, read and typed"),
            Case.class,
            Result.class,
            ToothStrength::work);

    private ToothStrength() {}

    /** The pair; lengths in metres, angles in radians. */
    public record Pair(
            @Input(meaning = "teeth of the pinion", min = 8, max = 300, example = "17")
            int pinionTeeth,

            @Input(meaning = "teeth of the gear", min = 8, max = 800, example = "52")
            int gearTeeth,

            @Input(kind = Kind.LENGTH, meaning = "normal module", min = 3e-4, max = 0.05, example = "2.54 mm")
            double module,

            @Input(kind = Kind.LENGTH, meaning = "common face width", min = 0.001, max = 1, example = "38.1 mm")
            double face,

            @Input(kind = Kind.ANGLE, meaning = "normal pressure angle", orElse = "20°", min = 0.2, max = 0.62)
            double pressureAngle,

            @Input(kind = Kind.ANGLE, meaning = "helix angle", orElse = "0°", min = 0, max = 0.8)
            double helix) {}

    /** What it carries; torque in N·m, rotation in rad/s. */
    public record Duty(
            @Input(kind = Kind.TORQUE, meaning = "torque on the pinion", min = 1e-3, max = 1e6, example = "15.8 N·m")
            double torque,

            @Input(kind = Kind.ROTATION, meaning = "speed of the pinion", min = 0.01, max = 5000, example = "1800 rpm")
            double speed) {}

    /** Factors of the method. */
    public record Factors(
            @Input(meaning = "geometry factor J of the pinion, from the chart", min = 0.1, max = 0.9, example = "0.30")
            double geometryPinion,

            @Input(meaning = "geometry factor J of the gear, from the chart", min = 0.1, max = 0.9, example = "0.40")
            double geometryGear,

            @Input(meaning = "load distribution Km", min = 1, max = 4, example = "1.22")
            double distribution,

            @Input(meaning = "quality number Qv of the teeth", orElse = "6", min = 3, max = 11)
            int quality,

            @Input(meaning = "overload Ko", orElse = "1", min = 1, max = 4)
            double overload,

            @Input(meaning = "size Ks of the pinion", orElse = "1", min = 0.5, max = 2)
            double sizePinion,

            @Input(meaning = "size Ks of the gear", orElse = "1", min = 0.5, max = 2)
            double sizeGear,

            @Input(meaning = "rim thickness KB", orElse = "1", min = 1, max = 3)
            double rim,

            @Input(meaning = "load sharing mN, 1 for spur", orElse = "1", min = 0.3, max = 1)
            double sharing,

            @Input(meaning = "elastic coefficient, √MPa, 191 for steel on steel", orElse = "191", min = 50, max = 300)
            double elastic) {}

    /** Stresses allowed, life and reliability in them; in pascal. */
    public record Allowed(
            @Input(kind = Kind.PRESSURE, meaning = "bending stress allowed, pinion", min = 1e6, max = 3e9) @Nullable
            Double bendingPinion,

            @Input(kind = Kind.PRESSURE, meaning = "bending stress allowed, gear", min = 1e6, max = 3e9) @Nullable
            Double bendingGear,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "contact stress allowed, the softer of the two",
                    min = 1e6,
                    max = 5e9)
            @Nullable
            Double contactAllowed) {}

    /** A pair, its duty, the factors and what is allowed. */
    public record Case(
            @Group Pair pair,
            @Group Duty duty,
            @Group Factors factors,
            @Group Allowed allowed) {}

    /** Stresses in pascal, force in newtons, speed in m/s. */
    public record Result(
            @Output(kind = Kind.SPEED, meaning = "speed at the pitch circle", unit = "m/s", decimals = 3)
            double speed,

            @Output(kind = Kind.FORCE, meaning = "tangential force", decimals = 1)
            double tangential,

            @Output(meaning = "dynamic factor Kv", decimals = 3)
            double dynamic,

            @Output(meaning = "contact geometry factor I", decimals = 4)
            double contactGeometry,

            @Output(kind = Kind.PRESSURE, meaning = "bending stress of the pinion", decimals = 1)
            double pinion,

            @Output(kind = Kind.PRESSURE, meaning = "bending stress of the gear", decimals = 1)
            double gear,

            @Output(kind = Kind.PRESSURE, meaning = "contact stress", decimals = 1)
            double contact,

            @Output(meaning = "bending reserve of the pinion", decimals = 2) @Nullable
            Double reservePinion,

            @Output(meaning = "bending reserve of the gear", decimals = 2) @Nullable
            Double reserveGear,

            @Output(meaning = "load reserve of the contact: allowed over stress, squared", decimals = 2) @Nullable
            Double reserveContact) {}

    /**
     * Bending Wt Ko Kv Ks Km KB/(b mt J), contact Cp √(Wt Ko Kv Ks Km/(d b I)), Kv from Qv and the speed, I = cos φt sin φt/(2 mN)
     * × mG/(mG + 1).
     *
     * @param c lengths in m, angles in rad, torque in N·m, speed in rad/s, stresses in Pa
     * @return stresses in Pa, force in N, speed in m/s; refused: a pinion with more teeth than the gear, a speed beyond what
     *     the quality number covers
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.pair().pinionTeeth() > c.pair().gearTeeth()) {
            refusals.add(Refusal.of(
                    "pinionTeeth", "the pinion has more teeth than the gear", "Call the smaller one the pinion"));
        }
        double most = Math.pow(level(c) + c.factors().quality() - 3, 2) * FOOT_PER_MINUTE;
        if (speed(c) > most) {
            refusals.add(Refusal.of(
                    "speed",
                    "at " + Quantities.brief(speed(c), Units.M_PER_S) + " teeth of quality "
                            + c.factors().quality() + " are beyond the method, up to "
                            + Quantities.brief(most, Units.M_PER_S),
                    "Look at the speed, or measure the quality of the teeth"));
        }
        return refusals.isEmpty() ? Outcome.ok(stressed(c)) : Outcome.refused(refusals);
    }

    private static double diameter(Case c) {
        return c.pair().pinionTeeth() * c.pair().module() / Math.cos(c.pair().helix());
    }

    private static double speed(Case c) {
        return c.duty().speed() * diameter(c) / 2;
    }

    private static double exponent(Case c) {
        return 0.25 * Math.pow(12 - c.factors().quality(), 2.0 / 3);
    }

    private static double level(Case c) {
        return 50 + 56 * (1 - exponent(c));
    }

    private static Worked<Result> stressed(Case c) {
        Working w = new Working();
        Factors f = c.factors();
        double d = w.line("d", "z1 mn/cos β", diameter(c), Kind.LENGTH, BOOK);
        double speed = w.line("V", "ω d/2", speed(c), Kind.SPEED, BOOK);
        double force = w.line("Wt", "2 T/d", 2 * c.duty().torque() / d, Kind.FORCE, BOOK);
        double dynamic = w.line(
                "Kv",
                "((A + √V)/A)^B, V in ft/min, B = (12 − Qv)^⅔/4, A = 50 + 56 (1 − B)",
                Math.pow(1 + Math.sqrt(speed / FOOT_PER_MINUTE) / level(c), exponent(c)),
                Kind.NUMBER,
                BOOK + ", Eq. 14-27");
        double load = force * f.overload() * dynamic * f.distribution();
        double section = c.pair().face() * c.pair().module() / Math.cos(c.pair().helix());
        double pinion = w.line(
                "σ pinion",
                "Wt Ko Kv Ks Km KB/(b mt J)",
                load * f.sizePinion() * f.rim() / (section * f.geometryPinion()),
                Kind.PRESSURE,
                BOOK + ", Eq. 14-15");
        double gear = w.line(
                "σ gear",
                "Wt Ko Kv Ks Km KB/(b mt J)",
                load * f.sizeGear() * f.rim() / (section * f.geometryGear()),
                Kind.PRESSURE,
                BOOK + ", Eq. 14-15");
        double angle =
                Math.atan(Math.tan(c.pair().pressureAngle()) / Math.cos(c.pair().helix()));
        double ratio = (double) c.pair().gearTeeth() / c.pair().pinionTeeth();
        double geometry = w.line(
                "I",
                "cos φt sin φt/(2 mN) × mG/(mG + 1)",
                Math.cos(angle) * Math.sin(angle) / (2 * f.sharing()) * ratio / (ratio + 1),
                Kind.NUMBER,
                BOOK + ", Eq. 14-23");
        double contact = w.line(
                "σ contact",
                "Cp √(Wt Ko Kv Ks Km/(d b I))",
                f.elastic()
                        * 1e3
                        * Math.sqrt(load * f.sizePinion() / (d * c.pair().face() * geometry)),
                Kind.PRESSURE,
                BOOK + ", Eq. 14-16");
        cautions(w);
        Double one = reserve(w, "reserve pinion", c.allowed().bendingPinion(), pinion);
        Double two = reserve(w, "reserve gear", c.allowed().bendingGear(), gear);
        Double touch = c.allowed().contactAllowed();
        Double three = touch == null
                ? null
                : w.line("reserve contact", "(allowed/σ)²", Math.pow(touch / contact, 2), Kind.NUMBER, BOOK);
        return w.worked(new Result(speed, force, dynamic, geometry, pinion, gear, contact, one, two, three));
    }

    private static @Nullable Double reserve(Working w, String symbol, @Nullable Double allowed, double stress) {
        return allowed == null ? null : w.line(symbol, "allowed/σ", allowed / stress, Kind.NUMBER, BOOK);
    }

    private static void cautions(Working w) {
        w.caution(
                "A check of sound teeth: pits, steps, cracks and welded teeth are outside it, and a worn flank is not its profile.");
        w.caution(
                "J, Km and the stresses allowed come from charts and tables that you read: the result is no better than they are.");
        w.caution(
                "This is one method; ISO 6336 gives other figures. Compare like with like, best the old pair with the new.");
    }
}
