package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.LastCall;
import shimwright.rebuild.plan.LastCall.Call;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * The last call before a step: what it costs to get at things now, and what it costs once the step is done. Minutes are of
 * undoing and doing again by the tariff, without turning over.
 *
 * @param step about to be done
 * @param calls earlier steps that it shuts in: read or done now or not without undoing it
 * @param jumps items that are dearer to get at afterwards, the greatest jump first
 * @param losses what getting at any of them destroys from then on
 */
public record LastCallCost(Step step, List<Call> calls, List<Jump> jumps, List<Loss> losses) {

    /**
     * An item that a step makes dearer to get at.
     *
     * @param item what it is
     * @param opening the opening it could be reached through at no cost until now; empty for none
     * @param before minutes to get at it now
     * @param after minutes to get at it once the step is done
     * @param losses what is destroyed then and is not now
     */
    public record Jump(Item item, String opening, double before, double after, List<Loss> losses) {
        /** Minutes it becomes dearer by, above 0. */
        public double by() {
            return after - before;
        }

        /** True where it can be reached as it stands until now, and not any more afterwards. */
        public boolean lost() {
            return !opening.isEmpty();
        }
    }

    /** The last call by the usual tariff. */
    public static Outcome<LastCallCost> by(Unit unit, Map<String, String> taken, Collection<String> done, String step) {
        return by(unit, taken, done, step, Tariff.USUAL);
    }

    /**
     * The last call at a step. Only items whose way back holds the step are listed, not those
     * that it fits itself nor those that it makes cheaper by taking something out.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param done steps that stand done, in the order in which they were done
     * @param step refused where the build has no such step with these choices; done already, it shuts in nothing more
     * @param tariff what undoing takes
     */
    public static Outcome<LastCallCost> by(
            Unit unit, Map<String, String> taken, Collection<String> done, String step, Tariff tariff) {
        Order order = Order.of(unit, taken);
        Step next = order.steps().get(step);
        if (next == null) {
            return Outcome.refused(
                    new Refusal("step", "step " + step, "this build has no such step", "Go back to the build page"));
        }
        List<String> then = new ArrayList<>(new LinkedHashSet<>(done));
        if (!then.contains(step)) {
            then.add(step);
        }
        Prices now = new Prices(unit, taken, done, tariff, Set.of());
        Prices later =
                new Prices(unit, taken, then, tariff, now.standing.fittedBy().keySet());
        List<Jump> jumps = new ArrayList<>();
        Loss.Finder losses = new Loss.Finder(unit);
        for (String id : now.standing.fittedBy().keySet()) {
            if (later.standing.fittedBy().containsKey(id) && !next.installs().contains(id)) {
                Price before = now.of(id);
                Price after = later.of(id);
                if (after.steps().contains(next) && after.minutes() > before.minutes()) {
                    jumps.add(jump(unit.item(id), losses, before, after));
                }
            }
        }
        jumps.sort(Comparator.comparing(Jump::lost)
                .reversed()
                .thenComparing(Comparator.comparing(Jump::by).reversed()));
        return Outcome.ok(new LastCallCost(next, LastCall.at(order, step), List.copyOf(jumps), losses(jumps)));
    }

    private static Jump jump(Item item, Loss.Finder losses, Price before, Price after) {
        List<String> had = losses.of(before.steps()).stream().map(Loss::what).toList();
        List<Loss> fresh = losses.of(after.steps()).stream()
                .filter(loss -> !had.contains(loss.what()))
                .toList();
        String lost = before.steps().isEmpty() ? before.through() : "";
        return new Jump(item, lost, before.minutes(), after.minutes(), fresh);
    }

    private static List<Loss> losses(List<Jump> jumps) {
        Map<String, Loss> losses = new LinkedHashMap<>();
        jumps.forEach(jump -> jump.losses().forEach(loss -> losses.putIfAbsent(loss.what(), loss)));
        return List.copyOf(losses.values());
    }

    /** The way back to one item. */
    private record Price(List<Step> steps, double minutes, String through) {}

    /** Ways back to all items in the unit at once. */
    private static final class Prices {
        private final AssemblyState standing;
        private final Tariff tariff;
        private final UndoGraphBuilder ways;
        private final Map<String, Integer> nodes = new LinkedHashMap<>();
        private final UndoGraph needs;
        private final ClosureLowerBound charges;

        Prices(Unit unit, Map<String, String> taken, Collection<String> done, Tariff tariff, Set<String> items) {
            this.standing = AssemblyState.of(unit, taken, done);
            this.tariff = tariff;
            this.ways = new UndoGraphBuilder(standing, tariff);
            Set<String> wanted = items.isEmpty() ? standing.fittedBy().keySet() : items;
            wanted.forEach(id -> nodes.put(id, ways.of(new Target.OfItem(id, Target.Want.REACH))));
            this.needs = ways.needs();
            this.charges = new ClosureLowerBound(needs, needs.forced());
        }

        Price of(String item) {
            Integer node = nodes.get(item);
            if (node == null) {
                throw new IllegalStateException(item + " was not asked for");
            }
            BitSet set = ClosureBranchAndBound.set(needs, charges, node, BackOut.BUDGET)
                    .set();
            List<Step> steps = ways.steps(set);
            double minutes = steps.stream()
                    .mapToDouble(step -> standing.undoMinutes(step, tariff) + step.duration() / 60)
                    .sum();
            return new Price(steps, minutes, ways.through(set));
        }
    }
}
