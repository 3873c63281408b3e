package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.thread.ThreadStripResult.Hole;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code thread-strip}. */
public final class ThreadStrips {
    private static final String AREAS = "FED-STD-H28/2B; ISO/TR 16224";
    private static final String BENDING = "ISO/TR 16224; VDI 2230-1, from memory";
    private static final double NARROW = 1.4;
    private static final double WIDE = 1.9;
    private static final double EVEN = 0.897;

    static final Worksheet<ThreadStripCase, ThreadStripResult> SHEET = new Worksheet<>(
            "thread-strip",
            "Thread strip",
            "Load and torque at which a tapped hole strips, what is left of a damaged one, and the insert that saves it.",
            List.of(
                    "shear areas and engagement: FED-STD-H28/2B",
                    "bending and dilation: ISO/TR 16224, VDI 2230-1 (from memory)",
                    "A380: NADCA Table A-3-2",
                    WireInsert.SOURCE),
            ThreadStripCase.class,
            ThreadStripResult.class,
            ThreadStrips::work);

    private ThreadStrips() {}

    /**
     * Stripping: hole area = π (L/P) dmin (P/2 + (dmin − D2max)/√3), bolt area = π (L/P) D1max (P/2 + (d2min −
     * D1max)/√3), load = area × shear strength, L = good length of engagement.
     *
     * @param c lengths in m, strengths in Pa, torque in N·m
     * @return areas in m², loads in N, torques in N·m; the safe ones with the casting's derate, bending and dilation
     *     factors and the upper end of the scatter; refused: a bad thread, no good thread left, unknown strength, no
     *     limits of size, a boss narrower than 1.4 d, a blind hole half given
     */
    public static Outcome<Worked<ThreadStripResult>> work(ThreadStripCase c) {
        Outcome<ThreadForm> form = ThreadForm.of(c.diameter(), c.pitch(), c.perInch());
        Outcome<StripStrength> strength = StripStrength.of(c);
        Outcome<StripLimits> limits = form.flatMap(f -> StripLimits.of(c, f));
        List<Refusal> refusals = new ArrayList<>(strength.refusals());
        refusals.addAll(limits.refusals());
        if (c.damaged() >= c.engagement()) {
            refusals.add(new Refusal("damaged", "no good thread is left", "Cut it out and fit an insert"));
        }
        Double boss = c.bossWidth();
        if (boss != null && boss < NARROW * c.diameter()) {
            refusals.add(new Refusal(
                    "bossWidth",
                    "the boss is narrower than 1.4 times the thread",
                    "Nothing here covers so thin a wall"));
        }
        if ((c.holeDepth() == null) != (c.reach() == null)) {
            refusals.add(new Refusal("reach", "the blind hole is half given", "Give holeDepth and reach"));
        }
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        return Outcome.ok(stripped(c, form.orElseThrow(), strength.orElseThrow(), limits.orElseThrow()));
    }

    /** Areas in m², loads in N at full strength, ratio without unit. */
    private record Loads(double holeArea, double boltArea, double hole, double bolt, double breaks, double ratio) {
        double weakest() {
            return Math.min(breaks, Math.min(hole, bolt));
        }
    }

    private static Loads loads(
            ThreadStripCase c, ThreadForm form, StripStrength strength, StripLimits limits, Working w) {
        double p = form.pitch();
        double length = w.line("good length", "engagement − damaged", c.engagement() - c.damaged(), Kind.LENGTH);
        double holeArea = w.line(
                "hole area",
                "π L/P × dmin (P/2 + (dmin − D2max)/√3)",
                limits.holeAreaPerLength(p) * length,
                Kind.AREA,
                AREAS + "; " + limits.source());
        double boltArea = w.line(
                "bolt area",
                "π L/P × D1max (P/2 + (d2min − D1max)/√3)",
                limits.boltAreaPerLength(p) * length,
                Kind.AREA,
                AREAS + "; " + limits.source());
        double hole = w.line("hole strips at", "hole area × shear", holeArea * strength.caseShear(), Kind.FORCE);
        double bolt = w.line("bolt strips at", "bolt area × shear", boltArea * strength.boltShear(), Kind.FORCE);
        double area = StressArea.of(w, form, null);
        double breaks = w.line("bolt breaks at", "stress area × Rm", area * strength.boltTensile(), Kind.FORCE);
        double ratio = w.line("Rs", "hole / bolt", hole / bolt, Kind.NUMBER, BENDING);
        return new Loads(holeArea, boltArea, hole, bolt, breaks, ratio);
    }

