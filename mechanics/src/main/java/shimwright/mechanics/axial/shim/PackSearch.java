package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import shimwright.mechanics.conformity.Conformity;

/**
 * Finds the best packs exactly: every set of pieces whose clearance lies within the limits is met, none is approximated.
 *
 * <p>Order: highest probability, differences under 0.001 being ties; then fewest pieces; then, where
 * an aim is given, nearest to the wanted thickness; then smallest rarity; then nearest to the wanted thickness; then tags. A tie is taken against
 * the best pack not yet named, so the order is well defined.
 *
 * <p>Sets are built thinnest first within the window of thickness within the limits, the last piece by binary search. Packs with
 * the same uncertainty fall in probability with their distance from the middle, so one ordered list per uncertainty is merged by a
 * heap, with the normal distribution as an upper bound until a pack's own t probability is needed.
 */
final class PackSearch {
    static final double TIE = 0.001;
    private static final double DUST = 1e-12;
    private static final double GRAIN = 1e10;

    /** A set of pieces by place in the sorted drawer, with its probability. */
    static final class Pack {
        private final int[] at;
        private final double thickness;
        private final double variance;
        private final double probability;

        private Pack(int[] at, double thickness, double variance, double probability) {
            this.at = at;
            this.thickness = thickness;
            this.variance = variance;
            this.probability = probability;
        }

        double thickness() {
            return thickness;
        }

        double variance() {
            return variance;
        }

        double probability() {
            return probability;
        }
    }

    private final List<Piece> sorted;
    private final double[] thickness;
    private final double[] smallest;
    private final Prediction prediction;
    private final double wanted;
    private final boolean aimed;
    private final double low;
    private final double high;

    /** @param aimed whether the wanted thickness is that of an aim and not only of the middle of the limits */
    PackSearch(List<Piece> drawer, Prediction prediction, double wanted, boolean aimed) {
        this.sorted = drawer.stream()
                .sorted(Comparator.comparingDouble(Piece::thickness).thenComparing(Piece::id))
                .toList();
        this.thickness = sorted.stream().mapToDouble(Piece::thickness).toArray();
        this.smallest = new double[thickness.length + 1];
        for (int i = 0; i < thickness.length; i++) {
            smallest[i + 1] = smallest[i] + thickness[i];
        }
        this.prediction = prediction;
        this.wanted = wanted;
        this.aimed = aimed;
        double[] window = prediction.window();
        double slack = 1e-8 * (1 + Math.abs(prediction.measured()));
        this.low = window[0] - slack;
        this.high = window[1] + slack;
    }

    List<Piece> pieces(Pack pack) {
        return Arrays.stream(pack.at).mapToObj(sorted::get).toList();
    }

    /**
     * The best packs in order. Larger packs are left unlooked at only once they cannot change the order: when the packs
     * named are the same whether the best probability still to come is as low as the best found or as high as the most
     * that any pack could have.
     */
    List<Pack> best(int least, int most, int offers) {
        List<Pack> pool = new ArrayList<>();
        int largest = Math.min(most, thickness.length);
        for (int count = least; count <= largest; count++) {
            List<Pack> found = new ArrayList<>();
            extend(new int[count], 0, 0, 0, 0, found);
            pool.addAll(ranked(found, offers));
            if (count < largest && pool.size() >= offers) {
                List<Pack> cautious = inOrder(pool, offers, ceiling(count + 1, largest));
                if (cautious.size() == offers && cautious.equals(inOrder(pool, offers, 0))) {
                    return cautious;
                }
            }
        }
        return inOrder(pool, offers, 0);
    }

    /** No pack of these sizes is likelier than this: best place, least uncertainty, most degrees of freedom. */
    private double ceiling(int fewest, int most) {
        double[] variances = sorted.stream()
                .mapToDouble(piece -> piece.u() * piece.u())
                .sorted()
                .toArray();
        double variance = 0;
        for (int i = variances.length - most; i < variances.length; i++) {
            variance += variances[i];
        }
        double u = prediction.u(0);
        double freedom = prediction.freedom(prediction.u(variance));
        double thinnest = smallest[fewest];
        double thickest = smallest[thickness.length] - smallest[thickness.length - most];
        double there = prediction.limits().closed()
                ? (prediction.limits().low() + prediction.limits().high()) / 2
                : prediction.clearance(
                        prediction.remoteness(thinnest) < prediction.remoteness(thickest) ? thinnest : thickest);
        return Conformity.probability(there, u, freedom, prediction.limits());
    }

    private void extend(int[] at, int depth, int from, double sum, double variance, List<Pack> found) {
        int left = at.length - depth;
        if (left == 0) {
            keep(at, sum, variance, found);
            return;
        }
        double largest = smallest[thickness.length] - smallest[thickness.length - left];
        if (from + left > thickness.length || sum + largest < low) {
            return;
        }
        int start = left == 1 ? firstAtLeast(low - sum, from) : from;
        for (int i = start; i + left <= thickness.length; i++) {
            if (sum + smallest[i + left] - smallest[i] > high) {
                return;
            }
            at[depth] = i;
            double u = sorted.get(i).u();
            extend(at, depth + 1, i + 1, sum + thickness[i], variance + u * u, found);
        }
    }

