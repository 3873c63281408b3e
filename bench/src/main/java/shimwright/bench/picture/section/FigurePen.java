package shimwright.bench.picture.section;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Stroke;

/**
 * Draws a figure the way its item stands: fitted in ink with fill and section lines, in the hand with a heavy blue
 * outline and blue lines, in for a trial with long dashes, still to come in thin grey dashes.
 */
public final class FigurePen {
    private static final Stroke NONE = new Stroke(DrawingStyle.INK, 0);
    private static final Stroke EDGE = new Stroke(DrawingStyle.INK, 1.1);
    private static final Stroke COMING = new Stroke(DrawingStyle.GREY, 0.8, DrawingStyle.COMING_DASH);

    private final Svg svg;

    /**
     * How one part is drawn.
     *
     * @param thin true where it is too thin on the sheet for section lines
     * @param accent true for a shim of the clearance that is shown
     * @param brass true for brass or bronze
     */
    public record Look(Stand stand, boolean thin, boolean accent, boolean brass) {}

    /** A pen that writes into a picture. */
    public FigurePen(Svg svg) {
        this.svg = svg;
    }

    /**
     * Draws one figure.
     *
     * @param place from the figure's coordinates to the sheet
     */
    public void figure(PartFigure figure, AffineTransform place, Look look) {
        Stand stand = look.stand();
        boolean accent = look.accent();
        if (stand == Stand.COMING) {
            Stroke dashes = accent ? new Stroke(DrawingStyle.BLUE, 1.4, DrawingStyle.COMING_DASH) : COMING;
            svg.path(Svg.data(place.createTransformedShape(figure.silhouette())), "", dashes);
            return;
        }
        for (PartFigure.Piece piece : figure.pieces()) {
            Shape shape = place.createTransformedShape(piece.outline());
            if (!judged(stand) && (piece.fill() == Fill.BLACK || (accent && look.thin()))) {
                solid(shape, accent || stand == Stand.IN_HAND ? DrawingStyle.BLUE : DrawingStyle.INK, stand);
            } else {
                piece(shape, piece.fill(), look);
            }
        }
        for (PartFigure.Line line : figure.lines()) {
            svg.path(Svg.data(place.createTransformedShape(line.path())), "", mark(line.mark(), stand));
        }
    }

    private void piece(Shape shape, Fill fill, Look look) {
        Stand stand = look.stand();
        String d = Svg.data(shape);
        if (judged(stand)) {
            verdict(shape, d, stand);
            return;
        }
        boolean hand = stand == Stand.IN_HAND;
        String colour = hand ? DrawingStyle.BLUE : DrawingStyle.INK;
        svg.path(d, ground(fill, look), NONE);
        if (hand || (!look.thin() && cut(fill))) {
            svg.path(lines(shape, fill, hand), "", new Stroke(colour, hand ? 1 : 0.55));
        }
        svg.path(d, "", outline(stand));
    }

    private static boolean judged(Stand stand) {
        return stand == Stand.GOOD || stand == Stand.OPEN || stand == Stand.REWORK || stand == Stand.REPLACE;
    }

    /** What was judged: a tint and lines of its own, so that a print without colour tells the same. */
    private void verdict(Shape shape, String d, Stand stand) {
        Stroke lines = new Stroke(DrawingStyle.INK, 0.8, stand == Stand.OPEN ? "1.5 3" : "");
        svg.path(d, tint(stand), NONE);
        if (stand != Stand.GOOD) {
            svg.path(Hatching.lines(shape, 45, stand == Stand.REPLACE ? 4.2 : 5.6), "", lines);
        }
        if (stand == Stand.REPLACE) {
            svg.path(Hatching.lines(shape, -45, 4.2), "", lines);
        }
        svg.path(d, "", outline(stand));
    }

    private static String tint(Stand stand) {
        return switch (stand) {
            case OPEN -> DrawingStyle.STRAW;
            case REWORK -> DrawingStyle.OCHRE;
            case REPLACE -> DrawingStyle.BRICK;
            default -> DrawingStyle.SAGE;
        };
    }

    private void solid(Shape shape, String colour, Stand stand) {
        svg.path(Svg.data(shape), colour, new Stroke(colour, stand == Stand.IN_HAND ? 1.6 : 0.6));
    }

    private static boolean cut(Fill fill) {
        return fill == Fill.RISING || fill == Fill.FALLING || fill == Fill.CLOSE;
    }

    private static String ground(Fill fill, Look look) {
        if (look.stand() == Stand.IN_HAND) {
            return DrawingStyle.BLUE_WASH;
        }
        if (fill == Fill.PLAIN) {
            return DrawingStyle.STEEL;
        }
        return look.thin() || look.brass() ? DrawingStyle.BRONZE : DrawingStyle.SECTION;
    }

    private static String lines(Shape shape, Fill fill, boolean hand) {
        double angle = fill == Fill.FALLING ? -45 : 45;
        double pitch = fill == Fill.CLOSE ? 3.2 : 4.6;
        return Hatching.lines(shape, angle, hand ? pitch + 0.6 : pitch);
    }

    private static Stroke outline(Stand stand) {
        return switch (stand) {
            case IN_HAND -> new Stroke(DrawingStyle.BLUE, 2.2);
            case TRIAL -> new Stroke(DrawingStyle.INK, 1.2, "8 2.5");
            case COMING -> COMING;
            case FITTED, GOOD -> EDGE;
            case OPEN, REWORK, REPLACE -> new Stroke(DrawingStyle.INK, 1.8);
        };
    }

    private static Stroke mark(PartFigure.Mark mark, Stand stand) {
        String colour = stand == Stand.IN_HAND ? DrawingStyle.BLUE : DrawingStyle.INK;
        return switch (mark) {
            case EDGE -> new Stroke(colour, 0.8);
            case CENTRE -> new Stroke(colour, 0.5, "6 1.5 1.5 1.5");
            case THREAD -> new Stroke(colour, 0.6);
        };
    }

    /** A casting: cut metal with wide section lines. */
    void casting(Area metal, Stand stand) {
        String d = Svg.data(metal);
        if (stand == Stand.COMING) {
            svg.path(d, "", COMING);
            return;
        }
        if (judged(stand)) {
            verdict(metal, d, stand);
            return;
        }
        boolean hand = stand == Stand.IN_HAND;
        svg.path(d, hand ? DrawingStyle.BLUE_WASH : DrawingStyle.CASTING, NONE);
        svg.path(
                Hatching.lines(metal, -45, 7),
                "",
                new Stroke(hand ? DrawingStyle.BLUE : DrawingStyle.CASTING_LINE, hand ? 0.9 : 0.7));
        svg.path(d, "", hand ? outline(stand) : new Stroke(DrawingStyle.INK, 1.4, stand == Stand.TRIAL ? "8 2.5" : ""));
    }

    /** The centre line between two points of the sheet. */
    public void centreLine(double x1, double y1, double x2, double y2) {
        svg.line(x1, y1, x2, y2, new Stroke(DrawingStyle.INK, 0.6, DrawingStyle.CENTRE_DASH));
    }

    void hiddenTip(double x1, double y1, double x2, double y2) {
        svg.line(x1, y1, x2, y2, new Stroke(DrawingStyle.INK, 0.8, DrawingStyle.HIDDEN_DASH));
    }
}
