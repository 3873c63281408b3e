package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Set-ups and risks of some of the tasks against every order of them, from the start and from states on the way: exactly
 * where nothing is served alone, never more than what any order may take. More with {@code -Dshimwright.subsets=10000}.
 */
class SubsetBoundTest {
    private static final long NEVER = CompiledProblem.NEVER;

    @Test
    void isTheLeastOverEveryOrderOfTheChosen() {
        int above = 0;
        int alone = 0;
        for (int seed = 0; seed < Integer.getInteger("shimwright.subsets", 300); seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            Random random = new Random(seed);
            SubsetTable table = table(c, random.nextInt(4) == 0 ? 300 : 1 << 16);
            LookLimit effort = new LookLimit(() -> false);
            long[] few = some(c, c.all, random);
            long[] more = some(c, few, random, c.all);
            SubsetBound first = new SubsetBound(c, few, null, table, effort, 0);
            SubsetBound second = new SubsetBound(c, more, first, table, effort, 1);
            StateCursor at = new StateCursor(c);
            while (!at.finished()) {
                long[] before = at.done.clone();
                long free = least(c, before, more, at, false);
                long bound = least(c, before, more, at, true);
                long limit = random.nextInt(3) == 0 ? NEVER : 1 + free * random.nextInt(3) / 2;
                effort.allow(random.nextInt(4) == 0 ? random.nextInt(20) : NEVER);
                long said = second.least(at, limit);
                assertThat(said).as("problem %d after %d", seed, at.count).isLessThanOrEqualTo(bound);
                if (!effort.spent()) {
                    assertThat(said)
                            .as("problem %d after %d, limit %d", seed, at.count, limit)
                            .isGreaterThanOrEqualTo(Math.min(limit, free));
                }
                above += said > 0 ? 1 : 0;
                alone += said > free ? 1 : 0;
                int task = random.nextInt(c.n);
                if (at.free(task) && at.allowed(task)) {
                    at.take(task);
                }
            }
        }
        assertThat(above).isPositive();
        assertThat(alone).isPositive();
    }

    /** What all tasks cost at least from the start is what the order that is given costs, where no clock runs. */
    @Test
    void givesTheOrderOfAllTasks() {
        int given = 0;
        for (int seed = 0; seed < 300; seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            SubsetBounds bounds = Objects.requireNonNull(SubsetBounds.of(c, 1 << 16, seed % 4, () -> false));
            bounds.grow(NEVER, NEVER);
            assertThat(bounds.complete()).isTrue();
            int[] order = bounds.order();
            assertThat(order).hasSize(c.n);
            if (c.lag.length == 0 && c.spans.count == 0 && c.ready.metric && weightless(c)) {
                assertThat(Evaluation.counted(c, order)).contains(bounds.low());
                given++;
            }
        }
        assertThat(given).isPositive();
    }

    private static boolean weightless(CompiledProblem c) {
        long heavy = c.problem.start().weight();
        for (int weight : c.weight) {
            heavy += Math.max(0, weight);
        }
        return heavy <= 0;
    }

    private static SubsetTable table(CompiledProblem c, long bytes) {
        int stands = (c.ready.orientations + 1) * (c.ready.places + 1) * c.ready.holds.length;
        return new SubsetTable(c.all.length, stands, bytes);
    }

    private static long[] some(CompiledProblem c, long[] of, Random random) {
        return some(c, Bits.empty(c.n), random, of);
    }

    private static long[] some(CompiledProblem c, long[] with, Random random, long[] of) {
        long[] tasks = with.clone();
        for (int task = 0; task < c.n; task++) {
            if (Bits.has(of, task) && random.nextInt(5) > 1) {
                Bits.add(tasks, task);
            }
        }
        return tasks;
    }

    /** By trying them all: without what is served alone, or with all tasks and that. */
    private static long least(CompiledProblem c, long[] done, long[] tasks, StateCursor at, boolean whole) {
        if (whole) {
            return whole(c, at);
        }
        return least(c, done, tasks, at.orientation, at.place, at.kit);
    }

    /** All tasks in every order that serves alone what is to be. */
    private static long whole(CompiledProblem c, StateCursor at) {
        long least = at.finished() ? 0 : NEVER;
        for (int task = 0; task < c.n; task++) {
            if (at.free(task) && at.allowed(task)) {
                StateCursor next = new StateCursor(c);
                next.set(at);
                next.weight = Integer.MIN_VALUE / 2;
                next.take(task);
                long step = next.cost - at.cost - c.waiting * (next.waited - at.waited);
                least = Math.min(least, step + whole(c, next));
            }
        }
        return least;
    }

    private static long least(CompiledProblem c, long[] done, long[] tasks, int orientation, int place, int kit) {
        long least = NEVER;
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
                        CompiledProblem.UNITS * setUp
                                + risk(c, task, done, tasks)
                                + least(c, then, tasks, o < 0 ? orientation : o, p < 0 ? place : p, k < 0 ? kit : k));
            }
        }
        return least == NEVER ? 0 : least;
    }

    private static long risk(CompiledProblem c, int task, long[] done, long[] tasks) {
        long sum = 0;
        for (int k = 0; k < c.riskHold[task].length; k++) {
            int hold = c.riskHold[task][k];
            sum += Bits.has(tasks, hold) && !Bits.has(done, hold) ? c.riskCost[task][k] : 0;
        }
        return sum;
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
