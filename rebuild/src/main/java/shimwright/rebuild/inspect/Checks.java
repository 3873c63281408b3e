package shimwright.rebuild.inspect;

import java.util.List;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Parsed;
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
        Kind kind = WearJudgement.kind(check.kind());
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
        Outcome<Boolean> low = bound(check.lower(), kind, check).map(limit -> {
            working.line("lower limit", "unit file", limit, kind);
            return under(least, limit);
        });
        Outcome<Boolean> high = bound(check.upper(), kind, check).map(limit -> {
            working.line("upper limit", "unit file", limit, kind);
            return under(limit, most);
        });
        Outcome<Boolean> wide = bound(check.spread(), kind, check).map(limit -> {
            working.line("spread", "largest − smallest", most - least, kind);
            return under(limit, most - least);
        });
        say(wrong, low, Quantities.print(least, kind, system) + " is below the limit of " + check.lower());
        say(wrong, high, Quantities.print(most, kind, system) + " is above the limit of " + check.upper());
        say(
                wrong,
                wide,
                "the readings spread over " + Quantities.print(most - least, kind, system) + ", the limit is "
                        + check.spread());
        boolean in = wrong.length() == 0;
        return Outcome.ok(new Judged(
                in ? Verdict.IN : Verdict.OUT,
                in ? "Within limits." : wrong + ".",
                working.worked("").working()));
    }

    private static boolean under(double a, double b) {
        return a < b - 1e-9 * Math.max(Math.abs(a), Math.abs(b));
    }

    private static void say(StringBuilder wrong, Outcome<Boolean> failed, String sentence) {
        if (failed instanceof Outcome.Ok<Boolean> ok && ok.value()) {
            wrong.append(wrong.length() == 0 ? "" : "; ").append(sentence);
        }
    }

    private static Outcome<Double> bound(String text, Kind kind, Check check) {
        if (text.isBlank()) {
            return Outcome.refused(List.of(new Refusal(check.id(), "no such limit", "")));
        }
        return Quantities.parse(text, kind, UnitSystem.METRIC.display(kind).unit(), check.id())
                .map(Parsed::si);
    }
}
