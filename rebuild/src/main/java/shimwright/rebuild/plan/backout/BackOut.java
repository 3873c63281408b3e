package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;

/**
 * The way back to something and in again. Nothing to undo means that it can be got at as it stands.
 *
 * @param target what one wants to get back to
 * @param through the opening it is reached through; empty where it is taken apart
 * @param undo steps to undo, in the order of undoing: none while a step done still stands on it
 * @param redo the same steps, in a possible order of doing them again
 * @param undoMinutes time of undoing, from the unit file or else by the tariff, without turning over
 * @param redoMinutes time of doing again as the unit file has it, without turning over and waiting
 * @param turnMinutes time of turning the case over, both ways; the orders are possible, not proven to turn least
 * @param losses what undoing destroys
 * @param renew items that come out and that the file renews whenever they have been out, those of the losses left out
 * @param again consumables used once more
 * @param reopened clearances that were read to the end and must be read again
 * @param holds steps whose hold point must be read again
 * @param proven true where no other set costs less by the tariff
 */
public record BackOut(
        Target target,
        String through,
        List<Step> undo,
        List<Step> redo,
        double undoMinutes,
        double redoMinutes,
        double turnMinutes,
        List<Loss> losses,
        List<Item> renew,
        List<Consumable> again,
        List<Clearance> reopened,
        List<Step> holds,
        boolean proven) {

    /** Most nodes of the search among ways; a gearbox with a dozen openings needs a few hundred. */
    static final long BUDGET = 200_000;

    /** The cheapest way back by the usual tariff. */
    public static Outcome<BackOut> to(Unit unit, Map<String, String> taken, Collection<String> done, Target target) {
        return to(unit, taken, done, target, Tariff.USUAL);
    }

    /**
     * The cheapest way back: of all sets of steps whose undoing gets there, and in which with a step all that waits for it
     * is undone too, one of least cost. Cost is minutes of undoing and of doing again and the tariff's weight of losses.
     *
     * @param unit resolved unit
     * @param taken side by choice
     * @param done steps that stand done, in the order in which they were done; a step the choices leave out is passed over
     * @param target refused where the unit has no such item, step or clearance
     * @param tariff what undoing takes
     */
    public static Outcome<BackOut> to(
            Unit unit, Map<String, String> taken, Collection<String> done, Target target, Tariff tariff) {
        if (!known(unit, target)) {
            return Outcome.refused(new Refusal(
                    "back",
                    "back to " + target.id(),
                    "this unit has nothing of that name",
                    "Take it from the list of its parts"));
        }
        AssemblyState standing = AssemblyState.of(unit, taken, done);
        UndoGraphBuilder ways = new UndoGraphBuilder(standing, tariff);
        int node = ways.of(target);
        ClosureBranchAndBound.Found found = ClosureBranchAndBound.set(ways.needs(), node, BUDGET);
        List<Step> set = ways.steps(found.set());
        Sequence.Laid back = new Sequence(unit, after(standing, set), false, station(standing)).lay(reversed(set));
        Sequence.Laid in = new Sequence(unit, before(standing, set), true, back.station()).lay(inFileOrder(unit, set));
        List<Loss> losses = Loss.of(unit, back.steps());
        return Outcome.ok(new BackOut(
                target,
                ways.through(found.set()),
                back.steps(),
                in.steps(),
                set.stream().mapToDouble(s -> standing.undoMinutes(s, tariff)).sum(),
                set.stream().mapToDouble(Step::duration).sum() / 60,
                back.turning() + in.turning(),
                losses,
                renew(standing, set, losses),
                set.stream()
                        .flatMap(s -> s.consumables().stream())
                        .distinct()
                        .map(unit::consumable)
                        .toList(),
                reopened(standing, set),
                set.stream().filter(s -> !s.hold().isBlank()).toList(),
                found.proven()));
    }

    /** Minutes of undoing, of doing again and of turning over together. */
    public double minutes() {
        return undoMinutes + redoMinutes + turnMinutes;
    }

    /** True where it can be got at as it stands. */
    public boolean free() {
        return undo.isEmpty();
    }

    private static boolean known(Unit unit, Target target) {
        Stream<String> ids;
        if (target instanceof Target.OfItem) {
            ids = unit.type().items().stream().map(Item::id);
        } else if (target instanceof Target.OfStep) {
            ids = unit.type().steps().stream().map(Step::id);
        } else {
            ids = unit.type().clearances().stream().map(Clearance::id);
        }
        return ids.anyMatch(target.id()::equals);
    }

    private static List<Step> reversed(List<Step> steps) {
        List<Step> reversed = new ArrayList<>(steps);
        Collections.reverse(reversed);
        return reversed;
    }

    private static List<Step> inFileOrder(Unit unit, List<Step> steps) {
        return unit.type().steps().stream().filter(steps::contains).toList();
    }

    /** Where the case stands: the station of the last step done that held it. */
    private static String station(AssemblyState standing) {
        return standing.done().stream()
                .map(Step::at)
                .filter(at -> standing.unit().station(at).holdsCase())
                .reduce("", (earlier, later) -> later);
    }

    private static Map<String, Set<String>> before(AssemblyState standing, List<Step> set) {
        Set<String> in = set.stream().map(Step::id).collect(Collectors.toSet());
        Map<String, Set<String>> before = new LinkedHashMap<>();
        for (Step step : set) {
            Set<String> needs = new LinkedHashSet<>(
                    standing.order().before().getOrDefault(step.id(), Map.of()).keySet());
            needs.retainAll(in);
            before.put(step.id(), needs);
        }
        return before;
    }

    private static Map<String, Set<String>> after(AssemblyState standing, List<Step> set) {
        Map<String, Set<String>> after = new LinkedHashMap<>();
        before(standing, set)
                .forEach((step, needs) -> needs.forEach(need ->
                        after.computeIfAbsent(need, k -> new LinkedHashSet<>()).add(step)));
        return after;
    }

    private static List<Item> renew(AssemblyState standing, List<Step> set, List<Loss> losses) {
        Set<String> lost = losses.stream().map(Loss::item).collect(Collectors.toSet());
        return set.stream()
                .flatMap(step -> standing.held(step).stream())
                .distinct()
                .filter(item -> !lost.contains(item))
                .map(standing.unit()::item)
                .filter(Item::renew)
                .toList();
    }

    /** Those whose final reading is undone, and those read to the end that hang on them. */
    private static List<Clearance> reopened(AssemblyState standing, List<Step> set) {
        Set<String> again = readToTheEnd(set);
        Set<String> read = readToTheEnd(standing.done());
        List<Clearance> all = standing.unit().type().clearances();
        boolean grown = true;
        while (grown) {
            grown = again.addAll(all.stream()
                    .filter(c -> read.contains(c.id()) && c.dependsOn().stream().anyMatch(again::contains))
                    .map(Clearance::id)
                    .toList());
        }
        return all.stream().filter(c -> again.contains(c.id())).toList();
    }

    private static Set<String> readToTheEnd(List<Step> steps) {
        return steps.stream()
                .filter(step -> step.phase() == Phase.FINAL || step.phase() == Phase.AGAIN)
                .map(Step::clearance)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
