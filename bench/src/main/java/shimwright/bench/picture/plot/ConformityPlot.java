package shimwright.bench.picture.plot;

import java.awt.geom.Path2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shimwright.bench.picture.plot.Plots.Conformity;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;

/** A bell of uncertainty over its limits: what lies within is washed, what lies outside is hatched. */
final class ConformityPlot {
    private static final double PLOT = 150;
    private static final double TAILS = 4;
    private static final int POINTS = 160;

    private final Conformity conformity;
    private final Page page;
    private final Svg svg = new Svg();
    private final double left = PlotLayout.MARGIN + 8;
    private final double right;
    private final double top = PlotLayout.TITLE + 52;
    private final double bottom = top + PLOT;
    private final Axis axis;

    ConformityPlot(Conformity conformity, Page page) {
        this.conformity = conformity;
        this.page = page;
        right = page.width() - PlotLayout.MARGIN - 26;
        List<Double> values = new ArrayList<>(List.of(
                conformity.value(),
                conformity.value() - TAILS * conformity.u(),
                conformity.value() + TAILS * conformity.u()));
        double[] span = PlotLayout.span(values, conformity.lower(), conformity.upper(), conformity.hot());
        axis = Axis.over(span, conformity.kind(), page.units(), left, right, page.width() < 500 ? 4 : 7);
    }

    String draw() {
        svg.root(
                page.idPrefix(),
                page.width(),
                bottom + (conformity.hot().isPresent() ? 64 : 48),
                conformity.title(),
                about());
        PlotLayout.title(svg, conformity.title(), page.width());
        axis.lying(svg, bottom, top);
        if (conformity.u() > 0) {
            bell();
        }
        limits();
        marks();
        String says = within();
        svg.text(
                PlotLayout.MARGIN,
                40,
                says,
                Letter.start(DrawingStyle.TEXT).strong().in(DrawingStyle.BLUE));
        return svg.done();
    }

    private String about() {
        return conformity.title() + ": " + print(conformity.value()) + ". " + within() + ".";
    }

    private String within() {
        if (conformity.lower().isEmpty() && conformity.upper().isEmpty()) {
            return "no limits given";
        }
        double percent = 100 * conformity.probability();
        String figure;
        if (percent > 99.9 && conformity.u() > 0) {
            figure = "over 99.9 %";
        } else if (percent < 0.1 && conformity.u() > 0) {
            figure = "under 0.1 %";
        } else {
            figure = BigDecimal.valueOf(percent)
                            .setScale(1, RoundingMode.HALF_UP)
                            .toPlainString() + " %";
        }
        return (figure.startsWith("over") || figure.startsWith("under") ? "p " : "p = ") + figure
                + " within the limits";
    }

    private String print(double si) {
        return PlotLayout.print(si, conformity.kind(), page.units());
    }

    /** Height of the distribution relative to its peak: Student's t, or the normal for infinite nu. */
    private double density(double si) {
        double t = (si - conformity.value()) / conformity.u();
        return Double.isInfinite(conformity.nu())
                ? Math.exp(-t * t / 2)
                : Math.pow(1 + t * t / conformity.nu(), -(conformity.nu() + 1) / 2);
    }

    private void bell() {
        double from = Math.max(axis.low(), conformity.value() - 6 * conformity.u());
        double to = Math.min(axis.high(), conformity.value() + 6 * conformity.u());
        double low = conformity.lower().orElse(from);
        double high = conformity.upper().orElse(to);
        Path2D inside = under(Math.max(from, Math.min(low, to)), Math.min(to, Math.max(high, from)));
        Path2D below = under(from, Math.min(low, to));
        Path2D above = under(Math.max(high, from), to);
        svg.path(Svg.data(inside), DrawingStyle.BLUE_WASH, new Stroke(DrawingStyle.BLUE, 0));
        for (Path2D tail : List.of(below, above)) {
            svg.path(Hatching.lines(tail, 45, 4.5), "", new Stroke(DrawingStyle.INK, 0.8));
        }
        StringBuilder d = new StringBuilder();
        for (int i = 0; i <= POINTS; i++) {
            double si = from + (to - from) * i / POINTS;
            d.append(i == 0 ? 'M' : 'L').append(Svg.p(axis.at(si), y(si)));
        }
        svg.path(d.toString(), "", new Stroke(DrawingStyle.BLUE, 2));
    }

    private double y(double si) {
        return bottom - density(si) * (PLOT - 14);
    }

    /** The area under the bell; empty where there is no width. */
    private Path2D under(double from, double to) {
        Path2D path = new Path2D.Double();
        if (to > from) {
            path.moveTo(axis.at(from), bottom);
            for (int i = 0; i <= POINTS; i++) {
                double si = from + (to - from) * i / POINTS;
                path.lineTo(axis.at(si), y(si));
            }
            path.lineTo(axis.at(to), bottom);
            path.closePath();
        }
        return path;
    }

    private void limits() {
        for (OptionalDouble limit : List.of(conformity.lower(), conformity.upper())) {
            limit.ifPresent(l -> svg.line(axis.at(l), top - 8, axis.at(l), bottom + 5, PlotLayout.LIMIT));
        }
        PlotLayout.limits(
                svg,
                conformity.lower().isPresent()
                        ? "least " + print(conformity.lower().getAsDouble())
                        : "",
                axis.at(conformity.lower().orElse(axis.low())),
                conformity.upper().isPresent()
                        ? "most " + print(conformity.upper().getAsDouble())
                        : "",
                axis.at(conformity.upper().orElse(axis.high())),
                top - 12,
                page.width());
    }

    private void marks() {
        double x = axis.at(conformity.value());
        svg.line(x, conformity.u() > 0 ? y(conformity.value()) : top + 10, x, bottom, PlotLayout.MEAN);
        svg.circle(x, bottom, 4.5, DrawingStyle.BLUE, new Stroke(DrawingStyle.SECTION, 1));
        String cold = (conformity.hot().isPresent() ? "cold " : "") + print(conformity.value());
        double coldWidth = TextMetrics.width(cold, DrawingStyle.SMALL, true);
        double coldX = Math.max(PlotLayout.MARGIN, Math.min(x - coldWidth / 2, page.width() - coldWidth - 2));
        svg.text(
                coldX,
                bottom + 38,
                cold,
                Letter.start(DrawingStyle.SMALL).strong().in(DrawingStyle.BLUE));
        conformity.hot().ifPresent(h -> hot(h, coldX, coldX + coldWidth));
    }

    /** The hot value as a hollow diamond; its words beside those of the cold one. */
    private void hot(double value, double coldFrom, double coldTo) {
        double x = axis.at(value);
        svg.line(x, top + 24, x, bottom, new Stroke(DrawingStyle.INK, 1.3, "5 3"));
        String diamond = "M" + Svg.p(x, bottom - 6) + "L" + Svg.p(x + 6, bottom) + "L" + Svg.p(x, bottom + 6) + "L"
                + Svg.p(x - 6, bottom) + "Z";
        svg.path(diamond, DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 1.4));
        String text = "hot " + print(value);
        double width = TextMetrics.width(text, DrawingStyle.SMALL, true);
        double from = Math.max(2, Math.min(x - width / 2, page.width() - width - 2));
        boolean meet = from < coldTo + 12 && from + width > coldFrom - 12;
        svg.text(
                from,
                bottom + (meet ? 55 : 38),
                text,
                Letter.start(DrawingStyle.SMALL).strong());
    }
}
