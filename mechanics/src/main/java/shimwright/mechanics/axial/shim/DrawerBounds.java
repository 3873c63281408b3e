// size: what can come of laid packs in probability, distance and limits reads the same numbers
package shimwright.mechanics.axial.shim;

import java.util.Arrays;
import java.util.stream.IntStream;
import shimwright.mechanics.conformity.JointConformity;
import shimwright.mechanics.conformity.Limits;

/**
 * What is the best that can come of so many pieces at each place, as far as packs are laid. No way is surer than all clearances in
 * the middle of their limits with the least uncertainty that so many pieces have (T. W. Anderson, The integral of a symmetric unimodal
 * function, Proc. AMS 6, 1955), nor surer than any one clearance by itself, times the others in the middle of theirs with the
 * uncertainty that they have left once that one's error is known.
 */
final class DrawerBounds {
    /** Places in the order in which they are laid: what settles most clearances first, those of any thickness last. */
    final int[] order;

    /** What the quick probabilities together may be below the true one. */
    private static final double QUICK = 1e-9;
    /** Slopes flatter than this are taken for none. */
    private static final double FLAT = 1e-9;

    private static final int HALVINGS = 24;
    private static final int SWEEPS = 60;
    /** Thicknesses that move by less are where they belong, m. */
    private static final double NEAR = 1e-8;

    private final DrawerModel m;
    private final DrawerWish.Free free;
    private final int[] counts;
    private final boolean[] again;
    private final int pieces;
    private final int[] group;
    /** Standard uncertainty of each clearance at least. */
    private final double[] u;
    /** Of a clearance and a place in the order: least and most that the places from there on make of it. */
    private final double[][] least;

    private final double[][] most;
    /** Of a clearance: how sure the others of its group can be at most, its own error known. */
    private final double[] others;

    /** Of a place in the order: sums of clearances that no place after it changes any more, and so no interval says. */
    private final double[][][] settled;

    /** Values of each clearance between which a way is still wanted. */
    private final double[] low;

    private final double[] high;
    private final double[] thinnest;
    private final double[] thickest;
    private double surest;
    private double distance;
    private boolean sharp;

    /**
     * For so many pieces at each place.
     *
     * @param again places at which at least one of them was in when some clearance was read; none is at the others
     */
    DrawerBounds(DrawerModel m, int[] counts, boolean[] again, DrawerWish.Free free) {
        this.m = m;
        this.counts = counts;
        this.again = again;
        this.free = free;
        this.pieces = Arrays.stream(counts).sum() + free.count();
        this.thinnest = new double[m.places];
        this.thickest = new double[m.places];
        for (int p = 0; p < m.places; p++) {
            range(p);
            if (free.at(p)) {
                thinnest[p] = free.thinnest(p);
                thickest[p] = free.thickest(p);
            }
        }
        this.order = order();
        this.least = new double[m.needs][m.places + 1];
        this.most = new double[m.needs][m.places + 1];
        for (int n = 0; n < m.needs; n++) {
            for (int k = m.places - 1; k >= 0; k--) {
                double a = m.effect[n][order[k]] * thinnest[order[k]];
                double b = m.effect[n][order[k]] * thickest[order[k]];
                least[n][k] = least[n][k + 1] + Math.min(a, b);
                most[n][k] = most[n][k + 1] + Math.max(a, b);
            }
        }
        this.low = m.lower.clone();
        this.high = m.upper.clone();
        this.settled = new double[m.places][][];
        for (int k = 0; k < m.places; k++) {
            settled[k] = SettledSums.of(m, Arrays.copyOfRange(order, k + 1, m.places));
        }
        double[][] covariance = m.leastCovariance(counts, again, free.u());
        this.u = new double[m.needs];
        for (int n = 0; n < m.needs; n++) {
            u[n] = Math.sqrt(covariance[n][n]);
        }
        this.group = m.groups();
        this.others = new double[m.needs];
        for (int n = 0; n < m.needs; n++) {
            others[n] = Math.min(1, oneByOne(rest(n), n, covariance) + QUICK);
        }
        this.surest = groupwise(m.centre, u);
    }

