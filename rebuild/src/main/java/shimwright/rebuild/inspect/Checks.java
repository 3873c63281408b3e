package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Rule;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.UnitType.Check;

/** Readings of a hold point against its limits. */
public final class Checks {
    /** Said where no gauge is known, so that nobody takes a number for a proof. */
    static final String UNCERTAINTY_NOT_KNOWN = " By number alone: no gauge is named, so its uncertainty is not known.";

    private static final String BELOW = "below";

    /** Of a step of the display: less than this is arithmetic and no reading. */
    private static final double DUST = 1e-3;

    private final Check check;
    private final GaugeReadings readings;
    private final UnitSystem system;
    private final Kind kind;
    private final Working working = new Working();
    private final Set<String> wrong = new LinkedHashSet<>();
    private final Set<String> unproven = new LinkedHashSet<>();

    private Checks(Check check, GaugeReadings readings, UnitSystem system) {
        this.check = check;
        this.readings = readings;
        this.system = system;
        this.kind = check.kind().quantity();
    }

    /** What the readings of a check say. */
    public record Judged(Verdict verdict, String say, List<Line> working) {}

    /** As {@link #judge(Check, GaugeReadings, UnitSystem)} for readings alone, without a gauge and not confirmed. */
    public static Outcome<Judged> judge(Check check, List<Double> values, UnitSystem system) {
        return judge(check, GaugeReadings.of(values), system);
    }

    /**
     * Judges the readings of a measured check: what the file names (each reading, mean, range or difference) within the
     * limits, and of each piece largest less smallest within the spread. With a gauge the verdict is that of the default
     * rule of conformity (JCGM 106:2012); without one it is by number, and the sentence says so.
     *
     * <p>Refused: too few readings, a limit relative to a check that is not read yet, and readings of a size that the
     * part cannot have, unless they are confirmed.
     *
     * @param check a check of a kind other than NONE
     * @param readings as taken
     * @param system units of the sentence
     */
    public static Outcome<Judged> judge(Check check, GaugeReadings readings, UnitSystem system) {
        Outcome<Map<String, List<Double>>> pieces = GaugeReadings.byPiece(check, readings.values());
        List<Refusal> refusals = new ArrayList<>(pieces.refusals());
        if (!check.relativeTo().isEmpty()
                && !EarlierReadings.of(check, readings.before()).keySet().containsAll(check.fields())) {
            refusals.add(Refusal.at(
                    check.what(),
                    "its limits are added to the reading of " + check.relativeTo() + ", which is not read",
                    "Read " + check.relativeTo() + " first"));
        }
        if (refusals.isEmpty() && !readings.isConfirmed()) {
            refusals.addAll(Magnitude.asked(check, readings));
        }
        return refusals.isEmpty()
                ? Outcome.ok(new Checks(check, readings, system).judged(pieces.orElseThrow()))
                : Outcome.refused(refusals);
    }

    private Judged judged(Map<String, List<Double>> pieces) {
        List<JudgedValue> values = JudgedValue.of(check, pieces, readings.gauge());
        Map<String, Double> references = EarlierReadings.of(check, readings.before());
        for (String piece : check.judgedOn() == Statistic.DIFFERENCE ? List.of("") : check.fields()) {
            double reference = check.relativeTo().isEmpty() ? 0 : references.getOrDefault(piece, 0.0);
            limits(piece, values.stream().filter(v -> v.piece().equals(piece)).toList(), reference);
        }
        check.spread().ifPresent(limit -> pieces.forEach((piece, all) -> spread(piece, all, limit)));
        Verdict verdict = !wrong.isEmpty() ? Verdict.OUT : unproven.isEmpty() ? Verdict.IN : Verdict.NOT_PROVEN;
        Set<String> said = wrong.isEmpty() ? unproven : wrong;
        String say = said.isEmpty() ? "Within limits." : String.join("; ", said) + ".";
        boolean blind = verdict == Verdict.IN && readings.gauge().isEmpty() && kind != Kind.NUMBER;
        String confirmed = readings.isConfirmed() ? " Confirmed as read: " + readings.confirmed() : "";
        return new Judged(
                verdict,
                say + (blind ? UNCERTAINTY_NOT_KNOWN : "") + confirmed,
                working.worked("").working());
    }

