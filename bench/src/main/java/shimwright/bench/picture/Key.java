package shimwright.bench.picture;

import java.util.List;
import shimwright.bench.picture.Labels.Tag;
import shimwright.bench.picture.Svg.Letter;
import shimwright.bench.picture.Svg.Stroke;

/** The names behind letters on a section that has no room for the names themselves. */
final class Key {
    private static final double ROW = 20;
    private static final double LEAST_COLUMN = 230;
    private static final double TEXT = 22;

    private Key() {}

    /** One letter and what it stands for. */
    record Entry(String letter, Tag tag) {}

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
            Letter letter = Letter.start(Ink.TEXT).in(entry.tag().colour());
            svg.circle(x + 9, y, 8.5, "", new Stroke(entry.tag().colour(), 1.1));
            svg.text(
                    x + 9,
                    y + 4.2,
                    entry.letter(),
                    Letter.middle(Ink.SMALL).in(entry.tag().colour()));
            String shown = Type.fit(entry.tag().text(), Ink.TEXT, entry.tag().strong(), column - TEXT - 8);
            svg.text(x + TEXT, y + 4.5, shown, entry.tag().strong() ? letter.strong() : letter);
        }
    }
}
