package shimwright.rebuild.plan.people;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;

/**
 * Turning the case over between two steps.
 *
 * @param before the step done on the case before; empty at the beginning
 * @param after the step for which it is turned
 * @param from orientation
 * @param to orientation
 * @param seconds it takes
 * @param heavy true where heavy things are in
 */
record CaseTurn(String before, String after, String from, String to, double seconds, boolean heavy) {

    /**
     * The factor by which turning takes longer while heavy things are in, where so many lend a hand: the file's factor counts the
     * time of all who turn, so two need half of it each, though never less than a light case takes.
     */
    static double factor(SetUps setUps, int persons) {
        return Math.max(1, setUps.heavyFactor() / Math.min(2, persons));
    }

    /** The turns of an order of the tasks on the case, what is heavy counted along that order. */
    static List<CaseTurn> along(SequencingProblem problem, List<Task> onCase, int persons) {
        SetUps setUps = problem.setUps();
        List<CaseTurn> turns = new ArrayList<>();
        String stands = problem.start().orientation();
        String before = "";
        int weight = problem.start().weight();
        for (Task task : onCase) {
            boolean heavy = weight > 0;
            double light = setUps.turning(stands, task.stand());
            if (!stands.isEmpty() && light > 0) {
                double seconds = light * (heavy ? factor(setUps, persons) : 1);
                turns.add(new CaseTurn(before, task.id(), stands, task.stand(), seconds, heavy));
            }
            stands = task.stand();
            before = task.id();
            weight += task.weight();
        }
        return turns;
    }

    /** Least seconds to turn a light case from one orientation to another, over others where that is shorter. */
    static Map<String, Map<String, Double>> least(SetUps setUps) {
        Map<String, Map<String, Double>> least = new LinkedHashMap<>();
        for (String from : setUps.orientations()) {
            Map<String, Double> row = new LinkedHashMap<>();
            setUps.orientations().forEach(to -> row.put(to, setUps.turning(from, to)));
            least.put(from, row);
        }
        for (String over : setUps.orientations()) {
            least.forEach((from, row) -> row.replaceAll(
                    (to, direct) -> Math.min(direct, between(least, from, over) + between(least, over, to))));
        }
        return least;
    }

    static double between(Map<String, Map<String, Double>> least, String from, String to) {
        return least.getOrDefault(from, Map.of()).getOrDefault(to, 0.0);
    }
}
