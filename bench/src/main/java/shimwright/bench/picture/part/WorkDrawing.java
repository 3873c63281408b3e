package shimwright.bench.picture.part;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;

/**
 * What is worked on, drawn as a sheet of work shows it: not to scale, the worked surface heavy, finished size and what holds for its
 * form (signs of ISO 1101: ○ out of round, ↗ run-out, ▱ out of flat).
 */
public final class WorkDrawing {
    private static final double WIDE = 420;
    private static final double HIGH = 250;
    private static final double LEFT = 104;
    private static final double RIGHT = 232;
    private static final double TOP = 72;
    private static final double BOTTOM = 176;
    private static final Stroke EDGE = new Stroke(DrawingStyle.INK, 1.4);
    private static final Stroke FINE = new Stroke(DrawingStyle.INK, 0.6);
    private static final Stroke WORKED = new Stroke(DrawingStyle.BLUE, 4);

    private final Svg svg = new Svg();
    private final Map<String, Double> numbers;
    private final UnitSystem units;

    private WorkDrawing(Map<String, Double> numbers, UnitSystem units) {
        this.numbers = numbers;
        this.units = units;
    }

    /**
     * The drawing of a sheet's numbers.
     *
     * @param numbers of the order, SI
     * @return empty where there is nothing to draw
     */
    public static String of(Map<String, Double> numbers, UnitSystem units) {
        boolean shaft = numbers.containsKey("shaft");
        boolean bore = numbers.containsKey("bore");
        if (!shaft && !bore && !numbers.containsKey("face")) {
            return "";
        }
        WorkDrawing drawing = new WorkDrawing(numbers, units);
        drawing.svg.root("work", WIDE, HIGH, "What is worked on", "Not to scale; the worked surface is heavy");
        if (shaft) {
            drawing.shaft();
        } else if (bore) {
            drawing.bore();
        } else {
            drawing.face();
        }
        drawing.notes();
        return drawing.svg.done();
    }

    private void shaft() {
        svg.rect(LEFT - 44, TOP + 14, 44, BOTTOM - TOP - 28, DrawingStyle.STEEL, EDGE);
        svg.rect(RIGHT, TOP + 22, 36, BOTTOM - TOP - 44, DrawingStyle.STEEL, EDGE);
        svg.rect(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, DrawingStyle.STEEL, EDGE);
        svg.line(LEFT, TOP, RIGHT, TOP, WORKED);
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, WORKED);
        sizes();
    }

    private void bore() {
        for (double y : new double[] {TOP - 30, BOTTOM}) {
            Rectangle2D wall = new Rectangle2D.Double(LEFT, y, RIGHT - LEFT, 30);
            svg.rect(LEFT, y, RIGHT - LEFT, 30, DrawingStyle.CASTING, EDGE);
            svg.path(Hatching.lines(wall, 45, 7), "", FINE);
        }
        svg.line(LEFT, TOP, RIGHT, TOP, WORKED);
        svg.line(LEFT, BOTTOM, RIGHT, BOTTOM, WORKED);
        sizes();
    }

    private void sizes() {
        double middle = (TOP + BOTTOM) / 2;
        svg.line(LEFT - 60, middle, RIGHT + 50, middle, new Stroke(DrawingStyle.INK, 0.6, DrawingStyle.CENTRE_DASH));
        double x = (LEFT + RIGHT) / 2;
        svg.line(x, TOP, x, BOTTOM, FINE);
        DimensionPen.arrow(svg, x, TOP, 0, 1);
        DimensionPen.arrow(svg, x, BOTTOM, 0, -1);
        double y = BOTTOM + 56;
        svg.line(LEFT, BOTTOM + 4, LEFT, y + 4, FINE);
        svg.line(RIGHT, BOTTOM + 4, RIGHT, y + 4, FINE);
        svg.line(LEFT, y, RIGHT, y, FINE);
        DimensionPen.arrow(svg, LEFT, y, 1, 0);
        DimensionPen.arrow(svg, RIGHT, y, -1, 0);
        svg.text(x, y - 5, number("length"), Letter.middle(DrawingStyle.SMALL));
    }

    private void face() {
        Rectangle2D body = new Rectangle2D.Double(LEFT - 44, TOP, RIGHT - LEFT + 80, 84);
        svg.rect(body.getX(), body.getY(), body.getWidth(), body.getHeight(), DrawingStyle.CASTING, EDGE);
        svg.path(Hatching.lines(body, 45, 9), "", FINE);
        svg.line(body.getMinX(), TOP, body.getMaxX(), TOP, WORKED);
        double x = LEFT - 58;
        svg.line(x, TOP, x, body.getMaxY(), FINE);
        svg.line(x - 4, TOP, body.getMinX(), TOP, FINE);
        svg.line(x - 4, body.getMaxY(), body.getMinX(), body.getMaxY(), FINE);
        DimensionPen.arrow(svg, x, TOP, 0, 1);
        DimensionPen.arrow(svg, x, body.getMaxY(), 0, -1);
        svg.text(
                LEFT - 44, body.getMaxY() + 18, "height at least " + number("thick"), Letter.start(DrawingStyle.SMALL));
    }

    /** What holds for the worked surface, at a line that leads to it. */
    private void notes() {
        List<String> notes = new ArrayList<>();
        if (numbers.containsKey("lower")) {
            notes.add("⌀ " + number("lower") + " to");
            notes.add("   " + number("upper"));
        }
        note(notes, "round", "○ ");
        note(notes, "runOut", "↗ ");
        note(notes, "flat", "▱ ");
        Double rough = numbers.get("roughMost");
        if (rough != null) {
            notes.add("Ra " + Quantities.brief(rough, Units.ONE) + " µm");
        }
        double x = RIGHT + 66;
        svg.path(
                "M" + Svg.p(RIGHT - 14, TOP) + "L" + Svg.p(RIGHT + 28, TOP - 34) + "L" + Svg.p(x - 6, TOP - 34),
                "",
                FINE);
        for (int i = 0; i < notes.size(); i++) {
            svg.text(
                    x,
                    TOP - 30 + 19 * i,
                    notes.get(i),
                    Letter.start(DrawingStyle.TEXT).strong());
        }
    }

    private void note(List<String> notes, String name, String sign) {
        if (numbers.containsKey(name)) {
            notes.add(sign + number(name));
        }
    }

    private String number(String name) {
        return DimensionPen.number(numbers.getOrDefault(name, 0.0), units);
    }
}
