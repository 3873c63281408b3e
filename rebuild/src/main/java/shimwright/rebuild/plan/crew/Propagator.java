package shimwright.rebuild.plan.crew;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** All that follows from what is known: by lags, by what was learned, by pairs that never run together, by resources. */
final class Propagator {
    private final Facts facts;
    private final Clauses clauses;
    private final IndexedProject model;
    private final List<TimetableRule> shared = new ArrayList<>();
    private int read;

    Propagator(Facts facts, Clauses clauses, IndexedProject model) {
        this.facts = facts;
        this.clauses = clauses;
        this.model = model;
        for (int r = 0; r < model.capacity.length; r++) {
            shared.add(new TimetableRule(facts, model, r));
        }
    }

    /** Draws every conclusion; false where something fails. */
    boolean draw() {
        read = Math.min(read, facts.levelStart());
        while (true) {
            if (!lagsAndClauses()) {
                return false;
            }
            int size = facts.size();
            if (!pairs()) {
                return false;
            }
            if (facts.size() > size) {
                continue;
            }
            for (TimetableRule one : shared) {
                if (facts.size() == size && one.touched() && !one.look()) {
                    return false;
                }
            }
            if (facts.size() == size) {
                Arrays.fill(facts.moved, false);
                return true;
            }
        }
    }

    private boolean lagsAndClauses() {
        for (; read < facts.size(); read++) {
            int side = facts.sideAt(read);
            int of = side >> 1;
            boolean low = (side & 1) == 0;
            for (int a : low ? model.from[of] : model.to[of]) {
                int[] arc = model.arcs[a];
                int other = low ? 2 * arc[1] : 2 * arc[0] + 1;
                int now = facts.least[side];
                if (now + arc[2] > facts.least[other]
                        && !facts.raise(other, now + arc[2], new int[] {side, now}, true)) {
                    return false;
                }
            }
            if (!clauses.follow(side)) {
                return false;
            }
        }
        return true;
    }

    private boolean pairs() {
        for (int[] pair : model.apart) {
            int i = pair[0];
            int j = pair[1];
            if ((facts.moved[i] || facts.moved[j]) && (!order(i, j) || !order(j, i))) {
                return false;
            }
        }
        return true;
    }

    /** Where i cannot come before j it comes after. */
    private boolean order(int i, int j) {
        int high = facts.high(j);
        int first = model.duration[i] + model.gap[i][j];
        if (facts.low(i) + first <= high) {
            return true;
        }
        int least = high - first + 1;
        int second = model.duration[j] + model.gap[j][i];
        int after = facts.low(j) + second;
        if (after > facts.low(i)
                && !facts.raise(2 * i, after, new int[] {2 * i, least, 2 * j + 1, -high, 2 * j, facts.low(j)}, false)) {
            return false;
        }
        int before = facts.high(i) - second;
        return before >= facts.high(j)
                || facts.raise(
                        2 * j + 1,
                        -before,
                        new int[] {2 * i, least, 2 * j + 1, -high, 2 * i + 1, -facts.high(i)},
                        false);
    }
}
