package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code spline-strength}: flank pressure, tooth shear and root torsion of an involute spline. */
public final class SplineStrength {
    private static final String HANDBOOK = "Machinery's Handbook 31, involute splines";
    private static final String FORM = HANDBOOK + ", form from memory";

    /** The handbook's allowance for a spline that cannot rock. */
    private static final double FIXED_SHARE = 9;

    private static final Table FATIGUE = Table.read("machinerys-handbook-31/spline-fatigue-factors.csv");
    private static final Table WEAR = Table.read("machinerys-handbook-31/spline-wear-factors.csv");

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "spline-strength",
            "Spline strength",
            "Flank pressure, tooth shear and root torsion of an involute spline under torque.",
            List.of(HANDBOOK, "common practice, no source: Dudley's form of the flank pressure"),
            Case.class,
            Result.class,
            SplineStrength::work);

    private SplineStrength() {}

    /** How the hub sits. */
    public enum Seat {
        /** It slides or rocks: wear rules. */
        LOOSE,
        /** Tight or piloted: fatigue rules. */
        FIXED
    }

    /** How the torque comes. */
    public enum Load {
        ONE_WAY,
        FULLY_REVERSED
    }

    /** Lengths in metres, torque in N·m, factors plain. */
    public record Case(
            @Input(kind = Kind.TORQUE, meaning = "torque", min = 1e-3, max = 1e6, example = "270 N·m")
            double torque,

            @Input(kind = Kind.LENGTH, meaning = "pitch diameter", min = 1e-3, max = 1, example = "31.75 mm")
            double pitchDiameter,

            @Input(meaning = "number of teeth", min = 3, max = 500, example = "30")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "length in contact", min = 1e-4, max = 1, example = "25 mm")
            double length,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "height of flank in contact",
                    min = 1e-5,
                    max = 0.05,
                    example = "0.95 mm")
            double contactHeight,

            @Input(meaning = "how the hub sits", example = "loose")
            Seat seat,

            @Input(meaning = "application factor Ka, engine roughness", min = 1, max = 5, example = "2.2")
            double applicationFactor,

            @Input(meaning = "load distribution factor Km", orElse = "1", min = 1, max = 5)
            double distributionFactor,

            @Input(meaning = "starts and stops in its life", orElse = "100000", min = 1000, max = 1e7)
            double cycles,

            @Input(meaning = "how the torque comes", orElse = "one way")
            Load load,

            @Input(meaning = "revolutions in its life", orElse = "100000000", min = 1e4, max = 1e10)
            double revolutions,

            @Input(meaning = "fatigue-life factor Kf, if not from the table", min = 0.05, max = 5) @Nullable
            Double fatigueFactor,

            @Input(meaning = "wear-life factor Kw, if not from the table", min = 0.05, max = 10) @Nullable
            Double wearFactor,

            @Input(kind = Kind.LENGTH, meaning = "root diameter of the shaft", min = 1e-3, max = 1) @Nullable
            Double rootDiameter,

            @Input(kind = Kind.LENGTH, meaning = "bore of a hollow shaft", orElse = "0 mm", min = 0, max = 1)
            double bore,

            @Input(kind = Kind.LENGTH, meaning = "tooth thickness at the pitch circle", min = 1e-4, max = 0.1) @Nullable
            Double thickness) {}

    /** Stresses in pascals. */
    public record Result(
            @Output(kind = Kind.PRESSURE, meaning = "mean flank pressure, factors apart", decimals = 2)
            double plainPressure,

            @Output(kind = Kind.PRESSURE, meaning = "flank pressure with the factors", decimals = 2)
            double flankPressure,

            @Output(kind = Kind.PRESSURE, meaning = "shear in the teeth, half of them carrying", decimals = 2) @Nullable
            Double toothShear,

            @Output(kind = Kind.PRESSURE, meaning = "torsion under the root", decimals = 2) @Nullable
            Double rootTorsion,

            @Output(meaning = "fatigue-life factor Kf") double fatigueFactor,
            @Output(meaning = "wear-life factor Kw") double wearFactor) {}

    /**
     * Stresses of a spline under torque.
     *
     * @param c the case; refused where the bore reaches the root. Factors between table rows by the logarithm of the
     *     count. Source: handbook form (Dudley); gives no verdict, allowable stresses vary
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Double root = c.rootDiameter();
        if (root != null && c.bore() > 0.95 * root) {
            faults.add(Refusal.of("bore", "leaves no wall under the root", "Look at bore and rootDiameter"));
        }
        if (root != null && root > 1.2 * c.pitchDiameter()) {
            faults.add(Refusal.of("rootDiameter", "lies far outside the pitch circle", "Look at both diameters"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        Double ownFatigue = c.fatigueFactor();
        Double ownWear = c.wearFactor();
        String column = c.load() == Load.ONE_WAY ? "oneWay" : "fullyReversed";
        double kf = w.line(
                "Kf",
                ownFatigue != null ? "as given" : "table, " + Math.round(c.cycles()) + " cycles",
                ownFatigue != null ? ownFatigue : factor(FATIGUE, "cycles", column, c.cycles()),
                Kind.NUMBER,
                FATIGUE.name());
        double kw = w.line(
                "Kw",
                ownWear != null ? "as given" : "table, " + Math.round(c.revolutions()) + " revolutions",
                ownWear != null ? ownWear : factor(WEAR, "revolutions", "factor", c.revolutions()),
                Kind.NUMBER,
                WEAR.name());
        double plain = w.line(
                "mean flank pressure",
                "2 × torque / (pitch diameter × teeth × length × height)",
                2 * c.torque() / (c.pitchDiameter() * c.teeth() * c.length() * c.contactHeight()),
                Kind.PRESSURE,
                FORM);
        boolean loose = c.seat() == Seat.LOOSE;
        double pressure = w.line(
                "flank pressure",
                loose ? "mean × Ka × Km / Kw" : "mean × Ka × Km / (9 × Kf)",
                plain * c.applicationFactor() * c.distributionFactor() / (loose ? kw : FIXED_SHARE * kf),
                Kind.PRESSURE,
                FORM);
        if (loose) {
            w.caution("A loose spline wears at a third or less of the load a tight one bears.");
        }
        w.caution("Worn flanks: put in the height and length that still touch.");
        return Outcome.ok(w.worked(new Result(plain, pressure, shear(c, w, kf), torsion(c, w, kf), kf, kw)));
    }

    private static @Nullable Double shear(Case c, Working w, double kf) {
        Double thick = c.thickness();
        if (thick == null) {
            return null;
        }
        double area = c.pitchDiameter() * c.teeth() * c.length() * thick * kf;
        return w.line(
                "shear in the teeth",
                "4 × torque × Ka × Km / (pitch diameter × teeth × length × thickness × Kf)",
                4 * c.torque() * c.applicationFactor() * c.distributionFactor() / area,
                Kind.PRESSURE,
                FORM);
    }

    private static @Nullable Double torsion(Case c, Working w, double kf) {
        Double root = c.rootDiameter();
        if (root == null) {
            return null;
        }
        double section = Math.PI * (Math.pow(root, 4) - Math.pow(c.bore(), 4)) * kf;
        return w.line(
                "torsion under the root",
                "16 × torque × root × Ka / (π × (root⁴ − bore⁴) × Kf)",
                16 * c.torque() * root * c.applicationFactor() / section,
                Kind.PRESSURE,
                HANDBOOK + ", equation (1)");
    }

    /** Between rows straight over the logarithm of the count; beyond them the end row. */
    private static double factor(Table table, String count, String column, double wanted) {
        Table.Row low = table.rows().get(0);
        for (Table.Row high : table.rows()) {
            double to = high.number(count);
            if (wanted <= to) {
                double from = low.number(count);
                double share = to == from ? 0 : Math.log(wanted / from) / Math.log(to / from);
                return low.number(column) + share * (high.number(column) - low.number(column));
            }
            low = high;
        }
        return low.number(column);
    }
}
