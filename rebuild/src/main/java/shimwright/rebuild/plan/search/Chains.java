package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** As few chains as can be, of tasks that come one after the other in every order, in which every task stands once. */
final class Chains {
    private final CompiledProblem c;
    /** Of a task: the one before it in its chain; -1 for none. */
    private final int[] previous;

    private Chains(CompiledProblem c) {
        this.c = c;
        this.previous = new int[c.n];
        Arrays.fill(previous, -1);
    }

    /** The chains, the longest first. */
    static List<int[]> of(CompiledProblem c) {
        Chains chains = new Chains(c);
        for (int task : c.topological) {
            chains.follow(task, Bits.empty(c.n));
        }
        return chains.list();
    }

    /** Finds a task that follows this one in its chain, others following others where need be (bipartite matching). */
    private boolean follow(int task, long[] seen) {
        long[] later = c.descendants[task];
        for (int next = Bits.next(later, 0); next >= 0; next = Bits.next(later, next + 1)) {
            if (!Bits.has(seen, next)) {
                Bits.add(seen, next);
                if (previous[next] < 0 || follow(previous[next], seen)) {
                    previous[next] = task;
                    return true;
                }
            }
        }
        return false;
    }

    private List<int[]> list() {
        int[] next = new int[c.n];
        Arrays.fill(next, -1);
        for (int task = 0; task < c.n; task++) {
            if (previous[task] >= 0) {
                next[previous[task]] = task;
            }
        }
        List<int[]> chains = new ArrayList<>();
        for (int first = 0; first < c.n; first++) {
            if (previous[first] < 0) {
                List<Integer> chain = new ArrayList<>();
                for (int task = first; task >= 0; task = next[task]) {
                    chain.add(task);
                }
                chains.add(chain.stream().mapToInt(Integer::intValue).toArray());
            }
        }
        chains.sort(Comparator.comparingInt(chain -> -chain.length));
        return chains;
    }
}
