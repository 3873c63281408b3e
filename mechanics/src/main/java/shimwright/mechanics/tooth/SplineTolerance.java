package shimwright.mechanics.tooth;

import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code spline-tolerance}: what a tolerance class allows a metric involute spline. */
public final class SplineTolerance {
    private static final String FORMULAS = "ISO 4156-1 class formulas, as in Machinery's Handbook 31, p. 2356";
    private static final double MM = 1e-3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "spline-tolerance",
            "Spline tolerance",
            "Index, profile and lead variation, their joint effect and the total tolerance of a metric spline class.",
            List.of(FORMULAS, "ISO 4156-1, sum of variations and total tolerance from memory"),
            Case.class,
            Result.class,
            SplineTolerance::work);

    private SplineTolerance() {}

    /** Tolerance classes with the factors of their formulas; results in mm for lengths in mm. */
    public enum Grade {
        CLASS_4(2.5, 6.3, 1.6, 10, 0.8, 4, 10, 40),
        CLASS_5(3.55, 9, 2.5, 16, 1.0, 5, 16, 64),
        CLASS_6(5, 12.5, 4, 25, 1.25, 6.3, 25, 100),
        CLASS_7(7.1, 18, 6.3, 40, 2, 10, 40, 160);

        private final double indexRoot;
        private final double indexBase;
        private final double profileModule;
        private final double profileBase;
        private final double leadRoot;
        private final double leadBase;
        private final double byDiameter;
        private final double byWidth;

        Grade(
                double indexRoot,
                double indexBase,
                double profileModule,
                double profileBase,
                double leadRoot,
                double leadBase,
                double byDiameter,
                double byWidth) {
            this.indexRoot = indexRoot;
            this.indexBase = indexBase;
            this.profileModule = profileModule;
            this.profileBase = profileBase;
            this.leadRoot = leadRoot;
            this.leadBase = leadBase;
            this.byDiameter = byDiameter;
            this.byWidth = byWidth;
        }
    }

    /** Lengths in metres, angle in radians. */
    public record Case(
            @Input(meaning = "number of teeth", min = 6, max = 200, example = "24")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "module", min = 2e-4, max = 2e-2, example = "2 mm")
            double module,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "pressure angle",
                    min = Toothing.LEAST_ANGLE,
                    max = Toothing.MOST_ANGLE,
                    example = "30°")
            double pressureAngle,

            @Input(kind = Kind.LENGTH, meaning = "length of the spline", min = 1e-3, max = 1, example = "30 mm")
            double length,

            @Input(meaning = "tolerance class", example = "class 5")
            Grade grade,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "fundamental deviation es of the fit class from its ISO 286 table, as a positive number",
                    orElse = "0 mm",
                    min = 0,
                    max = 1e-3)
            double deviation) {}

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "index variation Fp", decimals = 4)
            double index,

            @Output(kind = Kind.LENGTH, meaning = "profile variation ff", decimals = 4)
            double profile,

            @Output(kind = Kind.LENGTH, meaning = "lead variation Fb", decimals = 4)
            double lead,

            @Output(kind = Kind.LENGTH, meaning = "effective variation lambda, one part", decimals = 4)
            double lambda,

            @Output(kind = Kind.LENGTH, meaning = "total tolerance T + lambda", decimals = 4)
            double total,

            @Output(kind = Kind.LENGTH, meaning = "tolerance T of the actual size", decimals = 4)
            double machining,

            @Output(
                    kind = Kind.LENGTH,
                    meaning = "reduction of the shaft's diameters, es/tan(pressure angle)",
                    decimals = 4)
            double reduction) {}

    /**
     * Variations and tolerance of a class.
     *
     * @param c the case; refused where the variations use up the whole tolerance. Source: ISO 4156-1 formulas, index,
     *     profile and lead; their sum by 0.6 times the root of squares, and T + lambda, from memory
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        Grade g = c.grade();
        double module = c.module() / MM;
        double diameter = module * c.teeth();
        double index = w.line(
                "index variation Fp",
                "0.001 × (" + g.indexRoot + " × √(module × teeth × π/2) + " + g.indexBase + ")",
                1e-3 * MM * (g.indexRoot * Math.sqrt(diameter * Math.PI / 2) + g.indexBase),
                Kind.LENGTH,
                FORMULAS);
        double profile = w.line(
                "profile variation ff",
                "0.001 × (" + g.profileModule + " × module × (1 + 0.0125 × teeth) + " + g.profileBase + ")",
                1e-3 * MM * (g.profileModule * module * (1 + 0.0125 * c.teeth()) + g.profileBase),
                Kind.LENGTH,
                FORMULAS);
        double lead = w.line(
                "lead variation Fb",
                "0.001 × (" + g.leadRoot + " × √length + " + g.leadBase + ")",
                1e-3 * MM * (g.leadRoot * Math.sqrt(c.length() / MM) + g.leadBase),
                Kind.LENGTH,
                FORMULAS);
        double lambda = w.line(
                "effective variation lambda",
                "0.6 × √(Fp² + ff² + Fb²)",
                0.6 * Math.sqrt(index * index + profile * profile + lead * lead),
                Kind.LENGTH,
                "ISO 4156-1, from memory");
        double total = w.line(
                "total tolerance",
                g.byDiameter + " × i(diameter) + " + g.byWidth + " × i(π/2 × module)",
                g.byDiameter * unit(diameter) + g.byWidth * unit(module * Math.PI / 2),
                Kind.LENGTH,
                "ISO 4156-1 with the ISO 286 tolerance unit, from memory");
        if (!(total > lambda)) {
            return Outcome.refused(Refusal.of(
                    "length", "the variations use up the whole tolerance of this class", "Look at module and length"));
        }
        double reduction = w.line(
                "reduction of diameters",
                "es / tan(pressure angle)",
                c.deviation() / Math.tan(c.pressureAngle()),
                Kind.LENGTH,
                FORMULAS);
        w.caution("Class formulas for unworn parts: a used spline is judged by its readings.");
        return Outcome.ok(w.worked(new Result(index, profile, lead, lambda, total, total - lambda, reduction)));
    }

    /** The tolerance unit i in metres for a size in mm. */
    private static double unit(double size) {
        return 1e-3 * MM * (0.45 * Math.cbrt(size) + 0.001 * size);
    }
}
