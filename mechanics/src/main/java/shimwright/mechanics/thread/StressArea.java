package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;

/** The stress area, printed or computed, with its line of working. */
final class StressArea {
    private StressArea() {}

    /** In m²; a printed figure stands for the computed one. */
    static double of(Working w, ThreadForm form, @Nullable Double printed) {
        if (printed != null) {
            return w.line("stress area", "as printed", printed, Kind.AREA, "given");
        }
        return form.unified()
                ? w.line("stress area", "π/4 × (d − 0.9743 P)²", form.stressArea(), Kind.AREA, "ASME B1.1")
                : w.line("stress area", "π/4 × ((d2 + d3)/2)²", form.stressArea(), Kind.AREA, "ISO 898-1:2013, 9.1.6");
    }
}
