package shimwright.rebuild.plan.backout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The search among ways against trying every subset, and in time. */
class ClosureTest {
    /** Steps in a line of time; what blocks a step always comes later. A share of the blocker sets are choices. */
    static UndoGraph random(Random random, int n, double choices, int reach) {
        double[] cost = new double[n];
        List<List<int[]>> blockers = new ArrayList<>();
        for (int node = 0; node < n; node++) {
            cost[node] = random.nextInt(8) == 0 ? 0 : 1 + random.nextInt(60);
            List<int[]> sets = new ArrayList<>();
            int later = Math.min(reach, n - 1 - node);
            int count = later == 0 ? 0 : 1 + random.nextInt(2);
            for (int s = 0; s < count; s++) {
                int size = random.nextDouble() < choices ? Math.min(later, 2 + random.nextInt(2)) : 1;
                int from = node + 1;
                sets.add(random.ints(from, from + later).distinct().limit(size).toArray());
            }
            blockers.add(sets);
        }
        return new UndoGraph(cost, blockers);
    }

    /** The least cost of all closed sets that hold the target. */
    private static double byTryingAll(UndoGraph needs, int target) {
        int n = needs.cost().length;
        double least = Double.POSITIVE_INFINITY;
        for (long bits = 0; bits < 1L << n; bits++) {
            BitSet set = BitSet.valueOf(new long[] {bits});
            if (set.get(target) && holds(needs, set)) {
                least = Math.min(
                        least, set.stream().mapToDouble(i -> needs.cost()[i]).sum());
            }
        }
        return least;
    }

    private static boolean holds(UndoGraph needs, BitSet set) {
        return set.stream()
                .allMatch(node -> needs.blockers().get(node).stream()
                        .allMatch(sets -> Arrays.stream(sets).anyMatch(set::get)));
    }

    private static void equalToAll(long seed) {
        Random random = new Random(seed);
        UndoGraph needs = random(random, 1 + random.nextInt(14), random.nextDouble(), 14);
        int target = random.nextInt(needs.cost().length) / 3;
        ClosureBranchAndBound.Found found = ClosureBranchAndBound.set(needs, target, 1_000_000);
        assertThat(found.proven()).isTrue();
        assertThat(found.set().get(target)).isTrue();
        assertThat(holds(needs, found.set())).isTrue();
        assertThat(needs.of(found.set())).isEqualTo(found.cost());
        assertThat(found.cost()).isCloseTo(byTryingAll(needs, target), within(1e-9));
    }

    @Property(tries = 300)
    void neverDearerThanTheBestOfAllSubsets(@ForAll long seed) {
        equalToAll(seed);
    }

    @Test
    void twoWaysThatShareAStepAreDearerApart() {
        // 0 needs (1 or 2) and (3 or 2): 2 alone costs 5, 1 and 3 cost 3 each; cheapest way of each set alone is not
        // best
        UndoGraph needs = new UndoGraph(
                new double[] {1, 3, 5, 3},
                List.of(List.of(new int[] {1, 2}, new int[] {3, 2}), List.of(), List.of(), List.of()));
        ClosureBranchAndBound.Found found = ClosureBranchAndBound.set(needs, 0, 1000);
        assertThat(found.cost()).isEqualTo(6);
        assertThat(found.set().stream()).containsExactly(0, 2);
    }

    @Test
    void whenTheBudgetIsUsedUpItSaysNotProven() {
        UndoGraph needs = random(new Random(3), 300, 0.5, 40);
        ClosureBranchAndBound.Found cut = ClosureBranchAndBound.set(needs, 0, 0);
        assertThat(cut.proven()).isFalse();
        assertThat(holds(needs, cut.set())).isTrue();
        assertThat(ClosureBranchAndBound.set(needs, 0, 1_000_000).cost()).isLessThanOrEqualTo(cut.cost());
    }

    /** At length by hand with -Dshimwright.long=true; the figures stand in docs/decisions/0007. */
    @Test
    void atLengthAndInTime() {
        boolean atLength = Boolean.getBoolean("shimwright.long");
        for (long seed = 0; seed < (atLength ? 10_000 : 10); seed++) {
            equalToAll(seed * 7919 + 1);
        }
        StringBuilder figures = new StringBuilder();
        for (int reach : new int[] {10, 30, 100, 299}) {
            double[] ms = new double[atLength ? 300 : 5];
            for (int run = 0; run < ms.length; run++) {
                UndoGraph needs = random(new Random(run), 300, 0.3, reach);
                long begin = System.nanoTime();
                assertThat(ClosureBranchAndBound.set(needs, 0, BackOut.BUDGET).proven())
                        .isTrue();
                ms[run] = (System.nanoTime() - begin) / 1e6;
            }
            Arrays.sort(ms);
            figures.append(" blocked within ")
                    .append(reach)
                    .append(" steps: median ")
                    .append(ms[ms.length / 2]);
            figures.append(" ms, 99 % ").append(ms[ms.length * 99 / 100]).append(" ms;");
        }
        assertThat(atLength).as(figures.toString()).isFalse();
    }
}
