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
 * leaves a choice, what is not drawn lies farthest out, and then counts the order of the unit file, front to rear.
 *
 * @param arrows in the order they are walked
 * @param from where the walk begins, m along u
 * @param to where it ends, m along u; to - from is the nominal clearance, signed as play
 */
record LoopLayout(List<Arrow> arrows, double from, double to) {
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
        LoopOrder out = new LoopOrder(opening, spans, 1);
        LoopOrder back = new LoopOrder(closing, spans, -1);
        double left = Stream.concat(
                        out.starts().stream(), back.starts().stream().map(right -> right - run))
                .map(start -> new double[] {start, out.cost(start) + back.cost(start + run)})
                .min(Comparator.comparingDouble(fit -> fit[1]))
                .map(fit -> fit[0])
                .orElse(middle - Math.max(run, sum(closing)) / 2);
        List<Arrow> arrows = new ArrayList<>();
        double at = left;
        for (Length l : out.from(left)) {
            arrows.add(new Arrow(l, at, at + l.nominal()));
            at += l.nominal();
        }
        for (Length l : back.from(at)) {
            arrows.add(new Arrow(l, at, at - l.nominal()));
            at -= l.nominal();
        }
        return new LoopLayout(List.copyOf(arrows), left, at);
    }

    private static double sum(List<Length> lengths) {
        return lengths.stream().mapToDouble(Length::nominal).sum();
    }
}
