package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import shimwright.mechanics.fit.Material.Data;
import shimwright.mechanics.published.Bindings;
import shimwright.mechanics.published.PublishedRow;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;

/** Rows answered by {@code interference} and the cylinder behind it. */
final class PressBindings {
    private static final double MPA = 1e6;

    private PressBindings() {}

    static void addTo(Bindings bindings) {
        addStressesOfGivenPressure(bindings);
        bindings.quantity("contact pressure", row -> ownCase(row).highestPressure() / MPA);
        bindings.quantity(
                "outer part hoop stress at joint", row -> ownCase(row).hub().hoop() / MPA);
        bindings.quantity(
                "outer part von Mises stress at joint",
                row -> ownCase(row).hub().equivalent() / MPA);
        bindings.quantity(
                "inner part hoop stress at its bore",
                row -> requireNonNull(ownCase(row).shaft().hoopBore()) / MPA);
        bindings.quantity("contact pressure, compound steel cylinder", PressBindings::compound);
        bindings.quantity("radial shrinkage allowance for a given pressure", PressBindings::allowance);
        bindings.quantity("initial contact pressure from release temperature", PressBindings::release);
        for (String which : new String[] {"maximum", "minimum"}) {
            bindings.quantity(which + " contact pressure", row -> {
                String nu = row.text("nu");
                String modulus = row.text("E");
                return press(row, "interference", modulus, nu, modulus, nu).highestPressure() / MPA;
            });
        }
        bindings.quantity("torque capacity at minimum interference", row -> held(row).torque());
        bindings.quantity(
                "axial press-in/pull-out force at maximum interference",
                row -> held(row).pressForceHigh() / 1e3);
        bindings.quantity("maximum interference", row -> classesOrParts(row, true));
        bindings.quantity("minimum interference", row -> classesOrParts(row, false));
        bindings.quantity(
                "largest elastic contact pressure of hub",
                row -> elastic(
                        row.number("joint_diameter"),
                        row.number("hub_outer"),
                        row.number("yield"),
                        row.text("criterion").startsWith("modified") ? "modified tresca" : "von mises"));
        // hoop = 1.7 p: (1 + Q²)/(1 − Q²) = 1.7
        bindings.quantity(
                "internal pressure at yield, von Mises",
                row -> elastic(100, 100 / Math.sqrt(0.7 / 2.7), row.number("yield"), "von mises"));
        bindings.quantity(
                "interference lost by smoothing of roughness",
                row -> FitAnswers.result(
                                        Interference.SHEET,
                                        FitAnswers.changed(
                                                Interference.SHEET,
                                                "hubRoughness",
                                                row.text("Rz_bore"),
                                                "shaftRoughness",
                                                row.text("Rz_shaft")))
                                .smoothing()
                        / 1e-6);
        bindings.quantity("radial interference lost by rotation (disk on shaft just loose)", PressBindings::rotation);
        bindings.quantity("tonnage conversion", PressBindings::tonnage);
        bindings.quantity("friction coefficient implied by the handbook factor", PressBindings::handbookFriction);
        bindings.quantity("allowance per inch, forced fit 2 in", PressBindings::perDiameter);
        bindings.quantity("allowance per inch, forced fit 8 in", PressBindings::perDiameter);
        bindings.quantity("allowance per inch, wheel on axle", PressBindings::perDiameter);
    }

