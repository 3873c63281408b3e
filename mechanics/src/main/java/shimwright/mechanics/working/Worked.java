package shimwright.mechanics.working;

import java.util.List;

/**
 * A result with its working out.
 *
 * @param result what was asked for
 * @param working the lines in the order they were computed
 * @param cautions sentences the person must read with the result; may be empty
 */
public record Worked<R>(R result, List<Line> working, List<String> cautions) {
    public Worked {
        working = List.copyOf(working);
        cautions = List.copyOf(cautions);
    }
}
