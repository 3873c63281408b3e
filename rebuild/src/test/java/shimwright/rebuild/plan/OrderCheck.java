package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/**
 * A second check of orders, from the words of the model alone: the whole order lies before it, and everything is read off the
 * places of the tasks in it instead of being carried along.
 */
public final class OrderCheck {
    private static final double DUST = 0.01;

    private final SequencingProblem problem;
    private final List<Task> order = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();
    private final double[] end;
    private double total;

    private OrderCheck(SequencingProblem problem, List<String> ids) {
        this.problem = problem;
        for (String id : ids) {
            problem.tasks().stream().filter(task -> task.id().equals(id)).forEach(order::add);
        }
        if (order.size() != ids.size() || Set.copyOf(ids).size() != ids.size()) {
            wrong.add("a task that is not there, or one twice");
        }
        this.end = new double[order.size()];
    }

    /** What is wrong with an order; empty where it is possible, whole and of this total cost. */
    public static List<String> wrong(SequencingProblem problem, List<String> ids, double total) {
        OrderCheck check = new OrderCheck(problem, ids);
        if (check.wrong.isEmpty()) {
            check.members();
            check.sequence();
            check.times();
            check.windows();
            if (Math.abs(check.total - total) > DUST) {
                check.wrong.add("costs " + check.total + ", not " + total);
            }
        }
        return check.wrong;
    }

    private int at(String id) {
        for (int k = 0; k < order.size(); k++) {
            if (order.get(k).id().equals(id)) {
                return k;
            }
        }
        return -1;
    }

    private void members() {
        for (Task task : problem.tasks()) {
            if (at(task.id()) < 0) {
                wrong.add(task.id() + " is missing");
            }
        }
    }

    private void sequence() {
        for (int k = 0; k < order.size(); k++) {
            int place = k;
            Task task = order.get(k);
            if (task.after().stream().anyMatch(need -> at(need) > place)) {
                wrong.add(task.id() + " comes too soon");
            }
        }
        for (Risk risk : problem.risks()) {
            boolean late = at(risk.early()) >= 0 && at(risk.early()) < at(risk.hold());
            total += late ? risk.seconds() : 0;
        }
    }

    /** The last before a place of which something holds; -1 where there is none. */
    private int last(int place, Predicate<Task> what) {
        for (int k = place - 1; k >= 0; k--) {
            if (what.test(order.get(k))) {
                return k;
            }
        }
        return -1;
    }

    private double gettingReady(int place) {
        Task task = order.get(place);
        SetUps ups = problem.setUps();
        double seconds = 0;
        if (ups.orientations().contains(task.stand())) {
            int turned = last(place, other -> ups.orientations().contains(other.stand()));
            String from =
                    turned >= 0 ? order.get(turned).stand() : problem.start().orientation();
            int heavy = problem.start().weight()
                    + order.subList(0, place).stream().mapToInt(Task::weight).sum();
            seconds += from.isEmpty() ? 0 : ups.turning(from, task.stand()) * (heavy > 0 ? ups.heavyFactor() : 1);
        }
        if (!task.stand().isEmpty()) {
            int stood = last(place, other -> !other.stand().isEmpty());
            String from =
                    stood >= 0 ? order.get(stood).stand() : problem.start().stand();
            boolean bothCase =
                    ups.orientations().contains(from) && ups.orientations().contains(task.stand());
            seconds += from.isEmpty() || bothCase || from.equals(task.stand()) ? 0 : ups.walk();
        }
        if (!task.tools().isEmpty()) {
            int laid = last(place, other -> !other.tools().isEmpty());
            Set<String> there =
                    laid >= 0 ? order.get(laid).tools() : problem.start().tools();
            for (String tool : task.tools()) {
                seconds += there.contains(tool) ? 0 : ups.tools().getOrDefault(tool, 0.0);
            }
        }
        return seconds;
    }

    /** When what a task waits for has run, counting only what began before a place. */
    private double released(String id, int place) {
        double when = problem.start().waits().getOrDefault(id, 0.0);
        for (Lag lag : problem.lags()) {
            int from = at(lag.from());
            if (lag.to().equals(id) && from >= 0 && from < place) {
                when = Math.max(when, end[from] + lag.seconds());
            }
        }
        return when;
    }

    private void times() {
        for (int k = 0; k < order.size(); k++) {
            Task task = order.get(k);
            double ready = gettingReady(k);
            double free = (k == 0 ? 0 : end[k - 1]) + ready;
            double begin = Math.max(free, released(task.id(), k));
            for (Window window : problem.windows()) {
                if (window.opens().equals(task.id()) && at(window.closes()) > k) {
                    for (String inside : leading(window.closes())) {
                        begin = at(inside) >= k ? Math.max(begin, released(inside, k)) : begin;
                    }
                }
            }
            total += ready + task.seconds() + problem.waiting() * (begin - free);
            end[k] = begin + task.seconds();
        }
    }

    /** What may lead to a task: itself, what it or such a one waits for, and the closing of what such a one opens. */
    private Set<String> leading(String id) {
        Set<String> found = new HashSet<>(Set.of(id));
        boolean more = true;
        while (more) {
            more = false;
            for (Task task : problem.tasks()) {
                if (found.contains(task.id())) {
                    more |= found.addAll(task.after());
                    for (Window window : problem.windows()) {
                        more |= window.opens().equals(task.id()) && found.add(window.closes());
                    }
                }
            }
        }
        return found;
    }

    private void windows() {
        for (Window window : problem.windows()) {
            int closes = at(window.closes());
            int opens = at(window.opens());
            boolean begun = window.opens().isEmpty() || (opens >= 0 && opens < closes);
            if (closes < 0 || !begun) {
                continue;
            }
            double since = opens < 0 ? -problem.start().open().getOrDefault(window.id(), 0.0) : end[opens];
            if (end[closes] - since > window.seconds() + DUST) {
                wrong.add(window.id() + " stays open " + (end[closes] - since));
            }
        }
        for (int k = 0; k < order.size(); k++) {
            int place = k;
            List<Window> alone = problem.windows().stream()
                    .filter(w -> w.alone() && at(w.closes()) >= place && isOpen(w, place))
                    .toList();
            if (!alone.isEmpty()
                    && alone.stream()
                            .noneMatch(w -> leading(w.closes())
                                    .contains(order.get(place).id()))) {
                wrong.add(order.get(k).id() + " is begun in a window served alone");
            }
        }
    }

    private boolean isOpen(Window window, int place) {
        return window.opens().isEmpty() || (at(window.opens()) >= 0 && at(window.opens()) < place);
    }
}
