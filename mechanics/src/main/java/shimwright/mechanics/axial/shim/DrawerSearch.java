package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.axial.shim.Drawer.Result.Way;

/**
 * The search of a drawer: how many pieces at each place first, the surest and fewest before others; then place after place, the
 * packs whose thickness lies nearest to what is aimed at first. A pack is gone on from only while the best that could come of it is
 * wanted. One search, one use.
 */
final class DrawerSearch {
    static final double DUST = 1e-12;
    /** Probabilities that differ by less are ties. */
    static final double TIE = 0.001;
    /** Distance from the aims that may be left on the table in a large drawer. */
    static final double NEAR = 0.01;

    private static final double ROUNDING = 1e-9;
    private static final double FIRST_RING = 0.5e-6;
    private static final double WIDER = 3;
    /** More ways to spread pieces over the places than this are not looked at. */
    private static final int MOST_COUNTS = 20_000;
    /** So many counts of pieces are looked into shortly, before all are looked into wholly. */
    private static final int DIVES = 60;

    private static final long DIVE = 30_000;
    /** What is looked at in counts of pieces before shared errors are integrated for them. */
    private static final long PLAIN = 300_000;

    /** What the bounds of one way to spread pieces take, in packs passed over. */
    private static final long COUNTING = 500;
    /** What weighing a pack takes, in packs passed over. */
    private static final long WEIGHING = 8;
    /** What aiming takes, in packs looked at. */
    private static final long AIMING = 200;

    /** What a probability of shared errors takes, in packs looked at. */
    private static final long INTEGRAL = 40_000;

    /** What finding the thicknesses of free places takes, by place. */
    private static final long FILLING = 300;

    /** A way, with the pieces of the drawer by place and the thicknesses by place. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and handed on to no one who changes them
    record Found(Way way, long sure, int pieces, int[][] laid, double[] thickness) {}

    static final Comparator<Found> ORDER = Comparator.comparingLong((Found f) -> -f.sure())
            .thenComparingInt(Found::pieces)
            .thenComparingLong(f -> Math.round(f.way().distance() / ROUNDING))
            .thenComparing(f -> String.join(",", f.way().pieces()));

    private final DrawerModel m;
    private final int offers;
    private final double tolerance;
    private final DrawerWish.Free free;
    /** Ways no surer than this are not wanted. */
    private double floor = -1;

    private final TreeSet<Found> best = new TreeSet<>(ORDER);
    /** The last of as many as are wanted; null while there are fewer. */
    private @Nullable Found worst;

    private final boolean[] used;
    private final int[][] laid;
    private final double[] laidThickness;
    private final long most;
    private long until;
    /** Counts of pieces looked at. */
    private int looked;

    private long work;
    /** Of the counts at hand. */
    private DrawerBounds bounds;

    /**
     * A search not yet begun.
     *
     * @param offers ways wanted
     * @param tolerance distance from the aims by which a way that is left out may be nearer; with more than 0 one may also be surer
     *     by {@link #TIE}
     * @param most packs looked at before it ends with what it has
     * @param free places at which a piece of any thickness may lie
     */
    DrawerSearch(DrawerModel m, int offers, double tolerance, long most, DrawerWish.Free free) {
        this.m = m;
        this.offers = offers;
        this.tolerance = tolerance;
        this.most = most;
        this.until = most;
        this.free = free;
        this.used = new boolean[m.thickness.length];
        this.laid = new int[m.places][0];
        this.laidThickness = new double[m.places];
        this.bounds = new DrawerBounds(m, new int[m.places], new boolean[m.places], free);
    }

    /** From now on only ways that are surer than this by more than a tie. */
    DrawerSearch above(double probability) {
        floor = probability + TIE;
        return this;
    }

    /** What it has looked at. */
    long work() {
        return work;
    }

    /** The best ways, in order. */
    List<Found> best() {
        List<DrawerBounds> all = new ArrayList<>();
        counts(0, new int[m.places], new boolean[m.places], all);
        all.sort(
                Comparator.comparingLong((DrawerBounds b) -> -sure(b.surest())).thenComparingInt(DrawerBounds::pieces));
        all.stream()
                .sorted(Comparator.comparingInt(DrawerBounds::agains))
                .limit(DIVES)
                .forEach(one -> through(one, DIVE));
        for (DrawerBounds one : all) {
            if (!through(one, PLAIN)) {
                work += one.sharpen() ? INTEGRAL : 0;
                through(one, most);
            }
        }
        return List.copyOf(best);
    }