    private void limits(String piece, List<JudgedValue> values, double reference) {
        String of = piece.isEmpty() ? "" : piece + ", ";
        double least = values.stream().mapToDouble(JudgedValue::value).min().orElseThrow();
        double most = values.stream().mapToDouble(JudgedValue::value).max().orElseThrow();
        if (check.judgedOn() == Statistic.EACH) {
            working.line(of + "smallest reading", "of " + values.size(), least, kind);
            working.line(of + "largest reading", "of " + values.size(), most, kind);
        } else {
            working.line(of + words(check.judgedOn()), "of the readings", least, kind);
        }
        double u = values.get(0).u();
        if (readings.gauge().isPresent()) {
            working.line(of + "standard uncertainty", "step, error limit and repeatability", u, kind);
        }
        if (!check.relativeTo().isEmpty()) {
            working.line(of + "reading before", check.relativeTo(), reference, kind);
        }
        check.lower().ifPresent(limit -> {
            double low = working.line("lower limit", "unit file", reference + limit.si(), kind);
            against(values.get(0).named(), least, u, new Limits(low, null), BELOW, limit);
        });
        check.upper().ifPresent(limit -> {
            double high = working.line("upper limit", "unit file", reference + limit.si(), kind);
            against(values.get(0).named(), most, u, new Limits(null, high), "above", limit);
        });
    }

    private void against(String named, double value, double u, Limits limits, String side, Quantity limit) {
        Verdict verdict = Conformity.verdict(value, u, Double.POSITIVE_INFINITY, limits, Rule.DEFAULT);
        double apart = Math.abs(value - (side.equals(BELOW) ? limits.low() : limits.high()));
        String shown = named + shown(value, apart, limit);
        String relative = check.relativeTo().isEmpty() ? "" : " from the reading of " + check.relativeTo();
        if (verdict == Verdict.OUT) {
            wrong.add(shown + " is " + side + " the limit of " + limit + relative);
        } else if (verdict == Verdict.NOT_PROVEN) {
            unproven.add(shown + " is within the limit of " + limit + relative + ", but "
                    + readings.gauge().map(GaugeError::name).orElse("the gauge") + " cannot prove it");
        }
    }

    /** Rounded as usual; where that would not show on which side of the limit it lies, in the unit of the limit and with its digits. */
    private String shown(double value, double apart, Quantity limit) {
        UnitSystem.Display usual = system.display(kind);
        double step = usual.unit().factor() * Math.pow(10, -usual.decimals());
        boolean hidden = kind == Kind.PRESSURE || (apart > step * DUST && apart < step);
        return hidden ? Quantities.brief(value, limit.unit()) : Quantities.print(value, usual.unit(), usual.decimals());
    }

    private void spread(String piece, List<Double> all, Quantity limit) {
        double range = Math.abs(check.readingFactor()) * JudgedValue.range(all);
        double u = Math.abs(check.readingFactor())
                * readings.gauge().map(GaugeError::ofRange).orElse(0.0);
        working.line((piece.isEmpty() ? "" : piece + ", ") + "spread", "largest − smallest", range, kind);
        Verdict verdict =
                Conformity.verdict(range, u, Double.POSITIVE_INFINITY, new Limits(null, limit.si()), Rule.DEFAULT);
        String shown = (piece.isEmpty() ? "" : piece + ": ") + "the readings spread over "
                + Quantities.print(range, kind, system) + ", the limit is " + limit;
        if (verdict == Verdict.OUT) {
            wrong.add(shown);
        } else if (verdict == Verdict.NOT_PROVEN) {
            unproven.add(
                    shown + ", which " + readings.gauge().map(GaugeError::name).orElse("the gauge") + " cannot prove");
        }
    }

    private static String words(Statistic statistic) {
        return switch (statistic) {
            case EACH -> "reading";
            case MEAN -> "mean";
            case RANGE -> "largest less smallest";
            case DIFFERENCE -> "first less second";
        };
    }
}
