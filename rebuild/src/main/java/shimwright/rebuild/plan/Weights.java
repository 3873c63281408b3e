package shimwright.rebuild.plan;

import java.util.OptionalDouble;

/**
 * What the rebuilder weighs against minutes at the bench; waiting in itself costs nothing.
 *
 * <p>A day has one evening at the bench: what is done an evening's length later is done a day later.
 *
 * @param daySooner seconds at the bench that it may take more where the job is finished a day sooner, 0 to 86,400
 * @param evening seconds at the bench on a usual day, above 0 to 86,400
 * @param finishing seconds that it may cost each time that a sub-assembly begun is not left for something else, 0 to 86,400; empty
 *     where the rebuilder has not said, then nothing is changed for it
 */
public record Weights(double daySooner, double evening, OptionalDouble finishing) {
    private static final double DAY = 86_400;
    private static final double USUAL = 600;
    private static final double USUAL_EVENING = 3 * 3600;

    public Weights {
        if (!(daySooner >= 0 && daySooner <= DAY)) {
            throw new IllegalArgumentException("a day sooner is worth " + daySooner + " s");
        }
        if (finishing.isPresent() && !(finishing.getAsDouble() >= 0 && finishing.getAsDouble() <= DAY)) {
            throw new IllegalArgumentException("finishing what is begun may cost " + finishing + " s");
        }
        if (!(evening > 0 && evening <= DAY)) {
            throw new IllegalArgumentException("an evening of " + evening + " s");
        }
    }

    /** Where nothing is said of what is begun. */
    public Weights(double daySooner, double evening) {
        this(daySooner, evening, OptionalDouble.empty());
    }

    /** With evenings of three hours, as a shop has them that has not said. */
    public Weights(double daySooner) {
        this(daySooner, USUAL_EVENING);
    }

    /**
     * Where the rebuilder has not said, a day sooner is worth ten minutes at the bench: with nothing at all an order that waits for a
     * delivery before anything else would be as good as one that does the rest meanwhile.
     */
    public static Weights usual() {
        return new Weights(USUAL);
    }

    /** What a second later counts for, in seconds at the bench, in whole thousandths as the search reckons, 1 at most. */
    double later() {
        return Math.min(1, Math.round(daySooner / evening * 1000) / 1000.0);
    }
}
