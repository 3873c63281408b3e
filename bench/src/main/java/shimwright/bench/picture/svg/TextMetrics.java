package shimwright.bench.picture.svg;

import java.util.ArrayList;
import java.util.List;

/** How wide a text will be, so that labels can be placed without a screen. Advance widths of DejaVu Sans, rounded. */
public final class TextMetrics {
    /** Hundredths of the letter size for the characters from space to tilde. */
    private static final int[] ADVANCE = {
        32, 40, 46, 84, 64, 95, 78, 28, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34,
                84,
        84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 30, 66, 56, 86, 75, 79, 60, 79, 69, 63, 61, 73, 68, 99, 69,
                61,
        69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63, 63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52, 39, 63,
                59,
        82, 59, 59, 52, 64, 34, 64, 84
    };
    /** Taken for every other character; the widest that occurs (plus-minus, minus, arrow). */
    private static final int OTHER = 84;

    private static final int NO_BREAK = 0xA0;
    private static final double BOLD = 1.13;

    private TextMetrics() {}

    /** Width of a text in the unit of the letter size. */
    public static double width(String text, double size, boolean bold) {
        int sum = text.codePoints()
                .map(c -> c == NO_BREAK ? ' ' : c)
                .map(c -> c >= ' ' && c <= '~' ? ADVANCE[c - ' '] : OTHER)
                .sum();
        return sum * size / 100 * (bold ? BOLD : 1);
    }

    /** The text, or as much of it as fits with an ellipsis. */
    public static String fit(String text, double size, boolean bold, double room) {
        if (width(text, size, bold) <= room) {
            return text;
        }
        String cut = text;
        while (!cut.isEmpty() && width(cut + "…", size, bold) > room) {
            cut = cut.substring(0, cut.offsetByCodePoints(cut.length(), -1));
        }
        return cut.stripTrailing() + "…";
    }

    /** The text in lines no wider than the room; a single word that is wider stands alone. */
    public static List<String> wrap(String text, double size, boolean bold, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, bold) > room) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
