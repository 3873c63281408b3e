package shimwright.bench.picture.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import shimwright.bench.picture.plot.PlotLayout.Side;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.plot.Plots.Series;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem.Display;

/** Readings in order. The first indicator is a filled disc, the second a hollow square. */
final class SeriesPlot {
    private static final double PLOT = 200;
    private static final double MARK = 4.2;
    private static final double STEP_AIR = 7;

    private final Series series;
    private final Page page;
    private final Svg svg = new Svg();
    private final double left;
    private final double right;
    private final double top = PlotLayout.TITLE + 22;
    private final double bottom = top + PLOT;
    private final Axis axis;

    SeriesPlot(Series series, Page page) {
        this.series = series;
        this.page = page;
        double side = sides().stream()
                .mapToDouble(s -> TextMetrics.width(s.text(), DrawingStyle.SMALL, true))
                .max()
                .orElse(0);
        left = PlotLayout.MARGIN + 52;
        right = page.width() - PlotLayout.MARGIN - Math.min(side + 8, 0.52 * page.width());
        List<Double> values = new ArrayList<>(series.first());
        values.addAll(series.second());
        series.mean().ifPresent(m -> {
            values.add(m - series.expanded());
            values.add(m + series.expanded());
        });
        double[] span = PlotLayout.span(values, series.lower(), series.upper());
        axis = Axis.over(span, series.kind(), page.units(), bottom, top, 5);
    }

    String draw() {
        double height = bottom + 44 + 22 * (1 + series.outliers().size());
        svg.root(page.idPrefix(), page.width(), height, series.title(), about());
        PlotLayout.title(svg, series.title(), page.width());
        band();
        axis.standing(svg, left, right);
        limit(series.lower());
        limit(series.upper());
        settled();
        marks();
        double column = right + 8;
        PlotLayout.column(svg, placed(), column, top, bottom);
        below();
        return svg.done();
    }

    private String about() {
        return series.first().size() + " readings"
                + (series.second().isEmpty() ? "" : " of two indicators")
                + (series.settledFrom() < series.first().size()
                        ? ", settled from reading " + (series.settledFrom() + 1)
                        : ", not settled")
                + (series.mean().isPresent() ? ", mean " + print(series.mean().getAsDouble()) : "")
                + ".";
    }

    private String print(double si) {
        return PlotLayout.print(si, series.kind(), page.units());
    }

    private double x(int index) {
        int count = Math.max(series.first().size(), 1);
        return left + (right - left) * (index + 0.5) / count;
    }

    private void band() {
        if (series.mean().isPresent() && series.settledFrom() < series.first().size()) {
            double mean = series.mean().getAsDouble();
            double from = x(series.settledFrom()) - 12;
            double up = axis.at(mean + series.expanded());
            double low = axis.at(mean - series.expanded());
            svg.rect(
                    from,
                    up,
                    right - from,
                    low - up,
                    DrawingStyle.BLUE_WASH,
                    new Stroke(DrawingStyle.BLUE, 0.6, "3 2"));
            svg.line(from, axis.at(mean), right, axis.at(mean), PlotLayout.MEAN);
        }
    }

    private void limit(OptionalDouble limit) {
        limit.ifPresent(l -> svg.line(left, axis.at(l), right, axis.at(l), PlotLayout.LIMIT));
    }