    private static void addStressesOfGivenPressure(Bindings bindings) {
        ToDoubleFunction<PublishedRow> outerAtJoint =
                row -> Cylinder.hoopUnderInside(pressure(row), joint(row), outside(row), joint(row));
        ToDoubleFunction<PublishedRow> outerAtOutside =
                row -> Cylinder.hoopUnderInside(pressure(row), joint(row), outside(row), outside(row));
        ToDoubleFunction<PublishedRow> innerAtJoint =
                row -> Cylinder.hoopUnderOutside(pressure(row), bore(row), joint(row), joint(row));
        bindings.quantity("hub hoop stress at joint", outerAtJoint);
        bindings.quantity("hub hoop stress at outside", outerAtOutside);
        bindings.quantity("shaft (inner cylinder) hoop stress at joint", innerAtJoint);
        bindings.quantity("outer cylinder hoop stress at joint", outerAtJoint);
        bindings.quantity("outer cylinder hoop stress at outside", outerAtOutside);
        bindings.quantity("inner cylinder hoop stress at joint", innerAtJoint);
        bindings.quantity("outer tube hoop at outside", outerAtOutside);
        bindings.quantity("inner tube hoop at joint", innerAtJoint);
        bindings.quantity("bronze tube hoop at joint", innerAtJoint);
        bindings.quantity(
                "bronze tube hoop at bore",
                row -> Cylinder.hoopUnderOutside(pressure(row), bore(row), joint(row), bore(row)));
        bindings.quantity(
                "thick-cylinder hoop stress",
                row -> Cylinder.hoopUnderInside(
                        row.number("internal_pressure"),
                        row.number("inner_radius"),
                        row.number("outer_radius"),
                        row.number("radius")));
        bindings.quantity(
                "thick-cylinder radial stress",
                row -> Cylinder.radialUnderInside(
                        row.number("internal_pressure"),
                        row.number("inner_radius"),
                        row.number("outer_radius"),
                        row.number("radius")));
        bindings.quantity("thick-cylinder hoop stress at bore", row -> {
            double inside = row.number("bore");
            return Cylinder.hoopUnderInside(
                    row.number("internal_pressure"), inside, inside + 2 * row.number("wall"), inside);
        });
    }

    private static double pressure(PublishedRow row) {
        return row.number("contact_pressure");
    }

    private static double joint(PublishedRow row) {
        return row.number("joint_diameter");
    }

    private static double outside(PublishedRow row) {
        for (String key : new String[] {"outer_diameter", "hub_outer", "steel_outer"}) {
            if (row.has(key)) {
                return row.number(key);
            }
        }
        return row.number("boss_outer");
    }

    private static double bore(PublishedRow row) {
        return row.number(row.has("bore") ? "bore" : "bronze_bore");
    }

    /** Hub and shaft of the row with the interference named, millimetres; no roughness, friction as defaults. */
    static Interference.Result press(PublishedRow row, String interference, String eo, String nuo, String ei, String nui) {
        double bore = row.has("bore") ? row.number("bore") : 0;
        return press(joint(row), outside(row), bore, row.number(interference), eo, nuo, ei, nui, Map.of());
    }

    static Interference.Result press(
            double joint,
            double outside,
            double bore,
            double interference,
            String eo,
            String nuo,
            String ei,
            String nui,
            Map<String, String> more) {
        Map<String, String> given = new LinkedHashMap<>();
        given.put("bore", mm(joint));
        given.put("diameter", mm(joint + interference));
        given.put("hubOutside", mm(outside));
        given.put("shaftBore", mm(bore));
        given.put("length", "20 mm");
        given.put("hub", "steel: " + eo + ": " + nuo);
        given.put("shaft", "steel: " + ei + ": " + nui);
        given.putAll(more);
        return FitAnswers.result(Interference.SHEET, given);
    }

    static String mm(double mm) {
        return String.format(Locale.ROOT, "%.9f mm", mm);
    }

    private static Interference.Result ownCase(PublishedRow row) {
        return press(row, "interference", row.text("Eo"), row.text("nuo"), row.text("Ei"), row.text("nui"));
    }

    private static double compound(PublishedRow row) {
        double interference = 2 * row.number("radial_interference");
        String e = row.text("E");
        String nu = row.text("nu");
        return press(joint(row), outside(row), row.number("bore"), interference, e, nu, e, nu, Map.of())
                        .highestPressure()
                / MPA;
    }

    /** Pressure is proportional to interference, so one trial gives the allowance. Radial, mm. */
    private static double allowance(PublishedRow row) {
        String e = row.text("E");
        Interference.Result trial =
                press(joint(row), outside(row), row.number("bore"), 0.1, e, "0.3", e, "0.3", Map.of());
        return 0.1 / 2 * pressure(row) * MPA / trial.highestPressure();
    }

