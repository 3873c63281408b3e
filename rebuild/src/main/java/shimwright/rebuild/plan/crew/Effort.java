package shimwright.rebuild.plan.crew;

/**
 * How much looking is allowed.
 *
 * @param conflicts most dead ends met, 0 or more
 */
public record Effort(long conflicts) {
    public Effort {
        if (conflicts < 0) {
            throw new IllegalArgumentException(conflicts + " conflicts");
        }
    }
}
