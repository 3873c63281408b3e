package shimwright.rebuild.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The bound by assignment against all assignments and against all orders of small problems. */
class AssignmentTest {
    private static final long NEVER = CompiledProblem.NEVER;

    /** Cheapest way to give every column a row of its own, tried one by one; the present state is the last row. */
    private static long all(CompiledProblem c, StateCursor at, List<Integer> columns, Set<Integer> taken) {
        if (columns.isEmpty()) {
            return 0;
        }
        int to = columns.get(0);
        List<Integer> others = columns.subList(1, columns.size());
        long least = NEVER;
        for (int from = 0; from <= c.n; from++) {
            boolean left = from == c.n || !Bits.has(at.done, from);
            if (left && !taken.contains(from) && mayFollow(c, at, from, to)) {
                Set<Integer> more = new java.util.HashSet<>(taken);
                more.add(from);
                least = Math.min(least, price(c, at, from, to) + all(c, at, others, more));
            }
        }
        return Math.min(least, NEVER);
    }

    private static boolean mayFollow(CompiledProblem c, StateCursor at, int from, int to) {
        if (from == c.n) {
            return to == c.n ? Bits.within(c.all, at.done) : Bits.within(c.ancestors[to], at.done);
        }
        if (to == c.n) {
            return Bits.count(c.descendants[from]) == 0;
        }
        boolean between = false;
        for (int k = 0; k < c.n; k++) {
            between |= Bits.has(c.ancestors[k], from) && Bits.has(c.ancestors[to], k);
        }
        return from != to && !between && !Bits.has(c.ancestors[from], to);
    }

    private static long price(CompiledProblem c, StateCursor at, int from, int to) {
        if (to == c.n) {
            return 0;
        }
        StateCursor there = new StateCursor(c);
        there.set(at);
        if (from < c.n) {
            there.orientation = c.ready.orientation[from] < 0 ? c.ready.orientations : c.ready.orientation[from];
            there.place = c.ready.place[from] < 0 ? c.ready.places : c.ready.place[from];
            there.weight = 0;
            there.kit = c.ready.kit[from] < 0 ? Math.max(0, c.ready.kit[to]) : c.ready.kit[from];
        }
        return there.setUp(to);
    }

    private static List<Integer> columns(CompiledProblem c, StateCursor at) {
        List<Integer> columns = new ArrayList<>();
        for (int j = 0; j < c.n; j++) {
            if (!Bits.has(at.done, j)) {
                columns.add(j);
            }
        }
        columns.add(c.n);
        return columns;
    }

    @Test
    void itIsTheLeastOfAllAssignmentsFromTheStartAndAfterEveryStep() {
        int compared = 0;
        for (int seed = 0; seed < 300; seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            Random random = new Random(seed);
            Assignment assignment = new Assignment(c);
            StateCursor at = new StateCursor(c);
            boolean kept = true;
            while (kept && !at.finished()) {
                assertThat(assignment.at(at)).as("problem %d", seed).isEqualTo(all(c, at, columns(c, at), Set.of()));
                List<StateCursor> next = new ArrayList<>();
                for (int task = 0; task < c.n; task++) {
                    StateCursor then = new StateCursor(c);
                    then.set(at);
                    if (at.free(task) && then.take(task)) {
                        next.add(then);
                        assertThat(assignment.after(then))
                                .as("problem %d", seed)
                                .isEqualTo(new Assignment(c).at(then));
                        compared++;
                    }
                }
                kept = !next.isEmpty();
                at = kept ? next.get(random.nextInt(next.size())) : at;
            }
        }
        assertThat(compared).isGreaterThan(1000);
    }

    @Test
    void noOrderCostsLess() {
        int compared = 0;
        for (int seed = 0; seed < 300; seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            Enumeration all = Enumeration.of(c.problem);
            if (all.best < Double.POSITIVE_INFINITY) {
                double least = (c.work + new Assignment(c).at(new StateCursor(c))) / 1e3;
                assertThat(least).as("problem %d", seed).isLessThanOrEqualTo(all.best + 1e-6);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    @Test
    void afterATripBackItIsTheSame() {
        for (int seed = 0; seed < 200; seed++) {
            CompiledProblem c = CompiledProblem.of(RandomProblems.small(seed));
            Assignment assignment = new Assignment(c);
            StateCursor start = new StateCursor(c);
            long first = assignment.at(start);
            StateCursor later = new StateCursor(c);
            for (int task = 0; task < c.n; task++) {
                if (later.free(task)) {
                    later.take(task);
                    assignment.at(later);
                }
            }
            assertThat(assignment.at(start)).as("problem %d", seed).isEqualTo(first);
        }
    }
}
