package shimwright.mechanics.quantity;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A quantity as typed.
 *
 * @param si the value in the SI unit of its kind
 * @param unit the unit it was typed in, or the assumed one
 * @param doubts in the same SI unit (a step, for temperatures), independent of each other; empty when none was typed
 */
public record ParsedQuantity(double si, MeasureUnit unit, List<Doubt> doubts) {
    public ParsedQuantity {
        doubts = List.copyOf(doubts);
    }

    /** Standard uncertainty of all doubts together; empty when none was typed. */
    public OptionalDouble u() {
        return doubts.stream().mapToDouble(Doubt::u).reduce(Math::hypot);
    }
}
