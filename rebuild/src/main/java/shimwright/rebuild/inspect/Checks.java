package shimwright.rebuild.inspect;

import java.util.List;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.unit.model.UnitType.Check;

/** Readings of a hold point against its limits. */
public final class Checks {
    private Checks() {}

    /** What the readings of a check say. */
    public record Judged(Verdict verdict, String say, List<Line> working) {}

    /**
     * Judges the readings of a measured check: every reading within the limits, and largest less smallest within the
     * spread.
     *
     * @param check a check of a kind other than NONE
     * @param values readings in SI
     * @param system units of the sentence
     */
    public static Outcome<Judged> judge(Check check, List<Double> values, UnitSystem system) {
        Kind kind = check.kind().quantity();
        if (values.size() < check.places()) {
            int missing = check.places() - values.size();
            return Outcome.refused(
                    check.what(),
                    values.size() + " of " + check.places() + " readings",
                    "Read " + missing + (missing == 1 ? " more place" : " more places"));
        }
        double least = values.stream().mapToDouble(v -> v).min().orElseThrow();
        double most = values.stream().mapToDouble(v -> v).max().orElseThrow();
        Working working = new Working();
        working.line("smallest reading", "of " + values.size(), least, kind);
        working.line("largest reading", "of " + values.size(), most, kind);
        StringBuilder wrong = new StringBuilder();
        check.lower().ifPresent(limit -> {
            working.line("lower limit", "unit file", limit.si(), kind);
            say(
                    wrong,
                    under(least, limit.si()),
                    Quantities.print(least, kind, system) + " is below the limit of " + limit);
        });
        check.upper().ifPresent(limit -> {
            working.line("upper limit", "unit file", limit.si(), kind);
            say(
                    wrong,
                    under(limit.si(), most),
                    Quantities.print(most, kind, system) + " is above the limit of " + limit);
        });
        check.spread().ifPresent(limit -> {
            working.line("spread", "largest − smallest", most - least, kind);
            say(
                    wrong,
                    under(limit.si(), most - least),
                    "the readings spread over " + Quantities.print(most - least, kind, system) + ", the limit is "
                            + limit);
        });
        boolean in = wrong.length() == 0;
        return Outcome.ok(new Judged(
                in ? Verdict.IN : Verdict.OUT,
                in ? "Within limits." : wrong + ".",
                working.worked("").working()));
    }

    private static boolean under(double a, double b) {
        return a < b - 1e-9 * Math.max(Math.abs(a), Math.abs(b));
    }

    private static void say(StringBuilder wrong, boolean failed, String sentence) {
        if (failed) {
            wrong.append(wrong.length() == 0 ? "" : "; ").append(sentence);
        }
    }
}
