package shimwright.mechanics.bearing;

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

/** The worksheet {@code bearing-frequencies}: how often a damaged place of a rolling bearing knocks. */
public final class BearingFrequencies {
    private static final String SOURCE =
            "kinematics of rolling without slip; Harris, Rolling Bearing Analysis, from memory";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "bearing-frequencies",
                    "Bearing frequencies",
                    "How often damage on the outer ring, inner ring, a rolling element or the cage knocks at a speed.",
                    List.of(SOURCE, "mean diameter from bore and outside: common practice, no source"),
                    Case.class,
                    Result.class,
                    BearingFrequencies::work)
            .drawn(BearingPictures::frequencies);

    private BearingFrequencies() {}

    /** Count and sizes of a rolling bearing; lengths in metres, angle in radians. */
    public record Rolling(
            @Input(meaning = "balls or rollers in one row", min = 3, max = 200, example = "9")
            int elements,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter of a ball, mean diameter of a roller",
                    min = 1e-4,
                    max = 0.3,
                    example = "7.94 mm")
            double element,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter of the circle through their middles, else from bore and outside",
                    min = 1e-3,
                    max = 3)
            @Nullable
            Double pitchDiameter,

            @Input(kind = Kind.LENGTH, meaning = "bore of the bearing", min = 1e-3, max = 3, example = "25 mm")
            @Nullable
            Double bore,

            @Input(kind = Kind.LENGTH, meaning = "outside of the bearing", min = 1e-3, max = 4, example = "52 mm")
            @Nullable
            Double outside,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "contact angle, 0 for deep groove and cylindrical rollers",
                    orElse = "0°",
                    min = 0,
                    max = Math.PI / 2)
            double contactAngle) {}

    /** A bearing and how its rings turn; rotation in rad/s. */
    public record Case(
            @Group Rolling rolling,

            @Input(
                    kind = Kind.ROTATION,
                    meaning = "speed of the inner ring",
                    min = -5000,
                    max = 5000,
                    example = "1500 rpm")
            double innerSpeed,

            @Input(
                    kind = Kind.ROTATION,
                    meaning = "speed of the outer ring, minus the other way round",
                    orElse = "0 rpm",
                    min = -5000,
                    max = 5000)
            double outerSpeed) {}

    /** One place of damage: how often it knocks, and that in turns of one ring against the other. */
    public record Knock(
            @Output(kind = Kind.FREQUENCY, meaning = "how often", decimals = 2)
            double frequency,

            @Output(meaning = "times the speed of one ring against the other", decimals = 4)
            double order) {}

    /** Frequencies in hertz, length in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "diameter through the middles of the elements")
            double pitchDiameter,

            @Output(kind = Kind.FREQUENCY, meaning = "one ring against the other", decimals = 2)
            double turning,

            @Output(meaning = "damage on the outer ring") Knock outer,
            @Output(meaning = "damage on the inner ring") Knock inner,

            @Output(meaning = "damage on an element, meeting both rings once a turn of its own")
            Knock element,

            @Output(meaning = "an element about itself") Knock spin,

            @Output(meaning = "an element or the cage past a place of the outer ring")
            Knock cage,

            @Output(kind = Kind.ROTATION, meaning = "speed of the cage in the housing", decimals = 1)
            double cageSpeed) {}

    /**
     * Frequencies from pure rolling, γ = d cos α / D: outer z/2 (1 − γ), inner z/2 (1 + γ), element D/d (1 − γ²), cage 1/2 (1 −
     * γ), each times the speed of one ring against the other.
     *
     * @param c lengths in m, angle in rad, speeds in rad/s
     * @return frequencies in Hz, cage speed in rad/s; refused: neither pitch diameter nor bore and outside, both, elements that
     *     do not fit in the circle, rings that turn alike. Source: Harris, Rolling Bearing Analysis, from memory
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double pitch = pitch(c.rolling(), refusals);
        if (pitch != null) {
            fit(c.rolling(), pitch, refusals);
        }
        if (Math.abs(c.innerSpeed() - c.outerSpeed()) < 1e-6) {
            refusals.add(Refusal.of(
                    "innerSpeed",
                    "both rings turn alike, so nothing rolls",
                    "Give the speed of each ring; a bearing under a gear that is locked to its shaft does not knock"));
        }
        return refusals.isEmpty() && pitch != null ? Outcome.ok(found(c, pitch)) : Outcome.refused(refusals);
    }

    private static @Nullable Double pitch(Rolling r, List<Refusal> refusals) {
        Double bore = r.bore();
        Double outside = r.outside();
        if (r.pitchDiameter() != null) {
            return r.pitchDiameter();
        }
        if (bore == null || outside == null) {
            refusals.add(Refusal.of(
                    "pitchDiameter",
                    "neither it nor bore and outside are given",
                    "Measure across two opposite elements and take one diameter off, or give bore and outside"));
            return null;
        }
        if (bore >= outside) {
            refusals.add(Refusal.of(
                    "bore",
                    Quantities.brief(bore, Units.MM) + " is not inside " + Quantities.brief(outside, Units.MM),
                    "Look at both"));
            return null;
        }
        return (bore + outside) / 2;
    }

    /** Neighbours must not overlap: the chord of the circle over one division is at least a diameter. */
    private static void fit(Rolling r, double pitch, List<Refusal> refusals) {
        double room = pitch * Math.sin(Math.PI / r.elements());
        if (r.element() > room * 1.005) {
            refusals.add(Refusal.of(
                    "element",
                    r.elements() + " elements of " + Quantities.brief(r.element(), Units.MM)
                            + " do not fit in a circle of " + Quantities.brief(pitch, Units.MM),
                    "Count again and measure the element; at most " + Quantities.brief(room, Units.MM) + " goes in"));
        }
    }

    private static Worked<Result> found(Case c, double pitchDiameter) {
        Working w = new Working();
        Rolling r = c.rolling();
        double d = r.element();
        double pitch = r.pitchDiameter() != null
                ? pitchDiameter
                : w.line("D", "(bore + outside)/2", pitchDiameter, Kind.LENGTH, "common practice, no source");
        double against = Math.abs(c.innerSpeed() - c.outerSpeed());
        double turning = w.line(
                "f",
                "|inner speed − outer speed|",
                against / (2 * Math.PI),
                Kind.FREQUENCY,
                "one ring against the other");
        double gamma = w.line("γ", "d cos α / D", d * Math.cos(r.contactAngle()) / pitch, Kind.NUMBER, SOURCE);
        double half = r.elements() / 2.0;
        Knock outer = knock(w, "outer ring", "z/2 × (1 − γ) × f", half * (1 - gamma), turning);
        Knock inner = knock(w, "inner ring", "z/2 × (1 + γ) × f", half * (1 + gamma), turning);
        Knock spin = knock(w, "spin", "D/(2 d) × (1 − γ²) × f", pitch / (2 * d) * (1 - gamma * gamma), turning);
        Knock element = knock(w, "element", "2 × spin", 2 * spin.order(), turning);
        Knock cage = knock(w, "cage", "1/2 × (1 − γ) × f", (1 - gamma) / 2, turning);
        double cageSpeed = w.line(
                "cage speed",
                "(inner × (1 − γ) + outer × (1 + γ))/2",
                (c.innerSpeed() * (1 - gamma) + c.outerSpeed() * (1 + gamma)) / 2,
                Kind.ROTATION,
                SOURCE);
        w.caution(
                "Elements slip a little: look 1 to 2 % to either side of each figure, and at twice and three times it.");
        w.caution(
                "Damage on a ring that turns, or on an element, comes and goes with the load: side bands stand beside it.");
        if (r.pitchDiameter() == null) {
            w.caution("The circle is taken midway between bore and outside; makers leave it by a per cent or two.");
        }
        w.caution("Listen with a rod or a pick-up from outside; no hand, sleeve or cable near what turns.");
        return w.worked(new Result(pitch, turning, outer, inner, element, spin, cage, cageSpeed));
    }

    private static Knock knock(Working w, String symbol, String how, double order, double turning) {
        return new Knock(w.line(symbol, how, order * turning, Kind.FREQUENCY, SOURCE), order);
    }
}
