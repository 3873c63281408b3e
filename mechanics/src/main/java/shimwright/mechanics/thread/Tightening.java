package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.thread.TighteningCase.Basis;
import shimwright.mechanics.thread.TighteningCase.Method;
import shimwright.mechanics.thread.TighteningCase.Surface;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code tightening}. */
public final class Tightening {
    private static final Table SCATTER = Table.read("machinerys-handbook/preload-scatter.csv");
    private static final String DRY_RULE = "US Army TM 9-6115-604-34, Table 1-2, notes 4 to 6";
    private static final double OILED = 0.90;
    private static final double PLATED = 0.80;
    private static final double ALUMINIUM = 0.70;

    static final Worksheet<TighteningCase, TighteningResult> SHEET = new Worksheet<>(
                    "tightening",
                    "Tightening",
                    "Preload from torque, or torque from preload, with its scatter and what it asks of bolt, seat and spacer.",
                    List.of(
                            "short form T = K F d: Shigley 9th ed., Eq. 8-27 and Table 8-15",
                            "long form: VDI 2230-1; ISO 16047; exact screw: Shigley 9th ed., Eq. 8-26",
                            "scatter: Machinery's Handbook; NASA practice; VDI 2230-1, (αA − 1)/(αA + 1)",
                            DRY_RULE),
                    TighteningCase.class,
                    TighteningResult.class,
                    Tightening::work)
            .drawn(ThreadPictures::tightening);

    private Tightening() {}

    /**
     * Tightening: T = K F d, or T = F (P/2π + μG d2/(2 cos 30°) + μK DKm/2), or the exact screw; Fmin, Fmax = F (1 ± s),
     * s² = scatter² + wrench².
     *
     * @param c lengths in m, area in m², stresses in Pa, torques in N·m, forces in N; exactly one of torque, preload
     *     and share of proof load
     * @return torques in N·m, forces in N, stresses in Pa; refused: none or several of the three, no friction at all, a
     *     dry table value without the surface, a share of an unknown proof load, two scatters, a load share or spacer
     *     half given
     */
    public static Outcome<Worked<TighteningResult>> work(TighteningCase c) {
        Working w = new Working();
        Outcome<ThreadForm> form = ThreadForm.of(c.diameter(), c.pitch(), c.perInch());
        Outcome<Optional<Strength>> strength = Strength.of(c.strengthClass(), c.diameter());
        List<Refusal> refusals = new ArrayList<>(Refusals.of(form, strength));
        boolean proofUnknown = c.proofStress() == null && c.strengthClass().isBlank();
        TighteningChecks.of(c, proofUnknown, refusals);
        if (!form.isOk()) {
            return Outcome.refused(refusals);
        }
        double area = StressArea.of(w, form.orElseThrow(), c.stressArea());
        Outcome<Friction> friction = Friction.of(c, form.orElseThrow(), w);
        refusals.addAll(friction.refusals());
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Bolt bolt = bolt(c, form.orElseThrow(), strength.orElseThrow(), area, w);
        return Outcome.ok(tightened(c, bolt, friction.orElseThrow(), w));
    }

    /** What the bolt is; the proof load in N, the yield stress in Pa. */
    private record Bolt(
            ThreadForm form,
            double area,
            @Nullable Double proofLoad,
            @Nullable Double yield) {}

    private static Bolt bolt(TighteningCase c, ThreadForm form, Optional<Strength> strength, double area, Working w) {
        Double proof = c.proofStress() != null
                ? c.proofStress()
                : strength.map(Strength::proof).orElse(null);
        Double yield = c.yieldStress() != null
                ? c.yieldStress()
                : strength.map(Strength::yield).orElse(null);
        String source = strength.map(Strength::source).orElse("given");
        Double load = proof == null
                ? null
                : w.line("proof load", "stress area × proof stress", area * proof, Kind.FORCE, source);
        return new Bolt(form, area, load, yield);
    }

    private static Worked<TighteningResult> tightened(TighteningCase c, Bolt bolt, Friction friction, Working w) {
        double preload = preload(c, bolt, friction, w);
        double torque = w.line("torque", "preload × T/F", preload * friction.total(), Kind.TORQUE);
        double setting = w.line("wrench setting", "torque + prevailing torque", torque + c.prevailing(), Kind.TORQUE);
        double scatter = scatter(c, w);
        double low = w.line("lowest preload", "preload × (1 − s)", preload * Math.max(0, 1 - scatter), Kind.FORCE);
        double high = w.line("highest preload", "preload × (1 + s)", preload * (1 + scatter), Kind.FORCE);
        double stress = w.line("stress", "preload / stress area", preload / bolt.area(), Kind.PRESSURE);
        Double proofLoad = bolt.proofLoad();
        Double share = proofLoad == null ? null : w.line("share of proof", "", preload / proofLoad, Kind.NUMBER);
        Double shareHigh = proofLoad == null ? null : high / proofLoad;
        cautions(c, shareHigh, w);
        boolean split = friction.split();
        return w.worked(new TighteningResult(
                torque,
                setting,
                preload,
                low,
                high,
                scatter,
                friction.total() / c.diameter(),
                stress,
                proofLoad,
                share,
                shareHigh,
                yieldPreload(c, bolt, w),
                split ? friction.pitch() / friction.total() : null,
                split ? friction.thread() / friction.total() : null,
                split ? friction.head() / friction.total() : null,
                headPressure(c, preload, w),
                serviceStress(c, preload, bolt.area(), w),
                shortening(c, preload, w)));
    }

