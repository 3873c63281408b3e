package shimwright.rebuild.plan.crew;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Longest ways through the lags, and the circle where there is none. */
final class Lags {
    private final IndexedProject model;
    /** Soonest starts by lags alone. */
    final int[] head;

    /** Least time from the end of an activity to the end of everything. */
    final int[] tail;

    private final int[] by;
    private List<Integer> circle = List.of();
    private boolean late;

    Lags(IndexedProject model) {
        this.model = model;
        head = model.soonest.clone();
        tail = new int[model.n + 1];
        by = new int[model.n + 1];
        Arrays.fill(by, -1);
        settle();
        if (circle.isEmpty()) {
            tails();
            for (int i = 0; i <= model.n; i++) {
                late |= head[i] > model.latest[i];
            }
        }
    }

    /** Activities that wait for each other longer than they may, in a circle; empty where there is none. */
    List<Integer> circle() {
        return circle;
    }

    /** True where something has to start before it can. */
    boolean late() {
        return late;
    }

    private void settle() {
        int last = -1;
        for (int round = 0; round <= model.n + 1; round++) {
            last = -1;
            for (int[] arc : model.arcs) {
                if (head[arc[0]] + arc[2] > head[arc[1]]) {
                    head[arc[1]] = head[arc[0]] + arc[2];
                    by[arc[1]] = arc[0];
                    last = arc[1];
                }
            }
            if (last < 0) {
                return;
            }
        }
        for (int i = 0; i <= model.n; i++) {
            last = by[last];
        }
        List<Integer> found = new ArrayList<>();
        for (int at = last; found.isEmpty() || at != last; at = by[at]) {
            found.add(at);
        }
        Collections.reverse(found);
        circle = List.copyOf(found);
    }

    private void tails() {
        int[] from = new int[model.n + 1];
        Arrays.fill(from, Integer.MIN_VALUE / 2);
        from[model.n] = 0;
        for (boolean moved = true; moved; ) {
            moved = false;
            for (int[] arc : model.arcs) {
                if (from[arc[1]] + arc[2] > from[arc[0]]) {
                    from[arc[0]] = from[arc[1]] + arc[2];
                    moved = true;
                }
            }
        }
        for (int i = 0; i < model.n; i++) {
            tail[i] = from[i] - model.duration[i];
        }
    }
}
