package shimwright.bench.picture.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.UnitSystem;

/**
 * A linear axis in the units of the person, with round ticks.
 *
 * @param low SI value at one end
 * @param high SI value at the other end, above low
 * @param from sheet position of low
 * @param to sheet position of high
 * @param unit unit of the figures
 * @param step distance of the ticks in that unit, above 0
 */
record Axis(double low, double high, double from, double to, MeasureUnit unit, double step) {
    private static final Stroke LINE = new Stroke(DrawingStyle.INK, 1);
    private static final Stroke GRID = new Stroke(DrawingStyle.FAINT, 0.6);

    /**
     * An axis that holds all values with some air.
     *
     * @param ticks about how many ticks are wanted, at least 2
     */
    static Axis over(double[] values, Kind kind, UnitSystem system, double from, double to, int ticks) {
        MeasureUnit unit = system.display(kind).unit();
        double low = DoubleStream.of(values).min().orElse(0);
        double high = DoubleStream.of(values).max().orElse(0);
        double least = Math.pow(10, -system.display(kind).decimals()) * unit.factor();
        double air = Math.max(0.06 * (high - low), least);
        low -= air;
        high += air;
        return new Axis(low, high, from, to, unit, round((high - low) / unit.factor() / ticks));
    }

    /** The nearest round step: 1, 2 or 5 times a power of ten. */
    private static double round(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step)));
        double share = step / power;
        return power * (share <= 1.4 ? 1 : share <= 3.2 ? 2 : share <= 7 ? 5 : 10);
    }

    double at(double si) {
        return from + (si - low) / (high - low) * (to - from);
    }

    /** At, kept between the ends of the axis. */
    double within(double si) {
        return at(Math.max(low, Math.min(high, si)));
    }

    /** Digits after the point that the step needs. */
    int decimals() {
        return Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    }

    /** SI values of the ticks. */
    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        for (double k = Math.ceil(unit.fromSi(low) / step - 1e-9); k * step <= unit.fromSi(high) + step * 1e-9; k++) {
            ticks.add(unit.toSi(k * step));
        }
        return ticks;
    }

    String figure(double si) {
        return figure(si, decimals());
    }

    /** The figure without its unit; never a negative zero. */
    String figure(double si, int digits) {
        BigDecimal shown = BigDecimal.valueOf(unit.fromSi(si)).setScale(digits, RoundingMode.HALF_UP);
        return (shown.signum() == 0 ? shown.abs() : shown).toPlainString().replace('-', '−');
    }

    /** Draws it lying, its figures below, its unit at the right end. */
    void lying(Svg svg, double y, double gridTop) {
        double left = Math.min(from, to);
        double right = Math.max(from, to);
        for (double tick : ticks()) {
            svg.line(at(tick), gridTop, at(tick), y, GRID);
            svg.line(at(tick), y, at(tick), y + 5, LINE);
            double width = TextMetrics.width(figure(tick), DrawingStyle.SMALL, false);
            if (at(tick) + width / 2 < right + 2 && at(tick) - width / 2 > 1) {
                svg.text(at(tick), y + 18, figure(tick), Letter.middle(DrawingStyle.SMALL));
            }
        }
        svg.line(left, y, right, y, LINE);
        svg.text(right + 6, y + 4, unit.symbol(), Letter.start(DrawingStyle.SMALL));
    }

    /** Draws it standing, its figures to the left, its unit on top. */
    void standing(Svg svg, double x, double gridRight) {
        double top = Math.min(from, to);
        for (double tick : ticks()) {
            svg.line(x, at(tick), gridRight, at(tick), GRID);
            svg.line(x - 5, at(tick), x, at(tick), LINE);
            svg.text(x - 8, at(tick) + 4.2, figure(tick), Letter.end(DrawingStyle.SMALL));
        }
        svg.line(x, top, x, Math.max(from, to), LINE);
        svg.text(x - 8, top - 8, unit.symbol(), Letter.end(DrawingStyle.SMALL));
    }
}
