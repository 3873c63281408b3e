package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.plan.search.Solution;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;

/**
 * A sub-assembly begun is finished before something else is taken up, unless that costs more than the rebuilder says. A sub-assembly is
 * made of the steps away from the case that wait for one another because they are done to the same part. Of the cheapest order found
 * its steps are brought forward, or what was begun is begun later, as long as what that costs more is no more than the figure for each
 * time that one is left no more; where the figure is nothing only what costs nothing is changed.
 */
final class Finishing {
    /** Seconds below which two costs are the same. */
    private static final double SAME = 1e-6;

    private static final int MOST_ROUNDS = 60;

    private final Order order;
    private final Map<String, String> assembly;
    private final Map<String, Set<String>> members = new HashMap<>();
    private final Set<String> awaiting = new HashSet<>();
    private final List<String> done;
    private final Function<List<String>, Optional<Cost>> price;
    private final double each;
    private List<String> best;
    private Cost cost;
    private int left;

    /**
     * An order, and what it costs.
     *
     * @param more seconds that it costs more than the cheapest one found
     * @param left how often a sub-assembly is left begun that could have been gone on with
     * @param bound seconds that the cost of no possible order is below
     * @param proven true where no possible order costs less than this one less what it costs more
     */
    record Finished(List<String> order, Cost cost, double more, int left, double bound, boolean proven) {
        /** An order as it was found. */
        static Finished as(Solution found) {
            return new Finished(found.order(), found.cost(), 0, 0, found.bound(), found.proven());
        }
    }

    private Finishing(
            Unit unit, Order order, BuildState present, SequencingProblem problem, Solution found, double each) {
        this.order = order;
        this.assembly = assemblies(unit, order);
        assembly.forEach((id, first) ->
                members.computeIfAbsent(first, key -> new LinkedHashSet<>()).add(id));
        problem.lags().stream().map(Lag::to).forEach(awaiting::add);
        awaiting.addAll(problem.start().waits().keySet());
        this.done = present.done();
        this.price = Search.prices(problem);
        this.each = each;
        this.best = found.order();
        this.cost = found.cost();
        this.left = left(best);
    }

    /** The order found with what is begun finished, as far as the weights allow; as it is where they say nothing of it. */
    static Finished of(Unit unit, Order order, BuildState present, SequencingProblem problem, Solution found) {
        if (present.weights().finishing().isEmpty()) {
            return Finished.as(found);
        }
        double each = present.weights().finishing().getAsDouble();
        Finishing finishing = new Finishing(unit, order, present, problem, found, each);
        boolean better = true;
        for (int round = 0; round < MOST_ROUNDS && better; round++) {
            better = finishing.left > 0 && finishing.better();
        }
        double more = finishing.cost.total() - found.cost().total();
        return new Finished(
                finishing.best,
                finishing.cost,
                Math.abs(more) < SAME ? 0 : Math.max(0, more),
                finishing.left,
                found.bound(),
                found.proven());
    }

    /** Of each step of a sub-assembly its first step in file order. */
    static Map<String, String> assemblies(Unit unit, Order order) {
        Map<String, String> of = new HashMap<>();
        order.steps().values().stream()
                .filter(step -> beside(unit, step))
                .forEach(step -> of.put(step.id(), step.id()));
        for (String id : order.steps().keySet()) {
            order.before().getOrDefault(id, Map.of()).forEach((before, why) -> {
                String earlier = of.get(before);
                String later = of.get(id);
                if (why == Why.SAME_PART && earlier != null && later != null) {
                    of.replaceAll((step, first) -> first.equals(later) ? earlier : first);
                }
            });
        }
        return Map.copyOf(of);
    }

    private static boolean beside(Unit unit, Step step) {
        return Optional.ofNullable(unit.type().stations().get(step.at()))
                .filter(station -> !station.holdsCase())
                .isPresent();
    }

    /** How often one is left begun although a step of it could be done next. */
    private int left(List<String> steps) {
        Set<String> gone = new HashSet<>(done);
        String last = done.isEmpty() ? "" : done.get(done.size() - 1);
        int count = 0;
        for (String id : steps) {
            count += leaves(last, id, gone) ? 1 : 0;
            gone.add(id);
            last = id;
        }
        return count;
    }

    private boolean leaves(String last, String next, Set<String> gone) {
        String begun = assembly.get(last);
        return begun != null
                && !begun.equals(assembly.get(next))
                && members.getOrDefault(begun, Set.of()).stream().anyMatch(id -> possible(id, gone));
    }

    private boolean possible(String id, Set<String> gone) {
        return !gone.contains(id)
                && !awaiting.contains(id)
                && gone.containsAll(order.before().getOrDefault(id, Map.of()).keySet());
    }

    /** Changes one place: goes on with what is begun, or where that is worth nothing begins it later; false where neither is. */
    private boolean better() {
        Set<String> gone = new HashSet<>(done);
        String last = done.isEmpty() ? "" : done.get(done.size() - 1);
        List<List<String>> sooner = new ArrayList<>();
        List<List<String>> later = new ArrayList<>();
        for (int at = 0; at < best.size(); at++) {
            String id = best.get(at);
            if (leaves(last, id, gone)) {
                String begun = assembly.getOrDefault(last, "");
                sooner.add(forward(at, begun, gone, 1));
                sooner.add(forward(at, begun, gone, best.size()));
                later.add(later(at, begun));
            }
            gone.add(id);
            last = id;
        }
        return best(sooner) || best(later);
    }

    /** Takes the order that is worth the most against the best so far; false where none is worth anything. */
    private boolean best(List<List<String>> tries) {
        double most = -SAME;
        boolean found = false;
        List<String> from = best;
        double was = cost.total();
        int before = left;
        for (List<String> other : tries) {
            Optional<Cost> then = other.equals(from) ? Optional.empty() : price.apply(other);
            int fewer = then.isEmpty() ? 0 : before - left(other);
            double worth = fewer <= 0 ? -1 : each * fewer - (then.orElseThrow().total() - was);
            if (worth > most) {
                most = worth;
                best = other;
                cost = then.orElseThrow();
                left = before - fewer;
                found = true;
            }
        }
        return found;
    }

    /** Brings the next steps of a sub-assembly forward to a place, so many at most, as far as they could be done there. */
    private List<String> forward(int at, String begun, Set<String> gone, int most) {
        Set<String> then = new HashSet<>(gone);
        List<String> moved = new ArrayList<>();
        for (String id : best.subList(at, best.size())) {
            if (moved.size() < most && begun.equals(assembly.get(id)) && possible(id, then)) {
                moved.add(id);
                then.add(id);
            }
        }
        List<String> other = new ArrayList<>(best);
        other.removeAll(moved);
        other.addAll(at, moved);
        return other;
    }

    /** Puts off what was just done of a sub-assembly until it is gone on with. */
    private List<String> later(int at, String begun) {
        int first = at;
        while (first > 0 && begun.equals(assembly.get(best.get(first - 1)))) {
            first--;
        }
        int next = at;
        while (next < best.size() && !begun.equals(assembly.get(best.get(next)))) {
            next++;
        }
        List<String> other = new ArrayList<>(best.subList(0, first));
        other.addAll(best.subList(at, next));
        other.addAll(best.subList(first, at));
        other.addAll(best.subList(next, best.size()));
        return other;
    }
}
