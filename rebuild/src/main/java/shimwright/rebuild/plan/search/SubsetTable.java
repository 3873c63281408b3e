package shimwright.rebuild.plan.search;

import java.util.Arrays;

/**
 * What states cost at least, of many bounds in one piece of memory. Where there is no room for a state near its place, one of those
 * that stand there is forgotten, so that the table is never full.
 */
final class SubsetTable {
    private static final int NEAR = 8;
    private static final int NUMBERS = 10;
    /** Most bounds that share the table. */
    static final int MOST_NUMBERS = 1 << NUMBERS;

    private final int words;
    private final int slots;
    private final int shift;
    private final long largest;
    private final long[] keys;
    /** Value, whether it is exact, and which bound and how things stand; less than 0 for none. */
    private final long[] values;

    private int next;

    /**
     * A table with nothing in it.
     *
     * @param words of a set of tasks
     * @param stands how many ways things can stand
     * @param bytes most bytes
     */
    SubsetTable(int words, int stands, long bytes) {
        this.words = words;
        this.slots = (int) Math.max(NEAR, Math.min(1 << 26, bytes / bytesOfEntry(words)));
        this.shift = NUMBERS + 32 - Integer.numberOfLeadingZeros(Math.max(1, stands - 1));
        this.largest = (1L << (62 - shift)) - 1;
        this.keys = new long[slots * words];
        this.values = new long[slots];
        Arrays.fill(values, -1);
    }

    static long bytesOfEntry(int words) {
        return 8L * (words + 1);
    }

    /** What no cost may reach. */
    long largest() {
        return largest;
    }

    /** What is known: twice the value, and one more where it is exact; -1 for nothing. */
    long get(int number, int stand, long[] done) {
        int slot = slot(number, stand, done);
        return slot < 0 ? -1 : values[slot] >>> shift;
    }

    /** Keeps a value. */
    void put(int number, int stand, long[] done, long value, boolean exact) {
        int slot = slot(number, stand, done);
        if (slot < 0) {
            slot = room(home(number, stand, done));
            System.arraycopy(done, 0, keys, slot * words, words);
        }
        long known = 2 * Math.min(value, largest) + (exact && value <= largest ? 1 : 0);
        values[slot] = (known << shift) | key(number, stand);
    }

    private int room(int home) {
        for (int k = 0; k < NEAR; k++) {
            int slot = home + k < slots ? home + k : home + k - slots;
            if (values[slot] < 0) {
                return slot;
            }
        }
        next = (next + 1) % NEAR;
        return home + next < slots ? home + next : home + next - slots;
    }

    private static long key(int number, int stand) {
        return ((long) stand << NUMBERS) | number;
    }

    private int home(int number, int stand, long[] done) {
        long hash = key(number, stand) * 0x9E3779B97F4A7C15L;
        for (long word : done) {
            hash = (hash ^ word) * 0xC2B2AE3D27D4EB4FL;
            hash ^= hash >>> 29;
        }
        return (int) ((((hash * 0x9E3779B97F4A7C15L) >>> 32) * slots) >>> 32);
    }

    private int slot(int number, int stand, long[] done) {
        int home = home(number, stand, done);
        long wanted = key(number, stand);
        long mask = (1L << shift) - 1;
        for (int k = 0; k < NEAR; k++) {
            int slot = home + k < slots ? home + k : home + k - slots;
            if (values[slot] < 0) {
                return -1;
            }
            if ((values[slot] & mask) == wanted && same(slot, done)) {
                return slot;
            }
        }
        return -1;
    }

    private boolean same(int slot, long[] done) {
        for (int w = 0; w < words; w++) {
            if (keys[slot * words + w] != done[w]) {
                return false;
            }
        }
        return true;
    }
}
