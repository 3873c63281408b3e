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
    private static final double LINE = 17;

    private PartsKey() {}

    /** One letter and what it stands for. */
    record Entry(String letter, Label label) {}

    /** A, B, ... Z, AA, AB, ... */
    static String letter(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }

    /** As many columns as hold every name whole; one where a name is too long for two. */
    private static int columns(List<Entry> entries, double width) {
        int columns = Math.max(1, (int) (width / LEAST_COLUMN));
        double widest = entries.stream()
                .mapToDouble(e -> TextMetrics.width(
                        e.label().text(), DrawingStyle.TEXT, e.label().strong()))
                .max()
                .orElse(0);
        while (columns > 1 && widest > width / columns - TEXT - 8) {
            columns--;
        }
        return columns;
    }

    private static List<String> lines(Entry entry, double column) {
        return TextMetrics.wrap(
                entry.label().text(), DrawingStyle.TEXT, entry.label().strong(), column - TEXT - 8);
    }

    /** Height of the longest column. */
    static double height(List<Entry> entries, double width) {
        int columns = columns(entries, width);
        int rows = (entries.size() + columns - 1) / columns;
        double tallest = 0;
        for (int at = 0; at < columns; at++) {
            double height = 0;
            for (int i = at * rows; i < Math.min((at + 1) * rows, entries.size()); i++) {
                height += ROW + LINE * (lines(entries.get(i), width / columns).size() - 1);
            }
            tallest = Math.max(tallest, height);
        }
        return entries.isEmpty() ? 0 : tallest + 8;
    }

    /** Draws the key in columns, read downwards. */
    static void draw(Svg svg, List<Entry> entries, double left, double top, double width) {
        int columns = columns(entries, width);
        int rows = (entries.size() + columns - 1) / columns;
        double column = width / columns;
        double y = top + ROW / 2;
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            y = i % rows == 0 ? top + ROW / 2.0 : y;
            double x = left + column * (i / rows);
            Letter letter = Letter.start(DrawingStyle.TEXT).in(entry.label().colour());
            svg.circle(x + 9, y, 8.5, "", new Stroke(entry.label().colour(), 1.1));
            svg.text(
                    x + 9,
                    y + 4.2,
                    entry.letter(),
                    Letter.middle(DrawingStyle.SMALL).in(entry.label().colour()));
            for (String line : lines(entry, column)) {
                svg.text(x + TEXT, y + 4.5, line, entry.label().strong() ? letter.strong() : letter);
                y += LINE;
            }
            y += ROW - LINE;
        }
    }
}
