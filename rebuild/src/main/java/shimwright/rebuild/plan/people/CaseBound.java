package shimwright.rebuild.plan.people;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.model.InitialState;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.search.Solution;

/**
 * What has to be done on the case alone: it is in one orientation and one person's hands at a time.
 *
 * @param order the tasks on the case, in the order with the least turning that was found
 * @param work seconds of these tasks
 * @param turning seconds of turning that no order of them undercuts
 * @param head seconds before the first of them can begin
 * @param tail seconds of what must follow the last
 */
record CaseBound(List<Task> order, double work, double turning, double head, double tail) {
    /** Seconds that the rest takes at least for the sake of the case. */
    double least() {
        return order.isEmpty() ? 0 : head + work + turning + tail;
    }

    static CaseBound of(SequencingProblem problem, int persons) {
        Set<String> orientations = problem.setUps().orientations();
        Map<String, Task> all = new LinkedHashMap<>();
        problem.tasks().forEach(task -> all.put(task.id(), task));
        List<Task> onCase = problem.tasks().stream()
                .filter(task -> orientations.contains(task.stand()))
                .toList();
        double work = onCase.stream().mapToDouble(Task::seconds).sum();
        Map<String, Set<String>> leading = new HashMap<>();
        List<Task> tasks = new ArrayList<>();
        for (Task task : onCase) {
            Set<String> after = new LinkedHashSet<>(leading(task.id(), all, leading));
            after.removeIf(id -> !orientations.contains(of(all, id).stand()));
            tasks.add(new Task(task.id(), task.words(), task.seconds(), task.stand(), Set.of(), after, task.weight()));
        }
        SetUps turning = new SetUps(
                orientations, problem.setUps().turn(), CaseTurn.factor(problem.setUps(), persons), 0, Map.of());
        InitialState start = new InitialState(
                problem.start().orientation(), "", Set.of(), problem.start().weight(), Map.of(), Map.of());
        SequencingProblem alone = new SequencingProblem(tasks, List.of(), List.of(), List.of(), turning, start, 1);
        Outcome<Solution> found = Search.best(alone, SearchBudget.page(), SearchObserver.nobody(), List.of());
        double head = least(onCase, chains(problem, false));
        double tail = least(onCase, chains(problem, true));
        if (!(found instanceof Outcome.Ok<Solution> ok)) {
            return new CaseBound(onCase, work, 0, head, tail);
        }
        List<Task> order = ok.value().order().stream().map(id -> of(all, id)).toList();
        return new CaseBound(order, work, Math.max(0, ok.value().bound() - work), head, tail);
    }

    private static double least(List<Task> tasks, Map<String, Double> chains) {
        return tasks.stream()
                .mapToDouble(task -> chains.getOrDefault(task.id(), 0.0))
                .min()
                .orElse(0);
    }

    /** Seconds of the longest chain of tasks before each task, or after it. */
    private static Map<String, Double> chains(SequencingProblem problem, boolean after) {
        Map<String, Double> chains = new HashMap<>();
        for (boolean moved = true; moved; ) {
            moved = false;
            for (Task task : problem.tasks()) {
                for (String id : task.after()) {
                    String to = after ? id : task.id();
                    String from = after ? task.id() : id;
                    double longest = chains.getOrDefault(from, 0.0) + (after ? task.seconds() : seconds(problem, id));
                    if (longest > chains.getOrDefault(to, 0.0)) {
                        chains.put(to, longest);
                        moved = true;
                    }
                }
            }
        }
        return chains;
    }

    private static double seconds(SequencingProblem problem, String id) {
        return problem.tasks().stream()
                .filter(task -> task.id().equals(id))
                .mapToDouble(Task::seconds)
                .sum();
    }

    private static Task of(Map<String, Task> all, String id) {
        return java.util.Objects.requireNonNull(all.get(id));
    }

    private static Set<String> leading(String id, Map<String, Task> all, Map<String, Set<String>> known) {
        Set<String> before = known.get(id);
        if (before == null) {
            Set<String> found = new LinkedHashSet<>();
            for (String need : of(all, id).after()) {
                found.add(need);
                found.addAll(leading(need, all, known));
            }
            before = Collections.unmodifiableSet(found);
            known.put(id, before);
        }
        return before;
    }
}
