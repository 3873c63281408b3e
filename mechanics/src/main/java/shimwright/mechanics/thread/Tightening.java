package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code tightening}. */
public final class Tightening {
    static final String DRY_RULE = "US Army TM 9-6115-604-34, Table 1-2, notes 4 to 6";
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "tightening",
                    "Tightening",
                    "Preload from torque, or torque from preload, with its scatter and what it asks of bolt, seat and spacer.",
                    List.of(
                            "short form T = K F d: Shigley 9th ed., Eq. 8-27 and Table 8-15",
                            "long form: VDI 2230-1; ISO 16047; exact screw: Shigley 9th ed., Eq. 8-26",
                            "scatter: Machinery's Handbook; NASA practice; VDI 2230-1, (αA − 1)/(αA + 1)",
                            DRY_RULE),
                    Case.class,
                    Result.class,
                    Tightening::work)
            .drawn(ThreadPictures::tightening);

    private Tightening() {}

    /** One bolt or nut to be tightened, by torque, by preload or by share of the proof load. */
    public record Case(
            @Group Fastening bolt,
            @Group Wanted wanted,
            @Group Rubbing friction,
            @Group Judged judged,
            @Group Locking lock,
            @Group Clamped joint) {
        /** The bolt: its thread, its mark, and what is known of its strength. */
        public record Fastening(
                @Group ThreadSize size,

                @Input(meaning = "mark on the bolt head, such as 8.8 or grade 5", orElse = "", example = "8.8")
                String strengthClass,

                @Input(kind = Kind.AREA, meaning = "printed stress area for the computed one", min = 1e-7, max = 0.01)
                @Nullable
                Double stressArea,

                @Input(kind = Kind.PRESSURE, meaning = "proof stress for that of the class", min = 1e6, max = 3e9)
                @Nullable
                Double proofStress,

                @Input(kind = Kind.PRESSURE, meaning = "yield stress for that of the class", min = 1e6, max = 3e9)
                @Nullable
                Double yieldStress) {}

        /** What is asked for: exactly one of torque, preload and share of the proof load. */
        public record Wanted(
                @Input(
                        kind = Kind.TORQUE,
                        meaning = "torque at the fastener",
                        min = 1e-3,
                        max = 1e5,
                        example = "40 N·m")
                @Nullable
                Double torque,

                @Input(kind = Kind.FORCE, meaning = "preload wanted instead", min = 1, max = 1e7) @Nullable
                Double preload,

                @Input(meaning = "share of the proof load wanted instead; 75 % is usual", min = 0.01, max = 1) @Nullable
                Double proofShare,

                @Input(meaning = "what the torque was stated for", orElse = "this joint")
                Basis basis,

                @Input(meaning = "whether the thread is cut in aluminum", orElse = "no")
                boolean intoAluminium) {}

        /** How thread and seat rub, and by which formula. */
        public record Rubbing(
                @Input(meaning = "which formula", orElse = "nut factor")
                Form form,

                @Input(meaning = "nut factor K, where known", min = 0.03, max = 1, example = "0.18") @Nullable
                Double nutFactor,

                @Input(meaning = "surface of bolt and seat", orElse = "unknown")
                Surface condition,

                @Input(meaning = "coefficient of friction in the thread", min = 0, max = 0.8) @Nullable
                Double threadFriction,

                @Input(meaning = "coefficient of friction under the head", min = 0, max = 0.8) @Nullable
                Double headFriction,

                @Input(kind = Kind.LENGTH, meaning = "mean diameter of the seat under the head", min = 0.001, max = 0.3)
                @Nullable
                Double headMean,

                @Input(
                        kind = Kind.LENGTH,
                        meaning = "outer diameter of the seat under the head",
                        min = 0.001,
                        max = 0.3)
                @Nullable
                Double headOuter,

                @Input(kind = Kind.LENGTH, meaning = "diameter of the hole under the head", min = 0.001, max = 0.3)
                @Nullable
                Double headHole) {}

        /** How the tightening is judged, and how far the bolt may be loaded by it. */
        public record Judged(
                @Input(meaning = "share of yield allowed while tightening", orElse = "0.9", min = 0.1, max = 1)
                double yieldShare,

                @Input(meaning = "how the tightening is judged", orElse = "torque wrench")
                Method method,

                @Input(meaning = "scatter of the preload to each side, where known", min = 0, max = 0.95) @Nullable
                Double scatter,

                @Input(meaning = "tightening factor, largest over smallest preload, instead", min = 1, max = 20)
                @Nullable
                Double tighteningFactor,

                @Input(meaning = "tolerance of the wrench", orElse = "4 %", min = 0, max = 0.5)
                double toolTolerance) {}

        /** What keeps the thread from turning back. */
        public record Locking(
                @Input(
                        kind = Kind.TORQUE,
                        meaning = "torque that only turns a locking thread",
                        orElse = "0 N·m",
                        min = 0,
                        max = 1e4)
                double prevailing,

                @Input(meaning = "whether liquid threadlocker is used", orElse = "no")
                boolean threadlocker) {}

        /** What is clamped: the load that pulls on it, and a spacer under the nut. */
        public record Clamped(
                @Input(
                        kind = Kind.FORCE,
                        meaning = "working load that pulls on the joint, per bolt",
                        orElse = "0 N",
                        min = 0,
                        max = 1e7)
                double serviceLoad,

                @Input(meaning = "share of the working load that the bolt feels", min = 0, max = 1) @Nullable
                Double loadShare,

                @Input(kind = Kind.LENGTH, meaning = "length of a spacer or sleeve under the nut", min = 1e-4, max = 1)
                @Nullable
                Double sleeveLength,

                @Input(kind = Kind.AREA, meaning = "section of that spacer", min = 1e-6, max = 0.1) @Nullable
                Double sleeveArea,

                @Input(
                        kind = Kind.PRESSURE,
                        meaning = "elastic modulus of that spacer",
                        unit = "GPa",
                        orElse = "206 GPa",
                        min = 1e9,
                        max = 1e12)
                double sleeveModulus) {}

        /** What a stated torque was stated for. */
        public enum Basis {
            THIS_JOINT,
            DRY_STEEL_TABLE
        }

        /** Relation of torque and preload. */
        public enum Form {
            /** T = K F d. */
            NUT_FACTOR,
            /** Sum of pitch, thread and head shares. */
            FRICTION,
            /** The exact screw. */
            SCREW
        }

        /** Surface of bolt and seat. */
        public enum Surface {
            UNKNOWN,
            BLACK,
            ZINC_PLATED,
            LUBRICATED,
            CADMIUM_PLATED,
            ANTI_SEIZE
        }

        /** How the tightening is judged. */
        public enum Method {
            FEEL,
            TORQUE_WRENCH,
            TURN_OF_NUT,
            INDICATING_WASHER,
            ELONGATION,
            YIELD_CONTROL
        }
    }

    /** Torque and preload with what they ask of the bolt; what was not given cannot be answered and is absent. */
    public record Result(
            @Group Wrench wrench,
            @Group Clamp clamp,
            @Group Bearable bears,
            @Group Shares shares,
            @Group Effects effects) {
        /** What the wrench has to do. */
        public record Wrench(
                @Output(kind = Kind.TORQUE, meaning = "torque at the fastener, seated")
                double torque,

                @Output(kind = Kind.TORQUE, meaning = "wrench setting, with the torque of a locking thread")
                double setting) {}

        /** The preload and how far it may lie to each side. */
        public record Clamp(
                @Output(kind = Kind.FORCE, meaning = "preload")
                double preload,

                @Output(kind = Kind.FORCE, meaning = "lowest preload to expect")
                double preloadLow,

                @Output(kind = Kind.FORCE, meaning = "highest preload to expect")
                double preloadHigh,

                @Output(meaning = "scatter to each side", unit = "%", decimals = 1)
                double scatter,

                @Output(meaning = "nut factor K", decimals = 3)
                double nutFactor) {}

        /** What it asks of the bolt. */
        public record Bearable(
                @Output(kind = Kind.PRESSURE, meaning = "tensile stress in the bolt", decimals = 0)
                double stress,

                @Output(kind = Kind.FORCE, meaning = "proof load") @Nullable
                Double proofLoad,

                @Output(meaning = "share of the proof load", unit = "%", decimals = 0) @Nullable
                Double proofShare,

                @Output(meaning = "share of the proof load at the highest preload", unit = "%", decimals = 0) @Nullable
                Double proofShareHigh,

                @Output(kind = Kind.FORCE, meaning = "preload that reaches the allowed share of yield, with twist")
                @Nullable
                Double yieldPreload) {}

        /** Where the torque goes; absent by nut factor, which does not say. */
        public record Shares(
                @Output(meaning = "share of the torque that stretches the bolt", unit = "%", decimals = 1) @Nullable
                Double pitchShare,

                @Output(meaning = "share lost in the thread", unit = "%", decimals = 1) @Nullable
                Double threadShare,

                @Output(meaning = "share lost under the head", unit = "%", decimals = 1) @Nullable
                Double headShare) {}

        /** What the preload does to seat, bolt at work and spacer, where they were given. */
        public record Effects(
                @Output(kind = Kind.PRESSURE, meaning = "pressure under the head", decimals = 0) @Nullable
                Double headPressure,

                @Output(kind = Kind.PRESSURE, meaning = "bolt stress under the working load", decimals = 0) @Nullable
                Double serviceStress,

                @Output(kind = Kind.LENGTH, meaning = "spacer shorter by", unit = "µm", decimals = 1) @Nullable
                Double sleeveShortening) {}
    }

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
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        Outcome<ThreadForm> form = c.bolt().size().form();
        Outcome<Optional<Strength>> strength =
                Strength.of(c.bolt().strengthClass(), c.bolt().size().diameter());
        List<Refusal> refusals = new ArrayList<>(Refusals.of(form, strength));
        boolean proofUnknown =
                c.bolt().proofStress() == null && c.bolt().strengthClass().isBlank();
        TighteningChecks.of(c, proofUnknown, refusals);
        if (!form.isOk()) {
            return Outcome.refused(refusals);
        }
        double area = StressArea.of(w, form.orElseThrow(), c.bolt().stressArea());
        Outcome<Friction> friction = Friction.of(c, form.orElseThrow(), w);
        refusals.addAll(friction.refusals());
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Bolt bolt = bolt(c, form.orElseThrow(), strength.orElseThrow(), area, w);
        return Outcome.ok(tightened(c, bolt, friction.orElseThrow(), w));
    }

    /** What the bolt is; the proof load in N, the yield stress in Pa. */
    record Bolt(
            ThreadForm form,
            double area,
            @Nullable Double proofLoad,
            @Nullable Double yield) {}

    private static Bolt bolt(Case c, ThreadForm form, Optional<Strength> strength, double area, Working w) {
        Double proof = c.bolt().proofStress() != null
                ? c.bolt().proofStress()
                : strength.map(Strength::proof).orElse(null);
        Double yield = c.bolt().yieldStress() != null
                ? c.bolt().yieldStress()
                : strength.map(Strength::yield).orElse(null);
        String source = strength.map(Strength::source).orElse("given");
        Double load = proof == null
                ? null
                : w.line("proof load", "stress area × proof stress", area * proof, Kind.FORCE, source);
        return new Bolt(form, area, load, yield);
    }

    private static Worked<Result> tightened(Case c, Bolt bolt, Friction friction, Working w) {
        double preload = PreloadWanted.of(c, bolt, friction, w);
        double torque = w.line("torque", "preload × T/F", preload * friction.total(), Kind.TORQUE);
        double setting = w.line(
                "wrench setting",
                "torque + prevailing torque",
                torque + c.lock().prevailing(),
                Kind.TORQUE);
        double scatter = PreloadEffects.scatter(c, w);
        double low = w.line("lowest preload", "preload × (1 − s)", preload * Math.max(0, 1 - scatter), Kind.FORCE);
        double high = w.line("highest preload", "preload × (1 + s)", preload * (1 + scatter), Kind.FORCE);
        double stress = w.line("stress", "preload / stress area", preload / bolt.area(), Kind.PRESSURE);
        Double proofLoad = bolt.proofLoad();
        Double share = proofLoad == null ? null : w.line("share of proof", "", preload / proofLoad, Kind.NUMBER);
        Double shareHigh = proofLoad == null ? null : high / proofLoad;
        TighteningChecks.cautions(c, shareHigh, w);
        return w.worked(new Result(
                new Result.Wrench(torque, setting),
                new Result.Clamp(
                        preload,
                        low,
                        high,
                        scatter,
                        friction.total() / c.bolt().size().diameter()),
                new Result.Bearable(stress, proofLoad, share, shareHigh, PreloadEffects.yieldPreload(c, bolt, w)),
                shares(friction),
                new Result.Effects(
                        PreloadEffects.headPressure(c, preload, w),
                        PreloadEffects.serviceStress(c, preload, bolt.area(), w),
                        PreloadEffects.shortening(c, preload, w))));
    }

    private static Result.Shares shares(Friction friction) {
        return friction.split()
                ? new Result.Shares(
                        friction.pitch() / friction.total(),
                        friction.thread() / friction.total(),
                        friction.head() / friction.total())
                : new Result.Shares(null, null, null);
    }
}
