package shimwright.mechanics.worksheet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.quantity.Uncertainty;

/**
 * A case read at the door.
 *
 * @param value the input record
 * @param uncertainties of each number typed with ±, SI, by path ({@code gauge.step}, {@code rounds[0][1]})
 * @param taken paths of numbers whose ± went into an input of the case, see {@link Input#u}
 * @param cautions sentences on uncertainties that were put together
 */
public record BoundCase<C>(
        C value, Map<String, List<Uncertainty>> uncertainties, Set<String> taken, List<String> cautions) {
    public BoundCase {
        uncertainties = Map.copyOf(uncertainties);
        taken = Set.copyOf(taken);
        cautions = List.copyOf(cautions);
    }
}
