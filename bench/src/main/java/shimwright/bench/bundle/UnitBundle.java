package shimwright.bench.bundle;

import java.util.List;

/**
 * A unit file with what goes with it to another shop.
 *
 * @param type id of the unit type
 * @param name maker and model, for a person
 * @param file the bytes of the unit file
 * @param pictures each once
 * @param from what the shop calls itself; empty where it does not say
 * @param history how the file came to be, the latest first; empty where the shop does not say
 */
@SuppressWarnings("ArrayRecordComponent") // bundles are never compared, their bytes are
public record UnitBundle(
        String type, String name, byte[] file, List<BundledPicture> pictures, String from, List<PastChange> history) {

    /** Bytes of the largest bundle: what a form with files may bring, less its other fields. */
    public static final int LARGEST = 12 * 1024 * 1024;

    /** Pictures of a bundle. */
    public static final int MOST_PICTURES = 150;

    /** Changes of its history. */
    static final int MOST_CHANGES = 500;

    /** Characters of a name, caption or place. */
    static final int LONGEST_WORDS = 300;

    /** Characters of one line of the history. */
    static final int LONGEST_LINE = 4_000;

    /**
     * A picture.
     *
     * @param content PNG or JPEG
     * @param about {@code item ID}, {@code step ID} or {@code unit}
     * @param caption in words; may be empty
     */
    @SuppressWarnings("ArrayRecordComponent") // the same
    public record BundledPicture(byte[] content, String about, String caption) {}

    /**
     * A change of the file in the shop that it comes from.
     *
     * @param at day and time as written
     * @param by who
     * @param what was changed
     * @param why in that person's words; may be empty
     * @param changes each key that changed
     */
    public record PastChange(String at, String by, String what, String why, List<String> changes) {}
}
