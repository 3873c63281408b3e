package shimwright.rebuild.plan;

/**
 * What the rebuilder weighs against minutes at the bench; waiting in itself costs nothing.
 *
 * @param daySooner seconds at the bench that it may take more where the job is finished a day sooner, 0 to 86,400
 */
public record Weights(double daySooner) {
    private static final double DAY = 86_400;

    public Weights {
        if (!(daySooner >= 0 && daySooner <= DAY)) {
            throw new IllegalArgumentException("a day sooner is worth " + daySooner + " s");
        }
    }

    /** Ten minutes for a day, where the rebuilder has not said: own choice. */
    public static Weights usual() {
        return new Weights(600);
    }

    /** What a second later counts for, in seconds at the bench, in whole thousandths as the search reckons. */
    double later() {
        return Math.round(daySooner / DAY * 1000) / 1000.0;
    }
}
