package shimwright.mechanics.thread;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.thread.Tightening.Bolt;
import shimwright.mechanics.thread.Tightening.Case;
import shimwright.mechanics.thread.Tightening.Case.Method;
import shimwright.mechanics.thread.Tightening.Case.Surface;
import shimwright.mechanics.working.Working;

/** What follows from a preload: its scatter, the most it may be, pressure under the head, stress under load, shortening. */
final class PreloadEffects {
    private static final Table SCATTER = Table.read("machinerys-handbook/preload-scatter.csv");

    private PreloadEffects() {}

    static double scatter(Case c, Working w) {
        double own;
        if (c.judged().scatter() != null) {
            own = w.line("scatter", "given", c.judged().scatter(), Kind.NUMBER, "given");
        } else if (c.judged().tighteningFactor() != null) {
            double factor = c.judged().tighteningFactor();
            own = w.line("scatter", "(αA − 1)/(αA + 1)", (factor - 1) / (factor + 1), Kind.NUMBER, "VDI 2230-1");
        } else {
            boolean dry =
                    c.judged().method() == Method.TORQUE_WRENCH && c.friction().condition() == Surface.BLACK;
            String row = c.judged().method().name() + (dry ? "_DRY" : "");
            double printed = SCATTER.rows().stream()
                    .filter(r -> r.text("method").equals(row))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no scatter for " + row))
                    .number("scatter");
            own = w.line("scatter", "for this method", printed, Kind.NUMBER, SCATTER.name());
        }
        return w.line(
                "s",
                "√(scatter² + wrench²)",
                Math.hypot(own, c.judged().toolTolerance()),
                Kind.NUMBER,
                "independent influences");
    }

    static @Nullable Double yieldPreload(Case c, Bolt bolt, Working w) {
        Double yield = bolt.yield();
        Double mu = c.friction().threadFriction();
        if (yield == null || mu == null) {
            return null;
        }
        ThreadForm form = bolt.form();
        double twist = 1.5
                * form.pitchDiameter()
                / form.stressDiameter()
                * (form.pitch() / (Math.PI * form.pitchDiameter()) + 2 / Math.sqrt(3) * mu);
        return w.line(
                "allowed preload",
                "share × yield × area / √(1 + 3 (1.5 d2/ds (P/πd2 + 1.155 μG))²)",
                c.judged().yieldShare() * yield * bolt.area() / Math.sqrt(1 + 3 * twist * twist),
                Kind.FORCE,
                "VDI 2230-1");
    }

    static @Nullable Double headPressure(Case c, double preload, Working w) {
        Double outer = c.friction().headOuter();
        Double hole = c.friction().headHole();
        if (outer == null || hole == null) {
            return null;
        }
        double area = Math.PI / 4 * (outer * outer - hole * hole);
        return w.line("pressure under the head", "preload / seat", preload / area, Kind.PRESSURE, "statics");
    }

    static @Nullable Double serviceStress(Case c, double preload, double area, Working w) {
        Double share = c.joint().loadShare();
        if (share == null) {
            return null;
        }
        return w.line(
                "stress under load",
                "(share × load + preload) / stress area",
                (share * c.joint().serviceLoad() + preload) / area,
                Kind.PRESSURE,
                "Shigley 9th ed., Eq. 8-24");
    }

    static @Nullable Double shortening(Case c, double preload, Working w) {
        Double length = c.joint().sleeveLength();
        Double area = c.joint().sleeveArea();
        if (length == null || area == null) {
            return null;
        }
        return w.line(
                "spacer shorter by",
                "preload × length / (E × section)",
                preload * length / (c.joint().sleeveModulus() * area),
                Kind.LENGTH,
                "Hooke's law");
    }
}
