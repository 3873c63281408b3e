package shimwright.rebuild.plan.evening;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Unit;

/**
 * How likely a window is missed, the times of steps being uncertain.
 *
 * @param window its id
 * @param words what it is
 * @param planned seconds from opening to closing as planned; for one that is open already, from its opening
 * @param longest seconds it may stay open
 * @param missed chance that it takes longer, 0 to 1
 * @param spare seconds that are missing for a chance of one in twenty; 0 where none are
 */
public record WindowChance(String window, String words, double planned, double longest, double missed, double spare) {
    private static final double ONE_IN_TWENTY = 1.6449;

    /**
     * The chances of all windows of a plan that are still to be closed, in the order of their closing. Whoever is slow at one
     * step is slow at the next, so all times from now on spread together: normally, with a standard deviation of a share of
     * what is planned.
     *
     * @param share standard deviation of a time as a share of it, 0 to 1
     */
    public static List<WindowChance> of(
            Unit unit, Map<String, String> taken, BuildState present, Plan plan, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a spread of " + share);
        }
        SequencingProblem problem = Planner.problem(unit, taken, present);
        Map<String, Double> ended = new HashMap<>();
        List<String> sofar = new ArrayList<>();
        List<WindowChance> found = new ArrayList<>();
        plan.ahead().forEach(step -> {
            sofar.add(step.id());
            ended.put(step.id(), OrderVerifier.follow(problem, sofar).cost().elapsed());
            for (Window window : problem.windows()) {
                if (window.closes().equals(step.id())) {
                    found.add(chance(problem, window, ended, share));
                }
            }
        });
        return List.copyOf(found);
    }

    private static WindowChance chance(
            SequencingProblem problem, Window window, Map<String, Double> ended, double share) {
        double gone = problem.start().open().getOrDefault(window.id(), 0.0);
        double ahead = ended.getOrDefault(window.closes(), 0.0) - ended.getOrDefault(window.opens(), 0.0);
        double u = share * ahead;
        double kept =
                Conformity.probability(gone + ahead, u, Double.POSITIVE_INFINITY, new Limits(null, window.seconds()));
        double spare = Math.max(0, gone + ahead + ONE_IN_TWENTY * u - window.seconds());
        return new WindowChance(window.id(), window.words(), gone + ahead, window.seconds(), 1 - kept, spare);
    }
}
