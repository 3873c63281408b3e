package shimwright.rebuild.plan;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/**
 * What has really been done, what is on its way, and what the rebuilder weighs.
 *
 * @param done steps that stand done, in the order in which they were done
 * @param inOrder true where that order is known
 * @param ago seconds since a step was done; of one without an entry a window counts as just opened and a cure as just begun
 * @param arrives seconds from now until what a step needs arrives (a part on back order, a send-out due), by step
 * @param weights what counts beside minutes at the bench
 */
public record BuildState(
        List<String> done, boolean inOrder, Map<String, Double> ago, Map<String, Double> arrives, Weights weights) {
    public BuildState {
        done = List.copyOf(new LinkedHashSet<>(done));
        ago = Map.copyOf(ago);
        arrives = Map.copyOf(arrives);
    }

    /** With the usual weights. */
    public BuildState(List<String> done, boolean inOrder, Map<String, Double> ago, Map<String, Double> arrives) {
        this(done, inOrder, ago, arrives, Weights.usual());
    }

    /** The same, weighed otherwise. */
    public BuildState weighing(Weights others) {
        return new BuildState(done, inOrder, ago, arrives, others);
    }

    /** Steps done in this order, no times known, nothing on its way. */
    public static BuildState inOrder(List<String> done) {
        return new BuildState(done, true, Map.of(), Map.of());
    }

    /** Steps done in an order that nobody knows. */
    public static BuildState of(Collection<String> done) {
        return new BuildState(List.copyOf(done), false, Map.of(), Map.of());
    }
}
