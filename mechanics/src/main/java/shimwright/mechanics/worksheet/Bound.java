package shimwright.mechanics.worksheet;

import java.util.Map;

/**
 * A case read at the door.
 *
 * @param value the input record
 * @param doubts standard uncertainty, SI, of each number typed with ±, by path ({@code gauge.step},
 *     {@code rounds[0][1]})
 */
public record Bound<C>(C value, Map<String, Double> doubts) {
    public Bound {
        doubts = Map.copyOf(doubts);
    }
}
