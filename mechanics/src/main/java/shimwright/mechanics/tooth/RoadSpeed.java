package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code road-speed}: engine speed to road speed, and the speedometer drive. */
public final class RoadSpeed {
    private static final String SOURCE = "kinematics";
    private static final String TRADE = "common practice, no source";
    private static final double INCH = 0.0254;
    private static final double MILE = 1609.344;
    private static final double KILOMETRE = 1000;
    private static final Pattern SIZE =
            Pattern.compile("(\\d{3})\\s*/\\s*(\\d{2})\\s*Z?R?\\s*-?\\s*(\\d{2}(?:\\.5)?)", Pattern.CASE_INSENSITIVE);

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "road-speed",
                    "Road speed",
                    "Road speed in a gear from engine speed, ratios and tire, and the teeth of the speedometer driven gear.",
                    List.of(SOURCE, "speedometer drive: common practice, no source"),
                    Case.class,
                    Result.class,
                    RoadSpeed::work)
            .drawn(ToothPictures::roadSpeed);

    private RoadSpeed() {}

    /** Lengths in metres, rotation in rad/s. */
    public record Case(
            @Input(kind = Kind.ROTATION, meaning = "engine speed", min = 0, max = 2100, example = "3000 rpm")
            double engineSpeed,

            @Input(meaning = "gear ratio", min = 0.1, max = 50, example = "1.0")
            double gearRatio,

            @Input(meaning = "final drive ratio", min = 0.5, max = 50, example = "3.73")
            double finalRatio,

            @Input(meaning = "tire size such as 275/40 R20", orElse = "", example = "275/40 R20")
            String tire,

            @Input(kind = Kind.LENGTH, meaning = "tire diameter, unloaded", min = 0.1, max = 4, unit = "mm") @Nullable
            Double diameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "rolling circumference, measured under load",
                    min = 0.3,
                    max = 12,
                    unit = "mm")
            @Nullable
            Double rolling,

            @Input(meaning = "teeth of the speedometer drive gear, 0 for none", orElse = "0", min = 0, max = 60)
            int speedometerDrive,

            @Input(meaning = "turns of the speedometer cable per mile", orElse = "1001", min = 400, max = 2000)
            double cableTurns) {}

    /** Lengths in metres, speeds in m/s. */
    public record Result(
            @Output(kind = Kind.SPEED, meaning = "road speed on the unloaded diameter")
            double speed,

            @Output(kind = Kind.SPEED, meaning = "road speed on the rolling circumference") @Nullable
            Double rollingSpeed,

            @Output(kind = Kind.LENGTH, meaning = "tire diameter, unloaded", decimals = 1)
            double diameter,

            @Output(kind = Kind.LENGTH, meaning = "circumference, unloaded", decimals = 1)
            double circumference,

            @Output(meaning = "tire turns per mile", decimals = 1)
            double turnsPerMile,

            @Output(meaning = "tire turns per kilometre", decimals = 1)
            double turnsPerKilometre,

            @Output(meaning = "engine turns per kilometre", decimals = 0)
            double engineTurnsPerKilometre,

            @Output(meaning = "rpm × diameter in inches / (mph × ratio), the handbook constant")
            double inchConstant,

            @Output(meaning = "teeth of the speedometer driven gear, exact", decimals = 2) @Nullable
            Double speedometerDriven) {}

    /**
     * Road speed and speedometer gear.
     *
     * @param c the case; exactly one of tire and diameter. Turns per distance use the rolling circumference where it
     *     is given
     * @return refused for a tire size that cannot be read. Driven teeth = drive teeth × final ratio × tire turns per
     *     mile / cable turns per mile. Source: kinematics; the speedometer rule is common practice
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Working w = new Working();
        Double own = c.diameter();
        if ((own == null) == c.tire().isBlank()) {
            faults.add(Refusal.of(
                    "tire", own == null ? "no tire given" : "tire and diameter both given", "Give tire or diameter"));
            return Outcome.refused(faults);
        }
        OptionalDouble size = own != null ? OptionalDouble.of(own) : size(c.tire(), w);
        if (size.isEmpty()) {
            return Outcome.refused(Refusal.of(
                    "tire", "\"" + c.tire() + "\" is not a tire size", "Type it such as 275/40 R20, or give diameter"));
        }
        double diameter = size.getAsDouble();
        Double rolling = c.rolling();
        double circumference = w.line("circumference", "π × diameter", Math.PI * diameter, Kind.LENGTH, SOURCE);
        if (rolling != null && (rolling > circumference || rolling < 0.85 * circumference)) {
            return Outcome.refused(Refusal.of(
                    "rolling",
                    PinMeasurement.mm(rolling) + " does not belong to a circumference of "
                            + PinMeasurement.mm(circumference),
                    "A loaded tire rolls a few percent under its free circumference"));
        }
        double total = c.gearRatio() * c.finalRatio();
        double turns = c.engineSpeed() / (2 * Math.PI) / total;
        double speed = w.line(
                "road speed",
                "engine turns / (gear × final) × circumference",
                turns * circumference,
                Kind.SPEED,
                SOURCE);
        double used = rolling == null ? circumference : rolling;
        double perMile = w.line("tire turns per mile", "1 mile / circumference", MILE / used, Kind.NUMBER, SOURCE);
        Double driven = c.speedometerDrive() == 0
                ? null
                : (Double) w.line(
                        "speedometer driven gear",
                        "drive teeth × final ratio × tire turns per mile / cable turns per mile",
                        c.speedometerDrive() * c.finalRatio() * perMile / c.cableTurns(),
                        Kind.NUMBER,
                        TRADE);
        if (rolling == null) {
            w.caution("On the free diameter: a loaded radial rolls some 3 to 4 % less (trade figure). Measure the"
                    + " rolling circumference for a true figure.");
        }
        return Outcome.ok(w.worked(new Result(
                speed,
                rolling == null ? null : (Double) (turns * rolling),
                diameter,
                circumference,
                perMile,
                KILOMETRE / used,
                KILOMETRE / used * total,
                MILE / INCH / 60 / Math.PI,
                driven)));
    }

    private static OptionalDouble size(String typed, Working w) {
        Matcher size = SIZE.matcher(typed.strip().toUpperCase(Locale.ROOT));
        if (!size.matches()) {
            return OptionalDouble.empty();
        }
        double width = Integer.parseInt(size.group(1)) * 1e-3;
        double side = width * Integer.parseInt(size.group(2)) / 100;
        double rim = Double.parseDouble(size.group(3)) * INCH;
        return OptionalDouble.of(
                w.line("tire diameter", "2 × width × aspect + rim", 2 * side + rim, Kind.LENGTH, "tire size code"));
    }
}
