package shimwright.rebuild.plan.people;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.plan.crew.Activity;
import shimwright.rebuild.plan.crew.ChangeOver;
import shimwright.rebuild.plan.crew.Link;
import shimwright.rebuild.plan.crew.Project;
import shimwright.rebuild.plan.crew.Resource;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * The rest of a build as work that shares people, the case, the places and the tools: the case is one, a place has the room
 * that the unit file gives it, every tool is there once. In a unit of time that divides every step and turn.
 */
final class UnitProject {
    static final String PEOPLE = "people";
    static final String CASE = "the case";
    static final String AT = "place ";

    private final Unit unit;
    private final SequencingProblem problem;
    private final int persons;
    private final int second;
    private final Map<String, Step> steps = new HashMap<>();

    UnitProject(Unit unit, List<Step> ahead, SequencingProblem problem, int persons) {
        this.unit = unit;
        this.problem = problem;
        this.persons = persons;
        ahead.forEach(step -> steps.put(step.id(), step));
        long common = 0;
        for (Task task : problem.tasks()) {
            common = divisor(common, Math.round(task.seconds()));
        }
        for (Map<String, Double> row : problem.setUps().turn().values()) {
            for (double turn : row.values()) {
                common = divisor(common, Math.round(turn));
                common = divisor(common, Math.round(turn * CaseTurn.factor(problem.setUps(), persons)));
            }
        }
        second = (int) Math.max(1, common);
    }

    private static long divisor(long a, long b) {
        return b == 0 ? a : divisor(b, a % b);
    }

    /** Seconds in a unit of time. */
    int unitOfTime() {
        return second;
    }

    private int whole(double seconds) {
        return (int) (Math.round(seconds) / second);
    }

    Step step(String id) {
        return Objects.requireNonNull(steps.get(id));
    }

    /** The step of an activity; empty for a turn. */
    Optional<Step> find(String id) {
        return Optional.ofNullable(steps.get(id));
    }

    /** How many of the people there are take part in a step. */
    int hands(Step step) {
        return Math.min(step.persons(), persons);
    }

    /**
     * The project.
     *
     * @param onCase order of the tasks on the case, with the turns between them
     * @param turns along that order
     */
    Project project(List<Task> onCase, List<CaseTurn> turns) {
        return project(onCase, turns, false);
    }

    /**
     * The project with the order on the case left open: between two tasks on it is time to turn it as a light one, which takes
     * nobody's hands. No real timetable is shorter than the shortest of this.
     */
    Project relaxed() {
        return project(List.of(), List.of(), true);
    }

    private Project project(List<Task> onCase, List<CaseTurn> turns, boolean bound) {
        Map<String, Resource> resources = new LinkedHashMap<>();
        resources.put(PEOPLE, new Resource(PEOPLE, PEOPLE, persons));
        Map<String, Activity> activities = new LinkedHashMap<>();
        List<Link> links = new ArrayList<>();
        for (Task task : problem.tasks()) {
            Activity activity =
                    new Activity(task.id(), task.words(), whole(task.seconds()), needs(step(task.id()), resources));
            activities.put(task.id(), activity);
        }
        for (Task task : problem.tasks()) {
            task.after().forEach(id -> links.add(Link.after(activity(activities, id), task.id(), 0, "")));
        }
        for (Lag lag : problem.lags()) {
            links.add(Link.after(activity(activities, lag.from()), lag.to(), wait(lag.seconds(), bound), lag.words()));
        }
        problem.start()
                .waits()
                .forEach((id, seconds) -> links.add(new Link("", id, wait(seconds, bound), "it is due")));
        windows(activities, links, bound);
        turned(onCase, turns, activities, links);
        return new Project(
                List.copyOf(resources.values()),
                List.copyOf(activities.values()),
                links,
                bound ? changeOvers() : List.of());
    }

    private List<ChangeOver> changeOvers() {
        Map<String, Map<String, Double>> least = CaseTurn.least(problem.setUps());
        List<Task> tasks = problem.tasks().stream()
                .filter(task -> least.containsKey(task.stand()))
                .toList();
        List<ChangeOver> aparts = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            for (Task other : tasks.subList(i + 1, tasks.size())) {
                Task one = tasks.get(i);
                aparts.add(new ChangeOver(
                        one.id(),
                        other.id(),
                        whole(CaseTurn.between(least, one.stand(), other.stand())),
                        whole(CaseTurn.between(least, other.stand(), one.stand()))));
            }
        }
        return aparts;
    }

    private int wait(double seconds, boolean bound) {
        return (int) (bound ? Math.floor(seconds / second) : Math.ceil(seconds / second));
    }

    private static Activity activity(Map<String, Activity> activities, String id) {
        return Objects.requireNonNull(activities.get(id));
    }

    private Map<String, Integer> needs(Step step, Map<String, Resource> resources) {
        Map<String, Integer> needs = new LinkedHashMap<>();
        needs.put(PEOPLE, hands(step));
        Set<String> ones = new LinkedHashSet<>();
        if (unit.station(step.at()).holdsCase()) {
            ones.add(CASE);
        } else {
            String place = AT + step.at();
            int room = unit.station(step.at()).room();
            resources.putIfAbsent(
                    place, new Resource(place, unit.station(step.at()).name(), room));
            needs.put(place, 1);
        }
        step.tools().forEach(tool -> ones.add("tool " + tool));
        for (String one : ones) {
            resources.putIfAbsent(one, new Resource(one, one, 1));
            needs.put(one, 1);
        }
        return needs;
    }

    private void windows(Map<String, Activity> activities, List<Link> links, boolean bound) {
        for (Window window : problem.windows()) {
            double longest = window.seconds() / second;
            Activity closes = activity(activities, window.closes());
            if (window.opens().isEmpty()) {
                double left = longest - problem.start().open().getOrDefault(window.id(), 0.0) / second;
                int least = closes.duration() - (int) (bound ? Math.ceil(left) : Math.floor(left));
                links.add(new Link(window.closes(), "", least, window.words()));
            } else {
                int within = (int) (bound ? Math.ceil(longest) : Math.floor(longest));
                links.add(Link.within(activity(activities, window.opens()), closes, within, window.words()));
            }
        }
    }

    private void turned(List<Task> onCase, List<CaseTurn> turns, Map<String, Activity> activities, List<Link> links) {
        Map<String, CaseTurn> before = new HashMap<>();
        turns.forEach(turn -> before.put(turn.after(), turn));
        String last = "";
        for (Task task : onCase) {
            CaseTurn turn = before.get(task.id());
            if (turn != null) {
                String id = turning(task.id());
                int hands = turn.heavy() ? Math.min(2, persons) : 1;
                Activity one =
                        new Activity(id, "turn the case over", whole(turn.seconds()), Map.of(PEOPLE, hands, CASE, 1));
                activities.put(id, one);
                if (!last.isEmpty()) {
                    links.add(Link.after(activity(activities, last), id, 0, ""));
                }
                links.add(Link.after(one, task.id(), 0, ""));
            } else if (!last.isEmpty()) {
                links.add(Link.after(activity(activities, last), task.id(), 0, ""));
            }
            last = task.id();
        }
    }

    /** Id of the turn before a task. */
    static String turning(String task) {
        return "turn before " + task;
    }
}
