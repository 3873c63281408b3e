package shimwright.mechanics.axial.bevel;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code pinion-depth}: the depth shim of a bevel or hypoid pinion. */
public final class PinionDepth {
    private static final String SHOP = "common practice, no source";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "pinion-depth",
            "Pinion depth shim",
            "The depth shim of a bevel pinion from a trial, from case depth and parts, or from the marks of two pinions.",
            List.of(SHOP),
            Case.class,
            Result.class,
            PinionDepth::work);

    private PinionDepth() {}

    /** From what the shim is found. */
    public enum Way {
        /** The distance is measured with a trial shim in place. */
        TRIAL,
        /** Depth of the case less the parts that stand in it. */
        STACK,
        /** The old shim, and the marks of the old and the new pinion. */
        SWAP
    }

    /** What a thicker shim does. */
    public enum Thicker {
        NEARER,
        FARTHER
    }

    /** What a plus mark on the pinion says. */
    public enum Plus {
        /** It wants to stand farther from the crown axis than nominal. */
        FARTHER,
        /** It wants to stand nearer. */
        NEARER
    }

    /** Lengths in metres. */
    public record Case(
            @Input(meaning = "from what the shim is found", example = "trial")
            Way way,

            @Input(meaning = "a thicker shim puts the pinion nearer to the crown axis, or farther", example = "nearer")
            Thicker thicker,

            @Input(meaning = "a plus mark wants the pinion farther from the crown axis, or nearer", example = "farther")
            Plus plus,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "mark etched on the pinion, as a length with its sign; 0 for an unmarked one",
                    min = -0.002,
                    max = 0.002,
                    example = "0.07 mm")
            double mark,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "nominal distance, crown axis to the measuring face",
                    min = 1e-3,
                    max = 1,
                    example = "52.00 mm")
            @Nullable
            Double nominal,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shim in place, by micrometer",
                    min = 0,
                    max = 0.02,
                    example = "1.004 mm")
            @Nullable
            Double shim,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "distance measured with it, crown axis to the measuring face",
                    min = 1e-3,
                    max = 1,
                    example = "52.18 mm")
            @Nullable
            Double measured,

            @Input(kind = Kind.LENGTH, meaning = "depth of the case, crown axis to the shim seat", min = 1e-3, max = 1)
            @Nullable
            Double caseDepth,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "height of the parts between shim and measuring face",
                    orElse = "0 mm",
                    min = 0,
                    max = 1)
            double stack,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "mark of the old pinion, as a length with its sign",
                    min = -0.002,
                    max = 0.002)
            @Nullable
            Double oldMark,

            @Input(kind = Kind.LENGTH, meaning = "how far the distance may be off", min = 0, max = 0.002) @Nullable
            Double tolerance) {}

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "shim needed")
            double needed,

            @Output(kind = Kind.LENGTH, meaning = "change from the shim in place, + thicker") @Nullable
            Double change,

            @Output(kind = Kind.LENGTH, meaning = "distance wanted") @Nullable
            Double wanted,

            @Output(kind = Kind.LENGTH, meaning = "off the wanted distance with the shim in place, + too far") @Nullable
            Double off,

            @Output(meaning = "the shim in place will do") @Nullable
            String keeps) {}

    /**
     * Depth shim.
     *
     * @param c the case; TRIAL needs nominal, shim and measured; STACK nominal and caseDepth; SWAP shim and oldMark
     * @return refused where one of these is missing or the shim comes out at nothing. Neither the sense of the mark
     *     nor the seat of the shim is guessed. Source: common practice
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = missing(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        int thicker = c.thicker() == Thicker.NEARER ? 1 : -1;
        int plus = c.plus() == Plus.FARTHER ? 1 : -1;
        Double nominal = c.nominal();
        Double wanted = nominal == null || c.way() == Way.SWAP
                ? null
                : (Double) w.line("distance wanted", "nominal and mark", nominal + plus * c.mark(), Kind.LENGTH, SHOP);
        double far = wanted == null ? 0 : wanted;
        Double off = null;
        double needed;
        if (c.way() == Way.TRIAL) {
            double away = w.line("off", "measured − wanted", or(c.measured()) - far, Kind.LENGTH, SHOP);
            off = away;
            needed = or(c.shim()) + thicker * away;
        } else if (c.way() == Way.STACK) {
            needed = thicker * (or(c.caseDepth()) - c.stack() - far);
        } else {
            needed = or(c.shim()) - thicker * plus * (c.mark() - or(c.oldMark()));
        }
        w.line("shim needed", expression(c), needed, Kind.LENGTH, SHOP);
        if (!(needed > 0)) {
            return Outcome.refused(Refusal.of(
                    "shim",
                    "the shim comes out at " + Quantities.print(needed, Units.MM, 3),
                    "Look at the sense of the mark, where the shim sits, and the measured figures"));
        }
        Double shim = c.shim();
        Double change = shim == null ? null : (Double) (needed - shim);
        Double tolerance = c.tolerance();
        String keeps = off == null || tolerance == null ? null : Math.abs(off) <= tolerance ? "yes" : "no";
        w.caution("Take the shim by its measured thickness, not by its stamp, and prove the distance again.");
        if (c.way() == Way.TRIAL) {
            w.caution("Bearing cups must be home: tap and turn until three readings agree.");
        } else {
            w.caution("Found without measuring the distance: the contact pattern decides.");
        }
        return Outcome.ok(w.worked(new Result(needed, change, wanted, off, keeps)));
    }

    private static double or(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    private static String expression(Case c) {
        boolean nearer = c.thicker() == Thicker.NEARER;
        return switch (c.way()) {
            case TRIAL -> nearer ? "shim in place + off" : "shim in place − off";
            case STACK -> nearer ? "case depth − stack − wanted" : "wanted + stack − case depth";
            case SWAP -> "shim in place and difference of the marks";
        };
    }

    private static List<Refusal> missing(Case c) {
        List<Refusal> faults = new ArrayList<>();
        if (c.way() != Way.SWAP) {
            need(faults, "nominal", c.nominal(), "Needed: nominal distance, crown axis to the measuring face");
        }
        if (c.way() != Way.STACK) {
            need(faults, "shim", c.shim(), "Needed: the shim in place, by micrometer");
        }
        if (c.way() == Way.TRIAL) {
            need(faults, "measured", c.measured(), "Needed: the distance measured with that shim");
        }
        if (c.way() == Way.STACK) {
            need(faults, "caseDepth", c.caseDepth(), "Needed: depth of the case to the shim seat");
        }
        if (c.way() == Way.SWAP) {
            need(faults, "oldMark", c.oldMark(), "Needed: the mark of the old pinion, 0 mm for none");
        }
        return faults;
    }

    private static void need(List<Refusal> faults, String key, @Nullable Double value, String hint) {
        if (value == null) {
            faults.add(Refusal.of(key, "not given", hint));
        }
    }
}
