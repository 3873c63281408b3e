package shimwright.rebuild.plan.crew;

/**
 * What was learned from a dead end: at least one of these facts holds. See {@link Facts} for how a fact is written.
 */
final class Clause {
    /** Side and value in turns; the first two are watched. */
    final int[] facts;

    /** On how many levels of decisions it rests: few is useful. */
    final int spread;

    Clause(int[] facts, int spread) {
        this.facts = facts;
        this.spread = spread;
    }

    int side(int k) {
        return facts[2 * k];
    }

    int value(int k) {
        return facts[2 * k + 1];
    }

    int size() {
        return facts.length / 2;
    }

    void swap(int a, int b) {
        int side = facts[2 * a];
        int value = facts[2 * a + 1];
        facts[2 * a] = facts[2 * b];
        facts[2 * a + 1] = facts[2 * b + 1];
        facts[2 * b] = side;
        facts[2 * b + 1] = value;
    }
}
