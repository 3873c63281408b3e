package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/** A problem without circles in numbers: tasks by index, times in whole milliseconds, sets as bits. */
final class CompiledProblem {
    /** Larger than any cost. */
    static final long NEVER = Long.MAX_VALUE / 4;
    /** Costs count in thousandths of a millisecond, so that the price of waiting keeps them whole. */
    static final long UNITS = 1000;

    final SequencingProblem problem;
    final int n;
    final long[] all;
    final long[] duration;
    final long[][] before;
    final int[][] after;
    final long[][] ancestors;
    final long[][] descendants;
    final int[] topological;
    final int[] weight;
    final SetUpTimes ready;
    final int[] lagFrom;
    final int[] lagTo;
    final long[] lag;
    final int[][] lagsTo;
    final int[][] lagsFrom;
    final WindowTimes spans;
    final int[][] riskHold;
    final long[][] riskCost;
    /** Risk that no order can avoid, as cost. */
    final long forcedRisk;
    /** Cost of a millisecond of waiting. */
    final long waiting;
    /** Working time of all tasks. */
    final long work;

    private final Map<String, Integer> index = new HashMap<>();

    private CompiledProblem(SequencingProblem problem) {
        this.problem = problem;
        this.n = problem.tasks().size();
        problem.tasks().forEach(task -> index.put(task.id(), index.size()));
        this.all = Bits.empty(n);
        this.duration = new long[n];
        this.weight = new int[n];
        this.before = new long[n][];
        for (int i = 0; i < n; i++) {
            Task task = problem.tasks().get(i);
            Bits.add(all, i);
            duration[i] = milliseconds(task.seconds());
            weight[i] = task.weight();
            before[i] = set(task.after());
        }
        this.after = after();
        this.topological = topological();
        this.ancestors = ancestors();
        this.descendants = descendants();
        this.ready = SetUpTimes.of(problem, this);
        List<Lag> lags = new ArrayList<>(problem.lags());
        lagFrom = new int[lags.size() + problem.start().waits().size()];
        lagTo = new int[lagFrom.length];
        lag = new long[lagFrom.length];
        lags(lags);
        lagsTo = by(lagTo);
        lagsFrom = by(lagFrom);
        this.spans = WindowTimes.of(problem, this);
        this.waiting = Math.round(problem.waiting() * UNITS);
        this.riskHold = new int[n][];
        this.riskCost = new long[n][];
        this.forcedRisk = risks(problem.risks());
        long sum = 0;
        for (long one : duration) {
            sum += one;
        }
        this.work = sum;
    }

    /** Compiles; the tasks must not wait for each other in a circle. */
    static CompiledProblem of(SequencingProblem problem) {
        return new CompiledProblem(problem);
    }

    static long milliseconds(double seconds) {
        return Math.round(seconds * 1000);
    }

    int index(String id) {
        Integer i = index.get(id);
        if (i == null) {
            throw new IllegalArgumentException("nothing is called " + id);
        }
        return i;
    }

    Task task(int i) {
        return problem.tasks().get(i);
    }

    long[] set(Iterable<String> ids) {
        long[] set = Bits.empty(n);
        ids.forEach(id -> Bits.add(set, index(id)));
        return set;
    }

    private int[][] after() {
        List<List<Integer>> lists = lists(n);
        for (int i = 0; i < n; i++) {
            for (int p = Bits.next(before[i], 0); p >= 0; p = Bits.next(before[i], p + 1)) {
                lists.get(p).add(i);
            }
        }
        return arrays(lists);
    }

    private int[] topological() {
        int[] order = new int[n];
        int[] waiting = new int[n];
        int filled = 0;
        for (int i = 0; i < n; i++) {
            waiting[i] = Bits.count(before[i]);
            if (waiting[i] == 0) {
                order[filled++] = i;
            }
        }
        for (int at = 0; at < filled; at++) {
            for (int next : after[order[at]]) {
                if (--waiting[next] == 0) {
                    order[filled++] = next;
                }
            }
        }
        if (filled < n) {
            throw new IllegalStateException("tasks wait for each other in a circle");
        }
        return order;
    }

    /** What every order does before a task. */
    private long[][] ancestors() {
        long[][] sets = new long[n][];
        for (int i : topological) {
            sets[i] = Bits.empty(n);
            for (int p = Bits.next(before[i], 0); p >= 0; p = Bits.next(before[i], p + 1)) {
                Bits.add(sets[i], p);
                Bits.addAll(sets[i], sets[p]);
            }
        }
        return sets;
    }

    private long[][] descendants() {
        long[][] sets = new long[n][];
        for (int i = 0; i < n; i++) {
            sets[i] = Bits.empty(n);
        }
        for (int i = 0; i < n; i++) {
            for (int p = Bits.next(ancestors[i], 0); p >= 0; p = Bits.next(ancestors[i], p + 1)) {
                Bits.add(sets[p], i);
            }
        }
        return sets;
    }

    private void lags(List<Lag> lags) {
        int at = 0;
        for (Lag one : lags) {
            lagFrom[at] = index(one.from());
            lagTo[at] = index(one.to());
            lag[at++] = milliseconds(one.seconds());
        }
        Map<String, Double> waits = new LinkedHashMap<>();
        problem.tasks().forEach(task -> {
            Double wait = problem.start().waits().get(task.id());
            if (wait != null) {
                waits.put(task.id(), wait);
            }
        });
        for (Map.Entry<String, Double> wait : waits.entrySet()) {
            lagFrom[at] = -1;
            lagTo[at] = index(wait.getKey());
            lag[at++] = milliseconds(wait.getValue());
        }
    }

    private int[][] by(int[] of) {
        List<List<Integer>> lists = lists(n);
        for (int k = 0; k < of.length; k++) {
            if (of[k] >= 0) {
                lists.get(of[k]).add(k);
            }
        }
        return arrays(lists);
    }

    /** Risks by early task; those that no order avoids are added up and left out. */
    private long risks(List<Risk> risks) {
        List<Map<Integer, Long>> by = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            by.add(new LinkedHashMap<>());
        }
        long forced = 0;
        for (Risk risk : risks) {
            int early = index(risk.early());
            int hold = index(risk.hold());
            if (early == hold || Bits.has(ancestors[early], hold)) {
                continue;
            }
            if (Bits.has(ancestors[hold], early)) {
                forced += UNITS * milliseconds(risk.seconds());
            } else {
                by.get(early).merge(hold, UNITS * milliseconds(risk.seconds()), Long::sum);
            }
        }
        for (int i = 0; i < n; i++) {
            Map<Integer, Long> mine = by.get(i);
            riskHold[i] = mine.keySet().stream().mapToInt(Integer::intValue).toArray();
            riskCost[i] = mine.values().stream().mapToLong(Long::longValue).toArray();
        }
        return forced;
    }

    static List<List<Integer>> lists(int n) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }

    static int[][] arrays(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /** True where nothing keeps the task from being done next but windows. */
    boolean free(int task, long[] done) {
        return !Bits.has(done, task) && Bits.within(before[task], done);
    }

    /** The names of the windows that an order must keep. */
    List<Window> windows() {
        return problem.windows();
    }
}
