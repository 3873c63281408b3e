package shimwright.mechanics.fit;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/** Which calculation answers which published quantity; each gives the value in the unit of the row. */
final class Bindings {
    private static final Map<String, ToDoubleFunction<CheckRow>> BY_QUANTITY = new TreeMap<>();

    static {
        LimitsBindings.addTo(BY_QUANTITY);
        PressBindings.addTo(BY_QUANTITY);
        HeatBindings.addTo(BY_QUANTITY);
        GripBindings.addTo(BY_QUANTITY);
    }

    private Bindings() {}

    static boolean has(CheckRow row) {
        return BY_QUANTITY.containsKey(row.quantity());
    }

    static double value(CheckRow row) {
        ToDoubleFunction<CheckRow> binding = BY_QUANTITY.get(row.quantity());
        if (binding == null) {
            throw new IllegalArgumentException("nothing answers " + row.id() + ": " + row.quantity());
        }
        return binding.applyAsDouble(row);
    }
}
