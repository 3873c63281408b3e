package shimwright.rebuild.plan.people;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.crew.Activity;
import shimwright.rebuild.plan.crew.ConflictLimit;
import shimwright.rebuild.plan.crew.Crew;
import shimwright.rebuild.plan.crew.Project;
import shimwright.rebuild.plan.crew.Timetable;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.plan.people.CrewPlan.Why;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * What the rest of a build takes with so many people: steps, waits, windows, and turning the case over; walking and laying out
 * tools are left out, and so are late finds. People, the case, places and tools are shared. A step for more people than there
 * are is done by all of them with help that is fetched. On the case the steps come in the order of the plan, in that of least
 * turning, or in that which a search finds to which turning costs time but no hands, whichever ends soonest; the bound holds
 * for every order.
 */
public final class People {
    private People() {}

    /**
     * The work shared.
     *
     * @param plan the plan for one, whose steps are to be done
     * @param persons how many, 1 or more
     * @param effort how much looking is allowed for each of up to four timetables
     * @param stop asked often; the search ends with what it has once it says true
     * @return refused where no timetable keeps the windows, or none was found
     */
    public static Outcome<CrewPlan> share(
            Unit unit,
            Map<String, String> taken,
            BuildState present,
            Plan plan,
            int persons,
            ConflictLimit effort,
            BooleanSupplier stop) {
        SequencingProblem problem = problem(unit, taken, present, plan);
        UnitProject work = new UnitProject(unit, plan.ahead(), problem, persons);
        CaseBound onCase = CaseBound.of(problem, persons);
        Outcome<Timetable> open = Crew.least(work.relaxed(), effort, stop);
        if (!open.isOk()) {
            return Outcome.refused(open.refusals());
        }
        Map<Why, Double> bounds = bounds(work, problem, onCase, persons, open.orElseThrow());
        List<Outcome<CrewPlan>> found = new ArrayList<>();
        for (List<Task> order : orders(problem, plan, onCase, open.orElseThrow())) {
            Project project = work.project(order, CaseTurn.along(problem, order, persons));
            Outcome<CrewPlan> one =
                    Crew.least(project, effort, stop).map(table -> share(work, project, table, persons, bounds));
            if (one.isOk() && one.orElseThrow().proven()) {
                return one;
            }
            found.add(one);
        }
        return found.stream()
                .filter(Outcome::isOk)
                .min(Comparator.comparingDouble(one -> one.orElseThrow().seconds()))
                .orElse(found.get(0));
    }

    private static SequencingProblem problem(Unit unit, Map<String, String> taken, BuildState present, Plan plan) {
        List<String> late = plan.late().stream().map(window -> window.id()).toList();
        SequencingProblem whole = Planner.problem(unit, taken, present);
        List<Window> kept = whole.windows().stream()
                .filter(window -> !late.contains(window.id()))
                .toList();
        return whole.withWindows(kept);
    }

    /**
     * The work with the order on the case left open, turning taking time but nobody's hands, as data, for whoever wants to solve it
     * otherwise.
     */
    public static Project open(Unit unit, Map<String, String> taken, BuildState present, Plan plan, int persons) {
        return new UnitProject(unit, plan.ahead(), problem(unit, taken, present, plan), persons).relaxed();
    }

    /** Orders of the tasks on the case worth a timetable: as the open search had them, of the plan, of least turning. */
    private static Set<List<Task>> orders(SequencingProblem problem, Plan plan, CaseBound onCase, Timetable open) {
        Set<List<Task>> orders = new LinkedHashSet<>();
        orders.add(onCase.order().stream()
                .sorted(Comparator.comparingInt(task -> open.starts().getOrDefault(task.id(), 0)))
                .toList());
        orders.add(planned(problem, plan));
        orders.add(onCase.order());
        return orders;
    }

    private static List<Task> planned(SequencingProblem problem, Plan plan) {
        Map<String, Task> tasks = new LinkedHashMap<>();
        problem.tasks().forEach(task -> tasks.put(task.id(), task));
        return plan.ahead().stream()
                .flatMap(step -> Optional.ofNullable(tasks.get(step.id())).stream())
                .filter(task -> problem.setUps().orientations().contains(task.stand()))
                .toList();
    }

    private static Map<Why, Double> bounds(
            UnitProject work, SequencingProblem problem, CaseBound onCase, int persons, Timetable open) {
        Map<Why, Double> bounds = new EnumMap<>(Why.class);
        double hands = problem.tasks().stream()
                .mapToDouble(task -> task.seconds() * work.hands(work.step(task.id())))
                .sum();
        bounds.put(Why.WORK, (hands + onCase.turning()) / persons);
        bounds.put(Why.CASE, onCase.least());
        bounds.put(Why.SEARCH, (double) open.bound() * work.unitOfTime());
        return bounds;
    }

    private static CrewPlan share(
            UnitProject work, Project project, Timetable table, int persons, Map<Why, Double> bounds) {
        double unitOfTime = work.unitOfTime();
        double seconds = table.span() * unitOfTime;
        double bound = bounds.values().stream().mapToDouble(x -> x).max().orElse(0);
        // a span is a whole number of units of time, and so is every bound of one
        double least = Math.min(seconds, Math.ceil(bound / unitOfTime - 1e-9) * unitOfTime);
        List<TimetableBar> parts = parts(work, project, table, persons);
        List<Step> fetched = parts.stream()
                .flatMap(part -> part.step().stream())
                .filter(step -> step.persons() > persons)
                .toList();
        return new CrewPlan(persons, seconds, least, seconds == least, Map.copyOf(bounds), parts, fetched);
    }

    /** Who does what: whoever is free, the one who did the step before at the same place first. */
    private static List<TimetableBar> parts(UnitProject work, Project project, Timetable table, int persons) {
        List<Activity> byStart = new ArrayList<>(project.activities());
        byStart.sort(Comparator.comparingInt((Activity one) -> table.starts().getOrDefault(one.id(), 0))
                .thenComparing(one -> !one.needs().containsKey(UnitProject.CASE)));
        double[] free = new double[persons];
        String[] place = new String[persons];
        Arrays.fill(place, "");
        List<TimetableBar> parts = new ArrayList<>();
        for (Activity one : byStart) {
            int start = table.starts().getOrDefault(one.id(), 0);
            String at = one.needs().keySet().stream()
                    .filter(id -> id.equals(UnitProject.CASE) || id.startsWith(UnitProject.AT))
                    .findFirst()
                    .orElse("");
            List<Integer> who = new ArrayList<>();
            for (int k = 0; k < persons; k++) {
                if (free[k] <= start) {
                    who.add(k);
                }
            }
            who.sort(Comparator.comparing((Integer k) -> !place[k].equals(at)));
            who = new ArrayList<>(who.subList(0, one.needs().getOrDefault(UnitProject.PEOPLE, 0)));
            who.sort(Comparator.naturalOrder());
            for (int k : who) {
                free[k] = start + one.duration();
                place[k] = at;
            }
            double second = work.unitOfTime();
            parts.add(new TimetableBar(
                    work.find(one.id()), one.words(), start * second, (start + one.duration()) * second, who));
        }
        return List.copyOf(parts);
    }
}
