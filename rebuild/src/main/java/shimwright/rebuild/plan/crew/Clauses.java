package shimwright.rebuild.plan.crew;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** All that was learned; says what follows from it. */
final class Clauses {
    private final Facts facts;
    private final List<Clause> all = new ArrayList<>();
    private final List<List<Clause>> watchers = new ArrayList<>();

    Clauses(Facts facts, int variables) {
        this.facts = facts;
        for (int side = 0; side < 2 * variables; side++) {
            watchers.add(new ArrayList<>());
        }
    }

    int size() {
        return all.size();
    }

    /** Keeps a clause of two facts or more. */
    void add(Clause clause) {
        all.add(clause);
        watch(clause);
    }

    private void watch(Clause clause) {
        watchers.get(clause.side(0) ^ 1).add(clause);
        watchers.get(clause.side(1) ^ 1).add(clause);
    }

    /** Forgets the half that rests on most levels; to be called with all decisions taken back. */
    void forget() {
        List<Clause> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingInt((Clause clause) -> clause.spread).thenComparingInt(Clause::size));
        Set<Clause> gone = Collections.newSetFromMap(new IdentityHashMap<>());
        gone.addAll(sorted.subList(sorted.size() / 2, sorted.size()));
        gone.removeIf(clause -> clause.spread <= 2);
        all.removeIf(gone::contains);
        watchers.forEach(List::clear);
        all.removeIf(this::settled);
        all.forEach(this::watch);
    }

    /** True where it holds for good; brings two facts that are open to the front. */
    private boolean settled(Clause clause) {
        int open = 0;
        for (int k = 0; k < clause.size(); k++) {
            if (facts.holds(clause.side(k), clause.value(k))) {
                return true;
            }
            if (open < 2 && !facts.fails(clause.side(k), clause.value(k))) {
                clause.swap(open++, k);
            }
        }
        return false;
    }

    /** What follows once a side has moved; false where something fails. */
    boolean follow(int side) {
        List<Clause> watching = watchers.get(side);
        int kept = 0;
        boolean sound = true;
        for (int w = 0; w < watching.size(); w++) {
            Clause clause = watching.get(w);
            int at = sound ? failing(clause, side) : -1;
            if (at >= 0 && !facts.holds(clause.side(1 - at), clause.value(1 - at))) {
                if (moves(clause, at)) {
                    continue;
                }
                if (at == 0) {
                    clause.swap(0, 1);
                }
                sound = facts.raise(clause.side(0), clause.value(0), clause, false);
            }
            watching.set(kept++, clause);
        }
        watching.subList(kept, watching.size()).clear();
        return sound;
    }

    private int failing(Clause clause, int side) {
        for (int at = 0; at < 2; at++) {
            if (clause.side(at) == (side ^ 1) && facts.fails(clause.side(at), clause.value(at))) {
                return at;
            }
        }
        return -1;
    }

    /** True where a fact that may still hold is watched instead. */
    private boolean moves(Clause clause, int at) {
        for (int k = 2; k < clause.size(); k++) {
            if (!facts.fails(clause.side(k), clause.value(k))) {
                clause.swap(at, k);
                watchers.get(clause.side(at) ^ 1).add(clause);
                return true;
            }
        }
        return false;
    }
}
