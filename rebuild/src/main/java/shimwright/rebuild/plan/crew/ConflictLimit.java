package shimwright.rebuild.plan.crew;

/**
 * How much looking is allowed.
 *
 * @param conflicts most dead ends met, 0 or more
 */
public record ConflictLimit(long conflicts) {
    public ConflictLimit {
        if (conflicts < 0) {
            throw new IllegalArgumentException(conflicts + " conflicts");
        }
    }
}
