package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.thread.Tightening.Case.Form;
import shimwright.mechanics.thread.Tightening.Case.Surface;
import shimwright.mechanics.working.Working;

/**
 * How much torque a newton of preload takes: three levers in m, of which the sum is T/F.
 *
 * @param pitch P/2π, what stretches the bolt
 * @param thread lost in the thread
 * @param head lost under the head
 * @param total T/F; the sum of the three, or K d alone with all three 0
 */
record Friction(double pitch, double thread, double head, double total) {
    private static final Table FACTORS = Table.read("shigley-9/nut-factors.csv");
    private static final double COS_30 = Math.sqrt(3) / 2;
    private static final String SUM = "VDI 2230-1; ISO 16047";
    private static final String EXACT = "statics of the screw; Shigley 9th ed., Eq. 8-26";

    /** Whether the friction formula was used, so that the shares are known. */
    boolean split() {
        return pitch > 0;
    }

    /** The lever of a case; refused where the friction it needs is not given. */
    static Outcome<Friction> of(Tightening.Case c, ThreadForm form, Working w) {
        return c.friction().form() == Form.NUT_FACTOR ? byNutFactor(c, w) : byFriction(c, form, w);
    }

    private static Outcome<Friction> byNutFactor(Tightening.Case c, Working w) {
        if (c.friction().nutFactor() != null) {
            double given = w.line(
                    "T/F", "K × d", c.friction().nutFactor() * c.bolt().size().diameter(), Kind.LENGTH, "K given");
            return Outcome.ok(new Friction(0, 0, 0, given));
        }
        if (c.friction().condition() == Surface.UNKNOWN) {
            return Outcome.refused(Refusal.of(
                    "nutFactor",
                    "neither a nut factor nor the surface is given",
                    "Type nutFactor=0.18 from the manual, or condition=lubricated; dry and oiled differ by a third"));
        }
        Table.Row row = FACTORS.rows().stream()
                .filter(r -> r.text("condition").equals(c.friction().condition().name()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "no nut factor for " + c.friction().condition()));
        double k = w.line("K", "for this surface", row.number("k"), Kind.NUMBER, FACTORS.name());
        if (row.number("high") > row.number("low")) {
            w.caution("For this surface sources give K from " + row.text("low") + " to " + row.text("high")
                    + ". Where it matters, find K on your own bolts with the sheet nut-factor.");
        }
        return Outcome.ok(
                new Friction(0, 0, 0, w.line("T/F", "K × d", k * c.bolt().size().diameter(), Kind.LENGTH)));
    }

    private static Outcome<Friction> byFriction(Tightening.Case c, ThreadForm form, Working w) {
        List<Refusal> refusals = new ArrayList<>();
        double muThread =
                needed(c.friction().threadFriction(), "threadFriction", "friction in the thread", "0.12", refusals);
        double muHead =
                needed(c.friction().headFriction(), "headFriction", "friction under the head", "0.12", refusals);
        Outcome<Double> mean = meanDiameter(c, w);
        refusals.addAll(mean.refusals());
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        double pitch = w.line("pitch lever", "P/2π", form.pitch() / (2 * Math.PI), Kind.LENGTH, SUM);
        double head = w.line("head lever", "μK × DKm/2", muHead * mean.orElseThrow() / 2, Kind.LENGTH, SUM);
        double thread = c.friction().form() == Form.FRICTION
                ? w.line(
                        "thread lever",
                        "μG × d2/(2 cos 30°)",
                        muThread * form.pitchDiameter() / (2 * COS_30),
                        Kind.LENGTH,
                        SUM)
                : w.line(
                        "thread lever", "d2/2 × tan(φ + ρ′) − P/2π", screw(form, muThread) - pitch, Kind.LENGTH, EXACT);
        double total = w.line("T/F", "pitch + thread + head lever", pitch + thread + head, Kind.LENGTH);
        return Outcome.ok(new Friction(pitch, thread, head, total));
    }

    /** d2/2 × tan(φ + ρ′), tan φ = P/(π d2), tan ρ′ = μ/cos 30°, in m. */
    private static double screw(ThreadForm form, double mu) {
        double lead = form.pitch() / (Math.PI * form.pitchDiameter());
        double rub = mu / COS_30;
        return form.pitchDiameter() / 2 * (lead + rub) / (1 - lead * rub);
    }

    private static Outcome<Double> meanDiameter(Tightening.Case c, Working w) {
        if (c.friction().headMean() != null) {
            return Outcome.ok(c.friction().headMean());
        }
        Double outer = c.friction().headOuter();
        Double hole = c.friction().headHole();
        if (outer == null || hole == null) {
            return Outcome.refused(Refusal.of(
                    "headMean",
                    "the seat under the head is not given",
                    "Type headMean, or headOuter and headHole; for a hexagon head about 1.3 times the diameter"));
        }
        if (hole >= outer) {
            return Outcome.refused(
                    Refusal.of("headHole", "the hole is not smaller than the seat", "Look which is which"));
        }
        return Outcome.ok(w.line("DKm", "(outer + hole)/2", (outer + hole) / 2, Kind.LENGTH, SUM));
    }

    private static double needed(
            @Nullable Double value, String place, String what, String example, List<Refusal> refusals) {
        if (value == null) {
            refusals.add(Refusal.of(
                    place, "not given, but this formula needs it", "Type the " + what + ", such as " + example));
            return Double.NaN;
        }
        return value;
    }
}
