package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Drag;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;

/**
 * The drag by which a check proves a preload, and what to change where it is out.
 *
 * @param clearance whose preload it proves
 * @param drag how the torque rises with the preload
 */
public record DragAdvice(Clearance clearance, Drag drag) {
    private static final double SAME = 1e-9;

    /** The drag of a check of torque: the one of a clearance with the same limits; empty where none or several have them. */
    public static Optional<DragAdvice> of(Unit unit, Check check) {
        List<DragAdvice> same = new ArrayList<>();
        for (Clearance clearance : unit.type().clearances()) {
            for (Drag drag : clearance.drag()) {
                if (near(check.lower(), drag.lower()) && near(check.upper(), drag.upper())) {
                    same.add(new DragAdvice(clearance, drag));
                }
            }
        }
        return same.size() == 1 ? Optional.of(same.get(0)) : Optional.empty();
    }

    private static boolean near(Optional<Quantity> limit, double value) {
        return limit.map(stated -> Math.abs(stated.si() - value) < SAME).orElse(false);
    }

    /**
     * What to change for a drag that is not within its limits; empty where it is, or where nobody knows its rise.
     *
     * @param torque as read, N·m
     */
    public Optional<String> says(double torque, UnitSystem units) {
        boolean high = torque > drag.upper();
        if ((!high && torque >= drag.lower()) || drag.rise() <= 0) {
            return Optional.empty();
        }
        double aim = drag.atZero() - drag.rise() * clearance.aim();
        Position position = clearance.positions().get(0);
        String look = high
                ? "Before that look at the bearings: dirt, no oil, a cup that is not home, a seal on the shaft."
                : "Before that look at the bearings: used ones turn easier, and a cup that is not home settles.";
        if (torque <= drag.atZero()) {
            return Optional.of(
                    "No more than the bearings alone: there is no preload. Read the play with the trial pack again. "
                            + look);
        }
        double preload = (torque - drag.atZero()) / drag.rise();
        double more = (torque - aim) / drag.rise();
        double thicker = more / position.effect();
        String by = Quantities.print(drag.rise() * 1e-3, Kind.TORQUE, UnitSystem.METRIC) + " a millimeter";
        return Optional.of("By " + by + " that is a preload of " + length(preload, units) + ", "
                + length(Math.abs(more), units) + (more > 0 ? " more" : " less") + " than aimed at: a piece "
                + length(Math.abs(thicker), units) + (thicker > 0 ? " thicker " : " thinner ") + position.where()
                + " brings it there. " + look);
    }

    private static String length(double metres, UnitSystem units) {
        return Quantities.print(metres, Kind.LENGTH, units);
    }
}
