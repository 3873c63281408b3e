package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** What the lines mean, what is shown, and a scale bar. */
final class Legend {
    private static final double ROW = 22;
    private static final double LINE = 17;
    private static final double SWATCH = 30;
    private static final double LONGEST_BAR = 130;
    private static final double MILLIMETRE = 1e-3;
    private static final double INCH = 0.0254;
    private static final double[] MILLIMETRES = {1, 2, 5, 10, 20, 50, 100, 200, 500};
    private static final double[] INCHES = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20};
    private static final Item SAMPLE = new Item(
            "", "", "", Item.Shape.BODY, "", List.of(), List.of(), List.of(), 1, false, false, false, "", Set.of());

    private final List<Stand> stands = new ArrayList<>();
    private final UnitSystem units;
    private final double scale;
    private final boolean judged;
    private final String name;
    private final String shows;

    /**
     * Plans the legend.
     *
     * @param scale drawing units per metre of the upright section; 0 leaves the bar out
     */
    Legend(Unit unit, SectionState state, SectionView view, boolean upright, boolean flat, double scale) {
        this.units = view.units();
        this.scale = scale;
        this.judged = !state.verdicts().isEmpty();
        this.name = unit.type().maker() + " " + unit.type().model() + " " + unit.variant();
        String cross = "across the differential, seen from above, front up";
        this.shows = upright
                ? "Section through the shafts, front to the left" + (flat ? "; " + cross : "")
                : "Section " + cross;
        if (!state.verdicts().isEmpty()) {
            List.of(Stand.GOOD, Stand.OPEN, Stand.REWORK, Stand.REPLACE).stream()
                    .filter(state.verdicts()::containsValue)
                    .forEach(stands::add);
            stands.add(Stand.COMING);
            return;
        }
        stands.add(Stand.FITTED);
        if (!state.inHand().isEmpty()) {
            stands.add(Stand.IN_HAND);
        }
        if (unit.type().items().stream().anyMatch(i -> state.of(i) == Stand.TRIAL)) {
            stands.add(Stand.TRIAL);
        }
        stands.add(Stand.COMING);
    }

    double height(double width) {
        double bar = barCount() > 0 ? ROW : 0;
        return ROW * rows(width).size() + bar + LINE * (lines(width).size() + 1) + 6;
    }

    private List<String> lines(double width) {
        return TextMetrics.wrap(shows, DrawingStyle.SMALL, false, width);
    }

    private List<List<Stand>> rows(double width) {
        List<List<Stand>> rows = new ArrayList<>();
        List<Stand> row = new ArrayList<>();
        double x = 0;
        for (Stand stand : stands) {
            if (x > 0 && x + entry(stand) - 20 > width) {
                rows.add(row);
                row = new ArrayList<>();
                x = 0;
            }
            row.add(stand);
            x += entry(stand);
        }
        rows.add(row);
        return rows;
    }

    private String words(Stand stand) {
        return judged && stand == Stand.COMING ? "not looked at" : stand.words();
    }

    private double entry(Stand stand) {
        return SWATCH + 8 + TextMetrics.width(words(stand), DrawingStyle.SMALL, false) + 20;
    }

    void draw(Svg svg, double left, double top, double width) {
        double y = top + ROW / 2;
        for (List<Stand> row : rows(width)) {
            double x = left;
            for (Stand stand : row) {
                Area box = new Area(new Rectangle2D.Double(x + 1, y - 7, SWATCH, 14));
                PartFigure sample =
                        new PartFigure(SAMPLE, List.of(new PartFigure.Piece(box, PartFigure.Fill.RISING)), List.of());
                new FigurePen(svg)
                        .figure(sample, new AffineTransform(), new FigurePen.Look(stand, false, false, false));
                svg.text(x + SWATCH + 8, y + 4.2, words(stand), Letter.start(DrawingStyle.SMALL));
                x += entry(stand);
            }
            y += ROW;
        }
        if (barCount() > 0) {
            bar(svg, left + 1, y);
            y += ROW;
        }
        svg.text(
                left,
                y + 6,
                TextMetrics.fit(name, DrawingStyle.TEXT, true, width),
                Letter.start(DrawingStyle.TEXT).strong());
        for (String line : lines(width)) {
            y += LINE;
            svg.text(left, y + 6, line, Letter.start(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
        }
    }

    /** The longest round length that is not too long on the sheet, in the person's unit; 0 where none is. */
    private double barCount() {
        double one = units == UnitSystem.INCH ? INCH : MILLIMETRE;
        double count = 0;
        if (scale <= 0) {
            return count;
        }
        for (double n : units == UnitSystem.INCH ? INCHES : MILLIMETRES) {
            count = n * one * scale <= LONGEST_BAR ? n : count;
        }
        return count;
    }

    private void bar(Svg svg, double left, double y) {
        boolean inch = units == UnitSystem.INCH;
        double count = barCount();
        double end = left + count * (inch ? INCH : MILLIMETRE) * scale;
        String d = "M" + Svg.p(left, y - 5) + "L" + Svg.p(left, y + 5) + "M" + Svg.p(left, y) + "L" + Svg.p(end, y)
                + "M" + Svg.p(end, y - 5) + "L" + Svg.p(end, y + 5);
        svg.path(d, "", new Stroke(DrawingStyle.INK, 1.2));
        svg.text(end + 7, y + 4.2, Svg.n(count) + (inch ? " in" : " mm"), Letter.start(DrawingStyle.SMALL));
    }
}
