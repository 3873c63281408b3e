package shimwright.mechanics.conformity;

/**
 * The rule that turns a probability into a verdict; stored with each decision.
 *
 * @param probability conformance probability that proves, above ½ and below 1
 * @param nominalOutsideIsOut whether a value outside a limit is OUT however near and however doubtful
 */
public record Rule(double probability, boolean nominalOutsideIsOut) {
    /** 95 %, and a value outside is out: the default probability of ISO 14253-1:2017 (from memory). */
    public static final Rule DEFAULT = new Rule(0.95, true);

    public Rule {
        if (!(probability > 0.5 && probability < 1)) {
            throw new IllegalArgumentException("rule probability " + probability);
        }
    }
}
