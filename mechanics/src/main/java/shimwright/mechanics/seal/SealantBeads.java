package shimwright.mechanics.seal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.seal.SealantBeads.Case.Product;
import shimwright.mechanics.seal.SealantBeads.Result.Window;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code sealant-bead}. */
public final class SealantBeads {
    private static final Table CURE = Table.read("us-army-tm-5-3820-256-24-5/cure.csv");
    private static final String GEOMETRY = "volume is kept";
    private static final double WIDEST_ANAEROBIC = 0.76e-3;

    /** Full strength at room temperature on plain steel, to which the manual's 72 h at 10 °C compare. */
    private static final double MANUAL_HOURS = 24;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "sealant-bead",
            "Sealant bead",
            "How far a bead of sealant spreads, which bead wets a wanted width, and how long it stays open and cures.",
            List.of(
                    "geometry",
                    CURE.name(),
                    "cure time doubles per 8 to 10 K colder: adhesive makers' rule",
                    "gap of anaerobics to 0.76 mm: Handbook of Adhesives and Sealants, p. 388"),
            Case.class,
            Result.class,
            SealantBeads::work);

    private SealantBeads() {}

    /** A bead or film of liquid sealant and the clock that runs on it. */
    public record Case(
            @Input(meaning = "sealant", orElse = "anaerobic")
            Product product,

            @Input(kind = Kind.LENGTH, meaning = "diameter of the bead", min = 1e-4, max = 0.02, example = "1 mm")
            @Nullable
            Double bead,

            @Input(kind = Kind.LENGTH, meaning = "length of the bead", min = 1e-3, max = 20, example = "900 mm")
            @Nullable
            Double length,

            @Input(kind = Kind.LENGTH, meaning = "gap of the closed joint", orElse = "0.05 mm", min = 1e-6, max = 0.005)
            double gap,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "width the sealant shall wet",
                    min = 1e-4,
                    max = 0.1,
                    example = "12 mm")
            @Nullable
            Double land,

            @Input(
                    kind = Kind.VOLUME,
                    meaning = "sealant spread by hand or roller",
                    unit = "mL",
                    min = 1e-9,
                    max = 1e-3)
            @Nullable
            Double volume,

            @Input(kind = Kind.AREA, meaning = "face it is spread on", unit = "cm²", min = 1e-6, max = 1) @Nullable
            Double area,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "temperature of the case",
                    min = 230,
                    max = 330,
                    example = "18 °C")
            @Nullable
            Double temperature,

            @Input(meaning = "whether primer is used", orElse = "no")
            boolean primer,

            @Input(
                    kind = Kind.TIME,
                    meaning = "time to full strength by its maker",
                    unit = "h",
                    max = 1e6,
                    example = "24 h")
            @Nullable
            Double cureTime,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "temperature that time holds for",
                    orElse = "23 °C",
                    min = 280,
                    max = 310)
            double cureTemperature,

            @Input(
                    kind = Kind.TEMPERATURE_DIFFERENCE,
                    meaning = "cooling that doubles the time",
                    orElse = "10 K",
                    min = 5,
                    max = 20)
            double doubling,

            @Input(kind = Kind.TIME, meaning = "open time by its maker", unit = "min", max = 1e5, example = "20 min")
            @Nullable
            Double openTime,

            @Input(
                    kind = Kind.TIME,
                    meaning = "first bead to last torque, as planned or by the clock",
                    unit = "min",
                    max = 1e6,
                    example = "14 min")
            @Nullable
            Double planned) {

        /** Class of sealant. */
        public enum Product {
            /** Cures without air against metal. */
            ANAEROBIC,
            /** Silicone that cures with the moisture of the air. */
            SILICONE
        }
    }

    /** Bead and window; what was not asked is absent. */
    public record Result(
            @Output(kind = Kind.VOLUME, meaning = "sealant in the bead", unit = "mL", decimals = 2) @Nullable
            Double beadVolume,

            @Output(kind = Kind.LENGTH, meaning = "width it spreads to", decimals = 1) @Nullable
            Double spread,

            @Output(kind = Kind.LENGTH, meaning = "bead for the wanted width", decimals = 2) @Nullable
            Double beadForLand,

            @Output(kind = Kind.LENGTH, meaning = "film where it is spread", decimals = 4) @Nullable
            Double film,

            @Output(meaning = "cure slower by the doubling rule", decimals = 2) @Nullable
            Double cureMultiplier,

            @Output(kind = Kind.TIME, meaning = "time to full strength here", unit = "h", decimals = 1) @Nullable
            Double cureTime,

            @Output(kind = Kind.TEMPERATURE, meaning = "lowest temperature of use", decimals = 0) @Nullable
            Double lowestTemperature,

            @Output(kind = Kind.TIME, meaning = "open time left", unit = "min", decimals = 0) @Nullable
            Double timeLeft,

            @Output(meaning = "window") Window window) {

        /** Where the work lies in the open time. */
        public enum Window {
            NOT_ASKED,
            IN_TIME,
            TOO_LATE
        }
    }

    /**
     * Bead: V = π d² L/4, spread w = π d²/(4 g), bead for a width d = √(4 w g/π), film V/A; cure × 2^((T0 − T)/step).
     *
     * @param c lengths in m, volume in m³, area in m², temperatures in K, times in s
     * @return the same units; refused: nothing to compute, volume without area or the reverse, a cure time without the
     *     temperature, a case colder than the compound works, a gap no anaerobic cures in, a planned time without the
     *     open time
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double lowest = lowest(c);
        boolean nothing = c.bead() == null
                && c.land() == null
                && c.volume() == null
                && c.temperature() == null
                && c.openTime() == null;
        if (nothing) {
            refusals.add(Refusal.of(
                    "bead", "nothing is given to work on", "Give bead, land, volume, temperature or openTime"));
        }
        if ((c.volume() == null) != (c.area() == null)) {
            refusals.add(Refusal.of("volume", "volume and area go together", "Give both or neither"));
        }
        if (c.cureTime() != null && c.temperature() == null) {
            refusals.add(Refusal.of(
                    "temperature", "a cure time needs the temperature of the case", "Measure the case, not the room"));
        }
        Double temperature = c.temperature();
        if (temperature != null && lowest != null && temperature < lowest - 1e-6) {
            refusals.add(Refusal.of(
                    "temperature",
                    "at " + Quantities.brief(temperature, Units.CELSIUS) + " it does not cure; the lowest is "
                            + Quantities.brief(lowest, Units.CELSIUS),
                    "Warm the case" + (c.primer() ? "" : ", or use primer")));
        }
        if (c.product() == Product.ANAEROBIC && c.gap() > WIDEST_ANAEROBIC) {
            refusals.add(Refusal.of(
                    "gap", "no anaerobic cures in a gap over 0.76 mm", "Look for the burr, or use another sealant"));
        }
        if (c.planned() != null && c.openTime() == null) {
            refusals.add(Refusal.of("openTime", "the open time is not given", "It stands on the tube or its sheet"));
        }
        return refusals.isEmpty() ? Outcome.ok(laid(c, lowest)) : Outcome.refused(refusals);
    }

    /** K; only anaerobics have one in the table. */
    private static @Nullable Double lowest(Case c) {
        return c.product() == Product.ANAEROBIC ? Units.CELSIUS.toSi(row(c).number("lowest")) : null;
    }

    private static Table.Row row(Case c) {
        String primer = c.primer() ? "yes" : "no";
        return CURE.rows().stream()
                .filter(row -> row.text("primer").equals(primer))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no row for primer " + primer));
    }

    private static Worked<Result> laid(Case c, @Nullable Double lowest) {
        Working w = new Working();
        Double bead = c.bead();
        Double length = c.length();
        Double section = bead == null ? null : Math.PI * bead * bead / 4;
        Double beadVolume = section == null || length == null
                ? null
                : w.line("volume", "π d² L/4", section * length, Kind.VOLUME, GEOMETRY);
        Double spread =
                section == null ? null : w.line("spread", "π d²/(4 gap)", section / c.gap(), Kind.LENGTH, GEOMETRY);
        Double land = c.land();
        Double beadForLand = land == null
                ? null
                : w.line("bead", "√(4 width × gap/π)", Math.sqrt(4 * land * c.gap() / Math.PI), Kind.LENGTH, GEOMETRY);
        Double volume = c.volume();
        Double area = c.area();
        Double film = volume == null || area == null
                ? null
                : w.line("film", "volume/area", volume / area, Kind.LENGTH, GEOMETRY);
        Double multiplier = multiplier(c, w);
        Double cure = cure(c, multiplier, w);
        Double open = c.openTime();
        Double planned = c.planned();
        Double left = open == null || planned == null
                ? null
                : w.line("open time left", "open − planned", open - planned, Kind.TIME);
        Window window = left == null ? Window.NOT_ASKED : left >= 0 ? Window.IN_TIME : Window.TOO_LATE;
        cautions(c, spread, window, w);
        return w.worked(new Result(beadVolume, spread, beadForLand, film, multiplier, cure, lowest, left, window));
    }

    private static @Nullable Double multiplier(Case c, Working w) {
        Double temperature = c.temperature();
        if (temperature == null) {
            return null;
        }
        double steps = (c.cureTemperature() - temperature) / c.doubling();
        return w.line("slower by", "2^((T0 − T)/step)", Math.pow(2, steps), Kind.NUMBER, "adhesive makers' rule");
    }

    /** The longer of the doubling rule and the manual's 72 h at 10 °C against 24 h at room temperature. */
    private static @Nullable Double cure(Case c, @Nullable Double multiplier, Working w) {
        Double stated = c.cureTime();
        Double temperature = c.temperature();
        if (stated == null || temperature == null || multiplier == null) {
            return null;
        }
        double factor = multiplier;
        Table.Row row = c.product() == Product.ANAEROBIC ? row(c) : null;
        if (row != null && row.has("hours") && temperature < c.cureTemperature()) {
            double span = c.cureTemperature() - Units.CELSIUS.toSi(row.number("lowest"));
            double share = (c.cureTemperature() - temperature) / span;
            double manual = w.line(
                    "slower by the manual",
                    "(72 h/24 h)^((T0 − T)/(T0 − 10 °C))",
                    Math.pow(row.number("hours") / MANUAL_HOURS, share),
                    Kind.NUMBER,
                    CURE.name());
            factor = Math.max(factor, manual);
        }
        return w.line("full strength after", "stated time × the longer", stated * factor, Kind.TIME);
    }

    private static void cautions(Case c, @Nullable Double spread, Window window, Working w) {
        Double land = c.land();
        if (spread != null && land != null && spread > land) {
            w.caution("The bead floods: it spreads over " + Quantities.brief(spread, Units.MM) + " where "
                    + Quantities.brief(land, Units.MM) + " are wanted, and the rest goes into the gearbox.");
        }
        if (window == Window.TOO_LATE) {
            w.caution("It has skinned or set before the last torque: open the joint, clean both faces, start again.");
        }
        w.caution(
                c.product() == Product.ANAEROBIC
                        ? "Rigid machined metal joints only; zinc, stainless and anodised faces are slow and want primer."
                        : "Stamped or flexing covers; join within minutes, none in blind holes: trapped sealant splits "
                                + "a boss.");
        w.caution(
                "Keep it 3 to 5 mm off oil ways and bearing bores. A film changes the shim stack: measure end play with "
                        + "the joint sealed as it will run.");
        w.caution("Gloves and fresh air; read the safety sheet of the product and of the cleaner.");
    }
}
