package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import shimwright.rebuild.unit.model.Item;

/**
 * What is drawn for one item, in its shaft's own coordinates: w along the axis, r from the axis, metres.
 *
 * @param item the item
 * @param pieces closed shapes, back to front
 * @param lines lines on top of them
 * @param silhouette everything of it as one outline
 */
public record PartFigure(Item item, List<Piece> pieces, List<Line> lines, Area silhouette) {
    private static final AffineTransform MIRROR = AffineTransform.getScaleInstance(1, -1);

    /** How a closed shape is filled when it is fitted. */
    public enum Fill {
        /** Not cut: shafts, rollers, tooth flanks. */
        PLAIN,
        /** Not cut, in front of or behind the plane, without a fill of its own. */
        OPEN,
        /** Cut, lines rising to the right. */
        RISING,
        /** Cut, lines falling to the right. */
        FALLING,
        /** Cut, lines close together. */
        CLOSE,
        /** Too thin for section lines. */
        BLACK
    }

    /** A line's meaning. */
    public enum Mark {
        EDGE,
        CENTRE,
        THREAD
    }

    /** A closed shape and how it is filled. */
    public record Piece(Area outline, Fill fill) {}

    /** A line and what it means. */
    public record Line(Path2D path, Mark mark) {}

    /** Begins the figure of an item. */
    public static Sketch of(Item item) {
        return new Sketch(item);
    }

    /** A figure of these pieces and lines. */
    public PartFigure(Item item, List<Piece> pieces, List<Line> lines) {
        this(item, List.copyOf(pieces), List.copyOf(lines), union(pieces));
    }

    private static Area union(List<Piece> pieces) {
        Area all = new Area();
        pieces.forEach(piece -> all.add(piece.outline()));
        return all;
    }

    /** The box of everything of it. */
    public Rectangle2D box() {
        return silhouette.getBounds2D();
    }

    /** Collects pieces; each is drawn on both sides of the axis unless it says otherwise. */
    public static final class Sketch {
        private final Item item;
        private final List<Piece> pieces = new ArrayList<>();
        private final List<Line> lines = new ArrayList<>();

        private Sketch(Item item) {
            this.item = item;
        }

        /** A ring about the axis, lengths in m. */
        public Sketch ring(Fill fill, double from, double to, double inner, double outer) {
            return polygon(fill, at(from, inner), at(from, outer), at(to, outer), at(to, inner));
        }

        /** A closed shape on either side of the axis; points of w and r. */
        public Sketch polygon(Fill fill, double[]... points) {
            return both(fill, closed(points));
        }

        /** A shape on either side of the axis. */
        public Sketch both(Fill fill, Area half) {
            Area whole = new Area(half);
            whole.add(half.createTransformedArea(MIRROR));
            pieces.add(new Piece(whole, fill));
            return this;
        }

        /** A closed shape on one side of the axis alone; points of w and r. */
        Sketch oneSided(Fill fill, double[]... points) {
            pieces.add(new Piece(closed(points), fill));
            return this;
        }

        /** An open line on both sides of the axis. */
        public Sketch line(Mark mark, double[]... points) {
            Path2D path = open(points);
            path.append(MIRROR.createTransformedShape(open(points)), false);
            lines.add(new Line(path, mark));
            return this;
        }

        /** A line across the axis at w. */
        public Sketch across(Mark mark, double w, double r) {
            lines.add(new Line(open(at(w, -r), at(w, r)), mark));
            return this;
        }

        /** The figure of all pieces so far. */
        public PartFigure build() {
            return new PartFigure(item, pieces, lines);
        }
    }

    /** The area within points of w and r. */
    public static Area closed(double[]... points) {
        Path2D path = open(points);
        path.closePath();
        return new Area(path);
    }

    private static Path2D open(double[]... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0][0], points[0][1]);
        for (int i = 1; i < points.length; i++) {
            path.lineTo(points[i][0], points[i][1]);
        }
        return path;
    }

    /** A point: along the axis, from the axis. */
    public static double[] at(double w, double r) {
        return new double[] {w, r};
    }
}
