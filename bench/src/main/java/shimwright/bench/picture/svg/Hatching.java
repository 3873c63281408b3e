package shimwright.bench.picture.svg;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Section lines: parallel lines cut to a shape, as path data, so that every reader and printer draws the same. */
public final class Hatching {
    private static final double FLATNESS = 0.2;

    private Hatching() {}

    /**
     * Lines across a shape. Their phase is that of the whole drawing, so the halves of one part match.
     *
     * @param shape in drawing units, filled by the even-odd rule
     * @param degrees direction of the lines, counter-clockwise from the horizontal
     * @param pitch distance between lines in drawing units, above 0
     */
    public static String lines(Shape shape, double degrees, double pitch) {
        AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(degrees));
        List<double[]> edges = edges(shape, turn);
        double low = edges.stream().mapToDouble(e -> Math.min(e[1], e[3])).min().orElse(0);
        double high =
                edges.stream().mapToDouble(e -> Math.max(e[1], e[3])).max().orElse(0);
        AffineTransform back = AffineTransform.getRotateInstance(-Math.toRadians(degrees));
        StringBuilder d = new StringBuilder();
        double[] ends = new double[4];
        for (double k = Math.ceil(low / pitch); k * pitch < high; k++) {
            double y = k * pitch + 1e-7;
            List<Double> crossings = crossings(edges, y);
            for (int i = 0; i + 1 < crossings.size(); i += 2) {
                if (crossings.get(i + 1) - crossings.get(i) < 0.6) {
                    continue;
                }
                double[] line = {crossings.get(i), y, crossings.get(i + 1), y};
                back.transform(line, 0, ends, 0, 2);
                d.append('M').append(Svg.p(ends[0], ends[1])).append('L').append(Svg.p(ends[2], ends[3]));
            }
        }
        return d.toString();
    }

    private static List<Double> crossings(List<double[]> edges, double y) {
        List<Double> xs = new ArrayList<>();
        for (double[] e : edges) {
            if ((e[1] < y) != (e[3] < y)) {
                xs.add(e[0] + (y - e[1]) / (e[3] - e[1]) * (e[2] - e[0]));
            }
        }
        Collections.sort(xs);
        return xs;
    }

    private static List<double[]> edges(Shape shape, AffineTransform turn) {
        List<double[]> edges = new ArrayList<>();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator i = shape.getPathIterator(turn, FLATNESS); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = c[0];
                startY = c[1];
            } else {
                double toX = kind == PathIterator.SEG_CLOSE ? startX : c[0];
                double toY = kind == PathIterator.SEG_CLOSE ? startY : c[1];
                edges.add(new double[] {x, y, toX, toY});
                c[0] = toX;
                c[1] = toY;
            }
            x = c[0];
            y = c[1];
        }
        return edges;
    }
}
