package shimwright.rebuild.plan.search;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Window;

/** Time windows in numbers. */
final class WindowTimes {
    final int count;
    /** Task that opens each; -1 where it is open at the start. */
    final int[] opens;

    final int[] closes;
    final long[] longest;
    final boolean[] alone;
    /** Seconds already gone at the start, in ms. */
    final long[] gone;
    /** Tasks that may be done while it is open though nothing else may: what its closing may need. */
    final long[][] allowed;
    /** Tasks that must be done before it can be closed, and the one that closes it. */
    final long[][] forced;
    /** Of a task: the windows it opens. */
    final int[][] openedBy;
    /** True where there is a window in which other things may be done. */
    final boolean shared;
    /** Whether how things stand before it is opened (orientation, place, tools) may matter for what is done in it. */
    private final boolean[][] carries;

    private WindowTimes(SequencingProblem problem, CompiledProblem c) {
        List<Window> windows = problem.windows();
        count = windows.size();
        opens = new int[count];
        closes = new int[count];
        longest = new long[count];
        alone = new boolean[count];
        gone = new long[count];
        allowed = new long[count][];
        forced = new long[count][];
        List<List<Integer>> by = CompiledProblem.lists(c.n);
        boolean others = false;
        for (int w = 0; w < count; w++) {
            Window window = windows.get(w);
            opens[w] = window.opens().isEmpty() ? -1 : c.index(window.opens());
            closes[w] = c.index(window.closes());
            longest[w] = CompiledProblem.milliseconds(window.seconds());
            alone[w] = window.alone();
            others |= !window.alone();
            gone[w] = CompiledProblem.milliseconds(problem.start().open().getOrDefault(window.id(), 0.0));
            if (opens[w] >= 0) {
                by.get(opens[w]).add(w);
            }
            forced[w] = c.ancestors[closes[w]].clone();
            Bits.add(forced[w], closes[w]);
        }
        shared = others;
        openedBy = CompiledProblem.arrays(by);
        carries = new boolean[count][3];
        for (int w = 0; w < count; w++) {
            allowed[w] = allowed(w, c);
            if (opens[w] >= 0) {
                int[][] stands = {c.ready.orientation, c.ready.place, c.ready.kit};
                for (int k = 0; k < 3; k++) {
                    carries[w][k] = stands[k][opens[w]] < 0 && (!alone[w] || settled(w, stands[k], c));
                }
            }
        }
    }

    /** True where something that may be done while the window is open hangs on how things stand. */
    private boolean settled(int window, int[] stands, CompiledProblem c) {
        for (int i = Bits.next(allowed[window], 0); i >= 0; i = Bits.next(allowed[window], i + 1)) {
            if (stands[i] >= 0 && i != opens[window] && !Bits.has(c.ancestors[opens[window]], i)) {
                return true;
            }
        }
        return false;
    }

    /**
     * True where a window that is still to come may be entered with the case, the person or the tools as they stand now, so
     * that getting ready may fall into it.
     *
     * @param what 0 orientation, 1 place, 2 tools
     */
    boolean carried(int what, long[] done) {
        for (int w = 0; w < count; w++) {
            if (carries[w][what] && !Bits.has(done, opens[w])) {
                return true;
            }
        }
        return false;
    }

    static WindowTimes of(SequencingProblem problem, CompiledProblem compiled) {
        return new WindowTimes(problem, compiled);
    }

    /** True where the task may be needed for closing a window that is open. */
    boolean leads(StateCursor at, int task) {
        for (int w = 0; w < count; w++) {
            if (at.clocks[at.clocks.length - count + w] != StateCursor.SHUT && Bits.has(allowed[w], task)) {
                return true;
            }
        }
        return false;
    }

    /** What leads to the closing, and to the closing of every window opened on the way. */
    private long[] allowed(int window, CompiledProblem c) {
        long[] found = Bits.empty(c.n);
        Deque<Integer> open = new ArrayDeque<>(List.of(closes[window]));
        while (!open.isEmpty()) {
            int task = open.remove();
            if (!Bits.has(found, task)) {
                Bits.add(found, task);
                open.addAll(needs(task, c));
                for (int other : openedBy[task]) {
                    open.add(closes[other]);
                }
            }
        }
        return found;
    }

    private static List<Integer> needs(int task, CompiledProblem c) {
        List<Integer> needs = new ArrayList<>();
        long[] set = c.before[task];
        for (int i = Bits.next(set, 0); i >= 0; i = Bits.next(set, i + 1)) {
            needs.add(i);
        }
        return needs;
    }
}
