package shimwright.mechanics.gauging;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * A dial swept round a bore or face, fitted by m + a cos θ + b sin θ, least squares; θ from the top, clockwise.
 *
 * @param mean m, in metres
 * @param up a, in metres
 * @param right b, in metres
 * @param furthest largest distance of a reading from the fitted curve, in metres
 * @param range largest less smallest reading, in metres
 */
record Sweep(double mean, double up, double right, double furthest, double range) {
    private static final int FEWEST = 3;
    private static final double FLAT = 1e-6;

    /** One reading of the sweep. */
    public record Reading(
            @Input(
                    kind = Kind.ANGLE,
                    meaning = "where the dial stands, from the top, clockwise",
                    min = -7,
                    max = 7,
                    example = "90°")
            double angle,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "what it reads, plus with the plunger in",
                    min = -0.01,
                    max = 0.01,
                    example = "0.05 mm")
            double value) {}

    /** Refuses readings that leave the curve open. */
    static void check(String key, List<Reading> readings, List<Refusal> refusals) {
        Set<Long> places = new HashSet<>();
        double cosines = 0;
        double sines = 0;
        for (Reading r : readings) {
            double turn = r.angle() / (2 * Math.PI);
            places.add(Math.round((turn - Math.floor(turn)) * 360) % 360);
        }
        for (long place : places) {
            cosines += Math.cos(Math.toRadians((double) place));
            sines += Math.sin(Math.toRadians((double) place));
        }
        if (places.size() < FEWEST) {
            refusals.add(Refusal.of(
                    key,
                    places.size() + " places of the dial do not tell a circle",
                    "Read at the top, the right, the bottom and the left, and at the top again"));
        } else if (Math.hypot(cosines, sines) > 0.8 * places.size()) {
            refusals.add(Refusal.of(
                    key, "all readings stand on one side", "Read all the way round, the top, right, bottom and left"));
        }
    }

    /** The curve through three places or more that are spread round. */
    static Sweep of(List<Reading> readings) {
        double[][] normal = new double[3][4];
        double largest = Double.NEGATIVE_INFINITY;
        double smallest = Double.POSITIVE_INFINITY;
        for (Reading r : readings) {
            double[] row = {1, Math.cos(r.angle()), Math.sin(r.angle()), r.value()};
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 4; j++) {
                    normal[i][j] += row[i] * row[j];
                }
            }
            largest = Math.max(largest, r.value());
            smallest = Math.min(smallest, r.value());
        }
        double[] x = solve(normal);
        double furthest = 0;
        for (Reading r : readings) {
            double fitted = x[0] + x[1] * Math.cos(r.angle()) + x[2] * Math.sin(r.angle());
            furthest = Math.max(furthest, Math.abs(r.value() - fitted));
        }
        return new Sweep(x[0], x[1], x[2], furthest, largest - smallest);
    }

    /** Gauss and Jordan on three equations whose determinant is not 0. */
    private static double[] solve(double[][] m) {
        for (int k = 0; k < 3; k++) {
            int pivot = k;
            for (int i = k + 1; i < 3; i++) {
                pivot = Math.abs(m[i][k]) > Math.abs(m[pivot][k]) ? i : pivot;
            }
            double[] row = m[pivot];
            m[pivot] = m[k];
            m[k] = row;
            for (int i = 0; i < 3; i++) {
                double times = i == k ? 0 : m[i][k] / row[k];
                for (int j = k; j < 4; j++) {
                    m[i][j] -= times * row[j];
                }
            }
        }
        return new double[] {m[0][3] / m[0][0], m[1][3] / m[1][1], m[2][3] / m[2][2]};
    }

    /** Readings less what the arm that carries the dial sags: half the fall times 1 − cos θ. */
    static List<Reading> withoutSag(List<Reading> readings, double fall) {
        List<Reading> all = new ArrayList<>();
        for (Reading r : readings) {
            all.add(new Reading(r.angle(), r.value() - fall * (1 - Math.cos(r.angle())) / 2));
        }
        return all;
    }

    /** Half of what a dial reads in a whole turn. */
    double amplitude() {
        return Math.hypot(up, right);
    }

    /** Where the curve is highest, from the top, clockwise, 0 to 2π; 0 where it is flat. */
    double highest() {
        if (amplitude() < FLAT * 1e-3) {
            return 0;
        }
        double angle = Math.atan2(right, up);
        return angle < 0 ? angle + 2 * Math.PI : angle;
    }
}