    private void range(int place) {
        int[] fit = m.fit[place];
        int plain = Math.min(counts[place] - (again[place] ? 1 : 0), fit.length);
        for (int k = 0; k < plain; k++) {
            thinnest[place] += m.thickness[fit[k]];
            thickest[place] += m.thickness[fit[fit.length - 1 - k]];
        }
        if (again[place]) {
            int[] in = Arrays.stream(fit).filter(m::wasIn).toArray();
            thinnest[place] += m.thickness[in[0]];
            thickest[place] += m.thickness[in[in.length - 1]];
        }
    }

    /** At how many places a piece lies again that was in at a reading. */
    int agains() {
        int count = 0;
        for (boolean one : again) {
            count += one ? 1 : 0;
        }
        return count;
    }

    boolean again(int place) {
        return again[place];
    }

    /** Each time the place that settles most clearances; of these the one with the fewest pieces that fit. */
    private int[] order() {
        int[] found = new int[m.places];
        boolean[] taken = new boolean[m.places];
        for (int k = 0; k < m.places; k++) {
            int next = -1;
            long most = Long.MIN_VALUE;
            for (int p = 0; p < m.places; p++) {
                if (!taken[p]) {
                    long settled = (free.at(p) ? -100_000_000L : 0) - (long) counts[p] * m.fit[p].length;
                    for (int n = 0; n < m.needs; n++) {
                        settled += settles(n, p, taken) ? 100_000 : 0;
                    }
                    if (settled > most) {
                        next = p;
                        most = settled;
                    }
                }
            }
            taken[next] = true;
            found[k] = next;
        }
        return found;
    }

    private boolean settles(int need, int place, boolean[] taken) {
        boolean left = false;
        for (int p = 0; p < taken.length; p++) {
            left |= p != place && !taken[p] && m.effect[need][p] != 0;
        }
        return !left && m.effect[need][place] != 0;
    }

    /** False where some clearance cannot come within its limits with so many pieces. */
    boolean possible() {
        for (int n = 0; n < m.needs; n++) {
            if (m.bare[n] + least[n][0] > m.upper[n] + DrawerSearch.DUST
                    || m.bare[n] + most[n][0] < m.lower[n] - DrawerSearch.DUST) {
                return false;
            }
        }
        return true;
    }

    /** Works out what shared errors leave at most; false where none are shared, or it is known. */
    boolean sharpen() {
        if (shares() && !sharp) {
            sharp = true;
            double[][] covariance = m.leastCovariance(counts, again, free.u());
            surest = Math.min(surest, m.probability(m.centre, covariance) + JointConformity.TOLERANCE);
            for (int n = 0; n < m.needs; n++) {
                others[n] = Math.min(others[n], others(n, covariance) + JointConformity.TOLERANCE);
            }
            return true;
        }
        return false;
    }

    private int[] rest(int known) {
        return IntStream.range(0, m.needs)
                .filter(n -> n != known && group[n] == group[known])
                .toArray();
    }

