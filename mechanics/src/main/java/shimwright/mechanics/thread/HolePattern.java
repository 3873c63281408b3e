package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import shimwright.mechanics.thread.BoltOrders.Case.Point;

/**
 * Holes about their centroid, scaled so that the farthest lies at 1; every choice between equals goes to the lowest
 * number.
 *
 * @param x by hole, scaled
 * @param y by hole, scaled
 * @param dowels scaled
 */
record HolePattern(List<Double> x, List<Double> y, List<Point> dowels) {
    /** Angles in rad, and distances in radii, that differ by less are equal: holes are measured, not drawn. */
    private static final double EQUAL = 0.01;

    HolePattern {
        x = List.copyOf(x);
        y = List.copyOf(y);
        dowels = List.copyOf(dowels);
    }

    /** Evenly on a circle. */
    static HolePattern circle(int count) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            x.add(Math.cos(2 * Math.PI * i / count));
            y.add(Math.sin(2 * Math.PI * i / count));
        }
        return new HolePattern(x, y, List.of());
    }

    /** By coordinates, m; the holes do not all lie on one spot. */
    static HolePattern of(List<BoltOrders.Case.Hole> holes, List<Point> dowels) {
        double cx =
                holes.stream().mapToDouble(BoltOrders.Case.Hole::x).average().orElse(0);
        double cy =
                holes.stream().mapToDouble(BoltOrders.Case.Hole::y).average().orElse(0);
        double size = holes.stream()
                .mapToDouble(hole -> Math.hypot(hole.x() - cx, hole.y() - cy))
                .max()
                .orElse(1);
        return new HolePattern(
                holes.stream().map(hole -> (hole.x() - cx) / size).toList(),
                holes.stream().map(hole -> (hole.y() - cy) / size).toList(),
                dowels.stream()
                        .map(point -> new Point((point.x() - cx) / size, (point.y() - cy) / size))
                        .toList());
    }

    int count() {
        return x.size();
    }

    private double radius(int hole) {
        return Math.hypot(x.get(hole), y.get(hole));
    }

    private double angle(int hole) {
        return Math.atan2(y.get(hole), x.get(hole));
    }

    /** Angle between two holes as seen from the centroid, 0 to π. */
    private double apart(int one, int two) {
        double turn = Math.abs(angle(one) - angle(two)) % (2 * Math.PI);
        return Math.min(turn, 2 * Math.PI - turn);
    }

    private double nearest(int hole, List<Integer> others) {
        return others.stream().mapToDouble(other -> apart(hole, other)).min().orElse(Math.PI);
    }

    /** Whether the holes form a ring: none lies nearer to the centroid than half of the farthest. */
    boolean ring() {
        return IntStream.range(0, count()).allMatch(hole -> radius(hole) >= 0.5);
    }

    /** Each hole's neighbors around the centroid. */
    List<List<Integer>> neighbours() {
        List<Integer> around = IntStream.range(0, count())
                .boxed()
                .sorted(Comparator.comparingDouble(this::angle))
                .toList();
        List<List<Integer>> neighbours = new ArrayList<>();
        for (int hole = 0; hole < count(); hole++) {
            int at = around.indexOf(hole);
            neighbours.add(IntStream.of(at + 1, at - 1)
                    .map(i -> around.get(Math.floorMod(i, count())))
                    .distinct()
                    .boxed()
                    .toList());
        }
        return neighbours;
    }

    /** Opposite pairs; the next pair farthest from all done, then from the last pair, then from the last bolt. */
    List<Integer> star(int first) {
        List<Integer> done = new ArrayList<>();
        List<Integer> open = new ArrayList<>(IntStream.range(0, count()).boxed().toList());
        List<Integer> lastPair = List.of();
        int lead = first;
        while (!open.isEmpty()) {
            if (!done.isEmpty()) {
                List<Integer> pair = lastPair;
                int last = done.get(done.size() - 1);
                lead = farthest(open, List.of(h -> nearest(h, done), h -> nearest(h, pair), h -> apart(h, last)));
            }
            List<Integer> before = List.copyOf(done);
            take(lead, open, done);
            if (!open.isEmpty()) {
                int from = lead;
                int partner = farthest(open, List.of(h -> apart(h, from), h -> nearest(h, before)));
                take(partner, open, done);
                lastPair = List.of(lead, partner);
            }
        }
        return done;
    }

    /** From the dowels, else the centroid, outward; after each hole the one nearest to its mirror point. */
    List<Integer> outward(int first) {
        List<Integer> done = new ArrayList<>();
        List<Integer> open = new ArrayList<>(IntStream.range(0, count()).boxed().toList());
        while (!open.isEmpty()) {
            int lead = done.isEmpty() && first >= 0 ? first : farthest(open, List.of(h -> -fromMiddle(h)));
            take(lead, open, done);
            if (!open.isEmpty()) {
                int partner = farthest(open, List.of(h -> -Math.hypot(x.get(h) + x.get(lead), y.get(h) + y.get(lead))));
                take(partner, open, done);
            }
        }
        return done;
    }

    private double fromMiddle(int hole) {
        return dowels.stream()
                .mapToDouble(point -> Math.hypot(x.get(hole) - point.x(), y.get(hole) - point.y()))
                .min()
                .orElse(radius(hole));
    }

    private static void take(Integer hole, List<Integer> open, List<Integer> done) {
        open.remove(hole);
        done.add(hole);
    }

    /** Each measure in turn keeps the holes that are as good as the best one; the lowest number is left. */
    private static int farthest(List<Integer> open, List<ToDoubleFunction<Integer>> measures) {
        List<Integer> best = open;
        for (ToDoubleFunction<Integer> measure : measures) {
            double most = best.stream().mapToDouble(measure).max().orElseThrow();
            best = best.stream()
                    .filter(hole -> measure.applyAsDouble(hole) >= most - EQUAL)
                    .toList();
        }
        return Collections.min(best);
    }
}
