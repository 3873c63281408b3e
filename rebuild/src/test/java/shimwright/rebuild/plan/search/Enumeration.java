package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.verify.OrderVerifier;

/** Every order of a small problem, followed by the independent check. */
final class Enumeration {
    private final SequencingProblem problem;
    private final List<String> order = new ArrayList<>();
    private final Set<String> gone = new HashSet<>();
    double best = Double.POSITIVE_INFINITY;
    long orders;
    /** An order of that cost; empty where there is none. */
    List<String> at = List.of();

    private Enumeration(SequencingProblem problem) {
        this.problem = problem;
    }

    static Enumeration of(SequencingProblem problem) {
        Enumeration all = new Enumeration(problem);
        all.extend();
        return all;
    }

    private void extend() {
        boolean whole = true;
        for (Task task : problem.tasks()) {
            if (!gone.contains(task.id())) {
                whole = false;
                if (gone.containsAll(task.after())) {
                    gone.add(task.id());
                    order.add(task.id());
                    extend();
                    order.remove(order.size() - 1);
                    gone.remove(task.id());
                }
            }
        }
        if (whole) {
            orders++;
            OrderVerifier.Followed followed = OrderVerifier.follow(problem, order);
            if (followed.faults().isEmpty()) {
                if (followed.cost().total() < best) {
                    best = followed.cost().total();
                    at = List.copyOf(order);
                }
            }
        }
    }
}
