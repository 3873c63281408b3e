package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Disc;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class ThreadPictures {
    private static final Scale LENGTH = Scale.of("", Kind.LENGTH);
    private static final double HOLE = 0.11;
    private static final double DOWEL = 0.05;

    private ThreadPictures() {}

    /** The preload that may come out, against what the bolt bears. */
    static List<Diagram> tightening(Tightening.Case c, Tightening.Result r) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Diagram.Bar(
                "preload to expect", 1, r.clamp().preloadLow(), r.clamp().preloadHigh(), Look.MAIN));
        Double proof = r.bears().proofLoad();
        Double yield = r.bears().yieldPreload();
        if (proof != null) {
            parts.add(new Diagram.Rule("proof load", false, proof));
        }
        if (yield != null) {
            parts.add(new Diagram.Rule("allowed preload", false, yield));
        }
        return List.of(new Graph(
                "Preload from this torque",
                Scale.of("", List.of("this bolt")),
                Scale.of("preload", Kind.FORCE),
                false,
                parts));
    }

    /** The holes with their place in the order, joined in that order; hole 1 on top where only the count is known. */
    static List<Diagram> boltOrder(BoltOrders.Case c) {
        boolean known = !c.holes().isEmpty();
        HolePattern pattern = known ? HolePattern.of(c.holes(), c.dowels()) : HolePattern.circle(c.count());
        List<Integer> order = BoltOrders.order(c, pattern);
        List<Point> way = new ArrayList<>();
        for (int hole : order) {
            way.add(
                    known
                            ? new Point(pattern.x().get(hole), pattern.y().get(hole))
                            : new Point(pattern.y().get(hole), pattern.x().get(hole)));
        }
        double size = Math.min(HOLE, 0.35 * closest(way));
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve("the way from bolt to bolt", way, Look.FAINT));
        pattern.dowels().forEach(dowel -> parts.add(new Disc("", dowel.x(), dowel.y(), DOWEL, Look.SECOND)));
        for (int i = 0; i < way.size(); i++) {
            Look look = i == 0 ? Look.MAIN : Look.SECOND;
            parts.add(new Disc(String.valueOf(i + 1), way.get(i).x(), way.get(i).y(), size, look));
        }
        return List.of(new Graph("Tighten in the order of the figures", LENGTH, LENGTH, true, parts));
    }

    /** A stretch of the thread with two wires on one side and one on the other. */
    static List<Diagram> wires(ThreadWires.Case c, ThreadWires.Result r) {
        ThreadForm form = c.size().form().orElseThrow();
        double p = form.pitch();
        double half = form.height() / 2;
        List<Part> parts = new ArrayList<>();
        for (int side : new int[] {1, -1}) {
            List<Point> outline = new ArrayList<>();
            for (int i = 0; i <= 4; i++) {
                double groove = i * p + (side > 0 ? 0 : p / 2);
                double deep = r.aimedPitch() / 2 - half / 2;
                double high = r.aimedPitch() / 2 + half * 0.75;
                outline.add(new Point(groove - p / 8, side * deep));
                outline.add(new Point(groove + p / 8, side * deep));
                outline.add(new Point(groove + p * 7 / 16, side * high));
                outline.add(new Point(groove + p * 9 / 16, side * high));
            }
            parts.add(new Curve("", outline, Look.SECOND));
            double away = side * (r.aimedReading() - r.wire()) / 2;
            double[] grooves = side > 0 ? new double[] {p, 3 * p} : new double[] {2.5 * p};
            for (double groove : grooves) {
                parts.add(new Disc("", groove, away, r.wire() / 2, Look.MAIN));
            }
        }
        return List.of(new Graph("Three wires in the thread", LENGTH, LENGTH, true, parts));
    }

    private static double closest(List<Point> points) {
        double[] all = new double[points.size() * (points.size() - 1) / 2];
        int next = 0;
        for (int i = 0; i < points.size(); i++) {
            for (int j = 0; j < i; j++) {
                all[next++] = Math.hypot(
                        points.get(i).x() - points.get(j).x(),
                        points.get(i).y() - points.get(j).y());
            }
        }
        return Arrays.stream(all).min().orElse(1);
    }
}
