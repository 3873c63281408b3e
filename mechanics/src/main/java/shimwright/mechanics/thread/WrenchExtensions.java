package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code wrench-extension}. */
public final class WrenchExtensions {
    private static final double SHORTEST = 0.2;
    private static final double LOW_END = 0.2;

    static final Worksheet<WrenchExtensionCase, WrenchExtensionResult> SHEET = new Worksheet<>(
            "wrench-extension",
            "Wrench extension",
            "Setting of a torque wrench that works through an adapter, or the torque such a setting gives.",
            List.of("statics; US Army TM 9-254, torque wrench, fig. 45; US Army TM 9-2350-261-20-1, p. 2-29"),
            WrenchExtensionCase.class,
            WrenchExtensionResult.class,
            WrenchExtensions::work);

    private WrenchExtensions() {}

    /**
     * Setting = torque × L/(L + E cos a).
     *
     * @param c torques in N·m, lengths in m, angle in rad; exactly one of torque and setting
     * @return torques in N·m; refused: none or both torques, an adapter that leaves less than a fifth of the lever, a
     *     setting above the capacity
     */
    public static Outcome<Worked<WrenchExtensionResult>> work(WrenchExtensionCase c) {
        List<Refusal> refusals = new ArrayList<>();
        Double torque = c.torque();
        Double setting = c.setting();
        if ((torque == null) == (setting == null)) {
            refusals.add(new Refusal(
                    "torque",
                    torque == null ? "neither torque nor setting is given" : "torque and setting are both given",
                    "Give one; the other follows"));
        }
        double reach = c.extension() * Math.cos(c.angle());
        if (c.length() + reach < SHORTEST * c.length()) {
            refusals.add(new Refusal(
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
            return Outcome.refused(
                    "capacity", "the setting is above the largest torque of the wrench", "Take a larger wrench");
        }
        if (capacity != null && set < LOW_END * capacity) {
            w.caution("The setting lies below a fifth of the wrench's range: take a smaller wrench.");
        }
        w.caution("Pull square, with the hand on the middle of the grip; anywhere else the correction is wrong. Never "
                + "put a pipe on the handle.");
        return Outcome.ok(w.worked(new WrenchExtensionResult(set, given, ratio)));
    }
}
