package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the rest of a plan costs at least: the larger of unavoidable set-ups, and, for every
 * wait, the time up to its beginning, the wait and all that follows it, less the work. Tools are counted by chains of tasks, turning
 * and walking exactly where they count alone; where it says more about the problem as a whole, all by assignment;
 * once it was made sharper, all set-ups and risks of some of the tasks exactly.
 */
final class LowerBound {
    private final CompiledProblem c;
    private final SetUpBound tables;
    private final StandBound stands;
    private final @Nullable Assignment assignment;
    private @Nullable SubsetBounds some;
    private final List<Wait> waits = new ArrayList<>();

    /** A wait, or all waits for one task together; the last of them begins when all before every one of them is done. */
    private record Wait(
            List<Integer> lags,
            int to,
            long least,
            @Nullable SetUpBound before,
            long tail) {}

    LowerBound(CompiledProblem c) {
        this.c = c;
        this.tables = new SetUpBound(c, c.all);
        this.stands = new StandBound(c, tables);
        StateCursor start = new StateCursor(c);
        Assignment whole = new Assignment(c);
        this.assignment = whole.at(start) > tables.least(start) ? whole : null;
        Map<Integer, List<Integer>> byTo = new LinkedHashMap<>();
        for (int k = 0; k < c.lag.length; k++) {
            if (c.lag[k] > 0) {
                byTo.computeIfAbsent(c.lagTo[k], to -> new ArrayList<>()).add(k);
            }
        }
        byTo.forEach((to, lags) -> {
            lags.forEach(k -> waits.add(wait(to, List.of(k))));
            List<Integer> begun = lags.stream().filter(k -> c.lagFrom[k] >= 0).toList();
            if (begun.size() > 1) {
                waits.add(wait(to, begun));
            }
        });
    }

    private Wait wait(int to, List<Integer> lags) {
        long[] mask = Bits.empty(c.n);
        long least = CompiledProblem.NEVER;
        boolean begun = false;
        for (int k : lags) {
            least = Math.min(least, c.lag[k]);
            if (c.lagFrom[k] >= 0) {
                begun = true;
                Bits.addAll(mask, c.ancestors[c.lagFrom[k]]);
                Bits.add(mask, c.lagFrom[k]);
            }
        }
        long tail = c.duration[to] + tables.leastAfter(to);
        long[] set = c.descendants[to];
        for (int i = Bits.next(set, 0); i >= 0; i = Bits.next(set, i + 1)) {
            tail += c.duration[i];
        }
        return new Wait(List.copyOf(lags), to, least, begun ? new SetUpBound(c, mask) : null, tail);
    }

    /** From now on with these as well. */
    void sharpen(SubsetBounds bounds) {
        some = bounds;
    }

    /**
     * Cost still to come at least, counted as {@link Node#cost} counts; quickly, without the assignment.
     *
     * @param limit where it is more, how much more is not looked for
     */
    long least(StateCursor at, long limit) {
        SetUpBound.Parts parts = tables.parts(at);
        long cost = CompiledProblem.UNITS
                * (parts.tools() + (some == null ? Math.max(parts.stands(), stands.least(at)) : parts.stands()));
        if (some != null && cost < limit) {
            cost = Math.max(cost, some.least(at, limit));
        }
        long setUps = cost / CompiledProblem.UNITS + (cost % CompiledProblem.UNITS == 0 ? 0 : 1);
        long idle = 0;
        if (c.waiting > 0 && !waits.isEmpty()) {
            long left = left(c.all, at);
            for (Wait wait : waits) {
                if (!Bits.has(at.done, wait.to())) {
                    idle = Math.max(idle, wait(wait, at) - left - setUps);
                }
            }
        }
        return cost + c.waiting * idle;
    }

    /** True where the assignment may say more than {@link #least}. */
    boolean assigns() {
        return assignment != null;
    }

    /** Cost still to come at least by assignment; makes ready for the states that follow this one. */
    long assigned(StateCursor at) {
        return assignment == null ? 0 : CompiledProblem.UNITS * assignment.at(at);
    }

    /** Cost still to come at least by assignment after a state that was made ready for. */
    long assignedAfter(StateCursor at) {
        return assignment == null ? 0 : CompiledProblem.UNITS * assignment.after(at);
    }

    private long wait(Wait wait, StateCursor at) {
        SetUpBound before = wait.before();
        boolean begun = true;
        long running = 0;
        for (int k : wait.lags()) {
            begun &= c.lagFrom[k] < 0 || Bits.has(at.done, c.lagFrom[k]);
            running = Math.max(running, at.clocks[k]);
        }
        if (begun || before == null) {
            return running + wait.tail();
        }
        return left(before.mask, at) + before.least(at) + wait.least() + wait.tail();
    }

    private long left(long[] set, StateCursor at) {
        long sum = 0;
        for (int w = 0; w < set.length; w++) {
            long word = set[w] & ~at.done[w];
            while (word != 0) {
                sum += c.duration[(w << 6) + Long.numberOfTrailingZeros(word)];
                word &= word - 1;
            }
        }
        return sum;
    }
}
