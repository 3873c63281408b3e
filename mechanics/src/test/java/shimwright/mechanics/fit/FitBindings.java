package shimwright.mechanics.fit;

import shimwright.mechanics.published.Bindings;

/** Rows on fits that are answered by code. */
public final class FitBindings {
    private FitBindings() {}

    /** Adds them. */
    public static void addTo(Bindings bindings) {
        LimitsBindings.addTo(bindings);
        PressBindings.addTo(bindings);
        HeatBindings.addTo(bindings);
        GripBindings.addTo(bindings);
    }
}
