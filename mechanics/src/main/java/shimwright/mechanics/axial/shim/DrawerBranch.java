package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Result.Way;
import shimwright.mechanics.axial.shim.DrawerSearch.Found;
import shimwright.mechanics.axial.shim.DrawerSearch.Pack;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;

/**
 * The search of a large drawer by branch and bound, in the order of {@link DrawerSearch}: a pack is gone on from only while the
 * best that could come of it, every clearance left taken for as good as its range allows, is no worse than what is offered
 * already. One search, one use.
 */
final class DrawerBranch {
    /** Packs weighed before it ends with what it has. */
    private static final long MOST_WEIGHED = 20_000_000L;

    /** Probability that sums in another order may differ by, and more. */
    private static final double ROUNDING = 1e-9;

    private final Drawer.Case c;
    private final DrawerSearch shared;
    /** Places in the order in which they are laid: what settles most clearances first. */
    private final int[] order;

    private final List<List<Pack>> packs;
    /** Of a clearance and a place in the order: least and most change by the places from there on. */
    private final double[][] least;

    private final double[][] most;
    /** True where a clearance hangs on one place alone. */
    private final boolean[] single;
    /** Of a place in the order and a number of pieces there and after it: best probability of what hangs on one place alone. */
    private final double[][] surest;
    /** The same for the least distance. */
    private final double[][] nearest;

    private final double[][] sureAlone;
    private final double[][] offAlone;
    private final double[] centre;
    /** Squared uncertainty of a clearance before anything is laid. */
    private final double[] variance;

    private final Limits[] limits;
    private final TreeSet<Found> best = new TreeSet<>(DrawerSearch.ORDER);
    private final Pack[] laid;
    private final Set<String> used = new HashSet<>();
    private long weighed;
    private int within;

    /** A pack laid, how the clearances stand then, and the best that can come of it. */
    private static final class Branch {
        final Pack pack;
        final double[] values;
        final double[] variances;
        long sure = -1;
        int pieces;
        double distance;

        Branch(Pack pack, double[] values, double[] variances) {
            this.pack = pack;
            this.values = values;
            this.variances = variances;
        }
    }

    private static final Comparator<Branch> PROMISING = Comparator.comparingLong((Branch b) -> -b.sure)
            .thenComparingInt(b -> b.pieces)
            .thenComparingDouble(b -> b.distance);

    DrawerBranch(Drawer.Case c, List<List<Pack>> packs) {
        this.c = c;
        this.packs = packs;
        this.shared = new DrawerSearch(c, packs);
        int needs = c.needs().size();
        int places = packs.size();
        this.centre = new double[needs];
        this.variance = new double[needs];
        this.limits = new Limits[needs];
        this.single = new boolean[needs];
        for (int n = 0; n < needs; n++) {
            Need need = c.needs().get(n);
            limits[n] = new Limits(need.lower(), need.upper());
            centre[n] = (need.lower() + need.upper()) / 2;
            variance[n] = shared.variance(n);
            int on = 0;
            for (int p = 0; p < places; p++) {
                on += shared.bears(n, p) ? 1 : 0;
            }
            single[n] = on == 1;
        }
        this.order = order(needs, places);
        this.laid = new Pack[places];
        this.least = new double[needs][places + 1];
        this.most = new double[needs][places + 1];
        int pieces = 0;
        for (int k = places - 1; k >= 0; k--) {
            for (int n = 0; n < needs; n++) {
                least[n][k] = least[n][k + 1] + shared.extreme(n, order[k], false);
                most[n][k] = most[n][k + 1] + shared.extreme(n, order[k], true);
            }
            pieces += c.places().get(k).most();
        }
        this.surest = new double[places + 1][pieces + 1];
        this.nearest = new double[places + 1][pieces + 1];
        Arrays.fill(surest[places], -1);
        Arrays.fill(nearest[places], Double.POSITIVE_INFINITY);
        this.sureAlone = new double[places][];
        this.offAlone = new double[places][];
        alone();
        bounds(0);
    }

