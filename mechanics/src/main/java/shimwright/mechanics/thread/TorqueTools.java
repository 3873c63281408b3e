package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code torque-tool}. */
public final class TorqueTools {
    private static final Table PERMISSIBLE = Table.read("iso-6789-2003/permissible.csv");
    private static final double LOW_END = 0.2;
    private static final double OVER = 1.001;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "torque-tool",
            "Torque wrench check",
            "Deviation of a torque wrench from a test device, against what ISO 6789 permits.",
            List.of("ISO 6789:2003, type II class A: permissible deviation, base is the reading of the test device"),
            Case.class,
            Result.class,
            TorqueTools::work);

    private TorqueTools() {}

    /** A torque wrench on a test device. */
    public record Case(
            @Input(
                    kind = Kind.TORQUE,
                    meaning = "largest torque of the wrench",
                    min = 0.01,
                    max = 1e5,
                    example = "100 N·m")
            double capacity,

            @Input(
                    meaning = "what was set and what the test device read",
                    most = 100,
                    example = "20 N·m: 20.3 N·m; 60 N·m: 60.9 N·m; 100 N·m: 98.8 N·m")
            List<Check> checks,

            @Input(
                    meaning = "permissible deviation, where another than the standard's is agreed",
                    min = 0.001,
                    max = 0.5)
            @Nullable
            Double limit) {

        /** One comparison. */
        public record Check(
                @Input(kind = Kind.TORQUE, meaning = "set on the wrench", min = 1e-3, max = 1e5, example = "60 N·m")
                double set,

                @Input(kind = Kind.TORQUE, meaning = "read on the device", min = 1e-3, max = 1e5, example = "60.9 N·m")
                double reference) {}
    }

    /** The deviation of the wrench at every setting. */
    public record Result(
            @Output(meaning = "permissible deviation", unit = "%", decimals = 1)
            double permissible,

            @Output(meaning = "worst deviation", unit = "%", decimals = 2)
            double worst,

            @Output(meaning = "wrench") Verdict verdict,
            @Output(meaning = "settings") List<Row> rows) {

        /** One setting. */
        public record Row(
                @Output(kind = Kind.TORQUE, meaning = "set") double set,

                @Output(meaning = "deviation", unit = "%", decimals = 2)
                double deviation,

                @Output(kind = Kind.TORQUE, meaning = "lowest reading that passes")
                double lowest,

                @Output(kind = Kind.TORQUE, meaning = "highest reading that passes")
                double highest) {}
    }

    /**
     * Deviation = (set − reference)/reference.
     *
     * @param c torques in N·m
     * @return shares, torques in N·m; {@code NOT_PROVEN} while both ends of the range are not among the settings;
     *     refused: a setting above the capacity, a reading more than a factor 3 from the setting
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        for (int i = 0; i < c.checks().size(); i++) {
            Case.Check check = c.checks().get(i);
            String place = "checks[" + i + "]";
            if (check.set() > OVER * c.capacity()) {
                refusals.add(Refusal.of(
                        place,
                        Quantities.brief(check.set(), Units.NM) + " is more than the wrench can be set to",
                        "Look at the unit and at the largest torque"));
            }
            if (check.reference() > 3 * check.set() || check.set() > 3 * check.reference()) {
                refusals.add(Refusal.of(place, "setting and reading are far apart", "Look at the units of both"));
            }
        }
        return refusals.isEmpty() ? Outcome.ok(compared(c)) : Outcome.refused(refusals);
    }

    private static Worked<Result> compared(Case c) {
        Working w = new Working();
        double printed = PERMISSIBLE.rows().stream()
                .filter(row -> Units.NM.fromSi(c.capacity()) <= row.number("upTo"))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("capacity " + c.capacity()))
                .number("deviation");
        double permissible = c.limit() != null
                ? c.limit()
                : w.line("permissible", "for this capacity", printed, Kind.NUMBER, PERMISSIBLE.name());
        List<Result.Row> rows = new ArrayList<>();
        double worst = 0;
        for (Case.Check check : c.checks()) {
            double deviation = w.line(
                    "deviation at " + Quantities.brief(check.set(), Units.NM),
                    "(set − reference)/reference",
                    (check.set() - check.reference()) / check.reference(),
                    Kind.NUMBER,
                    "ISO 6789");
            worst = Math.abs(deviation) > Math.abs(worst) ? deviation : worst;
            rows.add(new Result.Row(
                    check.set(), deviation, check.set() / (1 + permissible), check.set() / (1 - permissible)));
        }
        boolean whole = c.checks().stream().anyMatch(check -> check.set() <= (LOW_END + 0.01) * c.capacity())
                && c.checks().stream().anyMatch(check -> check.set() >= 0.99 * c.capacity());
        if (!whole) {
            w.caution("Check at 20, 60 and 100 % of the range; a part of it proves only that part.");
        }
        w.caution("Load it five times to its largest torque first, pull slowly at the middle of the grip, and set a "
                + "click wrench back to its lowest mark afterwards, not below.");
        Verdict inside = whole ? Verdict.IN : Verdict.NOT_PROVEN;
        return w.worked(new Result(permissible, worst, Math.abs(worst) > permissible ? Verdict.OUT : inside, rows));
    }
}
