package shimwright.mechanics.worksheet;

import java.util.List;
import java.util.Map;
import shimwright.mechanics.quantity.Doubt;

/**
 * A case read at the door.
 *
 * @param value the input record
 * @param doubts of each number typed with ±, SI, by path ({@code gauge.step}, {@code rounds[0][1]})
 */
public record BoundCase<C>(C value, Map<String, List<Doubt>> doubts) {
    public BoundCase {
        doubts = Map.copyOf(doubts);
    }
}
