package shimwright.mechanics.shaft;

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

/** The worksheet {@code serration}: a serration with straight flanks over and between wires, its wear, and what it carries. */
public final class Serration {
    private static final String SAE = "SAE J500, straight-sided serrations, formulas 1 to 4";
    private static final String DIN =
            "DIN 5481: 60° between the teeth of the shaft, so a tooth of 60° less a step; from memory";
    private static final String PRESSURE =
            "p = T/(share × n × height × length × pitch radius), as of a straight-sided spline";
    private static final double DEGREE = Math.PI / 180;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "serration",
            "Serrated spline",
            "Sizes of a straight-sided serration over and between wires, how far shaft and hub are worn, and what it carries.",
            List.of(SAE, DIN, PRESSURE),
            Case.class,
            Result.class,
            Serration::work);

    private Serration() {}

    /** By which series its teeth are cut. */
    public enum Series {
        /** 36 teeth of 80° or 48 of 82.5°: 90° between the teeth of the shaft. */
        SAE_J500,
        /** 60° between the teeth of the shaft. */
        DIN_5481,
        /** Another: the angle of a tooth is given. */
        OTHER
    }

    /** The serration; lengths in metres, angle in radians. */
    public record Profile(
            @Input(meaning = "series", example = "sae j500") Series series,

            @Input(meaning = "number of teeth", min = 8, max = 120, example = "36")
            int teeth,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "pitch diameter, midway between the points outside and inside",
                    min = 0.002,
                    max = 0.3,
                    example = "0.485 in")
            double pitchDiameter,

            @Input(
                    kind = Kind.ANGLE,
                    meaning =
                            "angle of a tooth of the shaft, which is that of a space of the hub; by the series where it has one",
                    min = 0.2,
                    max = 2.4)
            @Nullable
            Double toothAngle) {}

    /** Readings at 20 °C; lengths in metres. */
    public record Read(
            @Input(kind = Kind.LENGTH, meaning = "wire between teeth of the shaft", min = 1e-4, max = 0.05) @Nullable
            Double shaftWire,

            @Input(kind = Kind.LENGTH, meaning = "shaft, read over two wires", min = 0.002, max = 0.4) @Nullable
            Double overWires,

            @Input(kind = Kind.LENGTH, meaning = "wire in spaces of the hub", min = 1e-4, max = 0.05) @Nullable
            Double hubWire,

            @Input(kind = Kind.LENGTH, meaning = "hub, read between two wires", min = 0.001, max = 0.4) @Nullable
            Double betweenWires) {}

    /** What it carries; lengths in metres, torque in N·m, pressure in Pa. */
    public record Load(
            @Input(kind = Kind.TORQUE, meaning = "torque to carry", min = 1e-3, max = 1e5) @Nullable
            Double torque,

            @Input(kind = Kind.PRESSURE, meaning = "pressure allowed on the flanks", min = 1e5, max = 1e9) @Nullable
            Double pressureAllowed,

            @Input(kind = Kind.LENGTH, meaning = "length that bears", min = 1e-3, max = 0.5) @Nullable
            Double length,

            @Input(kind = Kind.LENGTH, meaning = "shaft outside, over its blunt teeth", min = 0.002, max = 0.3)
            @Nullable
            Double outside,

            @Input(kind = Kind.LENGTH, meaning = "bore of the hub, inside its blunt teeth", min = 0.002, max = 0.3)
            @Nullable
            Double bore,

            @Input(meaning = "share of the teeth that bear", orElse = "1", min = 0.1, max = 1)
            double share) {}

    /** A serration, what was read of it and what it is to carry. */
    public record Case(
            @Group Profile profile, @Group Read read, @Group Load load) {}

    /** Lengths in metres, angles in radians, pressure in Pa, torque in N·m, force in N. */
    public record Result(
            @Output(kind = Kind.ANGLE, meaning = "angle of a tooth of the shaft", decimals = 3)
            double toothAngle,

            @Output(kind = Kind.ANGLE, meaning = "angle between teeth of the shaft", decimals = 3)
            double spaceAngle,

            @Output(kind = Kind.ANGLE, meaning = "one tooth further turns it by", decimals = 2)
            double step,

            @Output(kind = Kind.LENGTH, meaning = "diameter of the points outside", decimals = 4)
            double overPoints,

            @Output(kind = Kind.LENGTH, meaning = "diameter of the points inside", decimals = 4)
            double underPoints,

            @Output(kind = Kind.LENGTH, meaning = "wire that touches the shaft at the pitch circle", decimals = 4)
            double shaftPitchWire,

            @Output(kind = Kind.LENGTH, meaning = "shaft over that wire", decimals = 4)
            double overPitchWire,

            @Output(kind = Kind.LENGTH, meaning = "wire that touches the hub at the pitch circle", decimals = 4)
            double hubPitchWire,

            @Output(kind = Kind.LENGTH, meaning = "hub between that wire", decimals = 4)
            double betweenPitchWire,

            @Output(kind = Kind.LENGTH, meaning = "shaft over the wire given, unworn", decimals = 4) @Nullable
            Double overUnworn,

            @Output(kind = Kind.LENGTH, meaning = "off each flank of the shaft, square to it", decimals = 4) @Nullable
            Double shaftWorn,

            @Output(kind = Kind.LENGTH, meaning = "hub between the wire given, unworn", decimals = 4) @Nullable
            Double betweenUnworn,

            @Output(kind = Kind.LENGTH, meaning = "off each flank of the hub, square to it", decimals = 4) @Nullable
            Double hubWorn,

            @Output(kind = Kind.ANGLE, meaning = "turning play, from flank to flank", decimals = 3) @Nullable
            Double play,

            @Output(kind = Kind.PRESSURE, meaning = "pressure on the flanks", decimals = 2) @Nullable
            Double pressure,

            @Output(kind = Kind.FORCE, meaning = "force that spreads the hub, all round") @Nullable
            Double spreads,

            @Output(kind = Kind.TORQUE, meaning = "torque at the pressure allowed") @Nullable
            Double capacity) {}

    /**
     * Both circles of points follow from count, angle and pitch circle; a wire lies between two flanks; what is worn off a flank
     * moves the bottom of a space by that over the sine of its half angle.
     *
     * @param c lengths in m, angles in rad, torque in N·m, pressure in Pa; readings at 20 °C
     * @return lengths in m, angles in rad, pressure in Pa; worn negative where more is there than there was; refused: a count that
     *     its series has not, an angle that leaves no tooth, a reading without its wire, a wire that does not touch the flanks, a reading
     *     off by a quarter of the depth, a load without its length and height
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double angle = angle(c.profile(), refusals);
        Read read = c.read();
        pair(read.shaftWire(), read.overWires(), "shaftWire", "overWires", refusals);
        pair(read.hubWire(), read.betweenWires(), "hubWire", "betweenWires", refusals);
        load(c.load(), refusals);
        if (angle == null) {
            return Outcome.refused(refusals);
        }
        SerrationProfile profile =
                new SerrationProfile(c.profile().teeth(), angle / 2, c.profile().pitchDiameter() / 2);
        touches(profile, read.shaftWire(), profile.space(), "shaftWire", refusals);
        touches(profile, read.hubWire(), profile.tooth(), "hubWire", refusals);
        if (refusals.isEmpty()) {
            near(profile, off(read.overWires(), read.shaftWire(), profile::offShaft), "overWires", refusals);
            near(profile, off(read.betweenWires(), read.hubWire(), profile::offHub), "betweenWires", refusals);
        }
        return refusals.isEmpty() ? Outcome.ok(found(c, profile)) : Outcome.refused(refusals);
    }

    /** By series and count; null where it is refused. */
    private static @Nullable Double angle(Profile p, List<Refusal> refusals) {
        Double given = p.toothAngle();
        double step = 2 * Math.PI / p.teeth();
        Double series = p.series() == Series.OTHER ? given : Double.valueOf(shaftSpace(p.series()) - step);
        if (series == null) {
            refusals.add(Refusal.of("toothAngle", "no series gives it", "Measure it on a wire, or find the series"));
            return null;
        }
        int before = refusals.size();
        if (p.series() == Series.SAE_J500 && p.teeth() != 36 && p.teeth() != 48) {
            refusals.add(Refusal.of("teeth", "this series has 36 or 48", "Count again, or take another series"));
        }
        if (given != null && Math.abs(given - series) > 0.5 * DEGREE) {
            refusals.add(Refusal.of(
                    "toothAngle",
                    "by its series it is " + Quantities.brief(series, Units.DEGREE),
                    "Leave it out, or take another series"));
        }
        if (series < 15 * DEGREE || series + step > 170 * DEGREE) {
            refusals.add(Refusal.of("teeth", "with so many no such tooth stands", "Count again"));
        }
        return refusals.size() == before ? series : null;
    }

    private static double shaftSpace(Series series) {
        return (series == Series.SAE_J500 ? 90 : 60) * DEGREE;
    }

    private static void pair(
            @Nullable Double wire, @Nullable Double read, String wireKey, String readKey, List<Refusal> refusals) {
        if ((wire == null) != (read == null)) {
            refusals.add(Refusal.of(
                    wire == null ? wireKey : readKey, "wire and reading belong together", "Give both, or neither"));
        }
    }

    private static void load(Load l, List<Refusal> refusals) {
        Double outside = l.outside();
        Double bore = l.bore();
        if (l.torque() != null || l.pressureAllowed() != null) {
            if (l.length() == null) {
                refusals.add(Refusal.of("length", "the pressure asks for the length that bears", "Measure it"));
            }
            if (outside == null) {
                refusals.add(Refusal.of("outside", "the pressure asks for the height that bears", "Measure the shaft"));
            }
            if (bore == null) {
                refusals.add(Refusal.of("bore", "the pressure asks for the height that bears", "Measure the hub"));
            }
        }
        if (outside != null && bore != null && outside <= bore) {
            refusals.add(Refusal.of("bore", "the hub goes over the teeth of the shaft", "Look which is which"));
        }
    }

    private static void touches(
            SerrationProfile p, @Nullable Double wire, double half, String key, List<Refusal> refusals) {
        if (wire == null) {
            return;
        }
        double share = SerrationProfile.touches(wire, half) / p.flank();
        if (share < 0.15 || share > 0.95) {
            refusals.add(Refusal.of(
                    key,
                    share < 0.15 ? "it lies at the bottom and not on the flanks" : "it lies on the points",
                    "Take a wire near the one that touches at the pitch circle"));
        }
    }

    /** What is off a flank by a reading. */
    private interface Off {
        double flank(double reading, double wire);
    }

    private static @Nullable Double off(@Nullable Double reading, @Nullable Double wire, Off off) {
        return reading == null || wire == null ? null : (Double) off.flank(reading, wire);
    }

    private static void near(SerrationProfile p, @Nullable Double off, String key, List<Refusal> refusals) {
        double quarter = (p.outer() - p.inner()) / 4;
        if (off != null && Math.abs(off) > quarter) {
            refusals.add(Refusal.of(
                    key,
                    Quantities.brief(Math.abs(off), Units.MM) + (off > 0 ? " would be off" : " too much would be on")
                            + " each flank, over a quarter of the depth",
                    "Look at count, wire and pitch diameter, and for a misread digit"));
        }
    }

    private static Worked<Result> found(Case c, SerrationProfile p) {
        Working w = new Working();
        double tooth = w.line(
                "A",
                "angle of a tooth",
                2 * p.tooth(),
                Kind.ANGLE,
                c.profile().series() == Series.DIN_5481 ? DIN : SAE);
        double inner = w.line(
                "under points", "d × 2 sin(A/2)/(sin(A/2) + sin(A/2 + 180°/n))", 2 * p.inner(), Kind.LENGTH, SAE);
        double outer = w.line("over points", "2 d − under points", 2 * p.outer(), Kind.LENGTH, SAE);
        Read read = c.read();
        Double shaft = off(read.overWires(), read.shaftWire(), p::offShaft);
        Double hub = off(read.betweenWires(), read.hubWire(), p::offHub);
        if (shaft != null) {
            w.line("off the shaft", "(unworn − read)/2 × sin(space/2)", shaft, Kind.LENGTH);
        }
        if (hub != null) {
            w.line("off the hub", "(read − unworn)/2 × sin(tooth/2)", hub, Kind.LENGTH);
        }
        double slope = p.slope();
        Double play = shaft == null || hub == null
                ? null
                : w.line(
                        "play",
                        "2 (off shaft + off hub)/(pitch radius × cos slope)",
                        2 * (shaft + hub) / (p.pitch() * Math.cos(slope)),
                        Kind.ANGLE);
        Carried carried = carried(c, p, slope, w);
        cautions(w, p, play);
        Double shaftWire = read.shaftWire();
        Double hubWire = read.hubWire();
        return w.worked(new Result(
                tooth,
                2 * p.space(),
                2 * p.halfStep(),
                outer,
                inner,
                p.shaftWire(),
                p.over(p.shaftWire()),
                p.hubWire(),
                p.between(p.hubWire()),
                shaftWire == null ? null : (Double) p.over(shaftWire),
                shaft,
                hubWire == null ? null : (Double) p.between(hubWire),
                hub,
                play,
                carried.pressure(),
                carried.spreads(),
                carried.capacity()));
    }

    private record Carried(
            @Nullable Double pressure,
            @Nullable Double spreads,
            @Nullable Double capacity) {}

    private static Carried carried(Case c, SerrationProfile p, double slope, Working w) {
        Load l = c.load();
        Double length = l.length();
        Double outside = l.outside();
        Double bore = l.bore();
        Double torque = l.torque();
        Double allowed = l.pressureAllowed();
        if (length == null || outside == null || bore == null) {
            return new Carried(null, null, null);
        }
        double height = w.line("h", "(outside − bore)/2", (outside - bore) / 2, Kind.LENGTH);
        double bears = l.share() * p.teeth() * height * length * p.pitch();
        return new Carried(
                torque == null ? null : w.line("p", "T/(share n h l r)", torque / bears, Kind.PRESSURE, PRESSURE),
                torque == null
                        ? null
                        : w.line(
                                "spreads",
                                "T/r × tan slope",
                                torque / p.pitch() * Math.tan(slope),
                                Kind.FORCE,
                                "statics"),
                allowed == null
                        ? null
                        : w.line("T", "p allowed × share n h l r", allowed * bears, Kind.TORQUE, PRESSURE));
    }

    private static void cautions(Working w, SerrationProfile p, @Nullable Double play) {
        w.caution("Mark shaft and hub before they part: it goes back on in " + p.teeth()
                + " places and only one is right.");
        w.caution(
                "Its slanting flanks spread the hub: look for a crack from the slot, and tighten its bolt to its figure.");
        w.caution("Read at both ends and at right angles: one that ran loose is worn in a taper.");
        if (play != null && play < 0) {
            w.caution("By these readings the hub does not go on by hand: read both again before it is driven.");
        }
    }
}
