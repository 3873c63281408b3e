package shimwright.mechanics.thread;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code thread}. */
public final class Threads {
    private static final Table KNOWN = Table.read("iso-261-1998/threads.csv");
    private static final String FORM = "ISO 68-1:1998, ISO 724:1993; ASME B1.1";

    /** A nut of another thread still starts when diameter and pitch lie this near. */
    private static final double NEAR_DIAMETER = 0.06;

    private static final double NEAR_PITCH = 0.45;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "thread",
            "Thread",
            "Sizes, limits, stress area, proof load and look-alikes of a 60 degree thread from its diameter and pitch.",
            List.of(
                    "ISO 68-1:1998; ISO 724:1993",
                    "ISO 965-1:2013, 6g and 6H",
                    "ISO 898-1:2013, 9.1.6 and Table 3",
                    "ASME B1.1; SAE J429"),
            Case.class,
            Result.class,
            Threads::work);

    private Threads() {}

    /** A thread and, where known, the strength of its bolt. */
    public record Case(
            @Group ThreadSize size,

            @Input(meaning = "mark on the bolt head, such as 8.8 or grade 5", orElse = "", example = "8.8")
            String strengthClass,

            @Input(
                    kind = Kind.AREA,
                    meaning = "printed stress area, where it is to stand for the computed one",
                    min = 1e-7,
                    max = 0.01)
            @Nullable
            Double stressArea,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "proof stress, where it is to stand for that of the class",
                    min = 1e6,
                    max = 3e9)
            @Nullable
            Double proofStress) {}

    /** Sizes, limits and loads of a thread; what no table reaches is absent. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "height of the triangle", decimals = 4)
            double height,

            @Output(kind = Kind.LENGTH, meaning = "pitch diameter, basic")
            double pitchDiameter,

            @Output(kind = Kind.LENGTH, meaning = "minor diameter of the hole, basic (the tap drill is near it)")
            double minorDiameter,

            @Output(kind = Kind.LENGTH, meaning = "root diameter of the bolt")
            double rootDiameter,

            @Output(kind = Kind.AREA, meaning = "stress area", decimals = 2)
            double stressArea,

            @Output(kind = Kind.LENGTH, meaning = "bolt, largest major diameter") @Nullable
            Double majorMax,

            @Output(kind = Kind.LENGTH, meaning = "bolt, smallest major diameter") @Nullable
            Double majorMin,

            @Output(kind = Kind.LENGTH, meaning = "bolt, smallest pitch diameter") @Nullable
            Double pitchMin,

            @Output(kind = Kind.LENGTH, meaning = "hole, largest pitch diameter") @Nullable
            Double holePitchMax,

            @Output(kind = Kind.LENGTH, meaning = "hole, largest minor diameter") @Nullable
            Double holeMinorMax,

            @Output(kind = Kind.FORCE, meaning = "proof load") @Nullable
            Double proofLoad,

            @Output(kind = Kind.FORCE, meaning = "breaking load, smallest") @Nullable
            Double breakingLoad,

            @Output(meaning = "easily taken for it") List<String> lookAlikes) {}

    /**
     * Sizes from d and P: d2 = d − 3/4 H, D1 = d − 5/4 H, As = (π/4)((d2 + d3)/2)², unified (π/4)(d − 0.9743 P)².
     *
     * @param c diameter and pitch in m, or threads per inch; the class may be empty
     * @return lengths in m, area in m², loads in N; refused: pitch and threads per inch both or neither given, a pitch
     *     over 0.4 d, an unknown class
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Outcome<ThreadForm> form = c.size().form();
        Outcome<Optional<Strength>> strength =
                Strength.of(c.strengthClass(), c.size().diameter());
        List<Refusal> refusals = Refusals.of(form, strength);
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        return Outcome.ok(sizes(c, form.orElseThrow(), strength.orElseThrow()));
    }

    private static Worked<Result> sizes(Case c, ThreadForm form, Optional<Strength> strength) {
        Working w = new Working();
        double height = w.line("H", "√3/2 × P", form.height(), Kind.LENGTH, FORM);
        double pitchDiameter = w.line("d2", "d − 3/4 H", form.pitchDiameter(), Kind.LENGTH, FORM);
        double minor = w.line("D1", "d − 5/4 H", form.minor(), Kind.LENGTH, FORM);
        String rootExpression = form.unified() ? "d − 3/2 H" : "d − 17/12 H";
        double root = w.line("d3", rootExpression, form.root(), Kind.LENGTH, FORM);
        double area = StressArea.of(w, form, c.stressArea());
        Optional<ThreadLimits> limits = ThreadLimits.of(form);
        limits.ifPresent(l -> {
            w.line("d max", "d − es", l.majorMax(), Kind.LENGTH, l.source());
            w.line("d min", "d max − Td", l.majorMin(), Kind.LENGTH, l.source());
            w.line("d2 min", "d2 − es − Td2", l.pitchMin(), Kind.LENGTH, l.source());
            w.line("D2 max", "d2 + TD2", l.holePitchMax(), Kind.LENGTH, l.source());
            w.line("D1 max", "D1 + TD1", l.holeMinorMax(), Kind.LENGTH, l.source());
        });
        if (limits.isEmpty()) {
            w.caution("No table here prints limits for " + form.designation() + "; only the basic sizes are given.");
        }
        Double proofStress = c.proofStress() != null
                ? c.proofStress()
                : strength.map(Strength::proof).orElse(null);
        Double proof = proofStress == null
                ? null
                : w.line("proof load", "stress area × proof stress", area * proofStress, Kind.FORCE, "ISO 898-1:2013");
        Double breaking = strength.map(
                        s -> w.line("breaking load", "stress area × Rm", area * s.tensile(), Kind.FORCE, s.source()))
                .orElse(null);
        w.caution("A nut that runs two turns and then binds is the wrong thread: no more torque, but a pitch gauge.");
        return w.worked(new Result(
                height,
                pitchDiameter,
                minor,
                root,
                area,
                get(limits.map(ThreadLimits::majorMax)),
                get(limits.map(ThreadLimits::majorMin)),
                get(limits.map(ThreadLimits::pitchMin)),
                get(limits.map(ThreadLimits::holePitchMax)),
                get(limits.map(ThreadLimits::holeMinorMax)),
                proof,
                breaking,
                lookAlikes(form)));
    }

    private static @Nullable Double get(Optional<Double> value) {
        return value.orElse(null);
    }

    /** Threads of the table near in both diameter and pitch, without the thread itself. */
    static List<String> lookAlikes(ThreadForm form) {
        double d = form.diameter() * 1000;
        double p = form.pitch() * 1000;
        return KNOWN.rows().stream()
                .filter(row -> Math.abs(row.number("diameter") - d) <= NEAR_DIAMETER * d)
                .filter(row -> Math.abs(row.number("pitch") - p) <= NEAR_PITCH * p)
                .filter(row -> Math.abs(row.number("diameter") - d) > 0.01 || Math.abs(row.number("pitch") - p) > 0.005)
                .map(row -> row.text("name") + " (" + row.text("diameter") + " x " + row.text("pitch") + " mm)")
                .toList();
    }
}
