package shimwright.rebuild.plan.learn;

/**
 * A question that only the person at the bench can answer.
 *
 * @param later what came off later in the strip-down
 * @param earlier what came off before it
 * @param open pairs that nothing is known of yet, this one with them
 */
public record Question(RemovedParts later, RemovedParts earlier, int open) {}
