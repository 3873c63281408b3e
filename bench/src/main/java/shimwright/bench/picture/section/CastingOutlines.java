package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import shimwright.rebuild.unit.model.Section;

/**
 * Outlines of castings as cut metal. A closed outline is filled; an open one is the outer skin and gets a wall of a
 * usual thickness on its inner side, for the eye only.
 */
final class CastingOutlines {
    /** Wall drawn behind an open outline, m: a usual thickness of a die-cast gearbox case; common practice, no source. */
    private static final double WALL = 5e-3;

    private CastingOutlines() {}

    /**
     * Metal of one outline in u and v, m, before its bores are cut.
     *
     * @param inside a point inside the unit
     */
    static Area metal(Section.Outline outline, double insideU, double insideV) {
        List<double[]> points = points(outline);
        if (points.size() < 2) {
            return new Area();
        }
        if (outline.closed()) {
            return new Area(path(points, true));
        }
        List<double[]> side = new ArrayList<>(points);
        List<double[]> shifted = shift(points, insideU, insideV);
        Collections.reverse(shifted);
        side.addAll(shifted);
        return new Area(path(side, true));
    }

    /** The points moved by the wall towards the inside, each along the mean of its edges' normals. */
    private static List<double[]> shift(List<double[]> points, double insideU, double insideV) {
        double vote = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            double[] a = points.get(i);
            double[] b = points.get(i + 1);
            vote += -(b[1] - a[1]) * (insideU - (a[0] + b[0]) / 2) + (b[0] - a[0]) * (insideV - (a[1] + b[1]) / 2);
        }
        double side = vote >= 0 ? 1 : -1;
        List<double[]> moved = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            double[] before = normal(points, Math.max(i - 1, 0), side);
            double[] after = normal(points, Math.min(i, points.size() - 2), side);
            double nu = before[0] + after[0];
            double nv = before[1] + after[1];
            double stretch = WALL / Math.max((nu * nu + nv * nv) / 2, 0.2);
            moved.add(new double[] {points.get(i)[0] + nu * stretch, points.get(i)[1] + nv * stretch});
        }
        return moved;
    }

    private static double[] normal(List<double[]> points, int edge, double side) {
        double[] a = points.get(edge);
        double[] b = points.get(edge + 1);
        double length = Math.max(Math.hypot(b[0] - a[0], b[1] - a[1]), 1e-12);
        return new double[] {-side * (b[1] - a[1]) / length, side * (b[0] - a[0]) / length};
    }

    private static List<double[]> points(Section.Outline outline) {
        List<double[]> points = new ArrayList<>();
        for (List<Double> p : outline.points()) {
            if (p.size() == 2) {
                points.add(new double[] {p.get(0), p.get(1)});
            }
        }
        return points;
    }

    private static Path2D path(List<double[]> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        points.stream().skip(1).forEach(p -> path.lineTo(p[0], p[1]));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    /** What a turning part needs free in the castings, as a box: its extent on both sides of the axis, with a little air. */
    static Rectangle2D bore(Extent e, AffineTransform place, double air) {
        return place.createTransformedShape(
                        new Rectangle2D.Double(e.from(), -e.outer() - air, e.width(), 2 * (e.outer() + air)))
                .getBounds2D();
    }
}
