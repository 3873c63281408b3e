package shimwright.rebuild.clearance;

import java.util.Objects;
import java.util.Optional;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.unit.model.Clearance;

/** The last reading: is it within limits, and is it what was predicted. */
final class FinalReading {
    /** Expanded uncertainty of the difference: two standard uncertainties. */
    private static final double K = 2;

    private FinalReading() {}

    /** What the pack was to leave, m, and its standard uncertainty. */
    record Foretold(double value, double u) {}

    static Closing close(Clearance clearance, Reading reading, Optional<Foretold> predicted) {
        Measured measured = Objects.requireNonNull(reading.measured());
        Limits limits = new Limits(clearance.lower(), clearance.upper());
        Working working = new Working();
        working.include(new Worked<>(measured, measured.working(), measured.cautions()));
        double probability = working.line(
                "probability within limits",
                "share of its uncertainty between the limits",
                Conformity.probability(measured.value(), measured.u(), measured.nu(), limits),
                Kind.NUMBER,
                "JCGM 106:2012 7.4");
        Verdict verdict = Conformity.verdict(measured.value(), measured.u(), measured.nu(), limits, Rule.DEFAULT);
        double foretold = predicted.map(Foretold::value).orElse(measured.value());
        double difference = measured.value() - foretold;
        double joint = measured.u();
        String finding = "";
        if (predicted.isPresent()) {
            working.line("predicted", "for the pieces that are in", foretold, Kind.LENGTH);
            working.line("difference", "read − predicted", difference, Kind.LENGTH);
            joint = working.line(
                    "u(difference)",
                    "√(u(read)² + u(predicted)²)",
                    Math.hypot(measured.u(), predicted.get().u()),
                    Kind.LENGTH,
                    "JCGM 100:2008 5.1.2");
            finding = finding(difference, joint);
        }
        double hot = working.line(
                "at working heat", "clearance + growth", measured.value() + clearance.growth(), Kind.LENGTH);
        return new Closing(
                reading.phase(),
                measured.value(),
                measured.u(),
                measured.nu(),
                Rule.DEFAULT.probability(),
                probability,
                verdict,
                foretold,
                difference,
                joint,
                finding,
                hot,
                advice(verdict, finding, predicted.isPresent()),
                working.worked(verdict).working());
    }

    private static String finding(double difference, double joint) {
        if (Math.abs(difference) <= K * joint) {
            return "";
        }
        return difference > 0
                ? "More play than predicted, beyond the uncertainty of both readings: a piece left out or swapped, or the trial was read before it had seated."
                : "Less play than predicted, beyond the uncertainty of both readings: not seated, a burr, dirt between the pieces, or a wrong piece.";
    }

    private static String advice(Verdict verdict, String finding, boolean foretold) {
        if (!finding.isEmpty()) {
            return "Not what was predicted. Find out why before anything is closed.";
        }
        return switch (verdict) {
            case IN -> foretold ? "Within limits, and as predicted. Accept it." : "Within limits. Accept it.";
            case OUT -> "Out. Do not close on it: look at the seat and the pieces, then choose again.";
            case NOT_PROVEN ->
                "Inside by the number, but the uncertainty reaches over the limit. Read more rounds, or take a finer gauge.";
        };
    }
}
