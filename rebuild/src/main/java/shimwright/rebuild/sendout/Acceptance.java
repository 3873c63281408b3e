package shimwright.rebuild.sendout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.inspect.GaugeReadings;
import shimwright.rebuild.inspect.LimitsAlone;
import shimwright.rebuild.inspect.Magnitude;
import shimwright.rebuild.job.Entry.Accept;
import shimwright.rebuild.job.Entry.AcceptRead;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/** What came back against what it is accepted by: each reading with its uncertainty, by the default rule of conformity (JCGM 106:2012). */
public final class Acceptance {
    private Acceptance() {}

    /**
     * Readings against the limits of one thing asked for: each must be proven within.
     *
     * @param values one or more, SI
     * @param u standard uncertainty of one reading, SI, 0 or more
     */
    public static AcceptRead read(Accept accept, List<Double> values, double u, UnitSystem system) {
        Limits limits = new Limits(accept.limits().get("lower"), accept.limits().get("upper"));
        Set<String> wrong = new LinkedHashSet<>();
        Set<String> unproven = new LinkedHashSet<>();
        for (double value : values) {
            Verdict verdict = Conformity.verdict(value, u, Double.POSITIVE_INFINITY, limits, Rule.DEFAULT);
            if (verdict == Verdict.OUT) {
                wrong.add(shown(value, accept.kind(), system));
            } else if (verdict == Verdict.NOT_PROVEN) {
                unproven.add(shown(value, accept.kind(), system));
            }
        }
        Verdict verdict = !wrong.isEmpty() ? Verdict.OUT : unproven.isEmpty() ? Verdict.IN : Verdict.NOT_PROVEN;
        String asked = asked(accept, system);
        String doubt = " (standard uncertainty " + shown(u, accept.kind(), system) + ")";
        String words = switch (verdict) {
            case IN -> "within " + asked + doubt;
            case OUT -> String.join(", ", wrong) + " is not within " + asked + doubt;
            case NOT_PROVEN ->
                String.join(", ", unproven) + " is too near the end of " + asked + " to be proven" + doubt;
        };
        return new AcceptRead(accept.id(), List.copyOf(values), accept.kind(), verdict, accept.what() + ": " + words);
    }

    /** What is asked about readings that no such part has: a slipped point, inches for millimeters, a sign; empty where all can be. */
    public static List<Refusal> asked(Accept accept, List<Double> values, UnitSystem system) {
        if (accept.limits().isEmpty()) {
            return List.of();
        }
        CheckKind kind = accept.kind() == Kind.LENGTH ? CheckKind.LENGTH : CheckKind.NUMBER;
        LimitsAlone limits = new LimitsAlone(
                accept.id(), accept.what(), kind, stated(accept, "lower", system), stated(accept, "upper", system));
        return Magnitude.asked(limits, GaugeReadings.of(values));
    }

    private static Optional<Quantity> stated(Accept accept, String limit, UnitSystem system) {
        return Optional.ofNullable(accept.limits().get(limit))
                .map(si -> new Quantity(si, system.display(accept.kind()).unit(), shown(si, accept.kind(), system)));
    }

    /** What is looked at. */
    public static AcceptRead seen(Accept accept, boolean good) {
        return new AcceptRead(
                accept.id(),
                List.of(),
                Kind.NUMBER,
                good ? Verdict.IN : Verdict.OUT,
                accept.what() + ": " + (good ? "yes" : "no"));
    }

    /** The limits in words; empty where it is looked at. */
    public static String asked(Accept accept, UnitSystem system) {
        List<String> limits = new ArrayList<>();
        Double lower = accept.limits().get("lower");
        Double upper = accept.limits().get("upper");
        if (lower != null) {
            limits.add((upper == null ? "at least " : "") + shown(lower, accept.kind(), system));
        }
        if (upper != null) {
            limits.add((lower == null ? "up to " : "to ") + shown(upper, accept.kind(), system));
        }
        return String.join(" ", limits);
    }

    /** All of it in one line, for the log. */
    public static String summary(List<AcceptRead> read) {
        return read.stream().map(AcceptRead::words).collect(Collectors.joining("; "));
    }

    private static String shown(double si, Kind kind, UnitSystem system) {
        return kind == Kind.NUMBER
                ? Quantities.brief(si, system.display(kind).unit())
                : Quantities.print(si, kind, system);
    }
}
