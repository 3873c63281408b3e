package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import shimwright.mechanics.fit.Material.Data;
import shimwright.mechanics.published.Bindings;
import shimwright.mechanics.published.PublishedRow;
import shimwright.mechanics.published.SheetAnswers;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;

/** Rows on fits that no line binds: functions behind the worksheets, tables, and cases to be worked back from the answer. */
public final class FitBindings {
    private static final double MPA = 1e6;
    private static final double ZERO = 273.15;

    private FitBindings() {}

    /** Adds them. */
    public static void addTo(Bindings bindings) {
        limits(bindings);
        stressesOfGivenPressure(bindings);
        presses(bindings);
        cooling(bindings);
        constants(bindings);
    }

    private static void limits(Bindings bindings) {
        bindings.quantity("upper limit deviation", row -> limits(row).upper() / Units.UM.factor());
        bindings.quantity("lower limit deviation", row -> limits(row).lower() / Units.UM.factor());
        bindings.quantity(
                "upper limit deviation (corrected by corrigendum)",
                row -> limits(row).upper() / Units.UM.factor());
        bindings.quantity("maximum hole size", row -> limits(row).largest() / Units.MM.factor());
        bindings.quantity("maximum shaft size", row -> limits(row).largest() / Units.MM.factor());
        bindings.quantity("minimum shaft size", row -> limits(row).smallest() / Units.MM.factor());
        bindings.quantity("standard tolerance IT", row -> graded(row, "H").tolerance() / Units.UM.factor());
        bindings.quantity(
                "delta for holes K..ZC (ITn - IT(n-1))",
                row -> requireNonNull(graded(row, "P").delta()) / Units.UM.factor());
        bindings.quantity(
                "JS limit magnitude, rounded down (IT odd, grades 7-11)",
                row -> requireNonNull(limits(row).roundedHalf()) / Units.UM.factor());
    }

    private static SizeLimits limits(PublishedRow row) {
        return FitAnswers.limitsOf(row.text("nominal"), row.text("class"));
    }

    private static SizeLimits graded(PublishedRow row, String letter) {
        return FitAnswers.limitsOf(
                row.text("nominal"), letter + row.text("grade").substring(2));
    }

    private static void stressesOfGivenPressure(Bindings bindings) {
        bindings.bind(
                        "F179 F190 F215 F303",
                        row -> Cylinder.hoopUnderInside(pressure(row), joint(row), outside(row), joint(row)))
                .bind(
                        "F180 F191 F201",
                        row -> Cylinder.hoopUnderInside(pressure(row), joint(row), outside(row), outside(row)))
                .bind(
                        "F182 F193 F203 F209",
                        row -> Cylinder.hoopUnderOutside(pressure(row), bore(row), joint(row), joint(row)))
                .bind("F208", row -> Cylinder.hoopUnderOutside(pressure(row), bore(row), joint(row), bore(row)))
                .bind("F18[456]", row -> thick(row, Cylinder::hoopUnderInside))
                .bind("F187", row -> thick(row, Cylinder::radialUnderInside))
                .bind("F204", row -> {
                    double inside = row.number("bore");
                    return Cylinder.hoopUnderInside(
                            row.number("internal_pressure"), inside, inside + 2 * row.number("wall"), inside);
                });
    }

    private interface Stress {
        double at(double pressure, double inner, double outer, double where);
    }

    private static double thick(PublishedRow row, Stress stress) {
        return stress.at(
                row.number("internal_pressure"),
                row.number("inner_radius"),
                row.number("outer_radius"),
                row.number("radius"));
    }

    private static double pressure(PublishedRow row) {
        return row.number("contact_pressure");
    }

    private static double joint(PublishedRow row) {
        return row.number("joint_diameter");
    }

    private static double outside(PublishedRow row) {
        return row.number(Stream.of("outer_diameter", "hub_outer", "boss_outer")
                .filter(row::has)
                .findFirst()
                .orElseThrow());
    }

    private static double bore(PublishedRow row) {
        return row.number(row.has("bore") ? "bore" : "bronze_bore");
    }

    private static void presses(Bindings bindings) {
        bindings.bind("F196", FitBindings::rotation)
                .bind("F199", FitBindings::allowance)
                .bind("F216", row -> held(row, "torque"))
                .bind("F217", row -> held(row, "pressForceHigh") / 1e3)
                .bind(
                        "F276",
                        row -> HousingGrip.axial(
                                2 * row.number("radial_change"), Math.toRadians(row.number("cup_half_angle"))))
                .bind("F324", FitBindings::handbookFriction);
    }

    /** What {@code interference} says to a pair of one steel; sizes in mm. */
    private static double press(
            double joint,
            double outside,
            double bore,
            double interference,
            String steel,
            String result,
            String... more) {
        Map<String, String> given = FitAnswers.given(
                "bore", FitAnswers.mm(joint),
                "diameter", FitAnswers.mm(joint + interference),
                "hubOutside", FitAnswers.mm(outside),
                "shaftBore", FitAnswers.mm(bore),
                "length", "20 mm",
                "hub", "steel: " + steel,
                "shaft", "steel: " + steel);
        given.putAll(FitAnswers.given(more));
        return SheetAnswers.number("interference", given, result);
    }

