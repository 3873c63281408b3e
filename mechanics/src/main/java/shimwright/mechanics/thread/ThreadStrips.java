package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.thread.ThreadStrips.Result.EngagementNeeded;
import shimwright.mechanics.thread.ThreadStrips.Result.ShearAreas;
import shimwright.mechanics.thread.ThreadStrips.Result.StripLoads;
import shimwright.mechanics.thread.ThreadStrips.Result.Trusted.Hole;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code thread-strip}. */
public final class ThreadStrips {
    private static final String AREAS = "FED-STD-H28/2B; ISO/TR 16224";
    private static final String BENDING = "ISO/TR 16224; VDI 2230-1, from memory";
    private static final double NARROW = 1.4;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "thread-strip",
            "Thread strip",
            "Load and torque at which a tapped hole strips, what is left of a damaged one, and the insert that saves it.",
            List.of(
                    "shear areas and engagement: FED-STD-H28/2B",
                    "bending and dilation: ISO/TR 16224, VDI 2230-1 (from memory)",
                    "A380: NADCA Table A-3-2",
                    WireInsert.SOURCE),
            Case.class,
            Result.class,
            ThreadStrips::work);

    private ThreadStrips() {}

    /** A bolt in a tapped hole, whole or damaged. */
    public record Case(
            @Group Engaged thread,
            @Group BoltStrength bolt,
            @Group HoleStrength hole,
            @Group LimitSizes limits,
            @Group Asked asked,
            @Group BlindHole blind) {
        /** The thread and how much of it holds. */
        public record Engaged(
                @Group ThreadSize size,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "length of thread in engagement",
                        min = 1e-4,
                        max = 0.3,
                        example = "12 mm")
                double engagement,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "length of it that is torn or pulled",
                        orElse = "0 mm",
                        min = 0,
                        max = 0.3)
                double damaged) {}

        /** What is known of the strength of the bolt. */
        public record BoltStrength(
                @Input(meaning = "mark on the bolt head, such as 8.8", orElse = "", example = "8.8")
                String strengthClass,

                @Input(kind = Kind.PRESSURE, meaning = "tensile strength of the bolt", min = 1e7, max = 3e9) @Nullable
                Double boltTensile,

                @Input(
                        kind = Kind.PRESSURE,
                        meaning = "shear strength of the bolt; else 0.6 of tensile",
                        min = 1e7,
                        max = 3e9)
                @Nullable
                Double boltShear) {}

        /** What is known of the strength of the case around the hole. */
        public record HoleStrength(
                @Input(meaning = "alloy of the case, such as A380", orElse = "", example = "A380")
                String parent,

                @Input(kind = Kind.PRESSURE, meaning = "shear strength of the case", min = 1e6, max = 2e9) @Nullable
                Double parentShear,

                @Input(kind = Kind.PRESSURE, meaning = "tensile strength of the case", min = 1e6, max = 3e9) @Nullable
                Double parentTensile,

                @Input(meaning = "share of the strength trusted in a casting", orElse = "0.75", min = 0.1, max = 1)
                double derate,

                @Input(kind = Kind.LENGTH, meaning = "smallest width of the boss or nut", min = 0.001, max = 0.5)
                @Nullable
                Double bossWidth) {}

        /** Limit sizes, where they are not those of the usual classes. */
        public record LimitSizes(
                @Input(kind = Kind.LENGTH, meaning = "bolt, smallest major diameter", min = 0.001, max = 0.1) @Nullable
                Double majorMin,

                @Input(kind = Kind.LENGTH, meaning = "bolt, smallest pitch diameter", min = 0.001, max = 0.1) @Nullable
                Double pitchMin,

                @Input(kind = Kind.LENGTH, meaning = "hole, largest pitch diameter", min = 0.001, max = 0.1) @Nullable
                Double holePitchMax,

                @Input(kind = Kind.LENGTH, meaning = "hole, largest minor diameter", min = 0.001, max = 0.1) @Nullable
                Double holeMinorMax) {}

        /** What the joint asks for, and how surely it gets it. */
        public record Asked(
                @Input(meaning = "nut factor K", orElse = "0.2", min = 0.03, max = 1)
                double nutFactor,

                @Input(meaning = "scatter of the preload to each side", orElse = "0.25", min = 0, max = 0.95)
                double scatter,

                @Input(kind = Kind.TORQUE, meaning = "torque the joint asks for", min = 1e-3, max = 1e5) @Nullable
                Double torque) {}

        /** A blind hole; both or none. */
        public record BlindHole(
                @Input(kind = Kind.LENGTH, meaning = "depth of a blind hole", min = 1e-4, max = 0.5) @Nullable
                Double holeDepth,

                @Input(kind = Kind.LENGTH, meaning = "how far the bolt reaches into it", min = 1e-4, max = 0.5)
                @Nullable
                Double reach) {}
    }

    /** What the thread bears; answers that need a strength which was not given are absent. */
    public record Result(
            @Group ShearAreas areas,
            @Group StripLoads loads,
            @Group StripFactors factors,
            @Group Trusted trusted,
            @Group EngagementNeeded engagement,
            @Group InsertNeeded insert) {
        /** What is sheared off. */
        public record ShearAreas(
                @Output(kind = Kind.AREA, meaning = "shear area of the hole's thread", decimals = 2)
                double holeArea,

                @Output(kind = Kind.AREA, meaning = "shear area of the bolt's thread", decimals = 2)
                double boltArea) {}

        /** What gives way at which load, at full strength. */
        public record StripLoads(
                @Output(kind = Kind.FORCE, meaning = "load that strips the hole")
                double holeStrip,

                @Output(kind = Kind.FORCE, meaning = "load that strips the bolt's thread")
                double boltStrip,

                @Output(kind = Kind.FORCE, meaning = "load that breaks the bolt")
                double boltBreak,

                @Output(meaning = "strength of the hole's thread over the bolt's", decimals = 3)
                double strengthRatio) {
            double weakest() {
                return Math.min(boltBreak, Math.min(holeStrip, boltStrip));
            }
        }

        /** What a thin boss and bent threads take off. */
        public record StripFactors(
                @Output(meaning = "factor for a boss that widens", decimals = 3)
                double dilation,

                @Output(meaning = "factor for bending of the bolt's thread", decimals = 3)
                double boltBending,

                @Output(meaning = "factor for bending of the hole's thread", decimals = 3)
                double holeBending) {}

        /** What may be trusted, and how the hole stands against what is asked. */
        public record Trusted(
                @Output(kind = Kind.TORQUE, meaning = "torque that strips or breaks")
                double stripTorque,

                @Output(kind = Kind.FORCE, meaning = "load to be trusted")
                double safeLoad,

                @Output(kind = Kind.TORQUE, meaning = "torque to be trusted, scatter counted")
                double safeTorque,

                @Output(meaning = "the hole at the torque asked for")
                Hole verdict) {
            /** State of a hole at the torque asked for. */
            public enum Hole {
                NOT_ASKED,
                HOLDS,
                AT_RISK,
                STRIPS
            }
        }

        /** How much thread it takes; what needs the tensile strength of the case is absent without it. */
        public record EngagementNeeded(
                @Output(kind = Kind.LENGTH, meaning = "engagement that breaks the bolt first")
                double neededEngagement,

                @Output(kind = Kind.LENGTH, meaning = "the same for equal materials, FED-STD-H28 form")
                double equalEngagement,

                @Output(meaning = "relative strength J", decimals = 3) @Nullable
                Double relativeStrength,

                @Output(kind = Kind.LENGTH, meaning = "engagement by relative strength, FED-STD-H28 form") @Nullable
                Double relativeEngagement) {}

        /** The wire insert that saves it, where one does. */
        public record InsertNeeded(
                @Output(meaning = "wire insert, bolt diameters", decimals = 1) @Nullable
                Double insertRatio,

                @Output(kind = Kind.LENGTH, meaning = "wire insert length", decimals = 1) @Nullable
                Double insertLength) {}
    }

    /**
     * Stripping: hole area = π (L/P) dmin (P/2 + (dmin − D2max)/√3), bolt area = π (L/P) D1max (P/2 + (d2min −
     * D1max)/√3), load = area × shear strength, L = good length of engagement.
     *
     * @param c lengths in m, strengths in Pa, torque in N·m
     * @return areas in m², loads in N, torques in N·m; the safe ones with the casting's derate, bending and dilation
     *     factors and the upper end of the scatter; refused: a bad thread, no good thread left, unknown strength, no
     *     limits of size, a boss narrower than 1.4 d, a blind hole half given
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Outcome<ThreadForm> form = c.thread().size().form();
        Outcome<StripStrength> strength = StripStrength.of(c);
        Outcome<StripLimits> limits = form.flatMap(f -> StripLimits.of(c, f));
        List<Refusal> refusals = new ArrayList<>(strength.refusals());
        refusals.addAll(limits.refusals());
        if (c.thread().damaged() >= c.thread().engagement()) {
            refusals.add(Refusal.of("damaged", "no good thread is left", "Cut it out and fit an insert"));
        }
        Double boss = c.hole().bossWidth();
        if (boss != null && boss < NARROW * c.thread().size().diameter()) {
            refusals.add(Refusal.of(
                    "bossWidth",
                    "the boss is narrower than 1.4 times the thread",
                    "Nothing here covers so thin a wall"));
        }
        if ((c.blind().holeDepth() == null) != (c.blind().reach() == null)) {
            refusals.add(Refusal.of("reach", "the blind hole is half given", "Give holeDepth and reach"));
        }
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        return Outcome.ok(stripped(c, form.orElseThrow(), strength.orElseThrow(), limits.orElseThrow()));
    }

    private static ShearAreas areas(Case c, ThreadForm form, StripLimits limits, Working w) {
        double p = form.pitch();
        double length = w.line(
                "good length",
                "engagement − damaged",
                c.thread().engagement() - c.thread().damaged(),
                Kind.LENGTH);
        double hole = w.line(
                "hole area",
                "π L/P × dmin (P/2 + (dmin − D2max)/√3)",
                limits.holeAreaPerLength(p) * length,
                Kind.AREA,
                AREAS + "; " + limits.source());
        double bolt = w.line(
                "bolt area",
                "π L/P × D1max (P/2 + (d2min − D1max)/√3)",
                limits.boltAreaPerLength(p) * length,
                Kind.AREA,
                AREAS + "; " + limits.source());
        return new ShearAreas(hole, bolt);
    }

    private static StripLoads loads(ShearAreas areas, ThreadForm form, StripStrength strength, Working w) {
        double hole =
                w.line("hole strips at", "hole area × shear", areas.holeArea() * strength.caseShear(), Kind.FORCE);
        double bolt =
                w.line("bolt strips at", "bolt area × shear", areas.boltArea() * strength.boltShear(), Kind.FORCE);
        double area = StressArea.of(w, form, null);
        double breaks = w.line("bolt breaks at", "stress area × Rm", area * strength.boltTensile(), Kind.FORCE);
        return new StripLoads(hole, bolt, breaks, w.line("Rs", "hole / bolt", hole / bolt, Kind.NUMBER, BENDING));
    }

    private static Worked<Result> stripped(Case c, ThreadForm form, StripStrength strength, StripLimits limits) {
        Working w = new Working();
        ShearAreas areas = areas(c, form, limits, w);
        StripLoads loads = loads(areas, form, strength, w);
        double dilation = w.line(
                "C1",
                "boss width",
                StripStrength.dilation(c.hole().bossWidth(), c.thread().size().diameter()),
                Kind.NUMBER,
                BENDING);
        double boltBending = w.line(
                "C2", "polynomial in Rs", StripStrength.boltBending(loads.strengthRatio()), Kind.NUMBER, BENDING);
        double holeBending = w.line(
                "C3", "polynomial in Rs", StripStrength.holeBending(loads.strengthRatio()), Kind.NUMBER, BENDING);
        double lever = c.asked().nutFactor() * c.thread().size().diameter();
        double stripTorque =
                w.line("strip torque", "K × d × weakest", lever * loads.weakest(), Kind.TORQUE, "T = K F d");
        double hole = c.hole().derate() * dilation * Math.min(1, holeBending) * loads.holeStrip();
        double bolt = dilation * Math.min(1, boltBending) * loads.boltStrip();
        double safeLoad = w.line(
                "safe load",
                "least of derated hole, bolt thread, bolt",
                Math.min(loads.boltBreak(), Math.min(hole, bolt)),
                Kind.FORCE,
                "derate is a judgement");
        double safeTorque = w.line(
                "safe torque",
                "K × d × safe load/(1 + scatter)",
                lever * safeLoad / (1 + c.asked().scatter()),
                Kind.TORQUE);
        EngagementNeeded engagement = engagement(form, strength, limits, areas, loads, w);
        Optional<Double> insert = WireInsert.diameters(strength.caseShear(), strength.boltTensile());
        Hole verdict = verdict(c.asked().torque(), safeTorque, stripTorque);
        StripCautions.of(c, form, verdict, insert.isEmpty(), w);
        return w.worked(new Result(
                areas,
                loads,
                new Result.StripFactors(dilation, boltBending, holeBending),
                new Result.Trusted(stripTorque, safeLoad, safeTorque, verdict),
                engagement,
                new Result.InsertNeeded(
                        insert.orElse(null),
                        insert.map(n -> n * c.thread().size().diameter()).orElse(null))));
    }

    private static EngagementNeeded engagement(
            ThreadForm form,
            StripStrength strength,
            StripLimits limits,
            ShearAreas areas,
            StripLoads loads,
            Working w) {
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
                loads.boltBreak() / (strength.caseShear() * limits.holeAreaPerLength(p)),
                Kind.LENGTH,
                "statics");
        Double tensile = strength.caseTensile();
        if (tensile == null) {
            return new EngagementNeeded(needed, equal, null, null);
        }
        double j = w.line(
                "J",
                "bolt area × its Rm/(hole area × its Rm)",
                areas.boltArea() * strength.boltTensile() / (areas.holeArea() * tensile),
                Kind.NUMBER,
                AREAS);
        return new EngagementNeeded(
                needed, equal, j, w.line("Q", "max(1, J) × Le", Math.max(1, j) * equal, Kind.LENGTH, AREAS));
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
}
