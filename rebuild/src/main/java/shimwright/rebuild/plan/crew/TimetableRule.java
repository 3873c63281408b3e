package shimwright.rebuild.plan.crew;

import java.util.Arrays;

/**
 * One resource over time: between the latest start and the soonest end of an activity it is held for certain. Where what is
 * held leaves too little, others must start later or sooner (time-table rule, explained at one moment: Schutt, Feydy, Stuckey
 * and Wallace, Constraints 16 (2011) 250, from memory).
 */
final class TimetableRule {
    private final Facts facts;
    private final int[] duration;
    private final int[] need;
    private final int capacity;
    private final int[] users;

    private final int[] from;
    private final int[] until;
    private final long[] events;
    private int segments;
    private final int[] begin;
    private final int[] held;

    TimetableRule(Facts facts, IndexedProject model, int resource) {
        this.facts = facts;
        duration = model.duration;
        need = model.need[resource];
        capacity = model.capacity[resource];
        int count = 0;
        int[] all = new int[model.n];
        for (int i = 0; i < model.n; i++) {
            if (need[i] > 0) {
                all[count++] = i;
            }
        }
        users = Arrays.copyOf(all, count);
        from = new int[model.n];
        until = new int[model.n];
        events = new long[2 * count];
        begin = new int[2 * count + 1];
        held = new int[2 * count + 1];
    }

    boolean touched() {
        for (int i : users) {
            if (facts.moved[i]) {
                return true;
            }
        }
        return false;
    }

    /** Moves starts; false where the resource is held too often. */
    boolean look() {
        if (!profile()) {
            return false;
        }
        for (int i : users) {
            if (!facts.fixed(i) && (!later(i) || !sooner(i))) {
                return false;
            }
        }
        return true;
    }

    private boolean profile() {
        int count = 0;
        for (int i : users) {
            from[i] = facts.high(i);
            until[i] = facts.low(i) + duration[i];
            if (from[i] < until[i]) {
                events[count++] = ((long) from[i] << 32) + need[i];
                events[count++] = ((long) until[i] << 32) - need[i];
            }
        }
        Arrays.sort(events, 0, count);
        segments = 0;
        int now = 0;
        for (int e = 0; e < count; e++) {
            int at = (int) ((events[e] + (1L << 31)) >> 32);
            int change = (int) (events[e] - ((long) at << 32));
            if (segments == 0 || begin[segments - 1] != at) {
                begin[segments++] = at;
            }
            now += change;
            held[segments - 1] = now;
        }
        for (int s = 0; s < segments; s++) {
            if (held[s] > capacity) {
                facts.dead = holding(begin[s], -1, capacity, 0, 0);
                return false;
            }
        }
        return true;
    }

    /** Facts by which more than so much is held at a moment by others, and one more. */
    private int[] holding(int at, int but, int more, int side, int value) {
        int[] out = new int[4 * users.length + 2];
        int count = 0;
        int sum = 0;
        for (int k = 0; k < users.length && sum <= more; k++) {
            int i = users[k];
            if (i != but && from[i] <= at && at < until[i]) {
                out[count++] = 2 * i + 1;
                out[count++] = -at;
                out[count++] = 2 * i;
                out[count++] = at - duration[i] + 1;
                sum += need[i];
            }
        }
        if (but >= 0) {
            out[count++] = side;
            out[count++] = value;
        }
        return Arrays.copyOf(out, count);
    }

    private boolean full(int s, int i) {
        if (held[s] + need[i] <= capacity) {
            return false;
        }
        boolean own = from[i] <= begin[s] && begin[s] < until[i];
        return !own && held[s] + need[i] > capacity;
    }

    private boolean later(int i) {
        for (int s = 0; s + 1 < segments; s++) {
            int end = begin[s + 1];
            int low = facts.low(i);
            if (end <= low) {
                continue;
            }
            if (begin[s] >= low + duration[i]) {
                return true;
            }
            while (full(s, i) && facts.low(i) < end && begin[s] < facts.low(i) + duration[i]) {
                int at = Math.min(end, facts.low(i) + duration[i]) - 1;
                int[] why = holding(at, i, capacity - need[i], 2 * i, at - duration[i] + 1);
                if (!facts.raise(2 * i, at + 1, why, false)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean sooner(int i) {
        for (int s = segments - 2; s >= 0; s--) {
            int high = facts.high(i);
            if (begin[s] >= high + duration[i]) {
                continue;
            }
            if (begin[s + 1] <= high) {
                return true;
            }
            while (full(s, i) && begin[s] < facts.high(i) + duration[i] && begin[s + 1] > facts.high(i)) {
                int at = Math.max(begin[s], facts.high(i));
                int[] why = holding(at, i, capacity - need[i], 2 * i + 1, -at);
                if (!facts.raise(2 * i + 1, duration[i] - at, why, false)) {
                    return false;
                }
            }
        }
        return true;
    }
}
