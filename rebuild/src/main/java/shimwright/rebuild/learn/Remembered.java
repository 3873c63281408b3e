package shimwright.rebuild.learn;

import java.util.List;
import shimwright.mechanics.quantity.Kind;

/**
 * One thing that an earlier job knew of a place.
 *
 * @param job its number
 * @param values SI; empty where it is words alone
 * @param kind of the values
 * @param words what of it
 */
public record Remembered(String job, List<Double> values, Kind kind, String words) {
    public Remembered {
        values = List.copyOf(values);
    }
}
