package shimwright.bench.picture.section;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** A shape taken apart into its closed rings of points. */
final class Polygons {
    private static final double FLATNESS = 0.2;

    private Polygons() {}

    static List<List<double[]>> of(Shape shape) {
        List<List<double[]>> rings = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(null, FLATNESS); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            if (kind == PathIterator.SEG_MOVETO) {
                rings.add(new ArrayList<>());
            }
            if (kind != PathIterator.SEG_CLOSE) {
                rings.get(rings.size() - 1).add(new double[] {c[0], c[1]});
            }
        }
        return rings;
    }

    static Rectangle2D box(List<double[]> ring) {
        Rectangle2D box = new Rectangle2D.Double(ring.get(0)[0], ring.get(0)[1], 0, 0);
        ring.forEach(p -> box.add(p[0], p[1]));
        return box;
    }
}
