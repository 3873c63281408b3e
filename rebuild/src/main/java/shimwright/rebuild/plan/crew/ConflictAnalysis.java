package shimwright.rebuild.plan.crew;

import java.util.Arrays;

/** Finds out why it went wrong: from facts that cannot all hold back to the one fact of this level that led there. */
final class ConflictAnalysis {
    private static final int NONE = Integer.MIN_VALUE;
    private static final double GROWTH = 1.05;
    private static final double LARGE = 1e100;

    private final Facts facts;
    private final int[] need;
    private final int[] entry;
    private int[] listed = new int[64];
    private int count;
    private int here;

    /** How often lately a variable had to do with a dead end. */
    final double[] blame;

    private double weight = 1;
    private int backTo;

    ConflictAnalysis(Facts facts, int variables) {
        this.facts = facts;
        need = new int[2 * variables];
        entry = new int[2 * variables];
        blame = new double[variables];
        Arrays.fill(need, NONE);
    }

    /** The level to go back to, after {@link #clause}. */
    int backTo() {
        return backTo;
    }

    /** What is to be learned from {@link Facts#dead}; null where it contradicts what is known for good. */
    @org.jspecify.annotations.Nullable
    Clause clause() {
        count = 0;
        here = 0;
        facts.backTo(highest(facts.dead));
        if (facts.level() == 0) {
            return null;
        }
        addAll(facts.dead);
        int at = facts.size();
        while (true) {
            at--;
            int side = facts.sideAt(at);
            if (need[side] == NONE || entry[side] != at) {
                continue;
            }
            if (here == 1) {
                break;
            }
            int needed = need[side];
            need[side] = NONE;
            here--;
            addAll(facts.reasons(at, needed));
        }
        weight *= GROWTH;
        if (weight > LARGE) {
            weight /= LARGE;
            for (int i = 0; i < blame.length; i++) {
                blame[i] /= LARGE;
            }
        }
        return learned(facts.sideAt(at));
    }

    private int highest(int[] dead) {
        int highest = 0;
        for (int k = 0; k < dead.length; k += 2) {
            int at = facts.entry(dead[k], dead[k + 1]);
            highest = at < 0 ? highest : Math.max(highest, facts.levelOf(at));
        }
        return highest;
    }

    private void addAll(int[] premises) {
        for (int k = 0; k < premises.length; k += 2) {
            add(premises[k], premises[k + 1]);
        }
    }

    private void add(int side, int atLeast) {
        int at = facts.entry(side, atLeast);
        if (at < 0 || facts.levelOf(at) == 0) {
            return;
        }
        blame[side >> 1] += weight;
        if (need[side] != NONE) {
            if (need[side] >= atLeast) {
                return;
            }
            here -= entry[side] >= facts.levelStart() ? 1 : 0;
        } else {
            if (count == listed.length) {
                listed = Arrays.copyOf(listed, 2 * count);
            }
            listed[count++] = side;
        }
        need[side] = atLeast;
        entry[side] = at;
        here += at >= facts.levelStart() ? 1 : 0;
    }

    /** The contraries of the facts that are left, the one of this level first, the next highest second. */
    private Clause learned(int first) {
        int[] out = new int[2 * count];
        boolean[] levels = new boolean[facts.level() + 1];
        int kept = 1;
        int second = -1;
        backTo = 0;
        out[0] = first ^ 1;
        out[1] = 1 - need[first];
        for (int k = 0; k < count; k++) {
            int side = listed[k];
            if (need[side] == NONE || side == first || follows(side)) {
                continue;
            }
            int of = facts.levelOf(entry[side]);
            levels[of] = true;
            if (of > backTo) {
                backTo = of;
                second = kept;
            }
            out[2 * kept] = side ^ 1;
            out[2 * kept + 1] = 1 - need[side];
            kept++;
        }
        int spread = 1;
        for (boolean used : levels) {
            spread += used ? 1 : 0;
        }
        for (int k = 0; k < count; k++) {
            need[listed[k]] = NONE;
        }
        Clause clause = new Clause(Arrays.copyOf(out, 2 * kept), spread);
        if (second > 1) {
            clause.swap(1, second);
        }
        return clause;
    }

    /** True where a fact follows from the others that are listed. */
    private boolean follows(int side) {
        int at = entry[side];
        if (facts.decided(at)) {
            return false;
        }
        int[] premises = facts.reasons(at, need[side]);
        for (int k = 0; k < premises.length; k += 2) {
            int of = facts.entry(premises[k], premises[k + 1]);
            boolean known = of < 0 || facts.levelOf(of) == 0;
            if (!known && (premises[k] == side || need[premises[k]] < premises[k + 1])) {
                return false;
            }
        }
        return true;
    }
}
