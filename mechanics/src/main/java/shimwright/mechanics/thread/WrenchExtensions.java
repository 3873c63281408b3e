package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code wrench-extension}. */
public final class WrenchExtensions {
    private static final double SHORTEST = 0.2;
    private static final double LOW_END = 0.2;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "wrench-extension",
            "Wrench extension",
            "Setting of a torque wrench that works through an adapter, or the torque such a setting gives.",
            List.of("statics; US Army TM 9-254, torque wrench, fig. 45; US Army TM 9-2350-261-20-1, p. 2-29"),
            Case.class,
            Result.class,
            WrenchExtensions::work);

    private WrenchExtensions() {}

    /** A torque wrench with a crow foot or other adapter across its drive. */
    public record Case(
            @Input(
                    kind = Kind.TORQUE,
                    meaning = "torque wanted at the fastener",
                    min = 1e-3,
                    max = 1e5,
                    example = "135 N·m")
            @Nullable
            Double torque,

            @Input(kind = Kind.TORQUE, meaning = "wrench setting, to find the torque it gives", min = 1e-3, max = 1e5)
            @Nullable
            Double setting,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "drive center to the middle of the grip",
                    min = 0.02,
                    max = 3,
                    example = "400 mm")
            double length,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "drive center to the center of the fastener",
                    min = 0,
                    max = 2,
                    example = "60 mm")
            double extension,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "adapter against the wrench: 0 straight on, 90 square, 180 turned back",
                    orElse = "0°",
                    min = -3.15,
                    max = 3.15)
            double angle,

            @Input(kind = Kind.TORQUE, meaning = "largest torque of the wrench", min = 0.01, max = 1e5) @Nullable
            Double capacity) {}

    /** Torque and setting belonging together. */
    public record Result(
            @Output(kind = Kind.TORQUE, meaning = "wrench setting")
            double setting,

            @Output(kind = Kind.TORQUE, meaning = "torque at the fastener")
            double torque,

            @Output(meaning = "torque over setting") double ratio) {}

    /**
     * Setting = torque × L/(L + E cos a).
     *
     * @param c torques in N·m, lengths in m, angle in rad; exactly one of torque and setting
     * @return torques in N·m; refused: none or both torques, an adapter that leaves less than a fifth of the lever, a
     *     setting above the capacity
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Double torque = c.torque();
        Double setting = c.setting();
        if ((torque == null) == (setting == null)) {
            refusals.add(Refusal.of(
                    "torque",
                    torque == null ? "neither torque nor setting is given" : "torque and setting are both given",
                    "Give one; the other follows"));
        }
        double reach = c.extension() * Math.cos(c.angle());
        if (c.length() + reach < SHORTEST * c.length()) {
            refusals.add(Refusal.of(
                    "extension",
                    "the adapter turned back leaves almost no lever",
                    "Turn it square, or use a shorter adapter"));
        }
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Working w = new Working();
        double ratio = w.line(
                "ratio",
                "(length + extension × cos(angle))/length",
                (c.length() + reach) / c.length(),
                Kind.NUMBER,
                "statics");
        double set = setting != null
                ? setting
                : w.line("setting", "torque / ratio", (torque == null ? 0 : torque) / ratio, Kind.TORQUE);
        double given = torque != null ? torque : w.line("torque", "setting × ratio", set * ratio, Kind.TORQUE);
        Double capacity = c.capacity();
        if (capacity != null && set > capacity) {
            return Outcome.refused(Refusal.of(
                    "capacity", "the setting is above the largest torque of the wrench", "Take a larger wrench"));
        }
        if (capacity != null && set < LOW_END * capacity) {
            w.caution("The setting lies below a fifth of the wrench's range: take a smaller wrench.");
        }
        w.caution("Pull square, with the hand on the middle of the grip; anywhere else the correction is wrong. Never "
                + "put a pipe on the handle.");
        return Outcome.ok(w.worked(new Result(set, given, ratio)));
    }
}
