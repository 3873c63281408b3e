package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.Side;

/** Which sides of the choices still open make the cheapest plan: every combination is planned, one after the other. */
public final class SideChoices {
    /** More combinations than this are not looked at. */
    private static final int MOST = 256;

    private SideChoices() {}

    /**
     * One combination.
     *
     * @param sides side by choice, every choice of the unit
     * @param plan the plan with it
     * @param extra minutes that the unit file adds to the steps for these sides, less than 0 where it takes some away
     * @param saves minutes of everything priced, the extra with it, that it saves against the sides taken, less than 0 where it
     *     costs more
     * @param taken true for the sides taken
     */
    public record Ranked(Map<String, String> sides, Plan plan, double extra, double saves, boolean taken) {
        /** What the sides and their plan cost together, in minutes. */
        private double value() {
            return plan.value() + extra;
        }
    }

    /**
     * All combinations that can be planned, the cheapest first; of those that cost the same the one that changes fewest sides.
     *
     * @param taken side by choice; a choice without an entry stands at its usual side
     * @param settled choices whose side stays as taken
     * @param budget for each combination
     * @return refused where the sides taken cannot be planned themselves, or where there are more than 256 combinations
     */
    public static Outcome<List<Ranked>> of(
            Unit unit,
            Map<String, String> taken,
            Set<String> settled,
            BuildState present,
            SearchBudget budget,
            SearchObserver watch) {
        Map<String, String> now = new LinkedHashMap<>();
        unit.type().choices().forEach(choice -> now.put(choice.id(), taken.getOrDefault(choice.id(), choice.usual())));
        List<Map<String, String>> all = combinations(unit, now, settled);
        if (all.size() > MOST) {
            return Outcome.refused(Refusal.at(
                    "choices", "there are more than " + MOST + " combinations of sides", "Settle some of them first"));
        }
        return Planner.lay(unit, now, present, budget, watch, List.of())
                .map(plan -> ranked(unit, now, plan, all, present, budget, watch));
    }

    private static List<Ranked> ranked(
            Unit unit,
            Map<String, String> now,
            Plan plan,
            List<Map<String, String>> all,
            BuildState present,
            SearchBudget budget,
            SearchObserver watch) {
        Ranked first = new Ranked(now, plan, extra(unit, now, present), 0, true);
        List<Ranked> ranked = new ArrayList<>(List.of(first));
        for (Map<String, String> sides : all) {
            if (!sides.equals(now) && !watch.stop().getAsBoolean()) {
                Outcome<Plan> other = Planner.lay(unit, sides, present, budget, watch, List.of());
                if (other instanceof Outcome.Ok<Plan> ok) {
                    Ranked one = new Ranked(sides, ok.value(), extra(unit, sides, present), 0, false);
                    ranked.add(new Ranked(sides, one.plan(), one.extra(), first.value() - one.value(), false));
                }
            }
        }
        ranked.sort(
                Comparator.comparingDouble((Ranked one) -> -one.saves()).thenComparingLong(one -> changed(now, one)));
        return List.copyOf(ranked);
    }

    /** What the file adds for a side counts while a step that the side names is still to be done. */
    private static double extra(Unit unit, Map<String, String> sides, BuildState present) {
        double seconds = 0;
        for (Choice choice : unit.type().choices()) {
            Side side = choice.sides().get(sides.getOrDefault(choice.id(), choice.usual()));
            if (side != null) {
                List<String> named = Stream.of(side.before(), side.drops(), List.of(side.skips()))
                        .flatMap(List::stream)
                        .flatMap(List::stream)
                        .toList();
                seconds += present.done().containsAll(named) && !named.isEmpty() ? 0 : side.extra();
            }
        }
        return seconds / 60;
    }

    private static long changed(Map<String, String> now, Ranked one) {
        return one.sides().entrySet().stream()
                .filter(e -> !e.getValue().equals(now.get(e.getKey())))
                .count();
    }

    private static List<Map<String, String>> combinations(Unit unit, Map<String, String> now, Set<String> settled) {
        List<Map<String, String>> all = new ArrayList<>(List.of(now));
        for (Choice choice : unit.type().choices()) {
            if (!settled.contains(choice.id()) && all.size() <= MOST) {
                List<Map<String, String>> more = new ArrayList<>();
                for (Map<String, String> sides : all) {
                    for (String side : choice.sides().keySet()) {
                        Map<String, String> other = new LinkedHashMap<>(sides);
                        other.put(choice.id(), side);
                        more.add(other);
                    }
                }
                all = more;
            }
        }
        return all;
    }
}
