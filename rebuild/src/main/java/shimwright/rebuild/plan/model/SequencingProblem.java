package shimwright.rebuild.plan.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What must be put in order by one person. Sought is the order of least total cost: working time, set-ups and risk, and waiting
 * at its price, each task begun as early as it can be. An id that nothing bears is a bug of the maker and throws
 * {@link IllegalArgumentException}.
 *
 * @param tasks in the order in which they were written, which settles ties
 * @param lags waits between tasks
 * @param windows time windows
 * @param risks prices of late finds
 * @param setUps what getting ready takes
 * @param start how things stand
 * @param waiting what a second of waiting counts for, in seconds, 0 to 1 in whole thousandths: 1 where someone stands idle, 0
 *     where a wait is a date and costs nothing in itself
 */
public record SequencingProblem(
        List<Task> tasks,
        List<Lag> lags,
        List<Window> windows,
        List<Risk> risks,
        SetUps setUps,
        InitialState start,
        double waiting) {
    public SequencingProblem {
        if (!(waiting >= 0 && waiting <= 1)) {
            throw new IllegalArgumentException("a second of waiting counts for " + waiting + " s");
        }
        tasks = List.copyOf(tasks);
        lags = List.copyOf(lags);
        windows = List.copyOf(windows);
        risks = List.copyOf(risks);
        Set<String> ids = new HashSet<>();
        tasks.forEach(task -> fresh(ids, task.id()));
        for (Task task : tasks) {
            known(ids, task.after());
        }
        lags.forEach(lag -> known(ids, List.of(lag.from(), lag.to())));
        risks.forEach(risk -> known(ids, List.of(risk.early(), risk.hold())));
        known(ids, start.waits().keySet());
        windows(ids, windows, start);
    }

    private static void windows(Set<String> ids, List<Window> windows, InitialState start) {
        Set<String> names = new LinkedHashSet<>();
        for (Window window : windows) {
            fresh(names, window.id());
            known(ids, List.of(window.closes()));
            if (window.opens().isEmpty() != start.open().containsKey(window.id())) {
                throw new IllegalArgumentException("window " + window.id() + " is open without a time, or not open");
            }
            if (!window.opens().isEmpty()) {
                known(ids, List.of(window.opens()));
            }
        }
        known(names, start.open().keySet());
    }

    private static void fresh(Set<String> ids, String id) {
        if (!ids.add(id)) {
            throw new IllegalArgumentException(id + " stands twice");
        }
    }

    private static void known(Set<String> ids, Iterable<String> named) {
        for (String id : named) {
            if (!ids.contains(id)) {
                throw new IllegalArgumentException("nothing is called " + id);
            }
        }
    }

    /** Tasks and set-ups alone. */
    public static SequencingProblem of(List<Task> tasks, SetUps setUps) {
        return new SequencingProblem(tasks, List.of(), List.of(), List.of(), setUps, InitialState.fresh(), 1);
    }

    /** The same with some of its windows only. */
    public SequencingProblem withWindows(List<Window> kept) {
        Map<String, Double> open = new HashMap<>(start.open());
        open.keySet().retainAll(kept.stream().map(Window::id).toList());
        InitialState then = new InitialState(
                start.orientation(), start.stand(), start.tools(), start.weight(), start.waits(), open);
        return new SequencingProblem(tasks, lags, kept, risks, setUps, then, waiting);
    }
}