    /** Looks through the ways with so many pieces; false where that was not the end of them. */
    private boolean through(DrawerBounds one, long allowed) {
        if (!wanted(one.surest(), one.pieces(), 0)) {
            return true;
        }
        until = Math.min(most, work + allowed);
        bounds = one;
        if (!ended() && tighten()) {
            lay(0, m.bare.clone());
        }
        return !ended();
    }

    /** True where no way is better than those offered by more than the tolerance, after {@link #best()}. */
    boolean proven() {
        return work <= most && looked <= MOST_COUNTS;
    }

    /** True where it is to look no further: enough was looked at, or its thread was interrupted. */
    private boolean ended() {
        if (Thread.currentThread().isInterrupted()) {
            work = Math.max(work, most + 1);
        }
        return work > until;
    }

    private void counts(int place, int[] chosen, boolean[] again, List<DrawerBounds> all) {
        if (place == m.places) {
            looked++;
            work += COUNTING;
            DrawerBounds one = new DrawerBounds(m, chosen.clone(), again.clone(), free);
            if (one.possible()) {
                all.add(one);
            }
            return;
        }
        int fewest = free.at(place) ? 0 : m.c.places().get(place).fewest();
        int top = free.at(place)
                ? 0
                : Math.min(m.fit[place].length, m.c.places().get(place).most());
        for (int count = fewest; count <= top && looked <= MOST_COUNTS; count++) {
            chosen[place] = count;
            counts(place + 1, chosen, again, all);
            if (count > 0 && Arrays.stream(m.fit[place]).anyMatch(m::wasIn)) {
                again[place] = true;
                counts(place + 1, chosen, again, all);
                again[place] = false;
            }
        }
    }

    /** A probability in thousandths. */
    static long sure(double probability) {
        return Math.round(probability / TIE);
    }

    /** Takes into the bounds what is offered already; false where nothing more can be wanted of the counts at hand. */
    private boolean tighten() {
        if (worst == null) {
            return bounds.tighten(floor, Double.POSITIVE_INFINITY);
        }
        boolean nearer = !surer(bounds.surest(), worst) && bounds.pieces() == worst.pieces();
        double needed = Math.max(floor, (worst.sure() - 0.5) * TIE);
        return bounds.tighten(
                needed, nearer ? worst.way().distance() + ROUNDING - tolerance : Double.POSITIVE_INFINITY);
    }

    /** False where so many ways are offered already that are better than anything with these bounds. */
    private boolean wanted(double surest, int pieces, double distance) {
        if (surest <= floor) {
            return false;
        }
        if (worst == null) {
            return true;
        }
        long sure = sure(surest);
        if (sure < worst.sure()) {
            return false;
        }
        if (surer(surest, worst)) {
            return true;
        }
        return pieces != worst.pieces()
                ? pieces < worst.pieces()
                : distance <= worst.way().distance() + ROUNDING - tolerance;
    }

    private boolean surer(double surest, Found worst) {
        return tolerance == 0
                ? sure(surest) > worst.sure()
                : surest > worst.way().probability() + TIE;
    }

    private boolean wanted(int k, double[] values, double from, double to) {
        work += WEIGHING;
        if (!bounds.look(k, values, from, to)) {
            return false;
        }
        boolean nearer = wanted(bounds.surest(), bounds.pieces(), bounds.distance());
        return nearer && wanted(bounds.surest(k, values, from, to), bounds.pieces(), bounds.distance());
    }

    private void lay(int k, double[] values) {
        if (k == m.places || free.at(bounds.order[k])) {
            end();
            return;
        }
        int place = bounds.order[k];
        double[] window = bounds.window(k, values);
        if (window[0] > window[1]) {
            return;
        }
        work += AIMING;
        double target = bounds.nearest(k, values, window);
        double inner = -1;
        double radius = FIRST_RING;
        while (!ended() && ringWanted(k, values, window, target, inner)) {
            List<int[]> packs = ring(place, window, target, inner, radius);
            for (int[] pack : packs) {
                double thickness = m.thickness(pack);
                if (wanted(k, values, thickness, thickness)) {
                    take(place, pack, thickness, true);
                    lay(k + 1, bounds.next(k, values, thickness));
                    take(place, pack, thickness, false);
                }
            }
            inner = radius;
            radius *= WIDER;
        }
    }

