package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.axial.shim.Drawer.Result.Wish;
import shimwright.mechanics.axial.shim.DrawerSearch.Found;
import shimwright.mechanics.quantity.InSentence;

/**
 * What to get or to grind where the drawer does not do: at as few places as can be one piece of whatever thickness is wanted, the
 * others served from the drawer, all places looked at together.
 */
final class DrawerWish {
    /** Packs looked at for one set of places, and for all. */
    private static final long MOST_WORK = 12_000_000L;

    private static final long ALL_WORK = 60_000_000L;
    private static final int SWEEPS = 100;
    /** Thicknesses that change by less are found, m. */
    private static final double FOUND = 1e-10;

    private static final int HALVINGS = 20;
    /** Standard uncertainty of a piece to come where no piece says one, m: none, but it is there. */
    private static final double LEAST_U = 1e-9;

    private final DrawerModel m;
    private final double wanted;
    private final double drawer;
    private long work;
    private @Nullable Found best;
    private Free at;

    private DrawerWish(DrawerModel m, double wanted, double drawer) {
        this.m = m;
        this.drawer = drawer;
        this.wanted = wanted;
        this.at = Free.none(m.places);
    }

    /** What to get, and the same in a sentence. */
    record Wished(List<Wish> wishes, String sentence) {
        static final Wished NOTHING = new Wished(List.of(), "");
    }

    /** Places at which a piece of any thickness may lie: from half the thinnest to twice the thickest of its family. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Free(boolean[] places, double[] thin, double[] thick, double[] u) {
        static Free none(int places) {
            return new Free(new boolean[places], new double[places], new double[places], new double[places]);
        }

        static Free of(DrawerModel m, boolean[] places) {
            Free free = none(m.places);
            for (int p = 0; p < m.places; p++) {
                if (places[p]) {
                    int[] fit = m.fit[p];
                    free.places[p] = true;
                    free.thin[p] = fit.length == 0 ? 0 : m.thickness[fit[0]] / 2;
                    free.thick[p] = fit.length == 0 ? 1 : m.thickness[fit[fit.length - 1]] * 2;
                    free.u[p] = LEAST_U;
                    for (int i : fit) {
                        free.u[p] = Math.max(free.u[p], m.c.pieces().get(i).u());
                    }
                }
            }
            return free;
        }

        boolean at(int place) {
            return places[place];
        }

        int count() {
            int count = 0;
            for (boolean one : places) {
                count += one ? 1 : 0;
            }
            return count;
        }

        double thinnest(int place) {
            return thin[place];
        }

        double thickest(int place) {
            return thick[place];
        }

        /** Gives the free places the thicknesses that bring all clearances nearest to their aims, the others as they are. */
        void fill(DrawerModel m, double[] laid) {
            for (int p = 0; p < laid.length; p++) {
                laid[p] = places[p] ? (thin[p] + Math.min(thick[p], thin[p] + 0.01)) / 2 : laid[p];
            }
            double moved = count() > 0 ? 1 : 0;
            for (int sweep = 0; sweep < SWEEPS && moved > FOUND; sweep++) {
                moved = 0;
                for (int p = 0; p < laid.length; p++) {
                    if (places[p]) {
                        double before = laid[p];
                        double then = before + step(m, m.values(laid), p);
                        laid[p] = Math.max(thin[p], Math.min(thick[p], then));
                        moved = Math.max(moved, Math.abs(laid[p] - before));
                    }
                }
            }
        }

