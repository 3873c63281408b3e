package shimwright.rebuild.plan.search;

import java.util.Arrays;

/**
 * Time for turning the case and walking that a state cannot avoid any more, exactly, where nothing but the order of tasks, the
 * stand of the case and the place of the person count: with the tools of all tasks at hand, no windows, no waits and a case as
 * quick to turn as a light one. What is free at a stand is done there at once, which costs nothing later; so few states are left, and
 * what each costs is kept. Once the table is full it says what the chains of tasks say, which is never more.
 */
final class StandBound {
    /** Entries kept at most times tasks: 2 to 3 MB for a whole unit. The table grows as it is needed: few steps that are left have few states. */
    private static final int KEPT = 2_000_000;

    private static final int SLOTS = 1 << 10;

    private final CompiledProblem c;
    private final SetUpBound chains;
    private final int words;
    private final int most;
    private long[] keys;
    private long[] values;
    private int size;

    StandBound(CompiledProblem c, SetUpBound chains) {
        this.c = c;
        this.chains = chains;
        this.words = c.all.length;
        this.most = Math.max(1, KEPT / Math.max(1, c.n));
        this.keys = new long[SLOTS * (words + 1)];
        this.values = new long[SLOTS];
        Arrays.fill(values, -1);
    }

    /** Time still to come at least. */
    long least(StateCursor at) {
        return least(at.done.clone(), at.orientation, at.place);
    }

    /** The same; the set is made the larger one of what is done at once. */
    private long least(long[] done, int orientation, int place) {
        boolean stays = true;
        while (stays) {
            stays = stay(done, orientation, place);
        }
        if (Arrays.equals(done, c.all)) {
            return 0;
        }
        int slot = slot(done, orientation, place);
        if (values[slot] >= 0) {
            return values[slot];
        }
        if (size >= most) {
            return chains.stands(done, orientation, place);
        }
        size++;
        if (2 * size > values.length) {
            grow();
        }
        long least = CompiledProblem.NEVER;
        boolean[] seen = new boolean[c.ready.orientations + c.ready.places + 1];
        for (int w = 0; w < words; w++) {
            long word = c.all[w] & ~done[w];
            while (word != 0) {
                int task = (w << 6) + Long.numberOfTrailingZeros(word);
                word &= word - 1;
                int o = c.ready.orientation[task];
                int p = c.ready.place[task];
                int stand = o >= 0 ? o : c.ready.orientations + p;
                // what can be done anywhere and is free is done already
                boolean somewhere = o >= 0 || p >= 0;
                if (somewhere && !seen[stand] && Bits.within(c.before[task], done)) {
                    seen[stand] = true;
                    long cost = (o < 0 ? 0 : c.ready.leastTurn[orientation][o]) + c.ready.walking(place, task);
                    least = Math.min(least, cost + least(done.clone(), o < 0 ? orientation : o, p));
                }
            }
        }
        values[slot(done, orientation, place)] = least;
        return least;
    }

    private void grow() {
        long[] keysBefore = keys;
        long[] before = values;
        keys = new long[2 * keysBefore.length];
        values = new long[2 * before.length];
        Arrays.fill(values, -1);
        for (int i = 0; i < before.length; i++) {
            if (before[i] >= 0) {
                int at = i * (words + 1);
                long stand = keysBefore[at + words];
                long[] done = Arrays.copyOfRange(keysBefore, at, at + words);
                values[slot(done, (int) (stand >> 32), (int) stand)] = before[i];
            }
        }
    }

    /** Does what is free and needs no turning and no walking, once through; false where there was nothing. */
    private boolean stay(long[] done, int orientation, int place) {
        boolean moved = false;
        for (int w = 0; w < words; w++) {
            long word = c.all[w] & ~done[w];
            while (word != 0) {
                int task = (w << 6) + Long.numberOfTrailingZeros(word);
                word &= word - 1;
                int o = c.ready.orientation[task];
                int p = c.ready.place[task];
                boolean here = (o < 0 || o == orientation) && (p < 0 || p == place);
                if (here && Bits.within(c.before[task], done)) {
                    Bits.add(done, task);
                    moved = true;
                }
            }
        }
        return moved;
    }

    /** Where a state stands in the table, or is to stand; its key is written there. */
    private int slot(long[] done, int orientation, int place) {
        long stand = ((long) orientation << 32) | (place & 0xFFFFFFFFL);
        long hash = stand * 0x9E3779B97F4A7C15L;
        for (long word : done) {
            hash = (hash ^ word) * 0xC2B2AE3D27D4EB4FL;
            hash ^= hash >>> 29;
        }
        int mask = values.length - 1;
        int slot = (int) (hash ^ hash >>> 32) & mask;
        while (!mine(slot, done, stand)) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private boolean mine(int slot, long[] done, long stand) {
        int at = slot * (words + 1);
        if (values[slot] < 0) {
            System.arraycopy(done, 0, keys, at, words);
            keys[at + words] = stand;
            return true;
        }
        return keys[at + words] == stand && Arrays.equals(keys, at, at + words, done, 0, words);
    }
}
