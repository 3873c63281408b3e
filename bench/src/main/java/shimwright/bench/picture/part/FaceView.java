package shimwright.bench.picture.part;

import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Line;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Piece;
import shimwright.rebuild.unit.model.Item;

/** Shapes about a point, for the view of a part along its axis and for outlines; lengths in m, angles in rad. */
final class FaceView {
    /** The figure's item where the part is in no unit. */
    static final Item ALONE = Item.plain("part", "part", "", 1);

    private final List<Piece> pieces = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    FaceView piece(Fill fill, Area area) {
        pieces.add(new Piece(area, fill));
        return this;
    }

    FaceView annulus(Fill fill, double inner, double outer) {
        return piece(fill, ringArea(inner, outer));
    }

    FaceView circle(Mark mark, double radius) {
        return circle(mark, 0, 0, radius);
    }

    FaceView circle(Mark mark, double x, double y, double radius) {
        lines.add(new Line(
                new Path2D.Double(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius)), mark));
        return this;
    }

    /** Three quarters of a circle, as a thread is shown along its axis (ISO 6410-1:1993). */
    FaceView threadCircle(double radius) {
        lines.add(new Line(
                new Path2D.Double(new Arc2D.Double(-radius, -radius, 2 * radius, 2 * radius, 10, 260, Arc2D.OPEN)),
                Mark.THREAD));
        return this;
    }

    FaceView line(Mark mark, double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i + 1 < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        lines.add(new Line(path, mark));
        return this;
    }

    /** A shape set round the centre so many times. */
    FaceView round(Fill fill, Area one, int times) {
        for (int i = 0; i < times; i++) {
            piece(fill, one.createTransformedArea(AffineTransform.getRotateInstance(2 * Math.PI * i / times)));
        }
        return this;
    }

    PartFigure build() {
        return new PartFigure(ALONE, pieces, lines);
    }

    static Area disc(double x, double y, double radius) {
        return new Area(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    static Area box(double x1, double y1, double x2, double y2) {
        return new Area(
                new Rectangle2D.Double(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x2 - x1), Math.abs(y2 - y1)));
    }

    static Area polygon(double... xy) {
        double[][] points = new double[xy.length / 2][];
        for (int i = 0; i < points.length; i++) {
            points[i] = PartFigure.at(xy[2 * i], xy[2 * i + 1]);
        }
        return PartFigure.closed(points);
    }

    static Area ringArea(double inner, double outer) {
        Area area = disc(0, 0, outer);
        if (inner > 0) {
            area.subtract(disc(0, 0, inner));
        }
        return area;
    }

    static Area without(Area area, Area... holes) {
        Area rest = new Area(area);
        for (Area hole : holes) {
            rest.subtract(hole);
        }
        return rest;
    }

    static Area with(Area area, Area... more) {
        Area all = new Area(area);
        for (Area one : more) {
            all.add(one);
        }
        return all;
    }

    /** A hexagon that is so wide over its upright flats. */
    static Area hexagon(double flats) {
        double r = flats / Math.sqrt(3);
        double[] xy = new double[12];
        for (int i = 0; i < 6; i++) {
            xy[2 * i] = r * Math.sin(Math.PI * i / 3);
            xy[2 * i + 1] = r * Math.cos(Math.PI * i / 3);
        }
        return polygon(xy);
    }

    /** A wheel with so many teeth between root and tip. */
    static Area toothed(int teeth, double root, double tip) {
        double[] xy = new double[8 * teeth];
        double step = 2 * Math.PI / teeth;
        double[] places = {-0.32, -0.14, 0.14, 0.32};
        for (int i = 0; i < teeth; i++) {
            for (int k = 0; k < 4; k++) {
                double r = k == 0 || k == 3 ? root : tip;
                double angle = (i + places[k]) * step;
                xy[8 * i + 2 * k] = r * Math.cos(angle);
                xy[8 * i + 2 * k + 1] = r * Math.sin(angle);
            }
        }
        return polygon(xy);
    }
}