    private static double preload(TighteningCase c, Bolt bolt, Friction friction, Working w) {
        if (c.preload() != null) {
            return c.preload();
        }
        Double proofLoad = bolt.proofLoad();
        if (c.proofShare() != null && proofLoad != null) {
            return w.line("preload", "share × proof load", c.proofShare() * proofLoad, Kind.FORCE);
        }
        Double stated = c.torque();
        if (stated == null) {
            throw new IllegalStateException("no target");
        }
        double torque = c.basis() == Basis.THIS_JOINT
                ? stated
                : w.line("torque for this joint", "stated × share", stated * dryShare(c), Kind.TORQUE, DRY_RULE);
        return w.line("preload", "torque / (T/F)", torque / friction.total(), Kind.FORCE);
    }

    /** What is left of a torque stated for dry steel. */
    private static double dryShare(TighteningCase c) {
        double surface = switch (c.condition()) {
            case LUBRICATED -> OILED;
            case ZINC_PLATED, CADMIUM_PLATED -> PLATED;
            case BLACK, UNKNOWN, ANTI_SEIZE -> 1;
        };
        return Math.min(surface, c.intoAluminium() ? ALUMINIUM : 1);
    }

    private static double scatter(TighteningCase c, Working w) {
        double own;
        if (c.scatter() != null) {
            own = w.line("scatter", "given", c.scatter(), Kind.NUMBER, "given");
        } else if (c.tighteningFactor() != null) {
            double factor = c.tighteningFactor();
            own = w.line("scatter", "(αA − 1)/(αA + 1)", (factor - 1) / (factor + 1), Kind.NUMBER, "VDI 2230-1");
        } else {
            boolean dry = c.method() == Method.TORQUE_WRENCH && c.condition() == Surface.BLACK;
            String row = c.method().name() + (dry ? "_DRY" : "");
            double printed = SCATTER.rows().stream()
                    .filter(r -> r.text("method").equals(row))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no scatter for " + row))
                    .number("scatter");
            own = w.line("scatter", "for this method", printed, Kind.NUMBER, SCATTER.name());
        }
        return w.line(
                "s",
                "√(scatter² + wrench²)",
                Math.hypot(own, c.toolTolerance()),
                Kind.NUMBER,
                "independent influences");
    }

    private static @Nullable Double yieldPreload(TighteningCase c, Bolt bolt, Working w) {
        Double yield = bolt.yield();
        Double mu = c.threadFriction();
        if (yield == null || mu == null) {
            return null;
        }
        ThreadForm form = bolt.form();
        double twist = 1.5
                * form.pitchDiameter()
                / form.stressDiameter()
                * (form.pitch() / (Math.PI * form.pitchDiameter()) + 2 / Math.sqrt(3) * mu);
        return w.line(
                "allowed preload",
                "share × yield × area / √(1 + 3 (1.5 d2/ds (P/πd2 + 1.155 μG))²)",
                c.yieldShare() * yield * bolt.area() / Math.sqrt(1 + 3 * twist * twist),
                Kind.FORCE,
                "VDI 2230-1");
    }

    private static @Nullable Double headPressure(TighteningCase c, double preload, Working w) {
        Double outer = c.headOuter();
        Double hole = c.headHole();
        if (outer == null || hole == null) {
            return null;
        }
        double area = Math.PI / 4 * (outer * outer - hole * hole);
        return w.line("pressure under the head", "preload / seat", preload / area, Kind.PRESSURE, "statics");
    }

    private static @Nullable Double serviceStress(TighteningCase c, double preload, double area, Working w) {
        Double share = c.loadShare();
        if (share == null) {
            return null;
        }
        return w.line(
                "stress under load",
                "(share × load + preload) / stress area",
                (share * c.serviceLoad() + preload) / area,
                Kind.PRESSURE,
                "Shigley 9th ed., Eq. 8-24");
    }

    private static @Nullable Double shortening(TighteningCase c, double preload, Working w) {
        Double length = c.sleeveLength();
        Double area = c.sleeveArea();
        if (length == null || area == null) {
            return null;
        }
        return w.line(
                "spacer shorter by",
                "preload × length / (E × section)",
                preload * length / (c.sleeveModulus() * area),
                Kind.LENGTH,
                "Hooke's law");
    }

    private static void cautions(TighteningCase c, @Nullable Double shareHigh, Working w) {
        w.caution("Tighten cold, in steps, with clean threads and seats; oil under the head counts as much as oil in "
                + "the thread.");
        if (shareHigh == null) {
            w.caution("Without the mark on the head nothing here proves that the bolt bears this preload.");
        } else if (shareHigh > 1) {
            w.caution("At the upper end of the scatter the bolt is loaded beyond its proof load: less torque, a better "
                    + "method, or a stronger bolt.");
        }
        if (c.threadlocker()) {
            w.caution("Liquid threadlocker changes the friction and sources disagree which way: take the torque its "
                    + "maker gives, and never re-check the torque once it has set.");
        }
        if (c.prevailing() > 0) {
            w.caution("Measure the torque of the locking thread while it runs, before the head seats.");
        }
        if (c.method() == Method.YIELD_CONTROL || c.method() == Method.TURN_OF_NUT) {
            w.caution("A bolt that was tightened into yield is used once.");
        }
    }
}
