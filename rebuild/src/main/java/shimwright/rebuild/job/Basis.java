package shimwright.rebuild.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a pack was chosen on or a clearance accepted on, kept in the entry: limits and rule can change in the unit file and in
 * the program afterwards, a record cannot. Lengths in m, signed as play.
 *
 * @param lower lower limit of the clearance at the time
 * @param upper upper limit of the clearance at the time
 * @param aim value aimed at
 * @param nu effective degrees of freedom of the value; positive infinity where nothing limits them
 * @param hot the clearance at working heat
 * @param rule conformance probability that counted as proof
 */
public record Basis(double lower, double upper, double aim, double nu, double hot, double rule) {
    private static final String NU = "nu";

    /** As the entry keeps it, in SI; no text can hold infinite degrees of freedom, so these are left away. */
    public Map<String, Double> kept() {
        Map<String, Double> kept = new LinkedHashMap<>();
        kept.put("lower", lower);
        kept.put("upper", upper);
        kept.put("aim", aim);
        if (Double.isFinite(nu)) {
            kept.put(NU, nu);
        }
        kept.put("hot", hot);
        kept.put("rule", rule);
        return kept;
    }

    /** What an entry keeps; empty for an entry of an older program, which kept none. */
    public static Optional<Basis> of(Map<String, Double> kept) {
        Double lower = kept.get("lower");
        Double upper = kept.get("upper");
        Double aim = kept.get("aim");
        Double hot = kept.get("hot");
        Double rule = kept.get("rule");
        if (lower == null || upper == null || aim == null || hot == null || rule == null) {
            return Optional.empty();
        }
        return Optional.of(new Basis(lower, upper, aim, kept.getOrDefault(NU, Double.POSITIVE_INFINITY), hot, rule));
    }
}