        private static double step(DrawerModel m, double[] values, int place) {
            double slope = 0;
            double curve = 0;
            for (int n = 0; n < m.needs; n++) {
                double e = m.effect[n][place];
                double off = values[n] - m.aim[n];
                double room = off < 0 ? m.aim[n] - m.lower[n] : m.upper[n] - m.aim[n];
                slope += e * off / (room * room);
                curve += e * e / (room * room);
            }
            return curve == 0 ? 0 : -slope / curve;
        }
    }

    /**
     * What to get.
     *
     * @param wanted probability that all clearances are in, from which on it is proven
     * @param drawer probability that the best of the drawer reaches, 0 where nothing does
     * @return nothing where no thicknesses serve all clearances, or where the drawer serves them and none would be proven
     */
    static Wished of(DrawerModel m, double wanted, double drawer) {
        DrawerWish wish = new DrawerWish(m, wanted, drawer);
        for (int size = 1; size <= m.places && !wish.proven(); size++) {
            wish.choose(size, 0, new boolean[m.places]);
        }
        return wish.best == null ? Wished.NOTHING : wish.wished(wish.best);
    }

    private boolean proven() {
        return best != null && best.way().probability() >= wanted;
    }

    /** How sure a way must be, less a tie: proven where the drawer serves all as it is, else surer than what is found. */
    private double floor() {
        double proven = drawer > 0 ? wanted - DrawerSearch.TIE : 0;
        return Math.max(proven, best == null ? 0 : best.way().probability()) - DrawerSearch.TIE;
    }

    private void choose(int size, int from, boolean[] chosen) {
        if (work > ALL_WORK) {
            return;
        }
        if (size == 0) {
            Free free = Free.of(m, chosen);
            DrawerSearch search = new DrawerSearch(m, 1, DrawerSearch.NEAR, Math.min(MOST_WORK, ALL_WORK - work), free);
            List<Found> served = search.above(floor()).best();
            work += search.work();
            for (Found one : served) {
                boolean enough = drawer == 0 || one.way().probability() >= wanted;
                if (enough && (best == null || one.sure() > best.sure() || (better(one, best) && same(free)))) {
                    best = one;
                    at = free;
                }
            }
            return;
        }
        for (int p = from; p + size <= m.places; p++) {
            chosen[p] = true;
            choose(size - 1, p + 1, chosen);
            chosen[p] = false;
        }
    }

    private boolean same(Free free) {
        return at.count() == free.count();
    }

    private static boolean better(Found one, Found other) {
        return one.sure() == other.sure() && DrawerSearch.ORDER.compare(one, other) < 0;
    }

    private Wished wished(Found found) {
        List<Wish> wishes = wishes(found);
        List<String> get = new ArrayList<>();
        List<String> grind = new ArrayList<>();
        for (Wish wish : wishes) {
            get.add(InSentence.length(wish.thickness()) + " of " + wish.family() + " at " + wish.place() + " (from "
                    + InSentence.length(wish.from()) + " to " + InSentence.length(wish.to()) + " will do)");
            if (!wish.grind().isEmpty()) {
                grind.add(wish.grind() + " by " + InSentence.length(wish.takeOff()));
            }
        }
        List<String> others = new ArrayList<>();
        for (int p = 0; p < m.places; p++) {
            if (!at.at(p)) {
                others.add(found.way().pieces().get(p));
            }
        }
        String sentence = "Get " + String.join(" and ", get)
                + (others.isEmpty() ? "" : ", with " + String.join(", ", others))
                + (proven() ? "" : "; more rounds are needed as well")
                + "."
                + (grind.size() < wishes.size()
                        ? ""
                        : " Or grind " + String.join(" and ", grind)
                                + " thinner, where such pieces may be ground: both faces parallel, and measure it again.");
        return new Wished(wishes, sentence);
    }

    private List<Wish> wishes(Found found) {
        List<Wish> wishes = new ArrayList<>();
        for (int p = 0; p < m.places; p++) {
            if (at.at(p)) {
                double exactly = found.thickness()[p];
                double from = edge(found, p, at.thinnest(p));
                double to = edge(found, p, at.thickest(p));
                int grind = thicker(found, p, to);
                wishes.add(new Wish(
                        m.c.places().get(p).name(),
                        m.c.places().get(p).family(),
                        exactly,
                        from,
                        to,
                        grind < 0 ? "" : m.c.pieces().get(grind).id(),
                        grind < 0 ? 0 : m.thickness[grind] - exactly));
            }
        }
        return wishes;
    }

    /** How far a piece may be off towards an end and still serve, the others as they are. */
    private double edge(Found found, int place, double end) {
        double[] laid = found.thickness().clone();
        double least = Math.min(wanted, found.way().probability() - DrawerSearch.TIE);
        double[][] covariance = m.covariance(found.laid(), at.u());
        double good = laid[place];
        double bad = end;
        for (int k = 0; k < HALVINGS; k++) {
            laid[place] = (good + bad) / 2;
            double[] values = m.values(laid);
            boolean serves = within(values) && m.probability(values, covariance) >= least;
            good = serves ? laid[place] : good;
            bad = serves ? bad : laid[place];
        }
        return good;
    }

    private boolean within(double[] values) {
        for (int n = 0; n < m.needs; n++) {
            if (values[n] < m.lower[n] || values[n] > m.upper[n]) {
                return false;
            }
        }
        return true;
    }

    /** The thinnest piece of the family that is thicker than this and not laid; less than 0 where there is none. */
    private int thicker(Found found, int place, double thickness) {
        for (int i : m.fit[place]) {
            boolean laid = Arrays.stream(found.laid())
                    .anyMatch(pack -> Arrays.stream(pack).anyMatch(k -> k == i));
            if (!laid && m.thickness[i] > thickness) {
                return i;
            }
        }
        return -1;
    }
}
