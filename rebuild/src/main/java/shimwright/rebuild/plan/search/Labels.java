package shimwright.rebuild.plan.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** States kept by what is done in them; of those that are as good as another one, one. */
final class Labels {
    private final CompiledProblem c;
    private final int lags;
    private @Nullable Node[] slots = new Node[1 << 6];
    private int size;

    Labels(CompiledProblem c) {
        this.c = c;
        this.lags = c.lag.length;
    }

    void clear() {
        Arrays.fill(slots, null);
        size = 0;
    }

    /** True where another state is at least as good. */
    boolean beaten(Node node) {
        for (Node other = slots[node.hash & slots.length - 1]; other != null; other = other.next) {
            if (other.hash == node.hash && Arrays.equals(other.done, node.done) && beats(other, node)) {
                return true;
            }
        }
        return false;
    }

    /** False where another state is at least as good; else keeps it and marks those that it beats. */
    boolean offer(Node node) {
        int slot = node.hash & slots.length - 1;
        Node last = null;
        for (Node other = slots[slot]; other != null; other = other.next) {
            if (other.hash == node.hash && Arrays.equals(other.done, node.done)) {
                if (beats(other, node)) {
                    return false;
                }
                if (beats(node, other)) {
                    other.beaten = true;
                    if (last == null) {
                        slots[slot] = other.next;
                    } else {
                        last.next = other.next;
                    }
                    size--;
                    continue;
                }
            }
            last = other;
        }
        node.next = slots[slot];
        slots[slot] = node;
        if (++size > slots.length) {
            enlarge();
        }
        return true;
    }

    private void enlarge() {
        Node[] old = slots;
        slots = new Node[old.length * 2];
        for (Node head : old) {
            Node node = head;
            while (node != null) {
                Node after = node.next;
                int slot = node.hash & slots.length - 1;
                node.next = slots[slot];
                slots[slot] = node;
                node = after;
            }
        }
    }

    /**
     * True where whatever follows the second could follow the first at no more cost. Where waiting costs nothing and no window
     * hears the clocks, of two that cost the same the one that lets the rest begin sooner.
     */
    private boolean beats(Node a, Node b) {
        if (a.cost > b.cost) {
            return false;
        }
        boolean same = a.orientation == b.orientation && a.place == b.place && a.kit == b.kit;
        long change = 0;
        if (!same) {
            if (!c.ready.metric || carried(a, b)) {
                return false;
            }
            change = c.ready.between(a.orientation, a.place, a.kit, b.orientation, b.place, b.kit);
            if (a.cost + CompiledProblem.UNITS * change > b.cost) {
                return false;
            }
        }
        return clocks(a, b, change);
    }

    /** True where the two differ in something that a window to come may be entered with. */
    private boolean carried(Node a, Node b) {
        return (c.spans.shared && lags > 0)
                || (a.orientation != b.orientation && c.spans.carried(0, a.done))
                || (a.place != b.place && c.spans.carried(1, a.done))
                || (a.kit != b.kit && c.spans.carried(2, a.done));
    }

    private boolean open(Node node) {
        for (int w = lags; w < node.clocks.length; w++) {
            if (node.clocks[w] != StateCursor.SHUT) {
                return true;
            }
        }
        return false;
    }

    private long later(Node a, Node b) {
        long later = 0;
        for (int k = 0; k < lags; k++) {
            later = Math.max(later, a.clocks[k] - b.clocks[k]);
        }
        return later;
    }

    private boolean clocks(Node a, Node b, long change) {
        long later = 0;
        for (int k = 0; k < lags; k++) {
            later = Math.max(later, a.clocks[k] - b.clocks[k]);
            if (c.spans.shared && a.clocks[k] != b.clocks[k]) {
                return false;
            }
        }
        if (c.waiting == 0 && !c.spans.shared && !open(a)) {
            return a.cost + CompiledProblem.UNITS * change < b.cost || a.waited + later <= b.waited + later(b, a);
        }
        long shift = change + later;
        if (a.cost + CompiledProblem.UNITS * change + c.waiting * later > b.cost) {
            return false;
        }
        for (int w = lags; w < a.clocks.length; w++) {
            if (a.clocks[w] != StateCursor.SHUT && a.clocks[w] - shift < b.clocks[w]) {
                return false;
            }
        }
        return true;
    }
}
