package shimwright.rebuild.job;

import java.util.HexFormat;

/**
 * A hash of 256 bits, held in less than half of the memory that its text takes: of each entry of each open job there are two.
 *
 * @param first bits 255 to 192
 * @param second bits 191 to 128
 * @param third bits 127 to 64
 * @param fourth bits 63 to 0
 */
public record ChainHash(long first, long second, long third, long fourth) {
    private static final int DIGITS = 16;

    /**
     * The hash that a text names.
     *
     * @param hex 64 hexadecimal digits
     * @throws IllegalArgumentException for any other text
     */
    public static ChainHash of(String hex) {
        if (hex.length() != 4 * DIGITS) {
            throw new IllegalArgumentException("a hash has 64 digits: " + hex);
        }
        return new ChainHash(word(hex, 0), word(hex, 1), word(hex, 2), word(hex, 3));
    }

    private static long word(String hex, int at) {
        return HexFormat.fromHexDigitsToLong(hex, at * DIGITS, (at + 1) * DIGITS);
    }

    /** Its 64 digits, lower-case. */
    public String hex() {
        HexFormat digits = HexFormat.of();
        return digits.toHexDigits(first)
                + digits.toHexDigits(second)
                + digits.toHexDigits(third)
                + digits.toHexDigits(fourth);
    }
}
