package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.Comparator;
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

/** Worksheet {@code tap-drill}. */
public final class TapDrills {
    private static final String CUT = "hole = d − 1.299 P × share; Machinery's Handbook, tap drills";
    private static final String FORMED = "hole = d − 0.68 P × share, threads pressed and not cut; tap makers' rule";
    private static final Table INCH_DRILLS = Table.read("asme-b94-11/drills.csv");
    private static final double CUT_DEPTH = 0.75 * Math.sqrt(3);
    private static final double FORMED_DEPTH = 0.68;
    private static final double STEP = 1e-4;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "tap-drill",
            "Tap drill",
            "The hole to drill for a share of full thread, the drills nearest to it, and what a drill at hand leaves.",
            List.of(CUT, FORMED, "ASME B94.11 drill sizes, from memory; metric drills by 0.1 mm"),
            Case.class,
            Result.class,
            TapDrills::work);

    private TapDrills() {}

    /** How the thread is made. */
    public enum Tap {
        CUT,
        FORMED
    }

    /** A thread and how much of it is wanted; length in metres. */
    public record Case(
            @Group ThreadSize size,

            @Input(meaning = "share of full thread", unit = "%", orElse = "75 %", min = 0.2, max = 1)
            double share,

            @Input(meaning = "cut by a tap, or formed", orElse = "cut")
            Tap tap,

            @Input(kind = Kind.LENGTH, meaning = "drill or hole at hand", min = 5e-4, max = 0.1) @Nullable
            Double drill) {}

    /** A drill; lengths in metres. */
    public record Drill(
            @Output(meaning = "drill") String name,

            @Output(kind = Kind.LENGTH, meaning = "its diameter", decimals = 4)
            double diameter,

            @Output(meaning = "share of full thread", unit = "%", decimals = 1)
            double share) {}

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "hole for the share wanted", decimals = 4)
            double hole,

            @Output(meaning = "metric drill nearest to it") Drill metric,

            @Output(meaning = "inch, number or letter drill nearest to it") @Nullable
            Drill inch,

            @Output(
                    kind = Kind.LENGTH,
                    meaning = "basic minor diameter, the least that a nut gauge passes",
                    decimals = 4)
            double minorDiameter,

            @Output(meaning = "share of full thread in the hole at hand", unit = "%", decimals = 1) @Nullable
            Double atHand) {}

    /**
     * Hole = d − k P × share with k = 3√3/4 for a cut thread (share of the height between two sharp 3/4 H) and 0.68 for a formed
     * one; the share in a hole is the inverse.
     *
     * @param c lengths in m, share from 0 to 1
     * @return lengths in m; refused: what the thread refuses, a hole at hand not under the nominal, or under the root
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Outcome<ThreadForm> found = c.size().form();
        if (!found.isOk()) {
            return Outcome.refused(found.refusals());
        }
        ThreadForm form = found.orElseThrow();
        Double at = c.drill();
        if (at != null && (at >= form.diameter() || at < form.root())) {
            return Outcome.refused(Refusal.of(
                    "drill",
                    "a hole of " + Quantities.brief(at, Units.MM)
                            + (at >= form.diameter() ? " leaves no thread of " : " is under the root of ")
                            + form.designation(),
                    at >= form.diameter()
                            ? "Take an insert or the next thread"
                            : "The tap would break; drill it larger"));
        }
        return Outcome.ok(drilled(c, form));
    }

    private static double share(Case c, ThreadForm form, double hole) {
        return (form.diameter() - hole) / (depth(c) * form.pitch());
    }

    private static double depth(Case c) {
        return c.tap() == Tap.CUT ? CUT_DEPTH : FORMED_DEPTH;
    }

    private static Worked<Result> drilled(Case c, ThreadForm form) {
        Working w = new Working();
        String how = c.tap() == Tap.CUT ? "d − 1.299 P × share" : "d − 0.68 P × share";
        double hole = w.line(
                "hole",
                how,
                form.diameter() - depth(c) * form.pitch() * c.share(),
                Kind.LENGTH,
                c.tap() == Tap.CUT ? CUT : FORMED);
        double steps = Math.rint(hole / STEP);
        Drill metric = drill(c, form, Quantities.brief(steps * STEP, Units.MM), steps * STEP);
        w.line("metric drill", "nearest 0.1 mm", metric.diameter(), Kind.LENGTH, "common practice, no source");
        Drill inch = nearest(c, form, hole);
        if (inch != null) {
            w.line("inch drill", "nearest of the table", inch.diameter(), Kind.LENGTH, "ASME B94.11, from memory");
        }
        Double at = c.drill();
        Double atHand =
                at == null ? null : w.line("share at hand", "(d − drill)/depth", share(c, form, at), Kind.NUMBER, CUT);
        cautions(c, atHand, w);
        return w.worked(new Result(hole, metric, inch, form.minor(), atHand));
    }

    private static void cautions(Case c, @Nullable Double atHand, Working w) {
        double share = atHand == null ? c.share() : atHand;
        if (c.tap() == Tap.CUT && share > 0.85) {
            w.caution("Over 85 % the tap turns hard and breaks easily, and the thread is hardly stronger.");
        }
        if (share < 0.55) {
            w.caution("Under 55 % the thread strips before the bolt breaks: work it out with the strip sheet.");
        }
        w.caution("A drill cuts a little over its size. Try it in scrap of the same metal and measure the hole.");
        w.caution(
                "Clamp the work, cutting fluid for the metal, chips out often; eye protection. A broken tap stays in the case.");
    }

    private static @Nullable Drill nearest(Case c, ThreadForm form, double hole) {
        List<Drill> drills = new ArrayList<>();
        for (Table.Row row : INCH_DRILLS.rows()) {
            drills.add(drill(c, form, row.text("name"), row.number("diameter") * 0.0254));
        }
        Drill nearest = drills.stream()
                .min(Comparator.comparingDouble(drill -> Math.abs(drill.diameter() - hole)))
                .orElseThrow();
        return Math.abs(nearest.diameter() - hole) > 0.02 * hole ? null : nearest;
    }

    private static Drill drill(Case c, ThreadForm form, String name, double diameter) {
        return new Drill(name, diameter, share(c, form, diameter));
    }
}
