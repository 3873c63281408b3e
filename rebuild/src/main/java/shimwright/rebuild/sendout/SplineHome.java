package shimwright.rebuild.sendout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import shimwright.mechanics.fit.Interference;
import shimwright.mechanics.fit.Material;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Working;

/**
 * How a spline with a known clearance on its flanks goes home: by hand, by heat of its hub, or by which force.
 *
 * <p>A hub that grows evenly by ε opens its spaces along the pitch circle by d ε tan α: its width scales with it, and the same radius
 * now cuts the space further in, where an involute space is wider (geometry; {@code SplineHomeTest} against the involute itself). So an
 * interference e along the pitch circle is like one of e / tan α on the diameter, whose pressure is Lamé's; the flanks stand at α, so that
 * they rub with 1 / sin α of its radial force. Teeth that give are not counted: the true force is less. Own estimate, no source.
 *
 * @param byHand true where both limits have play
 * @param hub temperature that the hub must have, K; empty by hand
 * @param least force at the loose limit with low friction, N; 0 where it has play there
 * @param most force at the tight limit with high friction, N; 0 by hand
 * @param stop force at which the press is stopped and one looks, N; 0 by hand
 * @param say in words
 */
public record SplineHome(boolean byHand, OptionalDouble hub, double least, double most, double stop, String say) {
    private static final double ROOM = 293.15;

    /**
     * What the fit is, in metres and radians.
     *
     * @param diameter of the pitch circle
     * @param angle pressure angle
     * @param tight clearance along the pitch circle at the tight limit, negative for interference
     * @param loose the same at the loose limit
     * @param length of engagement
     * @param hubOutside outside of the hub, root diameter for a gear
     * @param shaftBore bore of the shaft, 0 when solid
     * @param spare clearance wanted while it slides on
     * @param ceiling hottest that the hub may get, K
     */
    public record Fit(
            double diameter,
            double angle,
            double tight,
            double loose,
            double length,
            double hubOutside,
            double shaftBore,
            double spare,
            double ceiling) {}

    /** Works it out, each number kept; refused where the hub is no ring around the spline. */
    public static Outcome<SplineHome> of(Fit fit, Working working) {
        if (fit.tight() >= 0) {
            return Outcome.ok(new SplineHome(
                    true,
                    OptionalDouble.empty(),
                    0,
                    0,
                    0,
                    "It goes home by hand, clean and oiled, with a play of " + mm(fit.tight()) + " to "
                            + mm(fit.loose())
                            + " along the pitch circle. If it does not, something is wrong: no press, no hammer."));
        }
        double tangent = Math.tan(fit.angle());
        double interference = working.line(
                "interference on the diameter, tight limit",
                "−clearance / tan α",
                -fit.tight() / tangent,
                Kind.LENGTH,
                "geometry");
        double loose = working.line(
                "interference on the diameter, loose limit",
                "−clearance / tan α",
                -fit.loose() / tangent,
                Kind.LENGTH,
                "geometry");
        double expansion = Material.STEEL.data().expansion();
        double hot = working.line(
                "hub temperature to go on",
                "20 °C + (interference + spare / tan α) / (α steel × d)",
                ROOM + (interference + fit.spare() / tangent) / (expansion * fit.diameter()),
                Kind.TEMPERATURE,
                "linear expansion, own estimate");
        return pressed(fit, interference, loose).map(press -> {
            double flank = 1 / Math.sin(fit.angle());
            double least = working.line(
                    "press force, least",
                    "as a plain fit / sin α",
                    press.forceLow() * flank,
                    Kind.FORCE,
                    "Lamé, own estimate");
            double most = working.line(
                    "press force, most",
                    "as a plain fit / sin α",
                    press.forceHigh() * flank,
                    Kind.FORCE,
                    "Lamé, own estimate");
            double stop = working.line(
                    "stop the press at",
                    "1.5 × most, or where the hub would yield",
                    Math.min(1.5 * most, press.hubYields() * flank),
                    Kind.FORCE,
                    "common practice");
            return new SplineHome(false, OptionalDouble.of(hot), least, most, stop, words(fit, hot, least, most, stop));
        });
    }

    private record Press(double forceLow, double forceHigh, double hubYields) {}

    private static Outcome<Press> pressed(Fit fit, double interference, double loose) {
        Map<String, Object> in = new LinkedHashMap<>();
        in.put("bore", List.of(exact(fit.diameter())));
        in.put("diameter", List.of(exact(fit.diameter() + Math.max(loose, 0)), exact(fit.diameter() + interference)));
        in.put("hubOutside", exact(fit.hubOutside()));
        in.put("shaftBore", exact(fit.shaftBore()));
        in.put("length", exact(fit.length()));
        in.put("hub", "steel");
        in.put("shaft", "steel");
        return Interference.SHEET
                .answer(in, UnitSystem.METRIC)
                .map(answer -> (Interference.Result) answer.result())
                .map(result -> new Press(
                        loose > 0 ? result.press().pressForceLow() : 0,
                        result.press().pressForceHigh(),
                        result.press().stopForce()));
    }

    private static String words(Fit fit, double hot, double least, double most, double stop) {
        boolean allowed = hot <= fit.ceiling();
        String force =
                Quantities.print(least, Units.KILONEWTON, 1) + " to " + Quantities.print(most, Units.KILONEWTON, 1);
        String heat = "hub at " + Quantities.print(hot, Kind.TEMPERATURE, UnitSystem.METRIC);
        return allowed
                ? "It goes home with its " + heat + " and drops on; cold it would take " + force
                        + " of press. Stop and look at " + Quantities.print(stop, Units.KILONEWTON, 1) + "."
                : "Heat alone does not do it: it would take its " + heat + ", and it may have "
                        + Quantities.print(fit.ceiling(), Kind.TEMPERATURE, UnitSystem.METRIC)
                        + " at most. Cold the press takes " + force + "; stop and look at "
                        + Quantities.print(stop, Units.KILONEWTON, 1) + ", or ask for less interference.";
    }

    private static String exact(double metres) {
        return String.format(Locale.ROOT, "%.7f mm", metres * 1000);
    }

    private static String mm(double metres) {
        return Quantities.print(metres, Kind.LENGTH, UnitSystem.METRIC);
    }
}
