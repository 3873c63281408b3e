package shimwright.bench.picture.part;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Line;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Piece;

/** Turns a section into a half section (ISO 128-3:2020): cut above its axis, seen from outside below. */
final class HalfSection {
    private static final double FINE = 2e-3;

    private HalfSection() {}

    static PartFigure of(PartFigure whole) {
        Rectangle2D box = whole.box();
        double fine = FINE * Math.max(box.getWidth(), box.getHeight());
        Area above = new Area(
                new Rectangle2D.Double(box.getMinX() - 1, 0, box.getWidth() + 2, Math.max(box.getMaxY(), 0) + 1));
        Area shadow = shadow(whole, fine);
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(shadow, Fill.OPEN));
        for (Piece piece : whole.pieces()) {
            Area upper = new Area(piece.outline());
            upper.intersect(above);
            pieces.add(new Piece(upper, piece.fill()));
        }
        AffineTransform mirror = AffineTransform.getScaleInstance(1, -1);
        pieces.add(new Piece(shadow.createTransformedArea(mirror), Fill.PLAIN));
        List<Line> lines = new ArrayList<>(edges(shadow, fine, box));
        whole.lines().forEach(line -> lines.add(upper(line)));
        return new PartFigure(whole.item(), pieces, lines);
    }

    /** Only what is cut above the axis. */
    static PartFigure ring(PartFigure whole) {
        Rectangle2D box = whole.box();
        Area above = new Area(new Rectangle2D.Double(
                box.getMinX() - box.getWidth(), 0, 3 * box.getWidth(), Math.max(box.getMaxY(), 0) + 1));
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : whole.pieces()) {
            Area upper = new Area(piece.outline());
            upper.intersect(above);
            pieces.add(new Piece(upper, piece.fill()));
        }
        return new PartFigure(whole.item(), pieces, List.of());
    }

    /** What the upper half covers when looked at from outside: everything between its outline and the axis. */
    private static Area shadow(PartFigure whole, double fine) {
        Area shadow = new Area();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (PathIterator i = whole.silhouette().getPathIterator(null, 0.25 * fine); !i.isDone(); i.next()) {
            int kind = i.currentSegment(c);
            double toX = kind == PathIterator.SEG_CLOSE ? startX : c[0];
            double toY = kind == PathIterator.SEG_CLOSE ? startY : c[1];
            if (kind == PathIterator.SEG_MOVETO) {
                startX = toX;
                startY = toY;
            } else if (Math.abs(toX - x) > 0 && y >= 0 && toY >= 0 && y + toY > 0) {
                shadow.add(FaceView.polygon(x, 0, x, y, toX, toY, toX, 0));
            }
            x = toX;
            y = toY;
        }
        return shadow;
    }

    /** Edges seen from outside below the axis: at each corner of the outline a line down from the axis. */
    private static List<Line> edges(Area shadow, double fine, Rectangle2D box) {
        TreeMap<Long, Double> radii = new TreeMap<>();
        List<double[]> points = points(shadow);
        for (int i = 0; i < points.size(); i++) {
            double[] before = points.get((i + points.size() - 1) % points.size());
            double[] here = points.get(i);
            double[] after = points.get((i + 1) % points.size());
            double in = Math.atan2(here[1] - before[1], here[0] - before[0]);
            double out = Math.atan2(after[1] - here[1], after[0] - here[0]);
            boolean corner = Math.abs(Math.IEEEremainder(out - in, 2 * Math.PI)) > 0.3;
            boolean within = here[0] > box.getMinX() + fine && here[0] < box.getMaxX() - fine;
            if (corner && within && here[1] > fine) {
                radii.merge(Math.round(here[0] / fine), here[1], Math::max);
            }
        }
        List<Line> lines = new ArrayList<>();
        radii.forEach((w, r) -> {
            Path2D path = new Path2D.Double();
            path.moveTo(w * fine, 0);
            path.lineTo(w * fine, -r);
            lines.add(new Line(path, Mark.EDGE));
        });
        return lines;
    }

    private static List<double[]> points(Area area) {
        List<double[]> points = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator i = area.getPathIterator(null, 1e-6); !i.isDone(); i.next()) {
            if (i.currentSegment(c) != PathIterator.SEG_CLOSE) {
                points.add(new double[] {c[0], c[1]});
            }
        }
        return points;
    }

    /** A line without what lies below the axis, but for centre lines. */
    private static Line upper(Line line) {
        if (line.mark() == Mark.CENTRE) {
            return line;
        }
        Path2D above = new Path2D.Double();
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator i = line.path().getPathIterator(null, 1e-6); !i.isDone(); i.next()) {
            boolean draws = i.currentSegment(c) == PathIterator.SEG_LINETO;
            if (draws && y + c[1] > 0) {
                above.moveTo(x, Math.max(y, 0));
                above.lineTo(c[0], Math.max(c[1], 0));
            }
            x = c[0];
            y = c[1];
        }
        return new Line(above, line.mark());
    }
}
