package shimwright.mechanics.tooth;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code between-pins}: size between two pins to space width and back. */
public final class BetweenPins {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "between-pins",
                    "Size between pins",
                    "Size between two pins or balls of a hub or inside gear from its space width, and the space width from the size.",
                    List.of(
                            "ISO 21771-1:2022, dimensions over balls and pins",
                            "ANSI B92.1-1996 and DIN 5480-1, the same geometry"),
                    Case.class,
                    Result.class,
                    BetweenPins::work)
            .drawn(ToothPictures::betweenPins);

    private BetweenPins() {}

    /**
     * What is known of the teeth, the pin, and one of space width, shift or reading. Lengths in metres, angles in
     * radians; circles are diameters.
     */
    public record Case(
            @Input(meaning = "number of teeth", min = 3, max = 1000, example = "24")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "normal module", min = 5e-5, max = 0.1, example = "2 mm") @Nullable
            Double module,

            @Input(meaning = "diametral pitch, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "normal pressure angle",
                    min = Toothing.LEAST_ANGLE,
                    max = Toothing.MOST_ANGLE,
                    example = "30°")
            double pressureAngle,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "helix angle at the reference circle",
                    orElse = "0°",
                    min = 0,
                    max = Toothing.MOST_HELIX)
            double helix,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "measured diameter of the pins or balls",
                    min = 1e-5,
                    max = 0.5,
                    example = "3.5 mm")
            double pin,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "space width at the reference circle, normal section",
                    min = 1e-6,
                    max = 0.5)
            @Nullable
            Double space,

            @Input(meaning = "profile shift coefficient", min = -5, max = 5) @Nullable
            Double shift,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "size read between the pins",
                    min = 1e-5,
                    max = 5,
                    example = "42.721 mm")
            @Nullable
            Double betweenPins,

            @Input(kind = Kind.LENGTH, meaning = "tip diameter as it is", min = 1e-5, max = 5) @Nullable
            Double tipDiameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter at which the involute flank ends toward the root",
                    min = 1e-5,
                    max = 5)
            @Nullable
            Double formDiameter,

            @Input(kind = Kind.LENGTH, meaning = "root diameter", min = 1e-5, max = 5) @Nullable
            Double rootDiameter,

            @Input(kind = Kind.TEMPERATURE, meaning = "part temperature at the reading", min = 223.15, max = 473.15)
            @Nullable
            Double partTemperature,

            @Input(
                    kind = Kind.EXPANSION,
                    meaning = "expansion coefficient of the part",
                    orElse = "11.5 µm/(m·K)",
                    min = 0,
                    max = 5e-5)
            double expansion) {}

    /** Sizes at 20 °C; lengths in metres, angles in radians. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "size between the pins at 20 °C", decimals = 4)
            double betweenPins,

            @Output(kind = Kind.LENGTH, meaning = "space width, normal section", decimals = 4)
            double space,

            @Output(kind = Kind.LENGTH, meaning = "space width, transverse section", decimals = 4)
            double spaceTransverse,

            @Output(meaning = "profile shift coefficient") double shift,

            @Output(kind = Kind.ANGLE, meaning = "transverse pressure angle at the pin centre", decimals = 4)
            double centreAngle,

            @Output(meaning = "involute of that angle", decimals = 7)
            double centreInvolute,

            @Output(kind = Kind.LENGTH, meaning = "diameter where the pin touches the flanks")
            double contactDiameter,

            @Output(meaning = "change of size per change of space width")
            double perArc,

            @Output(meaning = "change of size per change of pin diameter")
            double perPin,

            @Output(kind = Kind.LENGTH, meaning = "pin that would touch at the reference circle", decimals = 4)
            @Nullable
            Double pitchPin,

            @Output(kind = Kind.LENGTH, meaning = "growth of the reading by the part's warmth", decimals = 4)
            double warmth) {}

    /**
     * Size between two pins from space width or shift, or space width from the size read, exactly both ways.
     *
     * @param c the case; exactly one of module and diametralPitch, and of space, shift and betweenPins
     * @return refused where the pin misses the flanks, stands under the tips or on the root, or where the numbers leave
     *     no tooth or no space. Source: ISO 21771-1:2022, dimensions over balls and pins
     */
    public static Outcome<Worked<Result>> work(Case c) {
        PinMeasurement.Teeth teeth = new PinMeasurement.Teeth(
                c.teeth(), c.module(), c.diametralPitch(), c.pressureAngle(), c.helix(), c.pin());
        PinMeasurement.Given given = new PinMeasurement.Given(c.space(), c.shift(), c.betweenPins());
        PinMeasurement.Circles circles =
                new PinMeasurement.Circles(c.tipDiameter(), c.formDiameter(), c.rootDiameter());
        PinMeasurement.Warmth warmth = new PinMeasurement.Warmth(c.partTemperature(), c.expansion());
        Pins.Keys keys = new Pins.Keys("pin", "betweenPins", "space");
        return PinMeasurement.work(Side.INTERNAL, teeth, given, circles, warmth, keys)
                .map(worked -> new Worked<>(result(worked.result()), worked.working(), worked.cautions()));
    }

    private static Result result(PinMeasurement.Found f) {
        return new Result(
                f.seat().size(),
                f.arc(),
                f.arc() / Math.cos(f.toothing().helix()),
                f.toothing().shift(f.arc()),
                f.seat().centreAngle(),
                f.seat().involute(),
                f.seat().contactDiameter(),
                f.seat().perArc(),
                f.seat().perPin(),
                f.pitchPin(),
                f.warmth());
    }
}