    private static Worked<ThreadStripResult> stripped(
            ThreadStripCase c, ThreadForm form, StripStrength strength, StripLimits limits) {
        Working w = new Working();
        Loads loads = loads(c, form, strength, limits, w);
        double dilation = w.line("C1", "boss width", dilation(c.bossWidth(), c.diameter()), Kind.NUMBER, BENDING);
        double boltBending = w.line("C2", "polynomial in Rs", boltBending(loads.ratio()), Kind.NUMBER, BENDING);
        double holeBending = w.line("C3", "polynomial in Rs", holeBending(loads.ratio()), Kind.NUMBER, BENDING);
        double lever = c.nutFactor() * c.diameter();
        double stripTorque =
                w.line("strip torque", "K × d × weakest", lever * loads.weakest(), Kind.TORQUE, "T = K F d");
        double hole = c.derate() * dilation * Math.min(1, holeBending) * loads.hole();
        double bolt = dilation * Math.min(1, boltBending) * loads.bolt();
        double safeLoad = w.line(
                "safe load",
                "least of derated hole, bolt thread, bolt",
                Math.min(loads.breaks(), Math.min(hole, bolt)),
                Kind.FORCE,
                "derate is a judgement");
        double safeTorque = w.line(
                "safe torque", "K × d × safe load/(1 + scatter)", lever * safeLoad / (1 + c.scatter()), Kind.TORQUE);
        Engagement engagement = engagement(form, strength, limits, loads, w);
        Optional<Double> insert = WireInsert.diameters(strength.caseShear(), strength.boltTensile());
        Hole verdict = verdict(c.torque(), safeTorque, stripTorque);
        cautions(c, form, verdict, insert.isEmpty(), w);
        return w.worked(new ThreadStripResult(
                loads.holeArea(),
                loads.boltArea(),
                loads.hole(),
                loads.bolt(),
                loads.breaks(),
                loads.ratio(),
                dilation,
                boltBending,
                holeBending,
                stripTorque,
                safeLoad,
                safeTorque,
                verdict,
                engagement.needed(),
                engagement.equal(),
                engagement.j(),
                engagement.relative(),
                insert.orElse(null),
                insert.map(n -> n * c.diameter()).orElse(null)));
    }

    /** Lengths in m, j without unit. */
    private record Engagement(
            double needed,
            double equal,
            @Nullable Double j,
            @Nullable Double relative) {}

    private static Engagement engagement(
            ThreadForm form, StripStrength strength, StripLimits limits, Loads loads, Working w) {
        double p = form.pitch();
        double equal = w.line(
                "Le",
                "2 As/(bolt area per length)",
                2 * form.stressArea() / limits.boltAreaPerLength(p),
                Kind.LENGTH,
                AREAS);
        double needed = w.line(
                "needed engagement",
                "Rm As/(shear × hole area per length)",
                loads.breaks() / (strength.caseShear() * limits.holeAreaPerLength(p)),
                Kind.LENGTH,
                "statics");
        Double tensile = strength.caseTensile();
        if (tensile == null) {
            return new Engagement(needed, equal, null, null);
        }
        double j = w.line(
                "J",
                "bolt area × its Rm/(hole area × its Rm)",
                loads.boltArea() * strength.boltTensile() / (loads.holeArea() * tensile),
                Kind.NUMBER,
                AREAS);
        return new Engagement(
                needed, equal, j, w.line("Q", "max(1, J) × Le", Math.max(1, j) * equal, Kind.LENGTH, AREAS));
    }

    /** C1 for 1.4 ≤ s/d &lt; 1.9, else 1; smaller than 1 for a narrow boss. */
    static double dilation(@Nullable Double width, double diameter) {
        if (width == null || width >= WIDE * diameter) {
            return 1;
        }
        double x = width / diameter;
        return Math.min(1, 3.8 * x - x * x - 2.61);
    }

    /** C2 for 1 &lt; Rs &lt; 2.2, else 0.897 below and the value at 2.2 above. */
    static double boltBending(double rs) {
        if (rs <= 1) {
            return EVEN;
        }
        double r = Math.min(rs, 2.2);
        return 5.594 - 13.682 * r + 14.107 * r * r - 6.057 * r * r * r + 0.9353 * r * r * r * r;
    }

    /** C3 for 0.4 &lt; Rs &lt; 1, else 0.897 above and the value at 0.4 below. */
    static double holeBending(double rs) {
        if (rs >= 1) {
            return EVEN;
        }
        double r = Math.max(rs, 0.4);
        return 0.728 + 1.769 * r - 2.896 * r * r + 1.296 * r * r * r;
    }

    private static Hole verdict(@Nullable Double torque, double safe, double strip) {
        if (torque == null) {
            return Hole.NOT_ASKED;
        }
        if (torque <= safe) {
            return Hole.HOLDS;
        }
        return torque < strip ? Hole.AT_RISK : Hole.STRIPS;
    }

    private static void cautions(ThreadStripCase c, ThreadForm form, Hole verdict, boolean noInsert, Working w) {
        w.caution(
                "Count only whole, clean turns: the first and last turn and a chamfer carry little. Test bars flatter a "
                        + "real boss.");
        if (verdict == Hole.AT_RISK) {
            w.caution("A light try will not show it: the hole can let go on the last pull.");
        }
        if (verdict == Hole.AT_RISK || verdict == Hole.STRIPS) {
            w.caution("Do not close the joint on this hole: fit an insert, or have it welded and tapped anew.");
        }
        if (noInsert) {
            w.caution(
                    "The table prints no wire insert that holds this bolt in this case: a solid bush, or a lower class.");
        }
        w.caution("Insert: keep the wall of the boss, set it a quarter to one and a half pitches below the face, break "
                + "off and count the tang.");
        Double depth = c.holeDepth();
        Double reach = c.reach();
        if (depth != null && reach != null && depth - reach < 2 * form.pitch()) {
            w.caution(
                    "The bolt may bottom: less than two pitches are left below it. A bottomed bolt shows torque without "
                            + "clamping.");
        }
    }
}
