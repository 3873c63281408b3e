package shimwright.rebuild.plan.search;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.plan.model.Cost;

/** What a given order costs. */
final class Evaluation {
    private Evaluation() {}

    /** The cost of an order; empty where it does not keep the rules or is not whole. */
    static Optional<Cost> cost(CompiledProblem c, List<String> order) {
        return cost(c, order.stream().mapToInt(c::index).toArray());
    }

    static Optional<Cost> cost(CompiledProblem c, int[] order) {
        StateCursor at = new StateCursor(c);
        int turns = 0;
        int walks = 0;
        int tools = 0;
        long work = 0;
        for (int task : order) {
            if (!at.free(task) || !at.allowed(task)) {
                return Optional.empty();
            }
            int kit = c.ready.kit[task];
            for (int t = 0; kit >= 0 && t < c.ready.toolTime.length; t++) {
                tools += c.ready.holds[kit][t] && !c.ready.holds[at.kit][t] ? 1 : 0;
            }
            int to = c.ready.orientation[task];
            turns += to >= 0 && at.orientation < c.ready.orientations && to != at.orientation ? 1 : 0;
            int place = c.ready.place[task];
            walks += place >= 0 && at.place < c.ready.places && place != at.place ? 1 : 0;
            work += c.duration[task];
            if (!at.take(task)) {
                return Optional.empty();
            }
        }
        if (!at.finished()) {
            return Optional.empty();
        }
        return Optional.of(new Cost(
                work / 1e3,
                at.turned / 1e3,
                at.walked / 1e3,
                at.laid / 1e3,
                at.waited / 1e3,
                at.waited * c.waiting / (1e3 * CompiledProblem.UNITS),
                (at.risked + c.forcedRisk) / (1e3 * CompiledProblem.UNITS),
                turns,
                walks,
                tools));
    }

    /** The cost of an order as the search counts it, without what no order changes; empty where it is not possible. */
    static Optional<Long> counted(CompiledProblem c, int[] order) {
        StateCursor at = new StateCursor(c);
        for (int task : order) {
            if (!at.free(task) || !at.allowed(task) || !at.take(task)) {
                return Optional.empty();
            }
        }
        return at.finished() ? Optional.of(at.cost) : Optional.empty();
    }
}
