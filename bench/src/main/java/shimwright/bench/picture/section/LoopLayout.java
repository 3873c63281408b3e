package shimwright.bench.picture.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import shimwright.rebuild.unit.model.Clearance.Length;

/**
 * The lengths of a clearance laid end to end along the section: those that open it run with u, then those that close it
 * run back, and what is left over is the clearance. Order and start are those that lie best on the items; where that
 * leaves a choice, the order of the unit file, front to rear.
 *
 * @param arrows in the order they are walked
 * @param from where the walk begins, m along u
 * @param to where it ends, m along u; to - from is the nominal clearance, signed as play
 */
record LoopLayout(List<Arrow> arrows, double from, double to) {
    private static final int MOST_TRIED = 7;

    /** One length, walked from and to, m along u; it opens when it runs with u. */
    record Arrow(Length length, double from, double to) {
        boolean opens() {
            return length.sign() > 0;
        }
    }

    /** A stretch along u that an item takes up, m. */
    record Span(double from, double to) {
        double centre() {
            return (from + to) / 2;
        }
    }

    /** Lengths in an order, where they start, and how far they lie off their items. */
    private record Walk(List<Length> lengths, double start, double misfit) {}

    /**
     * Lays a loop out.
     *
     * @param lengths the loop's lengths, each with its sign
     * @param spans where the lengths' items lie, where that is known
     * @param middle where the loop is centred when no item's place is known, m
     */
    static LoopLayout of(List<Length> lengths, Map<Length, Span> spans, double middle) {
        List<Length> opening = lengths.stream().filter(l -> l.sign() > 0).toList();
        List<Length> closing =
                new ArrayList<>(lengths.stream().filter(l -> l.sign() <= 0).toList());
        Collections.reverse(closing);
        double run = sum(opening);
        Stream<Double> lefts = Stream.concat(
                starts(opening, spans, 1).stream(),
                starts(closing, spans, -1).stream().map(right -> right - run));
        double left = lefts.min(Comparator.comparingDouble(
                        start -> at(opening, spans, start, 1).misfit()
                                + at(closing, spans, start + run, -1).misfit()))
                .orElse(middle - Math.max(run, sum(closing)) / 2);
        List<Arrow> arrows = new ArrayList<>();
        double at = left;
        for (Length l : at(opening, spans, left, 1).lengths()) {
            arrows.add(new Arrow(l, at, at + l.nominal()));
            at += l.nominal();
        }
        for (Length l : at(closing, spans, at, -1).lengths()) {
            arrows.add(new Arrow(l, at, at - l.nominal()));
            at -= l.nominal();
        }
        return new LoopLayout(List.copyOf(arrows), left, at);
    }

    /** The start that fits best for each length's item and end; empty when no item is known. */
    private static List<Double> starts(List<Length> lengths, Map<Length, Span> spans, int way) {
        List<Walk> walks = new ArrayList<>();
        for (List<Length> order : orders(lengths, spans, way)) {
            double walked = 0;
            for (Length l : order) {
                Span s = spans.get(l);
                if (s != null) {
                    for (double edge : new double[] {s.from(), s.to()}) {
                        double start = edge - way * walked;
                        walks.add(new Walk(order, start, misfit(order, spans, start, way)));
                    }
                }
                walked += l.nominal();
            }
        }
        double least = walks.stream().mapToDouble(Walk::misfit).min().orElse(0);
        return walks.stream()
                .filter(w -> w.misfit() <= least + 1e-3)
                .map(Walk::start)
                .distinct()
                .limit(24)
                .toList();
    }

    /** The order that fits best from a given start. */
    private static Walk at(List<Length> lengths, Map<Length, Span> spans, double start, int way) {
        return orders(lengths, spans, way).stream()
                .map(order -> new Walk(order, start, misfit(order, spans, start, way)))
                .min(Comparator.comparingDouble(Walk::misfit))
                .orElse(new Walk(lengths, start, 0));
    }

    private static double misfit(List<Length> order, Map<Length, Span> spans, double start, int way) {
        double sum = 0;
        double at = start;
        for (Length l : order) {
            double low = way > 0 ? at : at - l.nominal();
            Span s = spans.get(l);
            sum += s == null ? 0 : misfit(low, low + l.nominal(), s);
            at += way * l.nominal();
        }
        return sum;
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

    /** All orders of a few lengths; of many only the one along the axis. */
    private static List<List<Length>> orders(List<Length> lengths, Map<Length, Span> spans, int way) {
        if (lengths.size() <= MOST_TRIED) {
            List<List<Length>> all = new ArrayList<>();
            permute(new ArrayList<>(lengths), 0, all);
            return all;
        }
        List<Length> sorted = new ArrayList<>(lengths);
        sorted.sort(Comparator.comparingDouble(l -> {
            Span s = spans.get(l);
            return s == null ? 0 : way * s.centre();
        }));
        return List.of(sorted);
    }

    private static void permute(List<Length> lengths, int from, List<List<Length>> all) {
        if (from >= lengths.size() - 1) {
            all.add(List.copyOf(lengths));
            return;
        }
        for (int i = from; i < lengths.size(); i++) {
            Collections.swap(lengths, from, i);
            permute(lengths, from + 1, all);
            Collections.swap(lengths, from, i);
        }
    }

    private static double sum(List<Length> lengths) {
        return lengths.stream().mapToDouble(Length::nominal).sum();
    }
}
