package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is known of the order in which a unit goes together, from the order in which it came apart. Numbered in the order of
 * assembly, the strip-down turned round. Of every pair it is known that the first must come first, or that the two are free,
 * or nothing yet; what is not known counts as order, so that nothing is promised that nobody has seen. The order that was
 * seen is possible always. Immutable; every step of learning gives a new one.
 *
 * <p>If a must come before b, and b before c, then a before c. If a and c are free of each other, then so are whatever a must
 * come before and whatever must come before c. So one answer settles many pairs.
 */
public final class Learning {
    private final List<RemovedParts> parts;
    private final BitSet[] must;
    private final BitSet[] free;
    private final int asked;

    private Learning(List<RemovedParts> parts, BitSet[] must, BitSet[] free, int asked) {
        this.parts = parts;
        this.must = must;
        this.free = free;
        this.asked = asked;
    }

    /**
     * Nothing known but the order seen.
     *
     * @param strip what came off, in order, ids unique
     */
    public static Learning of(List<RemovedParts> strip) {
        List<RemovedParts> parts = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (RemovedParts off : strip) {
            if (!ids.add(off.id())) {
                throw new IllegalArgumentException(off.id() + " came off twice");
            }
            parts.add(0, off);
        }
        return new Learning(List.copyOf(parts), sets(parts.size()), sets(parts.size()), 0);
    }

    private static BitSet[] sets(int size) {
        BitSet[] sets = new BitSet[size];
        for (int i = 0; i < size; i++) {
            sets[i] = new BitSet(size);
        }
        return sets;
    }

    private Learning copy(int more) {
        BitSet[] m = new BitSet[must.length];
        BitSet[] f = new BitSet[free.length];
        for (int i = 0; i < must.length; i++) {
            m[i] = (BitSet) must[i].clone();
            f[i] = (BitSet) free[i].clone();
        }
        return new Learning(parts, m, f, asked + more);
    }

    /** What came off, in the order of assembly. */
    public List<RemovedParts> parts() {
        return parts;
    }

    /** Questions answered so far. */
    public int asked() {
        return asked;
    }

    /** Pairs that nothing is known of. */
    public int open() {
        int pairs = parts.size() * (parts.size() - 1) / 2;
        for (int i = 0; i < must.length; i++) {
            pairs -= must[i].cardinality() + free[i].cardinality();
        }
        return pairs;
    }

    /**
     * With what the drawing proves. An order against the one seen is passed over: it came apart all the same.
     *
     * @param first for an item those that can go in only after it
     */
    public Learning withDrawing(Map<String, Set<String>> first) {
        Learning next = copy(0);
        for (int i = 0; i < parts.size(); i++) {
            Set<String> after = new LinkedHashSet<>();
            parts.get(i).items().forEach(item -> after.addAll(first.getOrDefault(item, Set.of())));
            for (int j = i + 1; j < parts.size(); j++) {
                if (parts.get(j).items().stream().anyMatch(after::contains)) {
                    next.settle(i, j, true);
                }
            }
        }
        next.derive();
        return next;
    }

