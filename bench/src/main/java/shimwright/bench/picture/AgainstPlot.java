package shimwright.bench.picture;

import java.awt.geom.Path2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shimwright.bench.picture.Plots.Against;
import shimwright.bench.picture.Plots.Page;
import shimwright.bench.picture.Svg.Letter;
import shimwright.bench.picture.Svg.Stroke;

/** A bell of doubt over its limits: what lies within is washed, what lies outside is hatched. */
final class AgainstPlot {
    private static final double PLOT = 150;
    private static final double TAILS = 4;
    private static final int POINTS = 160;

    private final Against against;
    private final Page page;
    private final Svg svg = new Svg();
    private final double left = Sheetlet.MARGIN + 8;
    private final double right;
    private final double top = Sheetlet.TITLE + 52;
    private final double bottom = top + PLOT;
    private final Axis axis;

    AgainstPlot(Against against, Page page) {
        this.against = against;
        this.page = page;
        right = page.width() - Sheetlet.MARGIN - 26;
        List<Double> values = new ArrayList<>(
                List.of(against.value(), against.value() - TAILS * against.u(), against.value() + TAILS * against.u()));
        double[] span = Sheetlet.span(values, against.lower(), against.upper(), against.hot());
        axis = Axis.over(span, against.kind(), page.units(), left, right, page.width() < 500 ? 4 : 7);
    }

    String draw() {
        svg.root(
                page.idPrefix(),
                page.width(),
                bottom + (against.hot().isPresent() ? 64 : 48),
                against.title(),
                about());
        Sheetlet.title(svg, against.title(), page.width());
        axis.lying(svg, bottom, top);
        if (against.u() > 0) {
            bell();
        }
        limits();
        marks();
        String says = within();
        svg.text(Sheetlet.MARGIN, 40, says, Letter.start(Ink.TEXT).strong().in(Ink.BLUE));
        return svg.done();
    }

    private String about() {
        return against.title() + ": " + print(against.value()) + ". " + within() + ".";
    }

    private String within() {
        if (against.lower().isEmpty() && against.upper().isEmpty()) {
            return "no limits given";
        }
        double percent = 100 * against.probability();
        String figure;
        if (percent > 99.9 && percent < 100) {
            figure = "over 99.9 %";
        } else if (percent < 0.1 && percent > 0) {
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
        return Sheetlet.print(si, against.kind(), page.units());
    }

    /** Height of the distribution relative to its peak: Student's t, or the normal for infinite nu. */
    private double density(double si) {
        double t = (si - against.value()) / against.u();
        return Double.isInfinite(against.nu())
                ? Math.exp(-t * t / 2)
                : Math.pow(1 + t * t / against.nu(), -(against.nu() + 1) / 2);
    }

    private void bell() {
        double from = Math.max(axis.low(), against.value() - 6 * against.u());
        double to = Math.min(axis.high(), against.value() + 6 * against.u());
        double low = against.lower().orElse(from);
        double high = against.upper().orElse(to);
        Path2D inside = under(Math.max(from, Math.min(low, to)), Math.min(to, Math.max(high, from)));
        Path2D below = under(from, Math.min(low, to));
        Path2D above = under(Math.max(high, from), to);
        svg.path(Svg.data(inside), Ink.BLUE_WASH, new Stroke(Ink.BLUE, 0));
        for (Path2D tail : List.of(below, above)) {
            svg.path(Hatch.lines(tail, 45, 4.5), "", new Stroke(Ink.INK, 0.8));
        }
        StringBuilder d = new StringBuilder();
        for (int i = 0; i <= POINTS; i++) {
            double si = from + (to - from) * i / POINTS;
            d.append(i == 0 ? 'M' : 'L').append(Svg.p(axis.at(si), y(si)));
        }
        svg.path(d.toString(), "", new Stroke(Ink.BLUE, 2));
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
        for (OptionalDouble limit : List.of(against.lower(), against.upper())) {
            limit.ifPresent(l -> svg.line(axis.at(l), top - 8, axis.at(l), bottom + 5, Sheetlet.LIMIT));
        }
        Sheetlet.limits(
                svg,
                against.lower().isPresent() ? "least " + print(against.lower().getAsDouble()) : "",
                axis.at(against.lower().orElse(axis.low())),
                against.upper().isPresent() ? "most " + print(against.upper().getAsDouble()) : "",
                axis.at(against.upper().orElse(axis.high())),
                top - 12,
                page.width());
    }

    private void marks() {
        double x = axis.at(against.value());
        svg.line(x, against.u() > 0 ? y(against.value()) : top + 10, x, bottom, Sheetlet.MEAN);
        svg.circle(x, bottom, 4.5, Ink.BLUE, new Stroke(Ink.SECTION, 1));
        String cold = (against.hot().isPresent() ? "cold " : "") + print(against.value());
        double coldWidth = Type.width(cold, Ink.SMALL, true);
        double coldX = Math.max(Sheetlet.MARGIN, Math.min(x - coldWidth / 2, page.width() - coldWidth - 2));
        svg.text(coldX, bottom + 38, cold, Letter.start(Ink.SMALL).strong().in(Ink.BLUE));
        against.hot().ifPresent(h -> hot(h, coldX, coldX + coldWidth));
    }

    /** The hot value as a hollow diamond; its words beside those of the cold one. */
    private void hot(double value, double coldFrom, double coldTo) {
        double x = axis.at(value);
        svg.line(x, top + 24, x, bottom, new Stroke(Ink.INK, 1.3, "5 3"));
        String diamond = "M" + Svg.p(x, bottom - 6) + "L" + Svg.p(x + 6, bottom) + "L" + Svg.p(x, bottom + 6) + "L"
                + Svg.p(x - 6, bottom) + "Z";
        svg.path(diamond, Ink.SECTION, new Stroke(Ink.INK, 1.4));
        String text = "hot " + print(value);
        double width = Type.width(text, Ink.SMALL, true);
        double from = Math.max(2, Math.min(x - width / 2, page.width() - width - 2));
        boolean meet = from < coldTo + 12 && from + width > coldFrom - 12;
        svg.text(from, bottom + (meet ? 55 : 38), text, Letter.start(Ink.SMALL).strong());
    }
}
