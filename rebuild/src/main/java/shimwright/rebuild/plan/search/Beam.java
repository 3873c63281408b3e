package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * One beam: layers of states with equally many tasks done, of each layer the most promising ones gone on from. Where nothing
 * promising had to be dropped, it has looked at everything. It stays within its memory: where the states at hand would take
 * more, it becomes narrower.
 */
final class Beam {
    private static final Comparator<Node> PROMISING = Comparator.<Node>comparingLong(node -> node.bound)
            .thenComparingLong(node -> node.waited)
            .thenComparingLong(node -> node.number);

    private final CompiledProblem c;
    private final Successors successors;
    private final BooleanSupplier stop;
    private final Layer[] layers;
    private final Trail trail = new Trail();
    private final long bytes;
    private final long bytesOfNode;
    private int width;
    private long live;
    private long most;
    /** Least bound of a state that was dropped or not come to. */
    private long dropped = CompiledProblem.NEVER;

    /** Where a beam ends. */
    interface Ends {
        /** Told of the tasks that lead from the root to a state where it ends; says below which cost the next is wanted. */
        long reached(List<Integer> tasks, Node end);
    }

    /** States of one layer. */
    private static final class Layer {
        final List<Node> nodes = new ArrayList<>();
        final Labels labels;

        Layer(CompiledProblem c) {
            labels = new Labels(c);
        }
    }

    /**
     * A beam not yet sent.
     *
     * @param width most states gone on from in a layer
     * @param bytes most bytes its states may take
     */
    Beam(CompiledProblem c, Successors successors, int width, long bytes, BooleanSupplier stop) {
        this.c = c;
        this.successors = successors;
        this.width = width;
        this.bytes = bytes;
        this.stop = stop;
        this.bytesOfNode = Node.bytes(c);
        this.layers = new Layer[c.n + 1];
    }

    /**
     * Sends it.
     *
     * @param value cost below which orders are wanted
     * @param states most states to make
     * @param until how many tasks are done where it ends
     * @return a bound below which nothing can be: at least what is wanted where everything was looked at
     */
    long send(Node root, long value, long states, int until, Ends ends) {
        long wanted = value;
        long last = successors.made + states;
        put(root);
        successors.wanted(wanted);
        for (int k = root.count; k <= until; k++) {
            Layer layer = layers[k];
            if (layer == null) {
                continue;
            }
            layers[k] = null;
            layer.labels.clear();
            layer.nodes.sort(PROMISING);
            int grown = 0;
            for (Node node : layer.nodes) {
                if (node.beaten || node.bound >= wanted) {
                    continue;
                }
                if (grown == width || successors.made >= last || stop.getAsBoolean()) {
                    dropped = Math.min(dropped, node.bound);
                    continue;
                }
                grown++;
                if (node.count == until) {
                    wanted = ends.reached(trail.to(node), node);
                    successors.wanted(wanted);
                    continue;
                }
                int from = trail.add(node);
                for (Node next : successors.grow(node, from)) {
                    if (next.bound < wanted) {
                        offer(next, wanted);
                    }
                }
            }
            live -= layer.nodes.size();
        }
        return dropped;
    }

    /** True where it had to become narrower for want of memory. */
    boolean narrowed() {
        return most > bytes;
    }

    private void put(Node root) {
        layers[root.count] = new Layer(c);
        layers[root.count].nodes.add(root);
        live = 1;
    }

    private void offer(Node next, long wanted) {
        Layer layer = layers[next.count];
        if (layer == null) {
            layer = new Layer(c);
            layers[next.count] = layer;
        }
        if (layer.labels.beaten(next)) {
            return;
        }
        successors.sharpen(next);
        if (next.bound < wanted && layer.labels.offer(next)) {
            layer.nodes.add(next);
            live++;
            if (layer.nodes.size() >= 2 * width + 64) {
                trim(layer);
            }
            if (live * bytesOfNode + trail.size() * Trail.BYTES > bytes) {
                most = bytes + 1;
                narrow();
            }
        }
    }

    private void narrow() {
        if (width > 1) {
            width = (width + 1) / 2;
            for (Layer layer : layers) {
                if (layer != null) {
                    trim(layer);
                }
            }
        }
    }

    private void trim(Layer layer) {
        List<Node> nodes = layer.nodes;
        live -= nodes.size();
        nodes.removeIf(node -> node.beaten);
        if (nodes.size() > width) {
            nodes.sort(PROMISING);
            dropped = Math.min(dropped, nodes.get(width).bound);
            nodes.subList(width, nodes.size()).clear();
        }
        layer.labels.clear();
        nodes.forEach(layer.labels::offer);
        live += nodes.size();
    }
}
