package shimwright.mechanics.oil;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code oil-fill}. */
public final class OilFills {
    private static final String D1250 = "API MPMS 11.1 / ASTM D1250, lubricating oils";
    private static final double K1 = 0.34878;
    private static final double BASE_F = 60;
    private static final double ALARM = 0.05;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "oil-fill",
            "Oil fill",
            "Volume of oil at its temperature, and what a sloping floor does to the level at the plug.",
            List.of(D1250, "geometry of a box-shaped sump", "5 % disagreement: common practice, no source"),
            Case.class,
            Result.class,
            OilFills::work);

    private OilFills() {}

    /** A fill by the book, at a temperature and on ground that may slope. */
    public record Case(
            @Input(kind = Kind.VOLUME, meaning = "fill by the book", min = 1e-5, max = 0.1, example = "2.5 L")
            double volume,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "oil when poured or read at the plug",
                    min = 233,
                    max = 423,
                    example = "20 °C")
            double temperature,

            @Input(
                    kind = Kind.DENSITY,
                    meaning = "density of the oil at 60 °F",
                    orElse = "880 kg/m³",
                    min = 750,
                    max = 1050)
            double density,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "slope of the gearbox along the sump",
                    orElse = "0°",
                    min = -0.35,
                    max = 0.35)
            double tilt,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "plug from the middle of the sump, positive towards the raised end",
                    min = -1,
                    max = 1)
            @Nullable
            Double plugOffset,

            @Input(kind = Kind.LENGTH, meaning = "length of the sump", min = 0.02, max = 2) @Nullable
            Double sumpLength,

            @Input(kind = Kind.LENGTH, meaning = "width of the sump", min = 0.01, max = 2) @Nullable
            Double sumpWidth,

            @Input(kind = Kind.LENGTH, meaning = "depth of the oil in the middle", min = 1e-3, max = 1) @Nullable
            Double depth,

            @Input(kind = Kind.VOLUME, meaning = "oil that really went in to the plug", min = 1e-5, max = 0.2) @Nullable
            Double filled) {}

    /** What to pour and what the level tells. */
    public record Result(
            @Output(meaning = "volume at 60 °F over volume here", decimals = 5)
            double correction,

            @Output(kind = Kind.VOLUME, meaning = "the book's fill at this temperature", decimals = 3)
            double volume,

            @Output(kind = Kind.LENGTH, meaning = "level at the plug off by", decimals = 2) @Nullable
            Double levelShift,

            @Output(kind = Kind.VOLUME, meaning = "overfill when filled to the plug here", decimals = 3) @Nullable
            Double fillError,

            @Output(kind = Kind.VOLUME, meaning = "what goes in to the plug here", decimals = 3) @Nullable
            Double plugVolume,

            @Output(meaning = "really filled against that", unit = "%", decimals = 1) @Nullable
            Double disagreement) {}

    /**
     * Fill: CTL = exp(−α ΔT (1 + 0.8 α ΔT)), α = 0.34878/ρ60 per °F, V = V60/CTL; level shift = x tan θ; overfill = W L x
     * tan θ, true while the surface meets both end walls.
     *
     * @param c volumes in m³, temperature in K, density in kg/m³, angle in rad, lengths in m
     * @return volumes in m³, shift in m; refused: a slope without the plug's place, half a sump, a plug beyond the
     *     sump's end, a slope that bares an end wall
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double offset = c.plugOffset();
        Double length = c.sumpLength();
        Double depth = c.depth();
        if (c.tilt() != 0 && offset == null) {
            refusals.add(Refusal.of(
                    "plugOffset",
                    "a slope matters only with the place of the plug",
                    "Measure the plug from the middle of the sump, plus towards the raised end"));
        }
        if ((length == null) != (c.sumpWidth() == null)) {
            refusals.add(Refusal.of("sumpWidth", "the sump is half given", "Give sumpLength and sumpWidth"));
        }
        if (length != null && offset != null && Math.abs(offset) > length / 2 * (1 + 1e-9)) {
            refusals.add(
                    Refusal.of("plugOffset", "the plug lies beyond the end of the sump", "Measure from the middle"));
        }
        if (length != null && depth != null && length / 2 * Math.abs(Math.tan(c.tilt())) > depth) {
            refusals.add(Refusal.of("tilt", "so steep that one end of the sump runs dry", "Level the gearbox first"));
        }
        double hot = Units.CELSIUS.fromSi(c.temperature());
        if (hot > 120 && c.filled() != null) {
            refusals.add(Refusal.of("temperature", "oil over 120 °C is not read at an open plug", "Let it cool"));
        }
        return refusals.isEmpty() ? Outcome.ok(filled(c)) : Outcome.refused(refusals);
    }

    private static Worked<Result> filled(Case c) {
        Working w = new Working();
        double alpha = w.line("α", "0.34878/ρ60 per °F", K1 / c.density() * 1.8, Kind.EXPANSION, D1250);
        double rise = w.line(
                "ΔT",
                "temperature − 60 °F",
                c.temperature() - Units.FAHRENHEIT.toSi(BASE_F),
                Kind.TEMPERATURE_DIFFERENCE,
                D1250);
        double ctl = w.line(
                "CTL",
                "exp(−α ΔT (1 + 0.8 α ΔT))",
                Math.exp(-alpha * rise * (1 + 0.8 * alpha * rise)),
                Kind.NUMBER,
                D1250);
        double volume = w.line("volume here", "book/CTL", c.volume() / ctl, Kind.VOLUME);
        Double offset = c.plugOffset();
        Double shift = offset == null
                ? null
                : w.line("level shift", "x tan θ", offset * Math.tan(c.tilt()), Kind.LENGTH, "geometry");
        Double length = c.sumpLength();
        Double width = c.sumpWidth();
        Double error = shift == null || length == null || width == null
                ? null
                : w.line("overfill", "W L x tan θ", width * length * shift, Kind.VOLUME, "geometry");
        Double plug = error == null ? null : w.line("to the plug", "volume + overfill", volume + error, Kind.VOLUME);
        Double really = c.filled();
        double expected = plug == null ? volume : plug;
        Double off = really == null || expected <= 0
                ? null
                : w.line("disagreement", "filled/expected − 1", really / expected - 1, Kind.NUMBER);
        cautions(c, off, w);
        return w.worked(new Result(ctl, volume, shift, error, plug, off));
    }

    private static void cautions(Case c, @Nullable Double off, Working w) {
        w.caution("Which quart? A US quart is 0.946 L, an imperial one 1.137 L. Fill to the volume and to the plug.");
        if (off != null && Math.abs(off) > ALARM) {
            w.caution(
                    "Volume and level disagree by more than 5 %: slope, trapped air, a dry cooler or extension, or a wrong "
                            + "figure in the book.");
        }
        if (c.tilt() != 0 && c.sumpLength() == null) {
            w.caution("Without the size of the sump the slope's part in the volume stays unknown.");
        }
        w.caution(
                "Fill after the sealant has cured; turn the input by hand and read the level again. Grade first: yellow "
                        + "metal and blocker rings need the friction class of the book.");
        w.caution("Gloves; hot oil burns.");
    }
}
