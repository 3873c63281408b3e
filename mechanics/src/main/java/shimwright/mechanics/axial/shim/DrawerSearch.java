package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Result.Way;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;

/**
 * The search: places one after another, cutting off as soon as a clearance cannot come within its limits any more whatever
 * is laid at the places left. One search, one use.
 */
final class DrawerSearch {
    private static final double TIE = 1000;
    static final double DUST = 1e-12;

    /** Pieces for one place. */
    record Pack(List<Loose> pieces, double thickness) {
        static Pack of(List<Loose> pieces) {
            return new Pack(
                    List.copyOf(pieces),
                    pieces.stream().mapToDouble(Loose::thickness).sum());
        }

        String tags() {
            return pieces.stream().map(Loose::id).collect(Collectors.joining("+"));
        }
    }

    record Found(Way way, long sure, int pieces) {}

    static final Comparator<Found> ORDER = Comparator.comparingLong((Found f) -> -f.sure())
            .thenComparingInt(Found::pieces)
            .thenComparingDouble(f -> f.way().distance())
            .thenComparing(f -> String.join(",", f.way().pieces()));

    private final Drawer.Case c;
    private final List<List<Pack>> packs;
    private final double[][] effect;
    private final double[][] least;
    private final double[][] most;
    private final TreeSet<Found> best = new TreeSet<>(ORDER);
    private final Pack[] laid;
    private final Set<String> used = new TreeSet<>();
    private int within;

    DrawerSearch(Drawer.Case c, List<List<Pack>> packs) {
        this.c = c;
        this.packs = packs;
        int needs = c.needs().size();
        int places = packs.size();
        this.effect = new double[needs][places];
        this.least = new double[needs][places + 1];
        this.most = new double[needs][places + 1];
        this.laid = new Pack[places];
        c.effects().forEach(e -> effect[indexOfNeed(e.need())][indexOfPlace(e.place())] += e.change());
        for (int n = 0; n < needs; n++) {
            for (int p = places - 1; p >= 0; p--) {
                double low = Double.MAX_VALUE;
                double high = -Double.MAX_VALUE;
                for (Pack pack : packs.get(p)) {
                    double change = change(n, p, pack);
                    low = Math.min(low, change);
                    high = Math.max(high, change);
                }
                least[n][p] = least[n][p + 1] + low;
                most[n][p] = most[n][p + 1] + high;
            }
        }
    }

    private int indexOfNeed(String name) {
        return c.needs().stream().map(Need::name).toList().indexOf(name);
    }

    private int indexOfPlace(String name) {
        return c.places().stream().map(Drawer.Case.Seat::name).toList().indexOf(name);
    }

    double change(int need, int place, Pack pack) {
        return effect[need][place] * (pack.thickness() - c.places().get(place).trial());
    }

    /** The best ways, in order. */
    List<Way> best() {
        double[] values = c.needs().stream().mapToDouble(Need::value).toArray();
        lay(0, values);
        return best.stream().map(Found::way).toList();
    }

    /** How many ways within the limits there are, after {@link #best()}. */
    int within() {
        return within;
    }

    private void lay(int place, double[] values) {
        for (int n = 0; n < values.length; n++) {
            Need need = c.needs().get(n);
            if (values[n] + least[n][place] > need.upper() + DUST || values[n] + most[n][place] < need.lower() - DUST) {
                return;
            }
        }
        if (place == packs.size()) {
            within++;
            keep(values);
            return;
        }
        for (Pack pack : packs.get(place)) {
            List<String> tags = pack.pieces().stream().map(Loose::id).toList();
            if (tags.stream().anyMatch(used::contains)) {
                continue;
            }
            used.addAll(tags);
            laid[place] = pack;
            double[] next = values.clone();
            for (int n = 0; n < next.length; n++) {
                next[n] += change(n, place, pack);
            }
            lay(place + 1, next);
            tags.forEach(used::remove);
        }
    }

    /** (distance from the aim / room to the limit on that side)². */
    static double distance(Need need, double value) {
        double off = value - need.aim();
        double room = off < 0 ? need.aim() - need.lower() : need.upper() - need.aim();
        return Math.pow(off / room, 2);
    }

    /** A probability in thousandths. */
    static long sure(double probability) {
        return Math.round(probability * TIE);
    }

    /** True where a place does something to a clearance. */
    boolean bears(int need, int place) {
        return effect[need][place] != 0;
    }

    /** Least or most change of a clearance by a place alone. */
    double extreme(int need, int place, boolean high) {
        return high ? most[need][place] - most[need][place + 1] : least[need][place] - least[need][place + 1];
    }

    /** What pieces add to the squared uncertainty of a clearance. */
    double variance(int need, int place, List<Loose> pieces) {
        double sum = 0;
        for (Loose piece : pieces) {
            sum += piece.u() * piece.u();
        }
        return effect[need][place] * effect[need][place] * sum;
    }

    /** Squared uncertainty of a clearance with its trial pieces and without what is laid. */
    double variance(int need) {
        double sum = Math.pow(c.needs().get(need).u(), 2);
        for (int p = 0; p < packs.size(); p++) {
            sum += Math.pow(effect[need][p] * c.places().get(p).u(), 2);
        }
        return sum;
    }

    /** Standard uncertainty of a clearance with what is laid. */
    private double uncertainty(int need, Pack[] laid) {
        double u = c.needs().get(need).u();
        for (int p = 0; p < laid.length; p++) {
            double of = c.places().get(p).u();
            for (Loose piece : laid[p].pieces()) {
                of = Math.hypot(of, piece.u());
            }
            u = Math.hypot(u, effect[need][p] * of);
        }
        return u;
    }

    private void keep(double[] values) {
        best.add(found(values, laid));
        if (best.size() > c.offers()) {
            best.pollLast();
        }
    }

    /** The way that packs laid at every place make. */
    Found found(double[] values, Pack[] laid) {
        double probability = 1;
        double distance = 0;
        List<Double> predicted = new ArrayList<>();
        for (int n = 0; n < values.length; n++) {
            Need need = c.needs().get(n);
            probability *= Conformity.probability(
                    values[n], uncertainty(n, laid), Double.POSITIVE_INFINITY, new Limits(need.lower(), need.upper()));
            distance += distance(need, values[n]);
            predicted.add(values[n]);
        }
        List<String> pieces = new ArrayList<>();
        int count = 0;
        for (int p = 0; p < laid.length; p++) {
            pieces.add(c.places().get(p).name() + "=" + laid[p].tags());
            count += laid[p].pieces().size();
        }
        return new Found(new Way(pieces, predicted, probability, distance), sure(probability), count);
    }
}
