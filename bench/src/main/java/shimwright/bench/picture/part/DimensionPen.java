package shimwright.bench.picture.part;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import shimwright.bench.picture.part.PartDrawing.Dimension;
import shimwright.bench.picture.part.PartDrawing.Line;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.UnitSystem;

/** Dimension lines with their arrows and numbers, drawing units (ISO 129-1:2018: filled arrows, from outside where room lacks). */
final class DimensionPen {
    private static final Stroke FINE = new Stroke(DrawingStyle.INK, 0.6);
    private static final double AWAY = 12;
    private static final double STEP = 22;
    private static final double LEAST = 17;
    private static final double INCH = 25.4e-3;

    private final Svg svg;
    private final Function<Dimension, String> text;
    private final boolean half;

    DimensionPen(Svg svg, Function<Dimension, String> text, boolean half) {
        this.svg = svg;
        this.text = text;
        this.half = half;
    }

    /** A length as it stands on a drawing: mm to a thousandth or inches to a ten-thousandth, without idle zeros. */
    static String number(double metres, UnitSystem units) {
        boolean inch = units == UnitSystem.INCH;
        BigDecimal value = BigDecimal.valueOf(inch ? metres / INCH : metres * 1e3)
                .setScale(inch ? 4 : 3, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return value.scale() < 0 ? value.setScale(0).toPlainString() : value.toPlainString();
    }

    static String upper(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    void side(List<Dimension> dimensions, PartFigure figure, AffineTransform place) {
        Rectangle2D box = place.createTransformedShape(figure.box()).getBounds2D();
        int below = 0;
        for (Dimension d : dimensions) {
            switch (d.line()) {
                case LEFT -> diameter(d, place, box.getMinX() - AWAY, true);
                case RIGHT -> diameter(d, place, box.getMaxX() + AWAY, false);
                case ABOVE -> length(d, figure, place, box.getMinY() - AWAY, true);
                case BELOW -> length(d, figure, place, box.getMaxY() + AWAY + STEP * below++, false);
                case FACE -> {
                    // stands at the face
                }
                default -> throw new IllegalStateException("unknown line " + d.line());
            }
        }
    }

    void face(List<Dimension> dimensions, PartFigure figure, AffineTransform place) {
        Rectangle2D box = place.createTransformedShape(figure.box()).getBounds2D();
        int below = 0;
        for (Dimension d : dimensions) {
            if (d.line() == Line.FACE) {
                Dimension across = new Dimension(d.line(), -d.b(), d.b(), d.text(), d.size());
                length(across, figure, place, box.getMaxY() + AWAY + STEP * below++, false);
            }
        }
    }

    private void diameter(Dimension d, AffineTransform place, double x, boolean left) {
        double[] ends = {d.a(), d.b(), d.a(), -d.b()};
        place.transform(ends, 0, ends, 0, 2);
        double high = ends[1];
        double low = ends[3];
        double axis = (high + low) / 2;
        double over = left ? -4 : 4;
        boolean oneSide = half && !left;
        svg.line(ends[0] + over / 2, high, x + over, high, FINE);
        if (oneSide) {
            svg.line(x, high, x, axis + 8, FINE);
            arrow(x, high, 0, 1);
        } else {
            svg.line(ends[2] + over / 2, low, x + over, low, FINE);
            upright(x, high, low);
        }
        double y = oneSide ? (high + axis) / 2 + 4 : axis + 4;
        svg.text(
                x + (left ? -6 : 6),
                y,
                text.apply(d),
                left ? Letter.end(DrawingStyle.SMALL) : Letter.start(DrawingStyle.SMALL));
    }

    private void upright(double x, double high, double low) {
        if (low - high >= LEAST) {
            svg.line(x, high, x, low, FINE);
            arrow(x, high, 0, 1);
            arrow(x, low, 0, -1);
        } else {
            svg.line(x, high - 12, x, low + 12, FINE);
            arrow(x, high, 0, -1);
            arrow(x, low, 0, 1);
        }
    }

    private void length(Dimension d, PartFigure figure, AffineTransform place, double y, boolean above) {
        boolean facing = d.line() == Line.FACE;
        double[] ends = {d.a(), facing ? 0 : edge(figure, d.a(), above), d.b(), facing ? 0 : edge(figure, d.b(), above)
        };
        place.transform(ends, 0, ends, 0, 2);
        double from = ends[0];
        double to = ends[2];
        double over = above ? -4 : 4;
        svg.line(from, ends[1] + over / 2, from, y + over, FINE);
        svg.line(to, ends[3] + over / 2, to, y + over, FINE);
        String words = text.apply(d);
        double wide = TextMetrics.width(words, DrawingStyle.SMALL, false);
        boolean inside = to - from >= LEAST;
        if (inside) {
            svg.line(from, y, to, y, FINE);
            arrow(from, y, 1, 0);
            arrow(to, y, -1, 0);
        } else {
            svg.line(from - 12, y, to + 12, y, FINE);
            arrow(from, y, -1, 0);
            arrow(to, y, 1, 0);
        }
        double centre = Math.max(4 + wide / 2, Math.min(PartPicture.WIDTH - 4 - wide / 2, (from + to) / 2));
        if (!above) {
            boolean clear = to - from >= wide + 4;
            svg.text(centre, y + (clear ? 13 : 16), words, Letter.middle(DrawingStyle.SMALL));
        } else if (inside) {
            svg.text(centre, y - 4, words, Letter.middle(DrawingStyle.SMALL));
        } else {
            svg.text(to + 15, y + 4, words, Letter.start(DrawingStyle.SMALL));
        }
    }

    /** How far the outline reaches up or down at a place along the axis. */
    private static double edge(PartFigure figure, double w, boolean above) {
        Rectangle2D box = figure.box();
        double slit = 4e-3 * box.getWidth();
        Area cut = new Area(figure.silhouette());
        cut.intersect(new Area(new Rectangle2D.Double(w - slit, box.getMinY(), 2 * slit, box.getHeight())));
        Rectangle2D found = cut.isEmpty() ? box : cut.getBounds2D();
        return above ? found.getMaxY() : found.getMinY();
    }

    /** A filled arrow whose tip is at (x, y) and whose shaft runs the given way. */
    private void arrow(double x, double y, double wayX, double wayY) {
        arrow(svg, x, y, wayX, wayY);
    }

    /** The same in any drawing. */
    static void arrow(Svg svg, double x, double y, double wayX, double wayY) {
        double backX = x + 7 * wayX;
        double backY = y + 7 * wayY;
        svg.path(
                "M" + Svg.p(x, y) + "L" + Svg.p(backX - 1.8 * wayY, backY + 1.8 * wayX) + "L"
                        + Svg.p(backX + 1.8 * wayY, backY - 1.8 * wayX) + "Z",
                DrawingStyle.INK,
                new Stroke(DrawingStyle.INK, 0));
    }
}
