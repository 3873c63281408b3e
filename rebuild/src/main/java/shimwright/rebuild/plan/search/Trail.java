package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.List;

/** How the states that were gone on from came about: of each the one before and the task done. */
final class Trail {
    private static final int CHUNK = 1 << 14;
    /** Bytes of an entry. */
    static final long BYTES = 8;

    private final List<int[]> chunks = new ArrayList<>();
    private int size;

    /** Puts a state down and says where. */
    int add(Node node) {
        if (size % CHUNK == 0) {
            chunks.add(new int[2 * CHUNK]);
        }
        int[] chunk = chunks.get(size / CHUNK);
        int at = 2 * (size % CHUNK);
        chunk[at] = node.from;
        chunk[at + 1] = node.task;
        return size++;
    }

    int size() {
        return size;
    }

    /** The tasks that lead to a state, what was done at once left out. */
    List<Integer> to(Node node) {
        List<Integer> tasks = new ArrayList<>();
        if (node.task >= 0) {
            tasks.add(node.task);
        }
        for (int at = node.from; at >= 0; ) {
            int[] chunk = chunks.get(at / CHUNK);
            int task = chunk[2 * (at % CHUNK) + 1];
            if (task >= 0) {
                tasks.add(0, task);
            }
            at = chunk[2 * (at % CHUNK)];
        }
        return tasks;
    }
}
