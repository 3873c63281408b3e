package shimwright.rebuild.plan.crew;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the start times, how it came about, and how to take it back.
 *
 * <p>Every start time t has two sides: side 2i stands for t, side 2i + 1 for -t. A fact is a side and a value: the side is at
 * least the value; "starts at 5 or later" is (2i, 5), "at 5 or sooner" is (2i + 1, -5). The contrary of (s, v) is
 * (s ^ 1, 1 - v). The trail holds facts in the order in which they were found, each with its reason: the facts it follows from
 * as an array, a clause whose first fact it is, or null for a decision.
 */
final class Facts {
    /** What each side is at least. */
    final int[] least;

    /** Set whenever a side moves, for whoever looks only at what moved. */
    final boolean[] moved;

    private final int[] last;
    private int[] sideAt = new int[1024];
    private int[] before = new int[1024];
    private int[] value = new int[1024];
    private int[] earlier = new int[1024];
    private int[] levelAt = new int[1024];
    private @Nullable Object[] why = new @Nullable Object[1024];
    private boolean[] slides = new boolean[1024];
    private int size;
    private int[] levels = new int[64];
    private int level;

    /** Facts that cannot all hold, once something failed. */
    int[] dead = new int[0];

    Facts(int variables) {
        least = new int[2 * variables];
        last = new int[2 * variables];
        moved = new boolean[variables];
        Arrays.fill(last, -1);
    }

    int low(int variable) {
        return least[2 * variable];
    }

    int high(int variable) {
        return -least[2 * variable + 1];
    }

    boolean fixed(int variable) {
        return least[2 * variable] + least[2 * variable + 1] == 0;
    }

    boolean holds(int side, int atLeast) {
        return least[side] >= atLeast;
    }

    boolean fails(int side, int atLeast) {
        return least[side ^ 1] >= 1 - atLeast;
    }

    int size() {
        return size;
    }

    int level() {
        return level;
    }

    int sideAt(int entry) {
        return sideAt[entry];
    }

    int levelOf(int entry) {
        return levelAt[entry];
    }

    /** First entry of the level we are in. */
    int levelStart() {
        return level == 0 ? 0 : levels[level - 1];
    }

    /** Opens a level with a decision. */
    void decide(int side, int atLeast) {
        if (level == levels.length) {
            levels = Arrays.copyOf(levels, 2 * level);
        }
        levels[level++] = size;
        raise(side, atLeast, null, false);
    }

    /**
     * Adds a fact.
     *
     * @param reason facts it follows from, or the clause whose first it is; null for a decision or what is known for good
     * @param sliding true where the reason is one fact and a lower value follows from one as much lower
     * @return false where it contradicts what is known; {@link #dead} then says what
     */
    boolean raise(int side, int atLeast, @Nullable Object reason, boolean sliding) {
        if (atLeast <= least[side]) {
            return true;
        }
        if (atLeast + least[side ^ 1] > 0) {
            int[] from = premises(reason, sliding ? atLeast + least[side ^ 1] - 1 : 0);
            dead = Arrays.copyOf(from, from.length + 2);
            dead[from.length] = side ^ 1;
            dead[from.length + 1] = sliding ? least[side ^ 1] : 1 - atLeast;
            return false;
        }
        if (size == sideAt.length) {
            grow();
        }
        sideAt[size] = side;
        before[size] = least[side];
        value[size] = atLeast;
        earlier[size] = last[side];
        levelAt[size] = level;
        why[size] = reason;
        slides[size] = sliding;
        last[side] = size++;
        least[side] = atLeast;
        moved[side >> 1] = true;
        return true;
    }

    private void grow() {
        int length = 2 * size;
        sideAt = Arrays.copyOf(sideAt, length);
        before = Arrays.copyOf(before, length);
        value = Arrays.copyOf(value, length);
        earlier = Arrays.copyOf(earlier, length);
        levelAt = Arrays.copyOf(levelAt, length);
        why = Arrays.copyOf(why, length);
        slides = Arrays.copyOf(slides, length);
    }

    /** Takes back every level above this one. */
    void backTo(int kept) {
        if (kept >= level) {
            return;
        }
        int until = levels[kept];
        while (size > until) {
            size--;
            int side = sideAt[size];
            least[side] = before[size];
            last[side] = earlier[size];
            why[size] = null;
            moved[side >> 1] = true;
        }
        level = kept;
    }

    /** The entry that made a fact true which holds; -1 where it holds from the beginning. */
    int entry(int side, int atLeast) {
        int at = last[side];
        while (at >= 0 && before[at] >= atLeast) {
            at = earlier[at];
        }
        return at;
    }

    boolean decided(int entry) {
        return why[entry] == null;
    }

    /** The facts from which the entry follows, as weak as the value needed of it allows. */
    int[] reasons(int entry, int needed) {
        return premises(why[entry], slides[entry] ? value[entry] - needed : 0);
    }

    private static int[] premises(@Nullable Object reason, int slack) {
        if (reason instanceof Clause clause) {
            int[] facts = new int[clause.facts.length - 2];
            for (int k = 1; k < clause.size(); k++) {
                facts[2 * k - 2] = clause.side(k) ^ 1;
                facts[2 * k - 1] = 1 - clause.value(k);
            }
            return facts;
        }
        if (!(reason instanceof int[] facts)) {
            return new int[0];
        }
        return slack == 0 ? facts : new int[] {facts[0], facts[1] - slack};
    }
}
