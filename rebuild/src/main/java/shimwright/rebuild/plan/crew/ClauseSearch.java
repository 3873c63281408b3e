package shimwright.rebuild.plan.crew;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * The exact search: decides starts, draws every conclusion, learns from each dead end why it was one, and starts over now and
 * then with what it learned (lazy clause generation: Ohrimenko, Stuckey and Codish, Constraints 14 (2009) 357, from memory).
 */
final class ClauseSearch {
    private static final long ROUND = 100;
    private static final int MOST_KEPT = 4000;
    /** Every so many rounds it first supposes that the bound can be met, which raises the bound where that fails. */
    private static final int PROBES = 3;

    private final IndexedProject model;
    private final Facts facts;
    private final Clauses clauses;
    private final Propagator consequences;
    private final ConflictAnalysis analysis;

    private int @Nullable [] best;
    private int span;
    private long conflicts;
    private boolean finished;

    ClauseSearch(IndexedProject model, int @Nullable [] first, int bound) {
        this.model = model;
        facts = new Facts(model.n + 1);
        clauses = new Clauses(facts, model.n + 1);
        consequences = new Propagator(facts, clauses, model);
        analysis = new ConflictAnalysis(facts, model.n + 1);
        best = first;
        boolean sound = true;
        for (int i = 0; i <= model.n; i++) {
            // the first two facts of a side hold for good and need no reason
            facts.least[2 * i] = model.soonest[i];
            facts.least[2 * i + 1] = -Math.max(model.latest[i], model.soonest[i]);
            sound &= model.latest[i] >= model.soonest[i];
            facts.moved[i] = true;
        }
        finished = !sound;
        if (sound) {
            sound = facts.raise(2 * model.n, bound, null, false);
            for (int i = 0; sound && i <= model.n; i++) {
                sound = pushAll(i);
            }
            finished = !sound;
        }
        if (first != null) {
            span = first[model.n];
            shorten();
        }
    }

    /** Hands on what was known at the beginning; the trail holds only what moved since. */
    private boolean pushAll(int i) {
        for (int a : model.from[i]) {
            int[] arc = model.arcs[a];
            if (!facts.raise(2 * arc[1], facts.low(i) + arc[2], null, false)) {
                return false;
            }
        }
        for (int a : model.to[i]) {
            int[] arc = model.arcs[a];
            if (!facts.raise(2 * arc[0] + 1, arc[2] - facts.high(i), null, false)) {
                return false;
            }
        }
        return true;
    }

    private void shorten() {
        facts.backTo(0);
        if (!facts.raise(2 * model.n + 1, 1 - span, null, false)) {
            finished = true;
        }
    }

    /** Looks on until it is finished, told to stop or has met so many dead ends. */
    void run(long until, BooleanSupplier stop) {
        int round = 1;
        while (!finished && conflicts < until && !stop.getAsBoolean()) {
            round(ROUND * luby(round), round, until);
            round++;
        }
        facts.backTo(0);
    }

    private void round(long length, int number, long until) {
        facts.backTo(0);
        long end = Math.min(until, conflicts + length);
        if (!consequences.draw()) {
            finished = true;
            return;
        }
        if (clauses.size() > MOST_KEPT) {
            clauses.forget();
        }
        while (conflicts < end) {
            if (!consequences.draw()) {
                conflicts++;
                Clause clause = analysis.clause();
                if (clause == null) {
                    finished = true;
                    return;
                }
                learn(clause);
            } else if (!decide(number)) {
                keep();
                if (finished) {
                    return;
                }
            }
        }
    }

    private void learn(Clause clause) {
        facts.backTo(analysis.backTo());
        if (clause.size() > 1) {
            clauses.add(clause);
        }
        if (!facts.raise(clause.side(0), clause.value(0), clause.size() > 1 ? clause : null, false)) {
            throw new IllegalStateException("what was learned fails at once");
        }
    }

    private void keep() {
        int[] found = new int[model.n + 1];
        for (int i = 0; i <= model.n; i++) {
            found[i] = facts.low(i);
        }
        best = found;
        span = found[model.n];
        shorten();
    }

    /** Opens a level; false where every start is fixed. */
    private boolean decide(int number) {
        if (number % PROBES == 0 && facts.level() == 0 && !facts.fixed(model.n)) {
            facts.decide(2 * model.n + 1, -facts.low(model.n));
            return true;
        }
        int chosen = -1;
        boolean blame = number % 2 == 0;
        for (int i = 0; i < model.n; i++) {
            if (!facts.fixed(i) && (chosen < 0 || (blame ? blamed(i, chosen) : sooner(i, chosen)))) {
                chosen = i;
            }
        }
        if (chosen < 0) {
            if (facts.fixed(model.n)) {
                return false;
            }
            chosen = model.n;
        }
        int[] known = best;
        int low = facts.low(chosen);
        if (known == null || !blame || known[chosen] <= low) {
            facts.decide(2 * chosen + 1, -low);
        } else if (known[chosen] >= facts.high(chosen)) {
            facts.decide(2 * chosen, facts.high(chosen));
        } else {
            facts.decide(2 * chosen + 1, -known[chosen]);
        }
        return true;
    }

    private boolean blamed(int i, int than) {
        return analysis.blame[i] > analysis.blame[than];
    }

    private boolean sooner(int i, int than) {
        int by = Integer.compare(facts.low(i), facts.low(than));
        by = by == 0 ? Integer.compare(facts.high(i), facts.high(than)) : by;
        return by < 0;
    }

    /** The Luby sequence 1 1 2 1 1 2 4 ... */
    static int luby(int i) {
        int k = 1;
        while ((1 << k) - 1 < i) {
            k++;
        }
        return (1 << k) - 1 == i ? 1 << (k - 1) : luby(i - (1 << (k - 1)) + 1);
    }

    boolean finished() {
        return finished;
    }

    int @Nullable [] best() {
        return best;
    }

    /** The last end of no timetable is sooner; the span of the best where that is proven. */
    int bound() {
        return finished && best != null ? span : facts.low(model.n);
    }

    long conflicts() {
        return conflicts;
    }
}
