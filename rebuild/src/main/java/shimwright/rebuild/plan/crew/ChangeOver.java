package shimwright.rebuild.plan.crew;

/**
 * Two activities that never run together, with time between them: a change-over.
 *
 * @param a id of an activity
 * @param b id of another
 * @param afterA least time from the end of a to the start of b where a comes first, 0 or more
 * @param afterB least time from the end of b to the start of a where b comes first, 0 or more
 */
public record ChangeOver(String a, String b, int afterA, int afterB) {
    public ChangeOver {
        if (a.equals(b) || afterA < 0 || afterB < 0) {
            throw new IllegalArgumentException(a + " and " + b + " apart by " + afterA + " and " + afterB);
        }
    }
}