    private void take(int place, int[] pack, double thickness, boolean taken) {
        for (int i : pack) {
            used[i] = taken;
        }
        laid[place] = pack;
        laidThickness[place] = thickness;
    }

    /** True where something beyond a ring round the target may be wanted. */
    private boolean ringWanted(int k, double[] values, double[] window, double target, double inner) {
        if (inner < 0) {
            return true;
        }
        boolean below = target - inner >= window[0] && wanted(k, values, window[0], target - inner);
        return below || (target + inner <= window[1] && wanted(k, values, target + inner, window[1]));
    }

    /** Packs further from the target than the inner and no further than the outer radius, the nearest first. */
    private List<int[]> ring(int place, double[] window, double target, double inner, double outer) {
        List<int[]> found = new ArrayList<>();
        int[] pack = new int[bounds.count(place)];
        double low = Math.max(window[0], target - outer) - DUST;
        double high = Math.min(window[1], target + outer) + DUST;
        if (inner < 0) {
            gather(place, pack, 0, 0, low, high, found);
        } else {
            gather(place, pack, 0, 0, low, Math.min(high, target - inner + DUST), found);
            gather(place, pack, 0, 0, Math.max(low, target + inner - DUST), high, found);
        }
        found.removeIf(one -> {
            double off = Math.abs(m.thickness(one) - target);
            return off <= inner || off > outer;
        });
        found.sort(Comparator.comparingDouble(one -> Math.abs(m.thickness(one) - target)));
        return found;
    }

    /** Gathers packs whose thickness lies from low to high, their pieces from thin to thick, of pieces not in use. */
    private void gather(int place, int[] pack, int filled, int from, double low, double high, List<int[]> found) {
        int[] fit = m.fit[place];
        int left = pack.length - filled;
        if (low > high) {
            return;
        }
        if (left == 0) {
            if (low <= 0
                    && high >= 0
                    && (!bounds.again(place) || Arrays.stream(pack).anyMatch(m::wasIn))) {
                found.add(pack.clone());
            }
            return;
        }
        int first = left == 1 ? Math.max(from, atLeast(fit, low)) : from;
        for (int k = first; k + left <= fit.length; k++) {
            double own = m.thickness[fit[k]];
            work++;
            if (own * left > high || ended()) {
                return;
            }
            double thickest = own;
            for (int q = 1; q < left; q++) {
                thickest += m.thickness[fit[fit.length - q]];
            }
            boolean may = !used[fit[k]] && (bounds.again(place) || !m.wasIn(fit[k]));
            if (may && thickest >= low) {
                pack[filled] = fit[k];
                gather(place, pack, filled + 1, k + 1, left == 1 ? 0 : low - own, left == 1 ? 0 : high - own, found);
            }
        }
    }

    /** First of the pieces, thin to thick, that is as thick as this. */
    private int atLeast(int[] fit, double thickness) {
        int low = 0;
        int high = fit.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (m.thickness[fit[middle]] < thickness) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void end() {
        double[] at = laidThickness.clone();
        for (int p = 0; p < m.places; p++) {
            at[p] = free.at(p) ? 0 : m.thickness(laid[p]);
        }
        work += free.count() * FILLING;
        free.fill(m, at);
        double[] values = m.values(at);
        double distance = 0;
        for (int n = 0; n < m.needs; n++) {
            if (values[n] < m.lower[n] - DUST || values[n] > m.upper[n] + DUST) {
                return;
            }
            distance += m.distance(n, values[n]);
        }
        double[][] covariance = m.covariance(laid, free.u());
        if (wanted(bounds.surest(values, covariance), bounds.pieces(), distance)) {
            work += bounds.shares() ? INTEGRAL : 0;
            Found found = found(at, values, covariance, distance);
            if (found.way().probability() > floor) {
                best.add(found);
            }
            if (best.size() > offers) {
                best.pollLast();
            }
            worst = best.size() == offers ? best.last() : null;
            tighten();
        }
    }

    private Found found(double[] at, double[] values, double[][] covariance, double distance) {
        double probability = m.probability(values, covariance);
        List<String> pieces = new ArrayList<>();
        int[][] copy = new int[m.places][];
        for (int p = 0; p < m.places; p++) {
            copy[p] = laid[p].clone();
            pieces.add(m.c.places().get(p).name() + "=" + m.tags(laid[p]));
        }
        List<Double> predicted = Arrays.stream(values).boxed().toList();
        return new Found(
                new Way(pieces, predicted, probability, distance), sure(probability), bounds.pieces(), copy, at);
    }
}
