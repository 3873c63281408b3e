package shimwright.mechanics.axial.reading;

import java.util.List;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Trend;

/**
 * Finds the part of a series that has come to rest. A bearing that is not yet seated hides the very travel that is being
 * measured, so early rounds read too little (common practice, no source); they are left out, never averaged in.
 *
 * @param seating the verdict
 * @param first index of the first round used, from 0
 * @param more further rounds needed at least
 */
record Settling(Seating seating, int first, int more) {
    private static final double LEVEL = 0.05;
    /** Readings that print alike are alike. */
    private static final double DUST = 1e-10;

    /**
     * Settled: the last {@code minimum} values agree, and the values used show no climb or fall at 5 % (exact
     * Mann-Kendall, one-sided; three can never show one, so there agreement decides). As many earlier values are used
     * as keep to that; in a series that climbed as a whole none lower than the last {@code minimum}.
     */
    static Settling of(List<Double> values, double within, int minimum) {
        int n = values.size();
        if (n < minimum) {
            return new Settling(Seating.TOO_FEW, 0, minimum - n);
        }
        boolean climbed = Trend.climbing(values) <= LEVEL;
        boolean fell = Trend.falling(values) <= LEVEL;
        List<Double> tail = values.subList(n - minimum, n);
        boolean stillMoving = (climbed && steps(tail, 1)) || (fell && steps(tail, -1));
        if (!agree(tail, within) || stillMoving || trends(tail)) {
            return new Settling(direction(tail, climbed, fell), n - minimum, wanted(values, within, minimum));
        }
        double low = tail.stream().mapToDouble(v -> v).min().orElseThrow() - DUST;
        double high = tail.stream().mapToDouble(v -> v).max().orElseThrow() + DUST;
        int first = n - minimum;
        for (int start = first - 1; start >= 0; start--) {
            List<Double> longer = values.subList(start, n);
            double added = values.get(start);
            boolean stillRising = (climbed && added < low) || (fell && added > high);
            if (!agree(longer, within) || stillRising) {
                break;
            }
            first = trends(longer) ? first : start;
        }
        return new Settling(Seating.SETTLED, first, 0);
    }

    private static Seating direction(List<Double> tail, boolean climbed, boolean fell) {
        if (climbed || rises(tail, 1)) {
            return Seating.CLIMBING;
        }
        return fell || rises(tail, -1) ? Seating.FALLING : Seating.SCATTERED;
    }

    /** At least the rounds that, all agreeing with the last, would settle it; never 0 for an unsettled series. */
    private static int wanted(List<Double> values, double within, int minimum) {
        int agreeing = 1;
        int n = values.size();
        while (agreeing < minimum && agree(values.subList(n - agreeing - 1, n), within)) {
            agreeing++;
        }
        return Math.max(1, minimum - agreeing);
    }

    private static boolean agree(List<Double> values, double within) {
        return Statistics.range(values) <= within + DUST;
    }

    private static boolean trends(List<Double> values) {
        return Trend.climbing(values) <= LEVEL || Trend.falling(values) <= LEVEL;
    }

    private static boolean steps(List<Double> values, int sign) {
        for (int i = 1; i < values.size(); i++) {
            if (sign * (values.get(i) - values.get(i - 1)) <= DUST) {
                return false;
            }
        }
        return true;
    }

    private static boolean rises(List<Double> values, int sign) {
        for (int i = 1; i < values.size(); i++) {
            if (sign * (values.get(i) - values.get(i - 1)) < -DUST) {
                return false;
            }
        }
        return sign * (values.get(values.size() - 1) - values.get(0)) > DUST;
    }
}