    /** Product of the chances of others in the middle of their limits, each with what is left of its error once those before are known. */
    private double oneByOne(int[] rest, int known, double[][] covariance) {
        int[] at = IntStream.concat(IntStream.of(known), Arrays.stream(rest)).toArray();
        double[][] root = new double[at.length][at.length];
        double product = 1;
        for (int i = 0; i < at.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = covariance[at[i]][at[j]];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                if (i == j) {
                    root[i][i] = Math.sqrt(Math.max(0, sum));
                } else {
                    root[i][j] = root[j][j] == 0 ? 0 : sum / root[j][j];
                }
            }
            product *= i == 0 ? 1 : JointConformity.alone(m.centre[at[i]], root[i][i], m.limits[at[i]]);
        }
        return product;
    }

    /** Probability of the others of a group in the middle of their limits, the error of one of it known. */
    private double others(int known, double[][] covariance) {
        int[] rest = rest(known);
        double[] centres = new double[rest.length];
        double[][] left = new double[rest.length][rest.length];
        Limits[] limits = new Limits[rest.length];
        for (int a = 0; a < rest.length; a++) {
            centres[a] = m.centre[rest[a]];
            limits[a] = m.limits[rest[a]];
            for (int b = 0; b < rest.length; b++) {
                double through = covariance[known][known] == 0
                        ? 0
                        : covariance[rest[a]][known] * covariance[known][rest[b]] / covariance[known][known];
                double own = covariance[rest[a]][rest[b]] - through;
                left[a][b] = a == b ? Math.max(0, own) : own;
            }
        }
        return JointConformity.probability(centres, left, limits);
    }

    /** True where some two clearances may share an error. */
    boolean shares() {
        for (int n = 0; n < m.needs; n++) {
            if (group[n] != n) {
                return true;
            }
        }
        return false;
    }

    /** The product over groups of the least sure in each. */
    private double groupwise(double[] values, double[] uncertainties) {
        double[] of = new double[m.needs];
        Arrays.fill(of, 1);
        for (int n = 0; n < m.needs; n++) {
            double p = JointConformity.alone(values[n], uncertainties[n], m.limits[n]) * others[n];
            of[group[n]] = Math.min(of[group[n]], p);
        }
        double product = 1;
        for (double one : of) {
            product *= one;
        }
        return product + QUICK;
    }

    /** Probability at most of values with this covariance, without integrating. */
    double surest(double[] values, double[][] covariance) {
        double[] own = new double[m.needs];
        for (int n = 0; n < m.needs; n++) {
            own[n] = Math.sqrt(covariance[n][n]);
        }
        return Math.min(surest, groupwise(values, own));
    }

    int pieces() {
        return pieces;
    }

    int count(int place) {
        return counts[place];
    }

    /** Probability of any way with so many pieces at most. */
    double surest() {
        return surest;
    }

    /** Distance at least of what was looked at last. */
    double distance() {
        return distance;
    }

    /**
     * From now on only ways in which no clearance by itself makes it less sure than this, or further from the aims; false where
     * there can be none.
     */
    boolean tighten(double needed, double furthest) {
        for (int n = 0; n < m.needs; n++) {
            double half = (m.upper[n] - m.lower[n]) / 2;
            double wanted = (needed - QUICK) / others[n];
            if (JointConformity.alone(m.centre[n], u[n], m.limits[n]) < wanted) {
                return false;
            }
            double good = 0;
            double bad = half;
            for (int i = 0; i < HALVINGS && wanted > 0; i++) {
                double middle = (good + bad) / 2;
                boolean enough = JointConformity.alone(m.centre[n] + middle, u[n], m.limits[n]) >= wanted;
                good = enough ? middle : good;
                bad = enough ? bad : middle;
            }
            double off = Math.sqrt(Math.max(0, furthest));
            low[n] = Math.max(m.lower[n], Math.max(m.centre[n] - bad, m.aim[n] - off * (m.aim[n] - m.lower[n])));
            high[n] = Math.min(m.upper[n], Math.min(m.centre[n] + bad, m.aim[n] + off * (m.upper[n] - m.aim[n])));
            if (low[n] > high[n]) {
                return false;
            }
        }
        return true;
    }

    private double low(int n, int k, double[] values, double from, double to) {
        double e = m.effect[n][order[k]];
        return values[n] + Math.min(e * from, e * to) + least[n][k + 1];
    }

    private double high(int n, int k, double[] values, double from, double to) {
        double e = m.effect[n][order[k]];
        return values[n] + Math.max(e * from, e * to) + most[n][k + 1];
    }

    /**
     * Looks at packs of a thickness in a range at the next place.
     *
     * @param k where the place stands in the order
     * @param values the clearances with what is laid before it
     * @return false where some clearance cannot come within its limits
     */
    boolean look(int k, double[] values, double from, double to) {
        distance = 0;
        for (int n = 0; n < m.needs; n++) {
            double low = low(n, k, values, from, to);
            double high = high(n, k, values, from, to);
            if (low > this.high[n] + DrawerSearch.DUST || high < this.low[n] - DrawerSearch.DUST) {
                return false;
            }
            distance += m.distance(n, Math.max(low, Math.min(high, m.aim[n])));
        }
        for (double[] sum : settled[k]) {
            double[] range = range(sum, values);
            double slope = slope(sum, k);
            if (range[0] + Math.min(slope * from, slope * to) > range[2]
                    || range[0] + Math.max(slope * from, slope * to) < range[1]) {
                return false;
            }
        }
        return true;
    }

    /** What a sum of clearances is before the next place, and from and to what it may go. */
    private double[] range(double[] sum, double[] values) {
        double now = 0;
        double least = -DrawerSearch.DUST * m.needs;
        double most = -least;
        for (int n = 0; n < m.needs; n++) {
            now += sum[n] * values[n];
            least += Math.min(sum[n] * low[n], sum[n] * high[n]);
            most += Math.max(sum[n] * low[n], sum[n] * high[n]);
        }
        return new double[] {now, least, most};
    }

    private double slope(double[] sum, int k) {
        double slope = 0;
        for (int n = 0; n < m.needs; n++) {
            slope += sum[n] * m.effect[n][order[k]];
        }
        return slope;
    }

    /** The same packs: probability at most. */
    double surest(int k, double[] values, double from, double to) {
        double[] nearest = new double[m.needs];
        for (int n = 0; n < m.needs; n++) {
            double low = low(n, k, values, from, to);
            double high = high(n, k, values, from, to);
            nearest[n] = Math.max(low, Math.min(high, m.centre[n]));
        }
        return Math.min(surest, groupwise(nearest, u));
    }

    /** Thinnest and thickest pack at the next place that leaves every clearance possible. */
    double[] window(int k, double[] values) {
        int place = order[k];
        double low = thinnest[place] - DrawerSearch.DUST;
        double high = thickest[place] + DrawerSearch.DUST;
        for (int n = 0; n < m.needs; n++) {
            double e = m.effect[n][place];
            if (e != 0) {
                double a = (this.low[n] - DrawerSearch.DUST - values[n] - most[n][k + 1]) / e;
                double b = (this.high[n] + DrawerSearch.DUST - values[n] - least[n][k + 1]) / e;
                low = Math.max(low, Math.min(a, b));
                high = Math.min(high, Math.max(a, b));
            }
        }
        for (double[] sum : settled[k]) {
            double[] range = range(sum, values);
            double slope = slope(sum, k);
            if (Math.abs(slope) > FLAT) {
                low = Math.max(low, Math.min((range[1] - range[0]) / slope, (range[2] - range[0]) / slope));
                high = Math.min(high, Math.max((range[1] - range[0]) / slope, (range[2] - range[0]) / slope));
            }
        }
        return new double[] {low, high};
    }

    /** The thickness in a window from which the surest can come, as if packs of any thickness could be laid at the places after it. */
    double nearest(int k, double[] values, double[] window) {
        double[] at = new double[m.places - k];
        double[] then = values.clone();
        for (int j = k; j < m.places; j++) {
            double least = j == k ? window[0] : thinnest[order[j]];
            double most = j == k ? window[1] : thickest[order[j]];
            at[j - k] = (least + most) / 2;
            for (int n = 0; n < m.needs; n++) {
                then[n] += m.effect[n][order[j]] * at[j - k];
            }
        }
        double moved = 1;
        for (int sweep = 0; sweep < SWEEPS && moved > NEAR; sweep++) {
            moved = 0;
            for (int j = k; j < m.places; j++) {
                double least = j == k ? window[0] : thinnest[order[j]];
                double most = j == k ? window[1] : thickest[order[j]];
                double step = step(order[j], then);
                step = Math.max(least, Math.min(most, at[j - k] + step)) - at[j - k];
                at[j - k] += step;
                moved = Math.max(moved, Math.abs(step));
                for (int n = 0; n < m.needs; n++) {
                    then[n] += m.effect[n][order[j]] * step;
                }
            }
        }
        return at[0];
    }

    /** By how much a thickness would have to change to bring the clearances nearest to the middle of what is wanted. */
    private double step(int place, double[] values) {
        double slope = 0;
        double curve = 0;
        for (int n = 0; n < m.needs; n++) {
            double e = m.effect[n][place];
            double room = (m.upper[n] - m.lower[n]) / 2;
            slope += e * (values[n] - (low[n] + high[n]) / 2) / (room * room);
            curve += e * e / (room * room);
        }
        return curve == 0 ? 0 : -slope / curve;
    }

    /** The clearances with one more pack laid. */
    double[] next(int k, double[] values, double thickness) {
        double[] next = values.clone();
        for (int n = 0; n < m.needs; n++) {
            next[n] += m.effect[n][order[k]] * thickness;
        }
        return next;
    }
}
