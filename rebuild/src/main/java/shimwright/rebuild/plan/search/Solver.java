package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/** One search: beams that widen, then best first until nothing better is left. */
final class Solver {
    /** Cost of a second. */
    static final double SECOND = 1e3 * Compiled.UNITS;

    private static final int EVERY = 4096;
    private static final Comparator<Node> PROMISING = Comparator.<Node>comparingLong(node -> node.bound)
            .thenComparing(Comparator.<Node>comparingInt(node -> node.count).reversed())
            .thenComparingLong(node -> node.number);

    private final Compiled c;
    private final Successors successors;
    private final Watch watch;
    private final Node root;
    private final PriorityQueue<Node> open = new PriorityQueue<>(PROMISING);
    private final Labels labels;
    /** True once the best-first search has begun. */
    private boolean begun;

    private final long fixed;
    private int[] best = new int[0];
    /** True while the best order is the one that was to be kept. */
    private boolean kept;

    private long value = Compiled.NEVER;
    private long bound;
    /** True once every state that could have been better was looked at. */
    boolean exhausted;

    Solver(Compiled c, Watch watch) {
        this.c = c;
        this.watch = watch;
        this.successors = new Successors(c);
        this.root = successors.root();
        this.labels = new Labels(c);
        this.fixed = Compiled.UNITS * c.work + c.forcedRisk;
        this.bound = root.bound;
    }

    /** An order to keep unless a better one is found; left out where it is not lawful. */
    void keep(int[] order) {
        Evaluation.counted(c, order).ifPresent(cost -> {
            value = cost;
            best = order;
            kept = true;
        });
    }

    /** Looks for better orders near the best one. */
    void near(long most) {
        if (found()) {
            int[] order = new Exchange(c, best, watch.stop()).best(most);
            Evaluation.counted(c, order).filter(cost -> cost < value).ifPresent(cost -> better(order, cost));
        }
    }

    private void better(int[] order, long cost) {
        value = cost;
        best = order;
        kept = false;
        report();
    }

    /** The best order, tidied unless it was to be kept. */
    int[] best() {
        return kept ? best : TieBreak.of(c, best);
    }

    /** True where there is an order. */
    boolean found() {
        return value < Compiled.NEVER;
    }

    long states() {
        return successors.made;
    }

    /** Least cost of any order, as far as known, with the work. */
    long bound() {
        return Math.min(bound, value) + fixed;
    }

    private void ends(Node node) {
        if (node.cost < value) {
            better(path(node), node.cost);
        }
    }

    private void report() {
        double reached = value == Compiled.NEVER ? Double.POSITIVE_INFINITY : (value + fixed) / SECOND;
        watch.progress().accept(new Watch.Progress(reached, bound() / SECOND, successors.made));
    }

    private boolean finished(Node node) {
        return c.finished(node.done, c.dead(node.done));
    }

    boolean proven() {
        return exhausted || bound >= value;
    }

    /** Goes through layers of equal many tasks done and keeps the most promising states of each. */
    void beam(int width) {
        List<List<Node>> layers = new ArrayList<>();
        for (int k = 0; k <= c.n; k++) {
            layers.add(new ArrayList<>());
        }
        layers.get(root.count).add(root);
        Labels seen = new Labels(c);
        for (int k = root.count; k <= c.n; k++) {
            List<Node> layer = layers.get(k);
            layers.set(k, List.of());
            layer.sort(PROMISING);
            seen.clear();
            int grown = 0;
            for (Node node : layer) {
                if (grown == width || node.bound >= value || watch.stop().getAsBoolean()) {
                    break;
                }
                if (!seen.offer(node)) {
                    continue;
                }
                grown++;
                if (finished(node)) {
                    ends(node);
                    continue;
                }
                for (Node next : successors.grow(node)) {
                    if (useful(next)) {
                        layers.get(next.count).add(next);
                    }
                }
            }
        }
    }

    private boolean useful(Node grown) {
        if (grown.bound < value) {
            successors.sharpen(grown);
        }
        return grown.bound < value;
    }

    /** Best first, from where it stood when it was called before; exact once it runs dry. */
    void exact(long most) {
        if (!begun) {
            begun = true;
            labels.offer(root);
            open.add(root);
        }
        long until = successors.made + most;
        long turns = 0;
        while (!open.isEmpty()) {
            Node node = open.peek();
            if (!node.beaten) {
                bound = Math.max(bound, Math.min(node.bound, value));
                if (node.bound >= value) {
                    break;
                }
                if (successors.made >= until || watch.stop().getAsBoolean()) {
                    return;
                }
            }
            open.remove();
            if (!node.beaten) {
                expand(node);
                if (++turns % EVERY == 0) {
                    report();
                }
            }
        }
        exhausted = true;
        bound = Math.max(bound, value);
        open.clear();
        labels.clear();
    }

    private void expand(Node node) {
        if (finished(node)) {
            ends(node);
            return;
        }
        for (Node next : successors.grow(node)) {
            if (next.bound < value && !labels.beaten(next) && useful(next) && labels.offer(next)) {
                if (finished(next)) {
                    ends(next);
                } else {
                    open.add(next);
                }
            }
        }
    }

    /** Tasks in the order of a path. */
    private static int[] path(Node end) {
        List<int[]> parts = new ArrayList<>();
        int length = 0;
        for (Node node = end; node != null; node = node.parent) {
            parts.add(0, node.steps);
            length += node.steps.length;
        }
        int[] path = new int[length];
        int at = 0;
        for (int[] part : parts) {
            System.arraycopy(part, 0, path, at, part.length);
            at += part.length;
        }
        return Arrays.copyOf(path, at);
    }
}
