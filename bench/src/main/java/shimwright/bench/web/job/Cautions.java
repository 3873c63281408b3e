package shimwright.bench.web.job;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** The usual cautions of a step. They defer to local codes and licensed practice; the person decides. */
final class Cautions {
    /** Load constant of the revised NIOSH lifting equation, kg: the most under the best conditions. */
    private static final double ONE_PERSON = 23;

    private Cautions() {}

    static List<String> of(Step step, Unit unit) {
        List<String> cautions = new ArrayList<>();
        for (Step.Danger danger : step.dangers()) {
            cautions.add(sentence(danger, unit));
        }
        return cautions;
    }

    private static String sentence(Step.Danger danger, Unit unit) {
        return switch (danger) {
            case PRESS ->
                "Press: guard down, glasses on, stand aside. Push on the tight ring only. Stop when the force runs over what you expect. Chilled or hard parts can shatter.";
            case HEAT ->
                "Hot parts burn through thin gloves: leather gloves, a marked tray, a thermometer. Oven, never a flame on a bearing.";
            case COLD -> "Chilled parts: dry them, use them at once, gloves on.";
            case SPRING -> "Stored spring force: cover the hole, turn it away from you, glasses on.";
            case LIFT ->
                unit.type().mass() == 0
                        ? "Nobody has said what the unit weighs: hoist or a second person, nobody under it."
                        : unit.type().mass() > ONE_PERSON
                                ? "The unit weighs about "
                                        + Quantities.print(unit.type().mass(), Kind.MASS, UnitSystem.METRIC)
                                        + " dry: hoist or a second person, nobody under it."
                                : "Lift with a straight back and a clear way.";
            case AIR ->
                "Air test: low pressure only, relief valve set, plugs held, face away. Check your local rules for pressure tests.";
            case SOLVENT -> "Solvent: air, gloves, no flame. Waste goes where your local code says.";
            case CHEMICAL -> "Sealant and locker: gloves, wipe off skin at once, read the sheet that came with it.";
            case EDGE -> "Sharp edges: gloves.";
        };
    }
}
