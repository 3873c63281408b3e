package shimwright.rebuild.plan.evening;

/**
 * The time there is at the bench now.
 *
 * @param seconds until one has to stop, 0 or more
 * @param persons who stand at the bench, 1 or more
 */
public record Evening(double seconds, int persons) {
    public Evening {
        if (!(seconds >= 0) || Double.isInfinite(seconds) || persons < 1) {
            throw new IllegalArgumentException("an evening of " + seconds + " s for " + persons);
        }
    }
}
