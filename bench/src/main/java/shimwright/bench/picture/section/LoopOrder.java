package shimwright.bench.picture.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shimwright.bench.picture.section.LoopLayout.Span;
import shimwright.rebuild.unit.model.Clearance.Length;

/**
 * In which order the lengths of one way of a loop follow each other so that they lie best on their items. Where a length lies
 * depends only on which ones come before it, so that the best order is found over sets of lengths.
 */
final class LoopOrder {
    private static final int MOST_TRIED = 8;
    private static final int MOST_STARTS = 24;
    /** Starts this near to the best one are looked at together with the other way, m. */
    private static final double NEAR = 1e-3;
    /** Weight of a length of unknown place that lies one farther in: a tie-break, m. */
    private static final double WITHIN = 1e-9;

    private static final double SAME = 1e-12;
    /** Starts are told apart to this, parts of a metre. */
    private static final double FINE = 1e9;

    private final List<Length> lengths;
    private final List<Span> spans = new ArrayList<>();
    private final double[] before;
    private final int way;

    /**
     * Takes the lengths of one way.
     *
     * @param lengths in the order that counts where all else is alike
     * @param known where the lengths' items lie, where that is known
     * @param way 1 with u, -1 against it
     */
    LoopOrder(List<Length> lengths, Map<Length, Span> known, int way) {
        List<Length> sorted = new ArrayList<>(lengths);
        if (sorted.size() > MOST_TRIED) {
            sorted.sort(Comparator.comparingDouble(l -> {
                Span s = known.get(l);
                return s == null ? 0 : way * s.centre();
            }));
        }
        this.lengths = List.copyOf(sorted);
        this.way = way;
        double nowhere = Double.NaN;
        this.lengths.forEach(l -> spans.add(known.getOrDefault(l, new Span(nowhere, nowhere))));
        this.before = fixed() ? new double[0] : new double[1 << this.lengths.size()];
        for (int set = 1; set < before.length; set++) {
            int last = Integer.numberOfTrailingZeros(set);
            before[set] = before[set & (set - 1)] + this.lengths.get(last).nominal();
        }
    }

    private boolean fixed() {
        return lengths.size() > MOST_TRIED;
    }

    /** Places at which the walk may start, the best first; empty where no item is known. */
    List<Double> starts() {
        Map<Long, Double> starts = new TreeMap<>();
        if (fixed()) {
            double walked = 0;
            for (int i = 0; i < lengths.size(); i++) {
                edges(i, walked, starts);
                walked += lengths.get(i).nominal();
            }
        } else {
            for (int set = 0; set < before.length; set++) {
                for (int i = 0; i < lengths.size(); i++) {
                    if ((set >> i & 1) == 0) {
                        edges(i, before[set], starts);
                    }
                }
            }
        }
        List<double[]> fits = new ArrayList<>();
        starts.values().forEach(start -> fits.add(new double[] {start, cost(start)}));
        fits.sort(Comparator.comparingDouble(fit -> fit[1]));
        return fits.stream()
                .filter(fit -> fit[1] <= fits.get(0)[1] + NEAR)
                .map(fit -> fit[0])
                .limit(MOST_STARTS)
                .toList();
    }

    private void edges(int i, double walked, Map<Long, Double> starts) {
        Span s = spans.get(i);
        if (!Double.isNaN(s.from())) {
            for (double edge : new double[] {s.from(), s.to()}) {
                double start = edge - way * walked;
                starts.putIfAbsent(Math.round(start * FINE), start);
            }
        }
    }

    /** How far the lengths lie off their items in the best order from a start, m. */
    double cost(double start) {
        if (fixed()) {
            double sum = 0;
            double walked = 0;
            for (int i = 0; i < lengths.size(); i++) {
                sum += cost(i, i, start + way * walked);
                walked += lengths.get(i).nominal();
            }
            return sum;
        }
        return lengths.isEmpty() ? 0 : left(start)[0];
    }

    /** The best order from a start. */
    List<Length> from(double start) {
        if (fixed() || lengths.isEmpty()) {
            return lengths;
        }
        double[] left = left(start);
        List<Length> order = new ArrayList<>();
        int set = 0;
        while (order.size() < lengths.size()) {
            int next = -1;
            for (int i = lengths.size() - 1; i >= 0; i--) {
                boolean open = (set >> i & 1) == 0;
                if (open && through(set, i, start, left) <= left[set] + SAME) {
                    next = i;
                }
            }
            order.add(lengths.get(next));
            set |= 1 << next;
        }
        return order;
    }

    /** For each set of lengths that were walked, what the rest costs at best. */
    private double[] left(double start) {
        double[] left = new double[before.length];
        for (int set = before.length - 2; set >= 0; set--) {
            double best = Double.POSITIVE_INFINITY;
            for (int i = 0; i < lengths.size(); i++) {
                if ((set >> i & 1) == 0) {
                    best = Math.min(best, through(set, i, start, left));
                }
            }
            left[set] = best;
        }
        return left;
    }

    private double through(int set, int next, double start, double[] left) {
        return cost(next, Integer.bitCount(set), start + way * before[set]) + left[set | 1 << next];
    }

    /** What a length costs that is walked from there as the so manieth. */
    private double cost(int i, int place, double from) {
        Span s = spans.get(i);
        if (Double.isNaN(s.from())) {
            return WITHIN * Math.min(place, lengths.size() - 1 - place);
        }
        double low = way > 0 ? from : from - lengths.get(i).nominal();
        return misfit(low, low + lengths.get(i).nominal(), s);
    }

    /** A length about as long as its item should lie on it; a longer one should cover it, a shorter one lie within. */
    private static double misfit(double from, double to, Span s) {
        double own = to - from;
        double item = s.to() - s.from();
        if (own > 0.8 * item && own < 1.25 * item) {
            return Math.abs(from - s.from()) + Math.abs(to - s.to());
        }
        return own > item
                ? Math.max(0, from - s.from()) + Math.max(0, s.to() - to)
                : Math.max(0, s.from() - from) + Math.max(0, to - s.to());
    }
}