    /**
     * With another strip-down of the same type: a pair that came off both ways round is free.
     *
     * @param strip ids in the order of coming off; ids that this one does not have are passed over
     */
    public Learning withOrder(List<String> strip) {
        Map<String, Integer> at = new HashMap<>();
        strip.forEach(id -> at.putIfAbsent(id, at.size()));
        Learning next = copy(0);
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                Integer one = at.get(parts.get(i).id());
                Integer two = at.get(parts.get(j).id());
                if (one != null && two != null && one < two) {
                    next.settle(i, j, false);
                }
            }
        }
        next.derive();
        return next;
    }

    /**
     * The question of whose two answers the poorer settles most; of equals the one that settles more in all, then the pair
     * that was nearest. Empty when nothing is open.
     */
    public Optional<Question> next() {
        int[] best = {-1, -1};
        int poorer = -1;
        int sum = -1;
        for (int distance = 1; distance < parts.size(); distance++) {
            for (int i = 0; i + distance < parts.size(); i++) {
                int j = i + distance;
                if (known(i, j)) {
                    continue;
                }
                int no = gain(before(i), after(j));
                int yes = gain(after(i), before(j));
                if (Math.min(no, yes) > poorer || (Math.min(no, yes) == poorer && no + yes > sum)) {
                    poorer = Math.min(no, yes);
                    sum = no + yes;
                    best = new int[] {i, j};
                }
            }
        }
        return poorer < 0
                ? Optional.empty()
                : Optional.of(new Question(parts.get(best[0]), parts.get(best[1]), open()));
    }

    /** With an answer; {@code yes} means it could have come off first, so the two are free. */
    public Learning answered(Question question, boolean yes) {
        Learning next = copy(1);
        next.settle(parts.indexOf(question.later()), parts.indexOf(question.earlier()), !yes);
        next.derive();
        return next;
    }

    /** True where the first must come before the second, or nothing is known of the two and it was seen first. */
    public boolean waits(String first, String then) {
        int i = index(first);
        int j = index(then);
        return i >= 0 && j > i && !free[i].get(j);
    }

    /** True where nothing is known of the two yet. */
    public boolean unknown(String first, String then) {
        int i = index(first);
        int j = index(then);
        return i >= 0 && j > i && !known(i, j);
    }

    private int index(String id) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** What a part waits for, and whether that is known (true) or only what was seen (false); nothing that follows from others. */
    public Map<String, Map<String, Boolean>> order() {
        Map<String, Map<String, Boolean>> order = new LinkedHashMap<>();
        for (int j = 0; j < parts.size(); j++) {
            Map<String, Boolean> needs = new LinkedHashMap<>();
            for (int i = 0; i < j; i++) {
                if (must[i].get(j) && !between(i, j, true)) {
                    needs.put(parts.get(i).id(), true);
                } else if (!known(i, j) && !between(i, j, false)) {
                    needs.put(parts.get(i).id(), false);
                }
            }
            order.put(parts.get(j).id(), needs);
        }
        return order;
    }

    private boolean between(int i, int j, boolean known) {
        for (int k = i + 1; k < j; k++) {
            boolean first = known ? must[i].get(k) : !free[i].get(k);
            boolean then = known ? must[k].get(j) : !free[k].get(j);
            if (first && then) {
                return true;
            }
        }
        return false;
    }

    private boolean known(int i, int j) {
        return must[i].get(j) || free[i].get(j);
    }

    private BitSet before(int j) {
        BitSet before = new BitSet();
        before.set(j);
        for (int i = 0; i < j; i++) {
            if (must[i].get(j)) {
                before.set(i);
            }
        }
        return before;
    }

    private BitSet after(int i) {
        BitSet after = (BitSet) must[i].clone();
        after.set(i);
        return after;
    }

    /** Open pairs of one from the first set and a later one from the second. */
    private int gain(BitSet firsts, BitSet thens) {
        int open = 0;
        for (int i = firsts.nextSetBit(0); i >= 0; i = firsts.nextSetBit(i + 1)) {
            for (int j = thens.nextSetBit(i + 1); j >= 0; j = thens.nextSetBit(j + 1)) {
                open += known(i, j) ? 0 : 1;
            }
        }
        return open;
    }

    /** Settles a pair that is open; what is known already stays. */
    private void settle(int i, int j, boolean order) {
        if (!known(i, j)) {
            mark(order ? must : free, before(i), after(i), before(j), after(j), order);
        }
    }

    private void mark(BitSet[] into, BitSet beforeI, BitSet afterI, BitSet beforeJ, BitSet afterJ, boolean order) {
        BitSet firsts = order ? beforeI : afterI;
        BitSet thens = order ? afterJ : beforeJ;
        for (int u = firsts.nextSetBit(0); u >= 0; u = firsts.nextSetBit(u + 1)) {
            for (int v = thens.nextSetBit(u + 1); v >= 0; v = thens.nextSetBit(v + 1)) {
                if (!known(u, v)) {
                    into[u].set(v);
                }
            }
        }
    }

    /** Draws what follows from free pairs until nothing more does. */
    private void derive() {
        boolean grown = true;
        while (grown) {
            int open = open();
            for (int i = 0; i < parts.size(); i++) {
                for (int k = free[i].nextSetBit(0); k >= 0; k = free[i].nextSetBit(k + 1)) {
                    mark(free, before(i), after(i), before(k), after(k), false);
                }
            }
            grown = open() < open;
        }
    }
}
