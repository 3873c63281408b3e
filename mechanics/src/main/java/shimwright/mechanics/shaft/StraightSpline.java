package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code straight-spline}: a straight-sided spline by its series, and the pressure on its flanks. */
public final class StraightSpline {
    private static final String SIZES = "ISO 14:1982 (BS 5686:1986), light and medium series";
    private static final String FLANK =
            "T = p × n × h × l × mean radius; engineering handbooks, straight-sided splines";
    private static final Table SPLINES = Table.read("iso-14-1982/splines.csv");
    private static final double MM = 1e-3;
    private static final double NEAR = 0.3e-3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "straight-spline",
            "Straight-sided spline",
            "Which straight-sided spline it is, its sizes, and the pressure on its flanks under a torque.",
            List.of(SIZES, FLANK),
            Case.class,
            Result.class,
            StraightSpline::work);

    private StraightSpline() {}

    /** The spline as measured; lengths in metres. */
    public record Measured(
            @Input(meaning = "number of teeth", min = 4, max = 40, example = "6")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "minor diameter", min = 0.005, max = 0.3, example = "26 mm")
            double minor,

            @Input(kind = Kind.LENGTH, meaning = "major diameter", min = 0.006, max = 0.35, example = "30 mm")
            double major,

            @Input(kind = Kind.LENGTH, meaning = "width of a tooth, where measured", min = 0.001, max = 0.1) @Nullable
            Double width) {}

    /** Lengths in metres, torque in N·m, pressure in Pa. */
    public record Case(
            @Group Measured spline,

            @Input(kind = Kind.TORQUE, meaning = "torque to carry", min = 1e-3, max = 1e6, example = "150 N·m")
            @Nullable
            Double torque,

            @Input(kind = Kind.LENGTH, meaning = "length that bears", min = 1e-3, max = 1, example = "30 mm") @Nullable
            Double length,

            @Input(kind = Kind.PRESSURE, meaning = "pressure allowed on the flanks", min = 1e5, max = 1e9) @Nullable
            Double pressureAllowed,

            @Input(
                    meaning = "share of the teeth that bear: all of a good fit, about three quarters of a worn one",
                    orElse = "1",
                    min = 0.1,
                    max = 1)
            double share,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "chamfer taken off the height at each end of it",
                    min = 0,
                    max = 0.01,
                    orElse = "0 mm")
            double chamfer,

            @Input(meaning = "friction of the flanks, for what slides", min = 0.01, max = 1) @Nullable
            Double friction) {}

    /** Lengths in metres, pressure in pascal, torque in N·m. */
    public record Result(
            @Output(meaning = "it is") String name,

            @Output(kind = Kind.LENGTH, meaning = "width of a tooth by the series") @Nullable
            Double width,

            @Output(kind = Kind.LENGTH, meaning = "measured width less that") @Nullable
            Double worn,

            @Output(kind = Kind.LENGTH, meaning = "height that bears")
            double height,

            @Output(kind = Kind.PRESSURE, meaning = "pressure on the flanks", decimals = 2) @Nullable
            Double pressure,

            @Output(kind = Kind.TORQUE, meaning = "torque at the pressure allowed") @Nullable
            Double capacity,

            @Output(kind = Kind.FORCE, meaning = "force on all flanks together") @Nullable
            Double force,

            @Output(kind = Kind.FORCE, meaning = "force to slide it under that torque") @Nullable
            Double slides,

            @Output(kind = Kind.LENGTH, meaning = "length that must bear at the pressure allowed") @Nullable
            Double lengthNeeded) {}

    /**
     * Height = (D − d)/2 − 2 chamfers, mean radius = (D + d)/4, p = T/(share × n × height × length × mean radius); to slide it
     * takes friction × T/mean radius.
     *
     * @param c lengths in m, torque in N·m, pressure in Pa
     * @return lengths in m, pressure in Pa, torque in N·m; the name {@code none of the series} where no size of the table is
     *     within 0.3 mm; refused: a major diameter not above the minor one, no height left, a torque or pressure allowed without a length, where there
     *     is not the other to say how long, a friction without a torque
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Measured s = c.spline();
        if (s.major() <= s.minor()) {
            refusals.add(Refusal.of("major", "it is not above the minor diameter", "Look which is which"));
        } else if (height(c) <= 0) {
            refusals.add(Refusal.of("chamfer", "nothing is left of the height", "Measure the chamfer again"));
        }
        boolean asked =
                c.torque() == null ? c.pressureAllowed() != null : c.pressureAllowed() == null && c.friction() == null;
        if (asked && c.length() == null) {
            refusals.add(Refusal.of("length", "the pressure asks for the length that bears", "Measure it"));
        }
        if (c.friction() != null && c.torque() == null) {
            refusals.add(Refusal.of("torque", "what it takes to slide asks for the torque", "Give it"));
        }
        return refusals.isEmpty() ? Outcome.ok(carried(c)) : Outcome.refused(refusals);
    }

    private static double height(Case c) {
        return (c.spline().major() - c.spline().minor()) / 2 - 2 * c.chamfer();
    }

    private static Optional<Table.Row> row(Measured s) {
        return SPLINES.rows().stream()
                .filter(row -> (int) row.number("teeth") == s.teeth())
                .filter(row -> Math.abs(row.number("minor") * MM - s.minor()) < NEAR
                        && Math.abs(row.number("major") * MM - s.major()) < NEAR)
                .findFirst();
    }

    private static String name(Table.Row row) {
        return List.of("teeth", "minor", "major").stream()
                        .map(column -> Integer.toString((int) row.number(column)))
                        .collect(Collectors.joining(" × "))
                + ", " + row.text("series") + " series";
    }

    private static Worked<Result> carried(Case c) {
        Working w = new Working();
        Measured s = c.spline();
        Optional<Table.Row> row = row(s);
        Double width = row.map(found -> w.line("B", "by the series", found.number("width") * MM, Kind.LENGTH, SIZES))
                .orElse(null);
        Double measured = s.width();
        Double worn = width == null || measured == null
                ? null
                : w.line("off the series", "measured − B", measured - width, Kind.LENGTH);
        double height = w.line("h", "(D − d)/2 − 2 chamfers", height(c), Kind.LENGTH);
        double radius = w.line("mean radius", "(D + d)/4", (s.major() + s.minor()) / 4, Kind.LENGTH);
        Double length = c.length();
        double each = c.share() * s.teeth() * height * radius;
        double bears = length == null ? 0 : each * length;
        Double torque = c.torque();
        Double pressure = torque == null || length == null
                ? null
                : w.line("p", "T/(share n h l r)", torque / bears, Kind.PRESSURE, FLANK);
        Double allowed = c.pressureAllowed();
        Double capacity = allowed == null || length == null
                ? null
                : w.line("T", "p allowed × share n h l r", allowed * bears, Kind.TORQUE, FLANK);
        Double force = torque == null ? null : w.line("F", "T/r", torque / radius, Kind.FORCE, "statics");
        Double friction = c.friction();
        Double slides = force == null || friction == null
                ? null
                : w.line("slides", "μ F", friction * force, Kind.FORCE, "statics");
        Double needed = torque == null || allowed == null
                ? null
                : w.line("l", "T/(p allowed × share n h r)", torque / (allowed * each), Kind.LENGTH, FLANK);
        cautions(w, row.isPresent(), worn);
        return w.worked(new Result(
                row.map(StraightSpline::name).orElse("none of the series"),
                width,
                worn,
                height,
                pressure,
                capacity,
                force,
                slides,
                needed));
    }

    private static void cautions(Working w, boolean known, @Nullable Double worn) {
        if (!known) {
            w.caution("No size of the series lies within " + Quantities.brief(NEAR, Units.MM)
                    + ": an older or a maker's own spline; measure its mate.");
        }
        if (worn != null && worn < -0.1e-3) {
            w.caution(
                    "The tooth is thinner than its series by more than 0.1 mm: worn on a flank, look at the other side.");
        }
        w.caution("Centred on the minor diameter: look at that land first, flanks carry torque and do not centre.");
        w.caution("What slides under load carries a tenth of what a fixed one does.");
    }
}