    private int firstAtLeast(double wantedThickness, int from) {
        int place = Arrays.binarySearch(thickness, from, thickness.length, wantedThickness);
        int found = place < 0 ? -place - 1 : place;
        while (found > from && thickness[found - 1] >= wantedThickness) {
            found--;
        }
        return found;
    }

    private void keep(int[] at, double sum, double variance, List<Pack> found) {
        if (prediction.limits().hold(prediction.clearance(sum))) {
            found.add(new Pack(at.clone(), sum, variance, Double.NaN));
        }
    }

    /** A list of packs of one uncertainty, best first; the key is a bound until the head's own probability is known. */
    private static final class Lane {
        final List<Pack> packs = new ArrayList<>();
        int next;
        double key;
        boolean exact;
    }

    /** Packs by falling probability, down to those that tie with the last one that can be named. */
    private List<Pack> ranked(List<Pack> found, int offers) {
        Map<Double, Lane> lanes = new HashMap<>();
        for (Pack pack : found) {
            lanes.computeIfAbsent(pack.variance(), key -> new Lane()).packs.add(pack);
        }
        PriorityQueue<Lane> heap = new PriorityQueue<>(
                Comparator.comparingDouble((Lane lane) -> lane.key).reversed());
        for (Lane lane : lanes.values()) {
            lane.packs.sort(Comparator.comparingDouble(pack -> prediction.remoteness(pack.thickness())));
            lane.key = prediction.bound(
                    lane.packs.get(0).thickness(), lane.packs.get(0).variance());
            heap.add(lane);
        }
        List<Pack> ranked = new ArrayList<>();
        while (!heap.isEmpty()) {
            Lane lane = heap.remove();
            if (ranked.size() >= offers && lane.key <= ranked.get(offers - 1).probability() - TIE - DUST) {
                break;
            }
            Pack head = lane.packs.get(lane.next);
            if (!lane.exact) {
                lane.key = prediction.probability(head.thickness(), head.variance());
                lane.exact = true;
                heap.add(lane);
                continue;
            }
            ranked.add(new Pack(head.at, head.thickness(), head.variance(), lane.key));
            lane.next++;
            if (lane.next < lane.packs.size()) {
                Pack following = lane.packs.get(lane.next);
                lane.key = prediction.probability(following.thickness(), following.variance());
                heap.add(lane);
            }
        }
        return ranked;
    }

    /** Names packs one by one; ties are taken against the best left, or against a better one that may be to come. */
    private List<Pack> inOrder(List<Pack> pool, int offers, double toCome) {
        List<Pack> left = new ArrayList<>(pool);
        left.sort(Comparator.comparingDouble(Pack::probability).reversed());
        List<Pack> order = new ArrayList<>();
        while (order.size() < offers && !left.isEmpty()) {
            double best = Math.max(toCome, left.get(0).probability());
            int fewest = Integer.MAX_VALUE;
            List<Pack> ties = new ArrayList<>();
            for (Pack pack : left) {
                if (best - pack.probability() >= TIE) {
                    break;
                }
                if (pack.at.length < fewest) {
                    fewest = pack.at.length;
                    ties.clear();
                }
                if (pack.at.length == fewest) {
                    ties.add(pack);
                }
            }
            if (ties.isEmpty()) {
                return order;
            }
            Pack chosen = ties.stream().min(this::compareTies).orElseThrow();
            order.add(chosen);
            left.remove(chosen);
        }
        return order;
    }

    private int compareTies(Pack one, Pack two) {
        int nearer = Long.compare(
                Math.round(GRAIN * Math.abs(one.thickness() - wanted)),
                Math.round(GRAIN * Math.abs(two.thickness() - wanted)));
        if (aimed && nearer != 0) {
            return nearer;
        }
        int rarer = Long.compare(Math.round(GRAIN * rarity(one)), Math.round(GRAIN * rarity(two)));
        if (rarer != 0) {
            return rarer;
        }
        return nearer != 0 ? nearer : tags(one).compareTo(tags(two));
    }

    private String tags(Pack pack) {
        return String.join("\u0000", pieces(pack).stream().map(Piece::id).toList());
    }

    /** Σ distance to the nearest piece left; a piece with none left counts its own thickness. */
    double rarity(Pack pack) {
        double sum = 0;
        for (int at : pack.at) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int below = at - 1; below >= 0; below--) {
                if (!taken(pack, below)) {
                    nearest = Math.min(nearest, thickness[at] - thickness[below]);
                    break;
                }
            }
            for (int above = at + 1; above < thickness.length; above++) {
                if (!taken(pack, above)) {
                    nearest = Math.min(nearest, thickness[above] - thickness[at]);
                    break;
                }
            }
            sum += Double.isInfinite(nearest) ? thickness[at] : nearest;
        }
        return sum;
    }

    private static boolean taken(Pack pack, int at) {
        return Arrays.binarySearch(pack.at, at) >= 0;
    }
}
