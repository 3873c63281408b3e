package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
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
        if (wear.limit().isEmpty()) {
            return Outcome.refused(wear.id(), "this wear limit states no limit", "Mend the unit file");
        }
        Kind kind = wear.kind().quantity();
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
                wear.limit().get().si(),
                kind,
                wear.origin());
        double slack = 1e-9 * Math.max(Math.abs(limit), Math.abs(worst));
        boolean within = min ? worst >= limit - slack : worst <= limit + slack;
        double left = distance(wear, worst, limit, within, working);
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

    private static double distance(WearLimit wear, double worst, double limit, boolean within, Working working) {
        if (wear.rate().map(Quantity::si).orElse(0.0) == 0) {
            return -1;
        }
        if (!within) {
            return 0;
        }
        return working.line(
                "distance left, km",
                "(reading − limit) / wear per 100 000 km × 100 000",
                Math.abs((worst - limit) / wear.rate().get().si()) * PER,
                Kind.NUMBER,
                wear.origin());
    }
}
