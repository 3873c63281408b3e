package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Parsed;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/**
 * Readings of an item against its wear limit.
 *
 * @param worst the reading that decides, SI
 * @param limit the service limit, SI
 * @param within true where the worst reading is still within the limit
 * @param kilometres distance left at the usual rate of wear; negative where there is no rate, 0 where the limit is passed
 * @param say one sentence
 * @param working the lines of the calculation
 */
public record WearJudgement(
        double worst, double limit, boolean within, double kilometres, String say, List<Line> working) {

    private static final double PER = 100_000;

    /** The kind of quantity of a check. */
    public static Kind kind(CheckKind kind) {
        return switch (kind) {
            case LENGTH -> Kind.LENGTH;
            case TORQUE -> Kind.TORQUE;
            case FORCE -> Kind.FORCE;
            case PRESSURE -> Kind.PRESSURE;
            case ANGLE -> Kind.ANGLE;
            case NONE, NUMBER -> Kind.NUMBER;
        };
    }

    /**
     * Judges readings of a measured wear limit: the worst one counts; distance left = (worst − limit) / rate × 100 000 km.
     *
     * @param wear a limit with a direction of min or max
     * @param values readings in SI, at least one
     * @param system units of the sentence
     */
    public static Outcome<WearJudgement> of(WearLimit wear, List<Double> values, UnitSystem system) {
        if (values.isEmpty()) {
            return Outcome.refused(wear.id(), "no reading", wear.how());
        }
        if (wear.direction() == Direction.ATTEST) {
            return Outcome.refused(wear.id(), "this check has no number", "Say what you saw");
        }
        Kind kind = kind(wear.kind());
        Outcome<Parsed> limitText =
                Quantities.parse(wear.limit(), kind, system.display(kind).unit(), wear.id());
        if (!limitText.isOk()) {
            return Outcome.refused(limitText.refusals());
        }
        boolean min = wear.direction() == Direction.MIN;
        Working working = new Working();
        double worst = working.line(
                "deciding reading",
                min ? "smallest of the readings" : "largest of the readings",
                min
                        ? values.stream().mapToDouble(v -> v).min().orElseThrow()
                        : values.stream().mapToDouble(v -> v).max().orElseThrow(),
                kind);
        double limit = working.line(
                "service limit",
                min ? "reject below" : "reject above",
                limitText.orElseThrow().si(),
                kind,
                wear.origin());
        double slack = 1e-9 * Math.max(Math.abs(limit), Math.abs(worst));
        boolean within = min ? worst >= limit - slack : worst <= limit + slack;
        double left = distance(wear, kind, worst, limit, within, working);
        String shown = Quantities.print(worst, kind, system);
        String say = within
                ? shown + " is within the limit of " + Quantities.print(limit, kind, system)
                        + (left < 0 ? "." : "; about " + Math.round(left / 100) * 100 + " km left at the usual wear.")
                : shown + " is " + (min ? "below" : "above") + " the limit of " + Quantities.print(limit, kind, system)
                        + ": rework or replace.";
        return Outcome.ok(new WearJudgement(worst, limit, within, left, say, List.copyOf(lines(working))));
    }

    private static List<Line> lines(Working working) {
        return new ArrayList<>(working.worked("").working());
    }

    private static double distance(
            WearLimit wear, Kind kind, double worst, double limit, boolean within, Working working) {
        if (wear.rate().isBlank()) {
            return -1;
        }
        if (!within) {
            return 0;
        }
        Outcome<Parsed> rate = Quantities.parse(
                wear.rate(), kind, UnitSystem.METRIC.display(kind).unit(), wear.id());
        if (!(rate instanceof Outcome.Ok<Parsed> ok) || ok.value().si() == 0) {
            return -1;
        }
        return working.line(
                "distance left, km",
                "(reading − limit) / wear per 100 000 km × 100 000",
                Math.abs((worst - limit) / ok.value().si()) * PER,
                Kind.NUMBER,
                wear.origin());
    }
}
