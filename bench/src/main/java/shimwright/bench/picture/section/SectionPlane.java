package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import shimwright.rebuild.unit.model.Section;

/**
 * One section plane laid on the sheet. In the upright section u is x and v is z; in the flat one, seen from above with
 * the front up, u is -y and v is -x.
 *
 * @param flat true for the flat section through a cross shaft
 * @param level height z of the flat section, m; unused in the upright one
 * @param area what is shown, in u and v, m
 * @param scale drawing units per metre
 * @param left sheet position of the area's left edge
 * @param top sheet position of the area's upper edge
 */
record SectionPlane(boolean flat, double level, Rectangle2D area, double scale, double left, double top) {
    private static final double IN_PLANE = 1e-3;

    double x(double u) {
        return left + scale * (u - area.getMinX());
    }

    double y(double v) {
        return top + scale * (area.getMaxY() - v);
    }

    double width() {
        return scale * area.getWidth();
    }

    double height() {
        return scale * area.getHeight();
    }

    double bottom() {
        return top + height();
    }

    double right() {
        return left + width();
    }

    SectionPlane movedTo(double newTop) {
        return new SectionPlane(flat, level, area, scale, left, newTop);
    }

    Rectangle2D frame() {
        return new Rectangle2D.Double(left, top, width(), height());
    }

    /** From a shaft's own coordinates to the sheet; empty for a shaft that stands square to the plane or off it. */
    Optional<AffineTransform> place(Section.Shaft shaft) {
        if (shaft.at().size() != 2) {
            return Optional.empty();
        }
        double across = shaft.at().get(0);
        double height = shaft.at().get(1);
        boolean alongX = shaft.axis() == Section.Axis.X;
        if (!flat) {
            return alongX ? Optional.of(map(1, 0, 0, 1, 0, height)) : Optional.empty();
        }
        if (Math.abs(height - level) > IN_PLANE) {
            return Optional.empty();
        }
        return Optional.of(alongX ? map(0, 1, -1, 0, -across, 0) : map(-1, 0, 0, 1, 0, -across));
    }

    /** u = a w + b r + u0, v = c w + d r + v0, then onto the sheet. */
    private AffineTransform map(double a, double b, double c, double d, double u0, double v0) {
        AffineTransform sheet =
                new AffineTransform(scale, 0, 0, -scale, left - scale * area.getMinX(), top + scale * area.getMaxY());
        sheet.concatenate(new AffineTransform(a, c, b, d, u0, v0));
        return sheet;
    }
}
