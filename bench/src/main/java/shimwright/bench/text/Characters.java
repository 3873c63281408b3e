package shimwright.bench.text;

import java.util.OptionalInt;

/**
 * Characters that text may hold. Refused are control characters other than tab and line ends, halves of surrogate pairs,
 * what XML 1.0 (5th edition, section 2.2, production 2) leaves out, and the marks that turn the direction of what follows
 * (Unicode Standard Annex 9, sections 2.1 to 2.4), because with them a number reads other than it was typed.
 */
public final class Characters {
    private static final char INSTEAD = '\uFFFD';

    private Characters() {}

    /**
     * Whether a character may stand in a text.
     *
     * @param codePoint a Unicode code point
     */
    public static boolean fit(int codePoint) {
        if (codePoint >= 0x20 && codePoint < 0x7F) {
            return true;
        }
        if (codePoint == '\t' || codePoint == '\n' || codePoint == '\r') {
            return true;
        }
        boolean control = codePoint < 0x20 || (codePoint >= 0x7F && codePoint < 0xA0);
        boolean half = codePoint >= 0xD800 && codePoint <= 0xDFFF;
        boolean none = (codePoint & 0xFFFE) == 0xFFFE || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
        boolean turns = (codePoint >= 0x202A && codePoint <= 0x202E) || (codePoint >= 0x2066 && codePoint <= 0x2069);
        return !(control || half || none || turns);
    }

    /**
     * The first character of a text that may not stand in it.
     *
     * @param text any
     * @return its code point; empty for a sound text
     */
    public static OptionalInt unfit(String text) {
        int length = text.length();
        for (int at = 0; at < length; ) {
            char plain = text.charAt(at);
            if (plain >= 0x20 && plain < 0x7F) {
                at++;
                continue;
            }
            int codePoint = text.codePointAt(at);
            if (!fit(codePoint)) {
                return OptionalInt.of(codePoint);
            }
            at += Character.charCount(codePoint);
        }
        return OptionalInt.empty();
    }

    /**
     * The text with U+FFFD for each character that may not stand in it; a sound text comes back as it is.
     *
     * @param text any
     */
    public static String harmless(String text) {
        if (unfit(text).isEmpty()) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(codePoint -> out.appendCodePoint(fit(codePoint) ? codePoint : INSTEAD));
        return out.toString();
    }

    /** How a character is named to a person: U+001D. */
    public static String name(int codePoint) {
        return String.format("U+%04X", codePoint);
    }
}
