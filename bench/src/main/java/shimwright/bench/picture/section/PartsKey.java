package shimwright.bench.picture.section;

import java.util.List;
import shimwright.bench.picture.section.SectionLabels.Label;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;

/** The names behind letters on a section that has no room for the names themselves. */
final class PartsKey {
    private static final double ROW = 20;
    private static final double LEAST_COLUMN = 230;
    private static final double TEXT = 22;

    private PartsKey() {}

    /** One letter and what it stands for. */
    record Entry(String letter, Label label) {}

    /** A, B, ... Z, AA, AB, ... */
    static String letter(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }

    private static int columns(double width) {
        return Math.max(1, (int) (width / LEAST_COLUMN));
    }

    static double height(List<Entry> entries, double width) {
        int columns = columns(width);
        int rows = (entries.size() + columns - 1) / columns;
        return entries.isEmpty() ? 0 : ROW * rows + 8;
    }

    /** Draws the key in columns, read downwards. */
    static void draw(Svg svg, List<Entry> entries, double left, double top, double width) {
        int columns = columns(width);
        int rows = (entries.size() + columns - 1) / columns;
        double column = width / columns;
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            int at = i / rows;
            double x = left + column * at;
            double y = top + ROW * (i % rows) + ROW / 2;
            Letter letter = Letter.start(DrawingStyle.TEXT).in(entry.label().colour());
            svg.circle(x + 9, y, 8.5, "", new Stroke(entry.label().colour(), 1.1));
            svg.text(
                    x + 9,
                    y + 4.2,
                    entry.letter(),
                    Letter.middle(DrawingStyle.SMALL).in(entry.label().colour()));
            String shown = TextMetrics.fit(
                    entry.label().text(), DrawingStyle.TEXT, entry.label().strong(), column - TEXT - 8);
            svg.text(x + TEXT, y + 4.5, shown, entry.label().strong() ? letter.strong() : letter);
        }
    }
}
