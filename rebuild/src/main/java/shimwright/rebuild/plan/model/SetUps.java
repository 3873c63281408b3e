package shimwright.rebuild.plan.model;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What it takes to get ready. The case stands in one orientation; work at another place leaves it as it is. Laid out are
 * the tools of the last task that needed any.
 *
 * @param orientations stands in which the case itself stands; every other stand is a place beside it
 * @param turn seconds to turn the case, by from and to; a pair without an entry takes none
 * @param heavyFactor how many times as long turning takes while heavy things are in, 1 or more
 * @param walk seconds to go from one place to another, all orientations of the case being one place
 * @param tools seconds to lay out a tool; one without an entry takes none
 */
public record SetUps(
        Set<String> orientations,
        Map<String, Map<String, Double>> turn,
        double heavyFactor,
        double walk,
        Map<String, Double> tools) {
    public SetUps {
        if (!(heavyFactor >= 1) || !(walk >= 0)) {
            throw new IllegalArgumentException("set-ups with a factor of " + heavyFactor + " and a walk of " + walk);
        }
        orientations = Set.copyOf(orientations);
        Map<String, Map<String, Double>> copy = new LinkedHashMap<>();
        turn.forEach((from, to) -> copy.put(from, Map.copyOf(to)));
        turn = Map.copyOf(copy);
        tools = Map.copyOf(tools);
    }

    /** Set-ups that take no time at all. */
    public static SetUps none() {
        return new SetUps(Set.of(), Map.of(), 1, 0, Map.of());
    }

    /** Seconds to turn a light case; 0 from an orientation that is not known. */
    public double turning(String from, String to) {
        return from.equals(to) ? 0 : turn.getOrDefault(from, Map.of()).getOrDefault(to, 0.0);
    }
}