    /** Pressure is proportional to interference, so one trial gives the allowance. Radial, mm. */
    private static double allowance(PublishedRow row) {
        double trial =
                press(joint(row), outside(row), row.number("bore"), 0.1, row.text("E") + ": 0.3", "highestPressure");
        return 0.1 / 2 * pressure(row) * MPA / trial;
    }

    /** Of a pair whose pressure is the one of the row, with its friction on both sides and no slip factor. */
    private static double held(PublishedRow row, String result) {
        String steel = "207 GPa: 0.292";
        double trial = press(joint(row), 45, 0, 0.03, steel, "highestPressure");
        double interference = 0.03 * pressure(row) * MPA / trial;
        String friction = row.text("friction");
        return press(
                joint(row),
                45,
                0,
                interference,
                steel,
                result,
                "frictionLow",
                friction,
                "frictionHigh",
                friction,
                "slipFactor",
                "1",
                "length",
                row.text("length"));
    }

    private static double rotation(PublishedRow row) {
        Data steel = new Data(row.number("E") * 1e9, row.number("nu"), 1, 1, 1, row.number("density"), 1, 1);
        double omega = Units.RPM.toSi(row.number("speed"));
        Cylinder disk = new Cylinder(joint(row) / 1e3, outside(row) / 1e3, steel);
        Cylinder shaft = new Cylinder(0, joint(row) / 1e3, steel);
        return (disk.boreGrowsBySpeed(omega) - shaft.outsideGrowsBySpeed(omega)) / 2 * 1e3;
    }

    /** The handbook's press force (A a F/2, tons of 2000 lb, 1 in long, a of 0.004 in) over our force at friction 1. */
    private static double handbookFriction(PublishedRow row) {
        double joint = row.number("diameter") * 25.4;
        double allowance = 0.004;
        double force = press(
                joint,
                2 * joint,
                0,
                allowance * 25.4,
                "30000 ksi: 0.3",
                "pressForceHigh",
                "frictionHigh",
                "1",
                "length",
                "1 in");
        double tons = Math.PI * row.number("diameter") * allowance * row.number("F") / 2;
        return Units.US_TON_FORCE.toSi(tons) / force;
    }

    private static void cooling(Bindings bindings) {
        bindings.bind(
                        "F278",
                        row -> 6
                                * row.number("tau")
                                / Cooling.timeConstant(row.number("rho"), row.number("c"), 1, row.number("h")))
                .bind("F282", row -> Cooling.radiation(row.number("emissivity"), row.number("T"), row.number("Tsur")))
                .bind("F284", row -> biot(row, row.number("D") / 6))
                .bind("F295", row -> biot(row, row.number("L")))
                .bind("F298", row -> biot(row, row.number("V/A")))
                .bind(
                        "F285 F287 F294",
                        row -> Cooling.time(constant(row), row.number("T0"), row.number("T"), row.number("Tinf")))
                .bind("F290", row -> 1 / constant(row))
                .bind("F293", row -> (row.number("T0") - row.number("Tinf")) / constant(row));
    }

    private static double biot(PublishedRow row, double millimetres) {
        return Cooling.biot(row.number("h"), millimetres / 1e3, row.number("k"));
    }

    /** Time constant of the body of the row; volume over area of a sphere is D/6, of a plate half its thickness. */
    private static double constant(PublishedRow row) {
        double length;
        if (row.has("thickness")) {
            length = row.number("thickness") / 2e3;
        } else if (row.has("D")) {
            length = row.number("D") / 6e3;
        } else {
            length = Math.cbrt(6 * row.number("mass") / row.number("rho") / Math.PI) / 6;
        }
        return Cooling.timeConstant(row.number("rho"), row.number("c"), length, row.number("h"));
    }

    private static void constants(Bindings bindings) {
        constant(bindings, "F333", Material.ALUMINUM_A380, Data::yield, MPA);
        constant(bindings, "F334", Material.ALUMINUM_A380, Data::expansion, 1e-6);
        constant(bindings, "F335", Material.ALUMINUM_383, Data::yield, MPA);
        constant(bindings, "F336", Material.ALUMINUM_383, Data::modulus, 1e9);
        constant(bindings, "F337", Material.ALUMINUM_383, Data::expansion, 1e-6);
        constant(bindings, "F338", Material.MAGNESIUM_AZ91D, Data::yield, MPA);
        constant(bindings, "F340", Material.MAGNESIUM_AZ91D, Data::expansion, 1e-6);
        constant(bindings, "F341", Material.MAGNESIUM_AZ91D, Data::poisson, 1);
        constant(bindings, "F347", Material.STEEL_4140_TEMPERED_540, Data::yield, MPA);
        constant(bindings, "F348", Material.STEEL_4140_NORMALIZED, Data::yield, MPA);
        constant(bindings, "F355", Material.BEARING_STEEL, Data::yield, MPA);
        constant(bindings, "F357", Material.DUCTILE_IRON_500, Data::expansion, 1e-6);
        bindings.bind(
                        "F351",
                        row -> Table.read("heat/ceilings.csv").rows().stream()
                                .filter(part -> part.text("part").equals("BARE_RING"))
                                .findFirst()
                                .orElseThrow()
                                .number("temper"))
                .bind("F352", row -> HeatedPart.OPEN_BEARING.ceiling() - ZERO);
    }

    private static void constant(
            Bindings bindings, String id, Material material, ToDoubleFunction<Data> what, double unit) {
        bindings.bind(id, row -> what.applyAsDouble(material.data()) / unit);
    }
}
