package shimwright.rebuild.plan.search;

/** Sets of small numbers as words of 64 bits. */
final class Bits {
    private Bits() {}

    static long[] empty(int size) {
        return new long[(size + 63) >> 6];
    }

    static boolean has(long[] set, int i) {
        return (set[i >> 6] >>> i & 1) != 0;
    }

    static void add(long[] set, int i) {
        set[i >> 6] |= 1L << i;
    }

    static void addAll(long[] set, long[] other) {
        for (int w = 0; w < set.length; w++) {
            set[w] |= other[w];
        }
    }

    /** True where every member of the first is in the second. */
    static boolean within(long[] set, long[] other) {
        for (int w = 0; w < set.length; w++) {
            if ((set[w] & ~other[w]) != 0) {
                return false;
            }
        }
        return true;
    }

    static boolean meets(long[] set, long[] other) {
        for (int w = 0; w < set.length; w++) {
            if ((set[w] & other[w]) != 0) {
                return true;
            }
        }
        return false;
    }

    static int count(long[] set) {
        int count = 0;
        for (long word : set) {
            count += Long.bitCount(word);
        }
        return count;
    }

    /** The least member that is not less than i; -1 where there is none. */
    static int next(long[] set, int i) {
        int w = i >> 6;
        if (w >= set.length) {
            return -1;
        }
        long word = set[w] & -1L << i;
        while (word == 0) {
            if (++w == set.length) {
                return -1;
            }
            word = set[w];
        }
        return (w << 6) + Long.numberOfTrailingZeros(word);
    }

    static int hash(long[] set) {
        long h = 0x9E3779B97F4A7C15L;
        for (long word : set) {
            h = (h ^ word) * 0xD6E8FEB86659FD93L;
            h ^= h >>> 32;
        }
        return (int) (h ^ h >>> 29);
    }
}
