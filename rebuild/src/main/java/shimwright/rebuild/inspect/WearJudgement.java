package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/**
 * Readings of an item against its wear limit.
 *
 * @param worst the value that decides, SI
 * @param limit the service limit, SI
 * @param verdict what it proves; by number where no gauge is known
 * @param kilometres distance left at the usual rate of wear; negative where there is no rate, 0 where the limit is passed,
 *     {@link #BEYOND_RECKONING} where it is that or more
 * @param say one sentence
 * @param working the lines of the calculation
 */
public record WearJudgement(
        double worst, double limit, Verdict verdict, double kilometres, String say, List<Line> working) {
    /** Kilometres beyond which a rate of wear says nothing any more. */
    public static final double BEYOND_RECKONING = 500_000;

    private static final double PER = 100_000;

    /** As {@link #of(WearLimit, GaugeReadings, UnitSystem)} for readings alone, without a gauge and not confirmed. */
    public static Outcome<WearJudgement> of(WearLimit wear, List<Double> values, UnitSystem system) {
        return of(wear, GaugeReadings.of(values), system);
    }

    /**
     * Judges readings of a measured wear limit: the worst value counts; distance left = (worst − limit) / rate × 100 000
     * km. Refused: no reading, too few of a piece, and readings of a size that the part cannot have, unless they are
     * confirmed.
     *
     * @param wear a limit with a direction of min or max
     * @param readings as taken
     * @param system units of the sentence
     */
    public static Outcome<WearJudgement> of(WearLimit wear, GaugeReadings readings, UnitSystem system) {
        if (readings.values().isEmpty()) {
            return Outcome.refused(new Refusal("values", wear.id(), "no reading", wear.how()));
        }
        if (wear.direction() == Direction.ATTEST) {
            return Outcome.refused(new Refusal("values", wear.id(), "this check has no number", "Say what you saw"));
        }
        if (wear.limit().isEmpty()) {
            return Outcome.refused(
                    new Refusal("values", wear.id(), "this wear limit states no limit", "Mend the unit file"));
        }
        Quantity limit = wear.limit().get();
        Outcome<Map<String, List<Double>>> pieces = GaugeReadings.byPiece(wear, readings.values());
        List<Refusal> refusals = new ArrayList<>(pieces.refusals());
        if (pieces.isOk() && !readings.isConfirmed()) {
            refusals.addAll(Magnitude.asked(wear, readings));
        }
        return refusals.isEmpty()
                ? Outcome.ok(judged(wear, limit, pieces.orElseThrow(), readings, system))
                : Outcome.refused(refusals);
    }

    private static WearJudgement judged(
            WearLimit wear,
            Quantity stated,
            Map<String, List<Double>> pieces,
            GaugeReadings readings,
            UnitSystem system) {
        Kind kind = wear.kind().quantity();
        boolean min = wear.direction() == Direction.MIN;
        Comparator<JudgedValue> order = Comparator.comparingDouble(JudgedValue::value);
        List<JudgedValue> values = JudgedValue.of(wear, pieces, readings.gauge());
        JudgedValue decides =
                values.stream().min(min ? order : order.reversed()).orElseThrow();
        Working working = new Working();
        double worst = working.line("deciding reading", deciding(wear), decides.value(), kind);
        double limit =
                working.line("service limit", min ? "reject below" : "reject above", stated.si(), kind, wear.origin());
        if (readings.gauge().isPresent()) {
            working.line("standard uncertainty", "step, error limit and repeatability", decides.u(), kind);
        }
        Limits limits = min ? new Limits(limit, null) : new Limits(null, limit);
        Verdict verdict = Conformity.verdict(worst, decides.u(), Double.POSITIVE_INFINITY, limits, Rule.DEFAULT);
        double left = distance(wear, worst, limit, verdict != Verdict.OUT, working);
        String say = decides.named()
                + shown(worst, kind, system)
                + words(wear, verdict, left, limit, readings, system)
                + also(values, decides, limits, kind, system);
        boolean blind = verdict == Verdict.IN && readings.gauge().isEmpty() && kind != Kind.NUMBER;
        String confirmed = readings.isConfirmed() ? " Confirmed as read: " + readings.confirmed() : "";
        return new WearJudgement(
                worst,
                limit,
                verdict,
                left,
                say + (blind ? Checks.UNCERTAINTY_NOT_KNOWN : "") + confirmed,
                List.copyOf(working.worked("").working()));
    }

    private static String words(
            WearLimit wear, Verdict verdict, double left, double limit, GaugeReadings readings, UnitSystem system) {
        String against = " the limit of " + shown(limit, wear.kind().quantity(), system);
        if (verdict == Verdict.OUT) {
            return " is " + (wear.direction() == Direction.MIN ? "below" : "above") + against + ": rework or replace.";
        }
        String gauge = readings.gauge().map(GaugeError::name).orElse("the gauge");
        String proof = verdict == Verdict.NOT_PROVEN ? ", but " + gauge + " cannot prove it" : "";
        String distance = left < 0
                ? "."
                : left >= BEYOND_RECKONING
                        ? "; at the usual wear it outlasts any reckoning."
                        : "; about "
                                + String.format(Locale.ROOT, "%,d", Math.round(left / 100) * 100)
                                        .replace(',', '\u00a0') + " km left at the usual wear.";
        return " is within" + against + proof + distance;
    }

    /** A count or a share has no decimals of its own. */
    private static String shown(double value, Kind kind, UnitSystem system) {
        return kind == Kind.NUMBER
                ? Quantities.brief(value, system.display(kind).unit())
                : Quantities.print(value, kind, system);
    }

    /** The other pieces that are beyond the limit as well. */
    private static String also(
            List<JudgedValue> values, JudgedValue decides, Limits limits, Kind kind, UnitSystem system) {
        Map<String, String> others = new LinkedHashMap<>();
        values.stream()
                .filter(v -> !v.piece().equals(decides.piece()) && !limits.hold(v.value()))
                .forEach(v -> others.put(v.piece(), v.piece() + " " + shown(v.value(), kind, system)));
        return others.isEmpty() ? "" : " Beyond it as well: " + String.join(", ", others.values()) + ".";
    }

    /** Distance left in km; negative where no rate is known. */
    private static double distance(WearLimit wear, double worst, double limit, boolean within, Working working) {
        double rate = wear.rate().map(Quantity::si).orElse(0.0);
        if (rate == 0) {
            return -1;
        }
        if (!within) {
            return 0;
        }
        double left = Math.abs((worst - limit) / rate) * PER;
        if (left >= BEYOND_RECKONING) {
            return BEYOND_RECKONING;
        }
        return working.line(
                "distance left, km",
                "(reading − limit) / wear per 100 000 km × 100 000",
                left,
                Kind.NUMBER,
                wear.origin());
    }

    private static String deciding(WearLimit wear) {
        boolean min = wear.direction() == Direction.MIN;
        return switch (wear.judgedOn()) {
            case EACH -> min ? "smallest of the readings" : "largest of the readings";
            case MEAN -> "mean of the readings";
            case RANGE -> "largest less smallest of the readings";
            case DIFFERENCE -> "first reading less the second";
        };
    }
}
