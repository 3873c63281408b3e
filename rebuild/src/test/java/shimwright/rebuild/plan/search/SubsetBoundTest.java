package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Exact set-up times of some of the tasks against every order of them, from the start and from states on the way, and never
 * more than what any order of all tasks takes. More with {@code -Dshimwright.subsets=10000}.
 */
class SubsetBoundTest {
    @Test
    void isTheLeastOverEveryOrderOfTheChosen() {
        int above = 0;
        for (int seed = 0; seed < Integer.getInteger("shimwright.subsets", 300); seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            Random random = new Random(seed);
            long[] tasks = Bits.empty(c.n);
            for (int task = 0; task < c.n; task++) {
                if (random.nextInt(4) > 0) {
                    Bits.add(tasks, task);
                }
            }
            SubsetBound bound = new SubsetBound(c, tasks, 1 << 12, () -> false);
            StateCursor at = new StateCursor(c);
            while (!at.finished()) {
                long all = least(c, at.done.clone(), tasks, at.orientation, at.place, at.kit);
                assertThat(bound.least(at))
                        .as("problem %d after %d", seed, at.count)
                        .isEqualTo(all);
                assertThat(all).isLessThanOrEqualTo(least(c, at.done.clone(), c.all, at.orientation, at.place, at.kit));
                above += all > 0 ? 1 : 0;
                int task = random.nextInt(c.n);
                if (at.free(task)) {
                    at.take(task);
                }
            }
        }
        assertThat(above).isPositive();
    }

    /** A table that is full says less, never more. */
    @Test
    void aFullTableSaysLess() {
        for (int seed = 0; seed < 300; seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            StateCursor start = new StateCursor(c);
            long whole = new SubsetBound(c, c.all, 1 << 12, () -> false).least(start);
            assertThat(new SubsetBound(c, c.all, 1 << 3, () -> false).least(start))
                    .isIn(0L, whole);
        }
    }

    private static long least(CompiledProblem c, long[] done, long[] tasks, int orientation, int place, int kit) {
        long least = CompiledProblem.NEVER;
        for (int task = 0; task < c.n; task++) {
            if (Bits.has(tasks, task) && !Bits.has(done, task) && free(c, task, done, tasks)) {
                int o = c.ready.orientation[task];
                int p = c.ready.place[task];
                int k = c.ready.kit[task];
                long[] then = done.clone();
                Bits.add(then, task);
                long setUp = (o < 0 ? 0 : c.ready.leastTurn[orientation][o])
                        + c.ready.walking(place, task)
                        + c.ready.tooling(kit, task);
                least = Math.min(
                        least,
                        setUp + least(c, then, tasks, o < 0 ? orientation : o, p < 0 ? place : p, k < 0 ? kit : k));
            }
        }
        return least == CompiledProblem.NEVER ? 0 : least;
    }

    private static boolean free(CompiledProblem c, int task, long[] done, long[] tasks) {
        for (int before = 0; before < c.n; before++) {
            if (Bits.has(c.ancestors[task], before) && Bits.has(tasks, before) && !Bits.has(done, before)) {
                return false;
            }
        }
        return true;
    }
}
