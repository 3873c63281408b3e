package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
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

/** The worksheet {@code key}: a parallel key, its shear, its pressure and the length it needs. */
public final class ParallelKey {
    private static final String BOOK =
            "Shigley 9th ed., 7-7, keys: F = 2 T/d over b l and over the bearing height times l";
    private static final String SIZES = "DIN 6885-1, high form";
    private static final Table KEYS = Table.read("din-6885-1/keys.csv");
    private static final double MM = 1e-3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "key",
            "Parallel key",
            "Shear and pressure of a parallel key under a torque, and the length it needs.",
            List.of(BOOK, SIZES + ", from memory"),
            Case.class,
            Result.class,
            ParallelKey::work);

    private ParallelKey() {}

    /** Shape of the ends; a round end does not bear. */
    public enum Ends {
        SQUARE,
        ROUND
    }

    /** Size of the key; lengths in metres. */
    public record Size(
            @Input(kind = Kind.LENGTH, meaning = "width, else by the shaft", min = 5e-4, max = 0.1) @Nullable
            Double width,

            @Input(kind = Kind.LENGTH, meaning = "height, else by the shaft", min = 5e-4, max = 0.1) @Nullable
            Double height,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "height that bears in the hub, else by the shaft, else half the height",
                    min = 1e-4,
                    max = 0.1)
            @Nullable
            Double bearing,

            @Input(kind = Kind.LENGTH, meaning = "length over all", min = 0.001, max = 0.6, example = "40 mm") @Nullable
            Double length,

            @Input(meaning = "ends", orElse = "round") Ends ends) {}

    /** Length in metres, torque in N·m, stresses in Pa. */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "shaft diameter", min = 0.002, max = 0.5, example = "35 mm")
            double diameter,

            @Input(kind = Kind.TORQUE, meaning = "torque to carry", min = 0.001, max = 1e6, example = "250 N·m")
            double torque,

            @Group Size size,

            @Input(kind = Kind.PRESSURE, meaning = "shear stress allowed", min = 1e5, max = 2e9, example = "100 MPa")
            @Nullable
            Double shearAllowed,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "pressure allowed, of the weakest of shaft, key and hub",
                    min = 1e5,
                    max = 3e9,
                    example = "150 MPa")
            @Nullable
            Double pressureAllowed,

            @Input(meaning = "design factor on the torque", orElse = "1", min = 0.5, max = 10)
            double factor) {}

    /** Force in newtons, stresses in pascal, lengths in metres, torque in N·m. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "width of the key")
            double width,

            @Output(kind = Kind.LENGTH, meaning = "height of the key")
            double height,

            @Output(kind = Kind.FORCE, meaning = "force at the shaft's surface")
            double force,

            @Output(kind = Kind.PRESSURE, meaning = "shear stress", decimals = 1) @Nullable
            Double shear,

            @Output(kind = Kind.PRESSURE, meaning = "pressure on the flank", decimals = 1) @Nullable
            Double pressure,

            @Output(kind = Kind.LENGTH, meaning = "length that bears, for shear") @Nullable
            Double shearLength,

            @Output(kind = Kind.LENGTH, meaning = "length that bears, for pressure") @Nullable
            Double pressureLength,

            @Output(kind = Kind.LENGTH, meaning = "length over all it needs") @Nullable
            Double needed,

            @Output(kind = Kind.LENGTH, meaning = "longer than that by") @Nullable
            Double spare) {}

    /**
     * F = 2 factor T/d; shear F/(b l), pressure F/(bearing height × l), l without round ends; lengths by the stresses allowed.
     *
     * @param c lengths in m, torque in N·m, stresses in Pa
     * @return force in N, stresses in Pa, lengths in m; refused: a shaft outside the table without a width and height, one of
     *     the two alone, a key wider than half the shaft, a bearing height over the key's, a round-ended key no longer than
     *     wide, neither a length nor a stress allowed
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double[] size = size(c, refusals);
        Double length = c.size().length();
        if (length == null && c.shearAllowed() == null && c.pressureAllowed() == null) {
            refusals.add(Refusal.of("length", "neither a length nor a stress allowed is given", "Give one or both"));
        }
        if (refusals.isEmpty()) {
            check(c, size, refusals);
        }
        return refusals.isEmpty() ? Outcome.ok(carried(c, size)) : Outcome.refused(refusals);
    }

    /** Width, height and bearing height; with a refusal where they are not known. */
    private static Double[] size(Case c, List<Refusal> refusals) {
        Double width = c.size().width();
        Double height = c.size().height();
        Double bearing = c.size().bearing();
        if (width != null && height != null) {
            return new Double[] {width, height, bearing == null ? height / 2 : bearing};
        }
        if (width != null || height != null) {
            refusals.add(Refusal.of(
                    width == null ? "width" : "height", "the key is half given", "Give width and height, or neither"));
            return new Double[0];
        }
        for (Table.Row row : KEYS.rows()) {
            if (c.diameter() > row.number("over") * MM && c.diameter() <= row.number("to") * MM + 1e-9) {
                double high = row.number("height") * MM;
                double hub = high - row.number("shaft") * MM;
                return new Double[] {row.number("width") * MM, high, bearing == null ? hub : bearing};
            }
        }
        refusals.add(Refusal.of(
                "width",
                "no key is printed here for a shaft of " + Quantities.brief(c.diameter(), Units.MM),
                "Measure the key and give width and height"));
        return new Double[0];
    }

    private static void check(Case c, Double[] size, List<Refusal> refusals) {
        Double length = c.size().length();
        if (size[0] > c.diameter() / 2) {
            refusals.add(Refusal.of("width", "the key is wider than half the shaft", "Look at both units"));
        }
        if (size[2] > size[1]) {
            refusals.add(Refusal.of("bearing", "more bears than the key is high", "Look at both"));
        }
        if (length != null && c.size().ends() == Ends.ROUND && length <= size[0]) {
            refusals.add(Refusal.of(
                    "length",
                    "a key with round ends no longer than wide bears nowhere",
                    "Measure it, or say ends=square"));
        }
    }

    private static Worked<Result> carried(Case c, Double[] size) {
        Working w = new Working();
        double width = size[0];
        double bearing = size[2];
        double ends = c.size().ends() == Ends.ROUND ? width : 0;
        if (c.size().width() == null) {
            w.line("b", "by the shaft diameter", width, Kind.LENGTH, SIZES);
            w.line("h", "by the shaft diameter", size[1], Kind.LENGTH, SIZES);
        }
        w.line("bearing height", "in the hub", bearing, Kind.LENGTH);
        double force = w.line("F", "2 × factor × T/d", 2 * c.factor() * c.torque() / c.diameter(), Kind.FORCE, BOOK);
        Double length = c.size().length();
        Double shear =
                length == null ? null : w.line("τ", "F/(b l)", force / (width * (length - ends)), Kind.PRESSURE, BOOK);
        Double pressure = length == null
                ? null
                : w.line("p", "F/(bearing height × l)", force / (bearing * (length - ends)), Kind.PRESSURE, BOOK);
        Double allowed = c.shearAllowed();
        Double shearLength = allowed == null
                ? null
                : w.line("l for shear", "F/(b τ allowed)", force / (width * allowed), Kind.LENGTH, BOOK);
        Double borne = c.pressureAllowed();
        Double pressureLength = borne == null
                ? null
                : w.line(
                        "l for pressure",
                        "F/(bearing height × p allowed)",
                        force / (bearing * borne),
                        Kind.LENGTH,
                        BOOK);
        Double needed = longest(shearLength, pressureLength, ends);
        Double spare = needed == null || length == null
                ? null
                : w.line("spare", "length − needed", length - needed, Kind.LENGTH);
        if (spare != null && spare < 0) {
            w.caution("The key is too short for this torque and these stresses.");
        }
        w.caution(
                "The weakest of shaft, key and hub sets the pressure; a light alloy or cast hub carries far less than steel.");
        w.caution("Beyond 1.3 shaft diameters of length the far end carries little: take a second key or a spline.");
        w.caution(
                "A key that rocks, or a keyway with a rolled edge, is a finding: a new key alone will not stay tight.");
        w.caution("Look at the ends of the keyway for cracks before it goes back.");
        return w.worked(new Result(width, size[1], force, shear, pressure, shearLength, pressureLength, needed, spare));
    }

    private static @Nullable Double longest(@Nullable Double one, @Nullable Double two, double ends) {
        if (one == null && two == null) {
            return null;
        }
        return Math.max(one == null ? 0 : one, two == null ? 0 : two) + ends;
    }
}
