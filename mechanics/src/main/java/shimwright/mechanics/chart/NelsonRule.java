package shimwright.mechanics.chart;

import java.util.ArrayList;
import java.util.List;

/** What counts as a signal (Nelson, Journal of Quality Technology 16(4), 1984; ISO 7870-2:2013 annex, from memory). */
public enum NelsonRule {
    BEYOND_LIMIT(1) {
        @Override
        boolean at(List<Double> z) {
            return Math.abs(last(z)) > 3;
        }
    },
    NINE_ON_ONE_SIDE(9) {
        @Override
        boolean at(List<Double> z) {
            return beyond(z, 0, 9);
        }
    },
    SIX_CLIMBING_OR_FALLING(6) {
        @Override
        boolean at(List<Double> z) {
            boolean up = true;
            boolean down = true;
            for (int i = 1; i < z.size(); i++) {
                up = up && z.get(i) > z.get(i - 1);
                down = down && z.get(i) < z.get(i - 1);
            }
            return up || down;
        }
    },
    FOURTEEN_ALTERNATING(14) {
        @Override
        boolean at(List<Double> z) {
            for (int i = 2; i < z.size(); i++) {
                if ((z.get(i) - z.get(i - 1)) * (z.get(i - 1) - z.get(i - 2)) >= 0) {
                    return false;
                }
            }
            return true;
        }
    },
    TWO_OF_THREE_BEYOND_TWO_SIGMA(3) {
        @Override
        boolean at(List<Double> z) {
            return Math.abs(last(z)) > 2 && beyond(z, 2, 2);
        }
    },
    FOUR_OF_FIVE_BEYOND_ONE_SIGMA(5) {
        @Override
        boolean at(List<Double> z) {
            return Math.abs(last(z)) > 1 && beyond(z, 1, 4);
        }
    },
    FIFTEEN_WITHIN_ONE_SIGMA(15) {
        @Override
        boolean at(List<Double> z) {
            return z.stream().allMatch(one -> Math.abs(one) < 1);
        }
    },
    EIGHT_BEYOND_ONE_SIGMA(8) {
        @Override
        boolean at(List<Double> z) {
            return z.stream().allMatch(one -> Math.abs(one) > 1);
        }
    };

    private final int looks;

    NelsonRule(int looks) {
        this.looks = looks;
    }

    /** Whether the last of so many standardized values signals. */
    abstract boolean at(List<Double> z);

    private static double last(List<Double> z) {
        return z.get(z.size() - 1);
    }

    /** Whether at least so many lie more than {@code away} from the center, on the side of the last. */
    private static boolean beyond(List<Double> z, double away, int count) {
        double side = Math.signum(last(z));
        return side != 0 && z.stream().filter(one -> side * one > away).count() >= count;
    }

    /** Places, from 0, at which the rule signals in a standardized series. */
    List<Integer> signals(List<Double> z) {
        List<Integer> at = new ArrayList<>();
        for (int end = looks; end <= z.size(); end++) {
            if (at(z.subList(end - looks, end))) {
                at.add(end - 1);
            }
        }
        return at;
    }
}
