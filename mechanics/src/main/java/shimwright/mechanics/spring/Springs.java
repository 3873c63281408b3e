package shimwright.mechanics.spring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code spring}. */
public final class Springs {
    private static final Table WIRES = Table.read("shigley-10/spring-wire.csv");
    private static final String BOOK = "Shigley 10th ed., ch. 10";
    private static final double TIGHTEST = 3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "spring",
                    "Spring",
                    "Rate, load, stress and set of a coil spring from its wire, coils and lengths; detent force from its ramp.",
                    List.of(
                            "Shigley, Mechanical Engineering Design, 10th ed., Eq. 10-1 to 10-13, Tables 10-1, 10-4 to 10-6"),
                    Case.class,
                    Result.class,
                    Springs::work)
            .drawn(SpringPictures::load);

    private Springs() {}

    /** A helical compression spring by its wire and coils. */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "wire diameter", min = 1e-4, max = 0.02, example = "2.5 mm")
            double wire,

            @Input(kind = Kind.LENGTH, meaning = "outer diameter", min = 5e-4, max = 0.3, example = "31 mm")
            double outerDiameter,

            @Input(meaning = "all coils, counted", min = 1.5, max = 200, example = "14")
            double totalCoils,

            @Input(meaning = "how the ends are made", orElse = "squared ground")
            Ends ends,

            @Input(meaning = "wire", orElse = "music wire") Material material,

            @Input(kind = Kind.LENGTH, meaning = "free length", min = 1e-3, max = 1, example = "98 mm")
            double freeLength,

            @Input(kind = Kind.LENGTH, meaning = "length at work", min = 5e-4, max = 1, example = "60 mm") @Nullable
            Double workingLength,

            @Input(kind = Kind.PRESSURE, meaning = "shear modulus, where known", unit = "GPa", min = 1e9, max = 2e11)
            @Nullable
            Double shearModulus,

            @Input(kind = Kind.PRESSURE, meaning = "tensile strength of the wire, where known", min = 1e8, max = 4e9)
            @Nullable
            Double tensile,

            @Input(meaning = "end condition for buckling: 0.5 between flat faces", orElse = "0.5", min = 0.25, max = 2)
            double endCondition,

            @Input(kind = Kind.ANGLE, meaning = "ramp of the detent notch against the rail", min = 0.05, max = 1.5)
            @Nullable
            Double ramp,

            @Input(meaning = "friction of ball and notch", orElse = "0.12", min = 0, max = 0.6)
            double friction) {

        /** How the ends are made. */
        public enum Ends {
            PLAIN(0, 0, 1),
            PLAIN_GROUND(1, 1, 0),
            SQUARED(2, 2, 1),
            SQUARED_GROUND(2, 2, 0);

            final int dead;
            final int endCoils;
            final int solidExtra;

            Ends(int dead, int endCoils, int solidExtra) {
                this.dead = dead;
                this.endCoils = endCoils;
                this.solidExtra = solidExtra;
            }
        }

        /** Wire. */
        public enum Material {
            MUSIC_WIRE,
            OIL_TEMPERED,
            HARD_DRAWN,
            CHROME_VANADIUM,
            CHROME_SILICON,
            STAINLESS_302
        }
    }

    /** What the spring gives and bears; loads at work only where a length at work was given. */
    public record Result(
            @Output(meaning = "spring index", decimals = 2) double index,
            @Output(meaning = "active coils", decimals = 2) double activeCoils,

            @Output(kind = Kind.STIFFNESS, meaning = "rate", decimals = 3)
            double rate,

            @Output(kind = Kind.LENGTH, meaning = "solid length", decimals = 2)
            double solidLength,

            @Output(kind = Kind.PRESSURE, meaning = "tensile strength of the wire", decimals = 0)
            double tensile,

            @Output(kind = Kind.PRESSURE, meaning = "yield in torsion", decimals = 1)
            double yield,

            @Output(meaning = "curvature factor", decimals = 3)
            double curvature,

            @Output(kind = Kind.FORCE, meaning = "load at which the wire yields", decimals = 1)
            double yieldLoad,

            @Output(kind = Kind.LENGTH, meaning = "longest free length that may be pressed solid", decimals = 1)
            double solidSafeLength,

            @Output(kind = Kind.LENGTH, meaning = "free length from which it buckles unguided", decimals = 1)
            double bucklingLength,

            @Output(kind = Kind.FORCE, meaning = "load when solid", decimals = 1)
            double solidLoad,

            @Output(meaning = "takes a set when pressed solid")
            boolean setsSolid,

            @Output(kind = Kind.FORCE, meaning = "load at work", decimals = 1) @Nullable
            Double load,

            @Output(kind = Kind.PRESSURE, meaning = "stress at work", decimals = 0) @Nullable
            Double stress,

            @Output(meaning = "stress at work over yield", unit = "%", decimals = 0) @Nullable
            Double stressShare,

            @Output(kind = Kind.FORCE, meaning = "axial force to ride out of the detent", decimals = 1) @Nullable
            Double rideOut) {}

    /**
     * Spring: k = G d⁴/(8 D³ Na), τ = KB 8 F D/(π d³), KB = (4C + 2)/(4C − 3), Sut = A/d^m.
     *
     * @param c lengths in m, moduli and strengths in Pa, ramp in rad
     * @return rate in N/m, loads in N, stresses in Pa; refused: coils that overlap (index under 3), no active coil, a
     *     free or working length that does not lie in order over the solid length, wire outside the table without its
     *     strength, a ramp that jams
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double d = c.wire();
        double mean = c.outerDiameter() - d;
        double active = c.totalCoils() - c.ends().dead;
        double solid = d * (c.totalCoils() + c.ends().solidExtra);
        if (mean < TIGHTEST * d) {
            refusals.add(Refusal.of(
                    "outerDiameter", "no coil this tight can be wound", "Look whether inner and outer are mixed up"));
        }
        if (active < 0.5) {
            refusals.add(Refusal.of("totalCoils", "no active coil is left", "Count all coils, end coils included"));
        }
        if (c.freeLength() <= solid) {
            refusals.add(Refusal.of(
                    "freeLength",
                    "it is not longer than the solid length " + Quantities.brief(solid, Units.MM),
                    "Look at wire, coils and ends"));
        }
        Double working = c.workingLength();
        if (working != null && (working > c.freeLength() || working < solid)) {
            refusals.add(Refusal.of(
                    "workingLength",
                    "it does not lie between solid and free length",
                    "Solid here is " + Quantities.brief(solid, Units.MM)));
        }
        Double ramp = c.ramp();
        if (ramp != null && c.friction() * Math.tan(ramp) >= 0.95) {
            refusals.add(Refusal.of("ramp", "at this friction the detent jams", "Look at the angle of the notch"));
        }
        Optional<Table.Row> wire = WIRES.rows().stream()
                .filter(row -> row.text("material").equals(c.material().name())
                        && d * 1000 > row.number("over")
                        && d * 1000 <= row.number("upTo"))
                .findFirst();
        if (wire.isEmpty() && (c.tensile() == null || c.shearModulus() == null)) {
            refusals.add(Refusal.of(
                    "wire",
                    "the table does not reach to this diameter of this wire",
                    "Give tensile and shearModulus, or look at the material"));
        }
        return refusals.isEmpty() ? Outcome.ok(sprung(c, mean, active, solid, wire)) : Outcome.refused(refusals);
    }

    private static Worked<Result> sprung(Case c, double mean, double active, double solid, Optional<Table.Row> wire) {
        Working w = new Working();
        double d = c.wire();
        double index = w.line("C", "(outer − d)/d", mean / d, Kind.NUMBER, BOOK);
        w.line("active coils", "coils − end coils", active, Kind.NUMBER, "Table 10-1");
        double shear = c.shearModulus() != null
                ? c.shearModulus()
                : w.line("G", "for this wire", row(wire).number("shear") * 1e9, Kind.PRESSURE, WIRES.name());
        double rate = w.line(
                "rate",
                "G d⁴/(8 D³ Na)",
                shear * Math.pow(d, 4) / (8 * Math.pow(mean, 3) * active),
                Kind.STIFFNESS,
                BOOK);
        w.line("solid length", "d × coils", solid, Kind.LENGTH, "Table 10-1");
        double tensile = c.tensile() != null ? c.tensile() : tensile(row(wire), d, w);
        double share = wire.map(r -> r.number("yieldShare")).orElse(0.45);
        double yield = w.line("Ssy", "share × Sut", share * tensile, Kind.PRESSURE, "Table 10-6, set not removed");
        double curvature = w.line("KB", "(4C + 2)/(4C − 3)", (4 * index + 2) / (4 * index - 3), Kind.NUMBER, BOOK);
        double stressPerLoad = curvature * 8 * mean / (Math.PI * d * d * d);
        double yieldLoad = w.line("yield load", "π d³ Ssy/(8 KB D)", yield / stressPerLoad, Kind.FORCE, BOOK);
        double safe =
                w.line("solid-safe length", "solid + yield load/rate", solid + yieldLoad / rate, Kind.LENGTH, BOOK);
        double buckling = w.line("buckling length", "2.63 D/α", 2.63 * mean / c.endCondition(), Kind.LENGTH, BOOK);
        double solidLoad = w.line("solid load", "rate × (free − solid)", rate * (c.freeLength() - solid), Kind.FORCE);
        boolean sets = solidLoad > yieldLoad;
        Double working = c.workingLength();
        Double load = working == null
                ? null
                : w.line("load", "rate × (free − working)", rate * (c.freeLength() - working), Kind.FORCE);
        Double stress =
                load == null ? null : w.line("stress", "KB 8 F D/(π d³)", load * stressPerLoad, Kind.PRESSURE, BOOK);
        cautions(c, sets, buckling, w);
        return w.worked(new Result(
                index,
                active,
                rate,
                solid,
                tensile,
                yield,
                curvature,
                yieldLoad,
                safe,
                buckling,
                solidLoad,
                sets,
                load,
                stress,
                stress == null ? null : stress / yield,
                rideOut(c, load, w)));
    }

    private static Table.Row row(Optional<Table.Row> wire) {
        return wire.orElseThrow(() -> new IllegalStateException("no wire"));
    }

    private static double tensile(Table.Row wire, double d, Working w) {
        double sut = wire.number("a") * 1e6 / Math.pow(d * 1000, wire.number("m"));
        return w.line("Sut", "A/d^m", sut, Kind.PRESSURE, WIRES.name());
    }

    /** F = Fs (tan a + μ)/(1 − μ tan a): one flank, side friction of the plunger left out. */
    private static @Nullable Double rideOut(Case c, @Nullable Double load, Working w) {
        Double ramp = c.ramp();
        if (ramp == null || load == null) {
            return null;
        }
        double tan = Math.tan(ramp);
        return w.line(
                "ride-out force",
                "load × (tan a + μ)/(1 − μ tan a)",
                load * (tan + c.friction()) / (1 - c.friction() * tan),
                Kind.FORCE,
                "statics of the wedge");
    }

    private static void cautions(Case c, boolean sets, double buckling, Working w) {
        w.caution("A spring under a cover or plug is stored energy: eyes covered, face aside, let it out slowly.");
        if (sets) {
            w.caution("Pressed solid this spring takes a set: do not close it fully in a vise.");
        }
        if (c.freeLength() > buckling) {
            w.caution("Unguided it buckles; in its bore or on its pin it does not.");
        }
        if (c.ramp() != null) {
            w.caution("A worn notch changes the shift effort more than a tired spring: look at the edge first.");
        }
    }
}
