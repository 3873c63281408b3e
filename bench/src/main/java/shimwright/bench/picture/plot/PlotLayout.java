package shimwright.bench.picture.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;

/** What every plot has in common: its margins and title, and labels beside lines that keep clear of each other. */
final class PlotLayout {
    static final double MARGIN = 12;
    static final double TITLE = 30;
    static final Stroke LIMIT = new Stroke(DrawingStyle.INK, 1.6);
    static final Stroke MEAN = new Stroke(DrawingStyle.BLUE, 1.6);
    private static final double LEAST_GAP = 15;

    private PlotLayout() {}

    /** A text that wants to stand at a height. */
    record Side(double y, String text, Letter letter) {}

    static void title(Svg svg, String title, double width) {
        String shown = TextMetrics.fit(title, DrawingStyle.HEAD, true, width - 2 * MARGIN);
        svg.text(MARGIN, 20, shown, Letter.start(DrawingStyle.HEAD).strong());
    }

    /** Sets texts in one column, each as near to its height as the others allow. */
    static void column(Svg svg, List<Side> sides, double x, double top, double bottom) {
        List<Side> sorted = new ArrayList<>(sides);
        sorted.sort(Comparator.comparingDouble(Side::y));
        double[] y = new double[sorted.size()];
        double low = top;
        for (int i = 0; i < y.length; i++) {
            y[i] = Math.max(sorted.get(i).y(), low);
            low = y[i] + LEAST_GAP;
        }
        double high = bottom;
        for (int i = y.length - 1; i >= 0; i--) {
            y[i] = Math.min(y[i], high);
            high = y[i] - LEAST_GAP;
        }
        for (int i = 0; i < y.length; i++) {
            svg.text(x, y[i] + 4.2, sorted.get(i).text(), sorted.get(i).letter());
        }
    }

    /** A value with its unit, with a true minus sign. */
    static String print(double si, Kind kind, UnitSystem units) {
        return Quantities.print(si, kind, units).replace('-', '−');
    }

    /** A pair of words above two lines, the first to the left of its line, the second to the right of its own. */
    static void limits(Svg svg, String least, double leastX, String most, double mostX, double y, double width) {
        double one = TextMetrics.width(least, DrawingStyle.SMALL, false);
        double two = TextMetrics.width(most, DrawingStyle.SMALL, false);
        double first = Math.max(2, Math.min(leastX - one - 5, width - one - 2));
        double second = Math.max(2, Math.min(mostX + 5, width - two - 2));
        boolean meet = !least.isEmpty() && !most.isEmpty() && first < second + two + 8 && second < first + one + 8;
        svg.text(first, y - (meet ? 15 : 0), least, Letter.start(DrawingStyle.SMALL));
        svg.text(second, y, most, Letter.start(DrawingStyle.SMALL));
    }

    /** All of some values with those limits that exist. */
    static double[] span(List<Double> values, OptionalDouble... more) {
        List<Double> all = new ArrayList<>(values);
        for (OptionalDouble one : more) {
            one.ifPresent(all::add);
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