    /** Each time the place that settles most clearances, of these the one with the fewest packs. */
    private int[] order(int needs, int places) {
        int[] found = new int[places];
        boolean[] taken = new boolean[places];
        for (int k = 0; k < places; k++) {
            int next = -1;
            int most = -1;
            for (int p = 0; p < places; p++) {
                if (!taken[p]) {
                    int settled = 0;
                    for (int n = 0; n < needs; n++) {
                        settled += settles(n, p, taken) ? 1 : 0;
                    }
                    boolean fewer =
                            next >= 0 && packs.get(p).size() < packs.get(next).size();
                    if (settled > most || (settled == most && fewer)) {
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
            left |= p != place && !taken[p] && shared.bears(need, p);
        }
        return !left && shared.bears(need, place);
    }

    /** What hangs on one place alone: probability and distance by pack, places in the order. */
    private void alone() {
        for (int k = 0; k < order.length; k++) {
            List<Pack> at = packs.get(order[k]);
            sureAlone[k] = new double[at.size()];
            offAlone[k] = new double[at.size()];
            for (int i = 0; i < at.size(); i++) {
                sureAlone[k][i] = 1;
                for (int n = 0; n < single.length; n++) {
                    if (single[n] && shared.bears(n, order[k])) {
                        double value = c.needs().get(n).value() + shared.change(n, order[k], at.get(i));
                        double with = variance[n]
                                + shared.variance(n, order[k], at.get(i).pieces());
                        sureAlone[k][i] *= probability(n, value, with);
                        offAlone[k][i] += DrawerSearch.distance(c.needs().get(n), value);
                    }
                }
            }
        }
    }

    /** Fills the bounds from a place in the order on, for what is not used yet. */
    private void bounds(int from) {
        int places = order.length;
        surest[places][0] = 1;
        nearest[places][0] = 0;
        for (int k = places - 1; k >= from; k--) {
            double[] sure = new double[c.places().get(order[k]).most() + 1];
            double[] off = sure.clone();
            Arrays.fill(sure, -1);
            Arrays.fill(off, Double.POSITIVE_INFINITY);
            List<Pack> at = packs.get(order[k]);
            for (int i = 0; i < at.size(); i++) {
                int size = at.get(i).pieces().size();
                if ((sureAlone[k][i] > sure[size] || offAlone[k][i] < off[size]) && unused(at.get(i))) {
                    sure[size] = Math.max(sure[size], sureAlone[k][i]);
                    off[size] = Math.min(off[size], offAlone[k][i]);
                }
            }
            Arrays.fill(surest[k], -1);
            Arrays.fill(nearest[k], Double.POSITIVE_INFINITY);
            for (int size = 0; size < sure.length; size++) {
                for (int q = 0; sure[size] >= 0 && q + size < surest[k].length; q++) {
                    if (surest[k + 1][q] >= 0) {
                        surest[k][q + size] = Math.max(surest[k][q + size], sure[size] * surest[k + 1][q]);
                        nearest[k][q + size] = Math.min(nearest[k][q + size], off[size] + nearest[k + 1][q]);
                    }
                }
            }
        }
    }

    private boolean unused(Pack pack) {
        for (Loose piece : pack.pieces()) {
            if (used.contains(piece.id())) {
                return false;
            }
        }
        return true;
    }

    /** The best ways, in order. */
    List<Way> best() {
        double[] values = c.needs().stream().mapToDouble(Need::value).toArray();
        branch(0, 0, values, variance);
        return best.stream().map(Found::way).toList();
    }

    /** How many ways within the limits it met, after {@link #best()}; there may be more. */
    int within() {
        return within;
    }

    /** True where no way is better than those offered, after {@link #best()}. */
    boolean proven() {
        return weighed <= MOST_WEIGHED;
    }

    private double probability(int need, double value, double variance) {
        return Conformity.probability(value, Math.sqrt(variance), Double.POSITIVE_INFINITY, limits[need]);
    }

    private void branch(int k, int pieces, double[] values, double[] variances) {
        if (k == packs.size()) {
            within++;
            best.add(shared.found(inOrderOfPlaces(), laid));
            if (best.size() > c.offers()) {
                best.pollLast();
            }
            return;
        }
        List<Branch> branches = new ArrayList<>();
        for (Pack pack : packs.get(order[k])) {
            if (++weighed > MOST_WEIGHED) {
                break;
            }
            if (unused(pack)) {
                Branch branch = weigh(k, pieces, values, variances, pack);
                if (branch.sure >= 0 && wanted(branch)) {
                    branches.add(branch);
                }
            }
        }
        branches.sort(PROMISING);
        for (Branch branch : branches) {
            if (!wanted(branch)) {
                return;
            }
            List<String> tags = branch.pack.pieces().stream().map(Loose::id).toList();
            used.addAll(tags);
            bounds(k + 1);
            if (wanted(weigh(k, pieces, values, variances, branch.pack))) {
                laid[order[k]] = branch.pack;
                branch(k + 1, pieces + branch.pack.pieces().size(), branch.values, branch.variances);
            }
            tags.forEach(used::remove);
            bounds(k + 1);
        }
    }

    private double[] inOrderOfPlaces() {
        double[] values = c.needs().stream().mapToDouble(Need::value).toArray();
        for (int n = 0; n < values.length; n++) {
            for (int p = 0; p < laid.length; p++) {
                values[n] += shared.change(n, p, laid[p]);
            }
        }
        return values;
    }

    /** False where so many ways are offered already that are better than anything that can come of it. */
    private boolean wanted(Branch branch) {
        if (best.size() < c.offers()) {
            return true;
        }
        Found worst = best.last();
        if (branch.sure != worst.sure()) {
            return branch.sure > worst.sure();
        }
        return branch.pieces != worst.pieces()
                ? branch.pieces < worst.pieces()
                : branch.distance <= worst.way().distance() + ROUNDING;
    }

    /** The best that can come of a pack; less than 0 sure where a clearance can no longer come within its limits. */
    private Branch weigh(int k, int pieces, double[] values, double[] variances, Pack pack) {
        double[] next = values.clone();
        double[] uncertainties = variances.clone();
        Branch branch = new Branch(pack, next, uncertainties);
        double probability = 1;
        double distance = 0;
        for (int n = 0; n < next.length; n++) {
            next[n] += shared.change(n, order[k], pack);
            uncertainties[n] += shared.variance(n, order[k], pack.pieces());
            double low = next[n] + least[n][k + 1];
            double high = next[n] + most[n][k + 1];
            Need need = c.needs().get(n);
            if (low > need.upper() + DrawerSearch.DUST || high < need.lower() - DrawerSearch.DUST) {
                return branch;
            }
            if (!single[n] || low == high) {
                double value = Math.max(low, Math.min(high, centre[n]));
                probability *= probability(n, value, uncertainties[n]);
                distance += DrawerSearch.distance(need, Math.max(low, Math.min(high, need.aim())));
            }
        }
        int fewest = 0;
        for (int q = 0; q < surest[k + 1].length; q++) {
            long with = surest[k + 1][q] < 0 ? -1 : DrawerSearch.sure(probability * surest[k + 1][q] + ROUNDING);
            if (with > branch.sure) {
                branch.sure = with;
                fewest = q;
            }
        }
        branch.pieces = pieces + pack.pieces().size() + fewest;
        branch.distance = distance + nearest[k + 1][fewest];
        return branch;
    }
}
