package shimwright.mechanics.quantity;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A quantity as typed.
 *
 * @param si the value in the SI unit of its kind
 * @param unit the unit it was typed in, or the assumed one
 * @param uncertainties in the same SI unit (a step, for temperatures), independent of each other; empty when none was typed
 */
public record ParsedQuantity(double si, MeasureUnit unit, List<Uncertainty> uncertainties) {
    public ParsedQuantity {
        uncertainties = List.copyOf(uncertainties);
    }

    /** Standard uncertainty of all uncertainties together; empty when none was typed. */
    public OptionalDouble u() {
        return uncertainties.stream().mapToDouble(Uncertainty::u).reduce(Math::hypot);
    }
}
