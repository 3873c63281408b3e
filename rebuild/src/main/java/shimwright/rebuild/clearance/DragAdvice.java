package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
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
    private static final Pattern TURNS = Pattern.compile("(?i)turn|drag|preload|pull");
    private static final String LOOK = " at the bearings: ";
    private static final String HEAVY = "dirt, no oil, a cup that is not home, a seal on the shaft.";
    private static final String LIGHT = "used ones turn easier, and a cup that is not home settles.";

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
     * What to change for a drag that is not within its limits; empty where it is. Where nobody knows its rise it says which way, and how the
     * rise is found.
     *
     * @param torque as read, N·m
     */
    public Optional<String> says(double torque, UnitSystem units) {
        boolean high = torque > drag.upper();
        if (!high && torque >= drag.lower()) {
            return Optional.empty();
        }
        if (drag.rise() <= 0) {
            return Optional.of(unknownRise(high));
        }
        double aim = drag.atZero() - drag.rise() * clearance.aim();
        Position position = clearance.positions().get(0);
        String look = "Before that look" + LOOK + (high ? HEAVY : LIGHT);
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

    private String unknownRise(boolean high) {
        Position position = clearance.positions().get(0);
        boolean thicker = high == position.effect() > 0;
        return (high ? "Too much preload: a " : "Too little preload: a ") + (thicker ? "thicker" : "thinner")
                + " piece "
                + position.where() + (high ? " lets off." : " takes up.")
                + " By how much nobody knows here: change it by the thinnest step there is and read again; what the drag"
                + " changes for that step is its rise, and the next piece follows from it. Before that look" + LOOK
                + (high ? HEAVY : LIGHT);
    }

    /**
     * What to look at where a turning torque is out and no clearance has its limits, of common practice; empty where the words of the check
     * speak of another torque.
     */
    public static Optional<String> look(Check check, boolean high) {
        return turns(check) ? Optional.of("Look" + LOOK + (high ? HEAVY : LIGHT)) : Optional.empty();
    }

    /** Whether the words of a check of torque speak of one that turns, and not of one that tightens. */
    public static boolean turns(Check check) {
        return TURNS.matcher(check.what()).find();
    }

    private static String length(double metres, UnitSystem units) {
        return Quantities.print(metres, Kind.LENGTH, units);
    }
}
