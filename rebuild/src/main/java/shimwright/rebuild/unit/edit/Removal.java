package shimwright.rebuild.unit.edit;

import java.util.List;

/**
 * One thing that came off in a strip-down; others are named by their place in it, 0 for what came off first.
 *
 * @param name in the words of the person
 * @param items ids of the unit file; empty for a part that the file may not have
 * @param inTheWay what had to be off before it, as far as it was said; {@link #STRUCK} for what was named and struck since
 * @param nothingElse true where it was said that nothing else was in its way, or nothing at all
 * @param satOn what it came out with as one, and was taken off on the bench
 * @param found how it sat and what it took
 */
public record Removal(
        String name,
        List<String> items,
        List<Integer> inTheWay,
        boolean nothingElse,
        List<Integer> satOn,
        Found found) {
    /** Something that was named and does not count any more. */
    public static final int STRUCK = -1;

    public Removal {
        items = List.copyOf(items);
        inTheWay = List.copyOf(inTheWay);
        satOn = List.copyOf(satOn);
    }

    /** True where anything was said of what was in its way. */
    boolean asked() {
        return nothingElse || !inTheWay.isEmpty();
    }

    /**
     * From which thing on it is known whether it was in the way: from the very first where nothing else was, else from the first that
     * was named; of what came off before that nobody spoke, however likely it is that the last alone was named.
     *
     * @param own place of this thing, from which on nothing is known where nobody was asked
     */
    public int knownFrom(int own) {
        return nothingElse
                ? 0
                : inTheWay.stream()
                        .filter(over -> over != STRUCK)
                        .mapToInt(over -> over)
                        .min()
                        .orElse(own);
    }

    /**
     * How something sat and what it took to get it off, each as said and empty for nothing.
     *
     * @param byForce press, puller, heat or blows
     * @param destroyed what was destroyed
     * @param sideUp which way it sat
     * @param fasteners as {@code 6 × M8x1.25 8.8}, several with {@code ;} between
     * @param note anything else
     * @param sealedWith sealant or locker that was seen on it
     */
    public record Found(
            String byForce, String destroyed, String sideUp, String fasteners, String note, String sealedWith) {
        /** Nothing was said of it. */
        public static final Found NOTHING = new Found("", "", "", "", "", "");
    }
}