    private List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        Letter ink = Letter.start(DrawingStyle.SMALL);
        series.upper().ifPresent(l -> sides.add(new Side(l, "most " + print(l), ink)));
        series.lower().ifPresent(l -> sides.add(new Side(l, "least " + print(l), ink)));
        series.mean().ifPresent(m -> sides.add(new Side(m, mean(m), ink.strong().in(DrawingStyle.BLUE))));
        return sides;
    }

    private String mean(double mean) {
        Display display = page.units().display(series.kind());
        String value = PlotLayout.print(mean, series.kind(), page.units());
        if (!(series.expanded() > 0)) {
            return "mean " + value;
        }
        String u = Quantities.print(series.expanded(), display.unit(), display.decimals());
        return value.replace(" " + display.unit().symbol(), "") + " ± " + u;
    }

    private List<Side> placed() {
        double room = page.width() - right - 8;
        return sides().stream()
                .map(s -> new Side(
                        axis.at(s.y()),
                        TextMetrics.fit(s.text(), DrawingStyle.SMALL, s.letter().bold(), room),
                        s.letter()))
                .toList();
    }

    /** A bracket under the readings that agree. */
    private void settled() {
        int count = series.first().size();
        double step = TextMetrics.width(Integer.toString(count), DrawingStyle.SMALL, false) + STEP_AIR;
        int every = Math.max(1, (int) Math.ceil(step * count / (right - left)));
        for (int i = 0; i < count; i += every) {
            svg.text(x(i), bottom + 16, Integer.toString(i + 1), Letter.middle(DrawingStyle.SMALL));
        }
        svg.line(left, bottom, right, bottom, new Stroke(DrawingStyle.INK, 1));
        if (series.settledFrom() < count) {
            double from = x(series.settledFrom()) - 9;
            double to = x(count - 1) + 9;
            double y = bottom + 24;
            String bracket =
                    "M" + Svg.p(from, y - 4) + "L" + Svg.p(from, y) + "L" + Svg.p(to, y) + "L" + Svg.p(to, y - 4);
            svg.path(bracket, "", new Stroke(DrawingStyle.BLUE, 1.4));
            double half = TextMetrics.width("settled", DrawingStyle.SMALL, false) / 2;
            double middle = Math.max(left + half, Math.min((from + to) / 2, right - half));
            svg.text(
                    middle, y + 15, "settled", Letter.middle(DrawingStyle.SMALL).in(DrawingStyle.BLUE));
        }
    }

    private void marks() {
        path(series.first(), "");
        path(series.second(), "4 3");
        for (int i = 0; i < series.first().size(); i++) {
            boolean two = !series.second().isEmpty();
            double shift = two ? 4 : 0;
            double y = axis.at(series.first().get(i));
            svg.circle(x(i) - shift, y, MARK, DrawingStyle.INK, new Stroke(DrawingStyle.SECTION, 0.8));
            if (two) {
                double other = axis.at(series.second().get(i));
                svg.rect(
                        x(i) + shift - MARK,
                        other - MARK,
                        2 * MARK,
                        2 * MARK,
                        DrawingStyle.SECTION,
                        new Stroke(DrawingStyle.INK, 1.5));
                if (series.outliers().containsKey(i)) {
                    svg.circle(x(i) + shift, other, 10, "", new Stroke(DrawingStyle.BLUE, 1.8));
                }
            }
            if (series.outliers().containsKey(i)) {
                svg.circle(x(i) - shift, y, 10, "", new Stroke(DrawingStyle.BLUE, 1.8));
            }
        }
    }

    private void path(List<Double> values, String dash) {
        StringBuilder d = new StringBuilder();
        double shift = series.second().isEmpty() ? 0 : dash.isEmpty() ? -4 : 4;
        for (int i = 0; i < values.size(); i++) {
            d.append(i == 0 ? 'M' : 'L').append(Svg.p(x(i) + shift, axis.at(values.get(i))));
        }
        svg.path(d.toString(), "", new Stroke(DrawingStyle.GREY, 0.9, dash));
    }

    /** The meaning of the marks, and what is said about outliers. */
    private void below() {
        double y = bottom + 56;
        double x = PlotLayout.MARGIN;
        if (!series.second().isEmpty()) {
            svg.circle(x + 6, y - 4, MARK, DrawingStyle.INK, new Stroke(DrawingStyle.SECTION, 0.8));
            svg.text(x + 16, y, "indicator 1", Letter.start(DrawingStyle.SMALL));
            x += 16 + TextMetrics.width("indicator 1", DrawingStyle.SMALL, false) + 18;
            svg.rect(x + 2, y - 8, 2 * MARK, 2 * MARK, DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 1.5));
            svg.text(x + 16, y, "indicator 2", Letter.start(DrawingStyle.SMALL));
        } else {
            y -= 18;
        }
        double room = page.width() - 2 * PlotLayout.MARGIN - 22;
        for (var outlier : new TreeMap<>(series.outliers()).entrySet()) {
            y += 20;
            svg.circle(PlotLayout.MARGIN + 7, y - 4, 6, "", new Stroke(DrawingStyle.BLUE, 1.6));
            String text = "reading " + (outlier.getKey() + 1) + ": " + outlier.getValue();
            svg.text(
                    PlotLayout.MARGIN + 20,
                    y,
                    TextMetrics.fit(text, DrawingStyle.SMALL, false, room),
                    Letter.start(DrawingStyle.SMALL));
        }
    }
}
