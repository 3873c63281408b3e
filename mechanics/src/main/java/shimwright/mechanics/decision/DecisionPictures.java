package shimwright.mechanics.decision;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Distribution;
import shimwright.mechanics.quantity.Kind;

/** Measured values against their limits. */
final class DecisionPictures {
    private DecisionPictures() {}

    static List<Diagram> conformity(ConformitySheet.Case c, ConformitySheet.Result r) {
        return List.of(new Distribution(
                "The value against its limits",
                Kind.LENGTH,
                c.value(),
                c.u(),
                c.nu() == null ? Double.POSITIVE_INFINITY : c.nu(),
                maybe(c.lower()),
                maybe(c.upper()),
                r.probability()));
    }

    private static OptionalDouble maybe(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