    private static double release(PublishedRow row) {
        double difference = row.number("alpha_bush") - row.number("alpha_shaft");
        double interference = joint(row) * difference * row.number("uniform_rise");
        return press(
                                joint(row),
                                row.number("bush_outer"),
                                0,
                                interference,
                                row.text("E_bush"),
                                row.text("nu_bush"),
                                row.text("E_shaft"),
                                row.text("nu_shaft"),
                                Map.of())
                        .highestPressure()
                / MPA;
    }

    /** A pair whose pressure is the one of the row, with its friction on both sides and no slip factor. */
    private static Interference.Result held(PublishedRow row) {
        double trial = press(joint(row), 45, 0, 0.03, "207 GPa", "0.292", "207 GPa", "0.292", Map.of())
                .highestPressure();
        double interference = 0.03 * pressure(row) * MPA / trial;
        Map<String, String> more = Map.of(
                "frictionLow", row.text("friction"),
                "frictionHigh", row.text("friction"),
                "slipFactor", "1",
                "length", row.text("length"));
        return press(joint(row), 45, 0, interference, "207 GPa", "0.292", "207 GPa", "0.292", more);
    }

    /** Millimetres from classes, inches from the limits of the parts. */
    private static double classesOrParts(PublishedRow row, boolean tightest) {
        if (row.has("nominal")) {
            return LimitsBindings.pair(row, tightest);
        }
        Interference.Result fit = FitAnswers.result(
                Interference.SHEET,
                FitAnswers.changed(
                        Interference.SHEET,
                        "bore",
                        row.text("hole").replace("..", ", "),
                        "diameter",
                        row.text("shaft").replace("..", ", ")));
        return (tightest ? fit.measuredTightest() : fit.measuredLoosest()) / Units.IN.factor();
    }

    private static double elastic(double joint, double outside, double yield, String criterion) {
        Map<String, String> more = Map.of("hub", "steel: 206 GPa: 0.3: " + yield + " MPa", "criterion", criterion);
        return press(joint, outside, 0, 0.03, "206 GPa", "0.3", "206 GPa", "0.3", more)
                        .hub()
                        .elasticPressure()
                / MPA;
    }

    private static double rotation(PublishedRow row) {
        double modulus = Quantities.parse(row.text("E"), Kind.PRESSURE, Units.PASCAL, "E")
                .orElseThrow()
                .si();
        Data steel = new Data(modulus, row.number("nu"), 1, 1, 1, row.number("density"), 1, 1);
        double omega = row.number("speed") * Math.PI / 30;
        Cylinder disk = new Cylinder(joint(row) / 1e3, outside(row) / 1e3, steel);
        Cylinder shaft = new Cylinder(0, joint(row) / 1e3, steel);
        return (disk.boreGrowsBySpeed(omega) - shaft.outsideGrowsBySpeed(omega)) / 2 * 1e3;
    }

    private static double tonnage(PublishedRow row) {
        double force = Quantities.parse(row.text("force").replaceAll("\\(.*", ""), Kind.FORCE, Units.NEWTON, "force")
                .orElseThrow()
                .si();
        return row.unit().equals("kN") ? force / 1e3 : Units.US_TON_FORCE.fromSi(force);
    }

    /** The handbook's press force (A a F/2, tons of 2000 lb, 1 in long, a of 0.004 in) over our force at friction 1. */
    private static double handbookFriction(PublishedRow row) {
        double joint = row.number("diameter") * 25.4;
        double allowance = 0.004;
        Map<String, String> more = Map.of("frictionHigh", "1", "length", "1 in");
        Interference.Result fit =
                press(joint, 2 * joint, 0, allowance * 25.4, "30000 ksi", "0.3", "30000 ksi", "0.3", more);
        double tons = Math.PI * row.number("diameter") * allowance * row.number("F") / 2;
        return tons * Units.US_TON_FORCE.factor() / fit.pressForceHigh();
    }

    private static double perDiameter(PublishedRow row) {
        double joint = row.number("D") * 25.4;
        return press(joint, 2 * joint, 0, row.number("allowance") * 25.4, "206 GPa", "0.3", "206 GPa", "0.3", Map.of())
                .perDiameter();
    }
}
