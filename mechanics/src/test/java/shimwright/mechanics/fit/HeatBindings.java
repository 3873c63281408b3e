package shimwright.mechanics.fit;

import java.util.Locale;
import java.util.Map;
import shimwright.mechanics.published.Bindings;
import shimwright.mechanics.published.PublishedRow;
import shimwright.mechanics.reference.Table;

/** Rows answered by {@code heat-to-fit}, {@code time-to-grab} and the tables of materials and ceilings. */
final class HeatBindings {
    private static final double ZERO = 273.15;
    private static final double UM = 1e-6;

    private HeatBindings() {}

    static void addTo(Bindings bindings) {
        bindings.quantity("temperature rise to assemble", HeatBindings::rise);
        bindings.quantity(
                "free bore growth on heating",
                row -> plan(
                                        row.text("bore"),
                                        "structural steel",
                                        "steel: : : : " + row.text("alpha"),
                                        "20 °C",
                                        "0.001 mm",
                                        "ownCeiling",
                                        "150 °C")
                                .growthAtCeiling()
                        / UM);
        bindings.quantity(
                "free shaft contraction on cooling",
                row -> plan(
                                        row.text("diameter"),
                                        "structural steel",
                                        "steel",
                                        "20 °C",
                                        "0.001 mm",
                                        "inner",
                                        "steel: : : : : " + row.text("alpha"),
                                        "innerTemperature",
                                        row.text("to"))
                                .innerShrink()
                        / UM);
        bindings.quantity(
                "hub temperature with shaft pre-cooled",
                row -> plan(
                                        row.text("joint"),
                                        "structural steel",
                                        "steel: : : : " + row.text("alpha_hub") + " 1/K",
                                        row.text("room"),
                                        row.text("interference_max"),
                                        "clearance",
                                        row.text("clearance"),
                                        "inner",
                                        "steel: : : : : " + row.text("alpha_shaft") + " 1/K",
                                        "innerTemperature",
                                        row.text("shaft_at"))
                                .outerTemperature()
                        - ZERO);
        addCooling(bindings);
        addTimes(bindings);
        addConstants(bindings);
    }

    /** Shop at 0 °C, so that 332 K of rise stay under the ceiling of structural steel. */
    private static double rise(PublishedRow row) {
        return plan(
                        diametral(row, "joint_radius"),
                        "structural steel",
                        "steel: : : : " + row.text("alpha"),
                        "0 °C",
                        diametral(row, "radial_interference"),
                        "clearance",
                        diametral(row, "radial_clearance"))
                .outerRise();
    }

    private static String diametral(PublishedRow row, String key) {
        return 2 * row.number(key) + " mm";
    }

    private static HeatToFit.Result plan(
            String diameter, String heated, String outer, String room, String interference, String... more) {
        Map<String, String> given = FitAnswers.changed(
                HeatToFit.SHEET,
                "diameter",
                diameter,
                "heated",
                heated,
                "outer",
                outer,
                "inner",
                "steel",
                "room",
                room,
                "interference",
                interference,
                "innerHardened",
                "no");
        given.putAll(FitAnswers.given(more));
        given.keySet().removeIf(key -> key.startsWith("inner.") || key.startsWith("outer."));
        return FitAnswers.result(HeatToFit.SHEET, given);
    }

    private static void addCooling(Bindings bindings) {
        bindings.quantity(
                "diameter of sphere for time constant",
                row -> 6
                        * row.number("tau")
                        / Cooling.timeConstant(row.number("rho"), row.number("c"), 1, row.number("h")));
        bindings.quantity(
                "radiation coefficient",
                row -> Cooling.radiation(row.number("emissivity"), row.number("T"), row.number("Tsur")));
        bindings.quantity("Biot number", row -> Cooling.biot(row.number("h"), row.number("D") / 1e3 / 6, row.number("k")));
        bindings.quantity(
                "Biot number (lumped model not allowed)",
                row -> Cooling.biot(row.number("h"), row.number("L") / 1e3, row.number("k")));
        bindings.quantity(
                "Biot number of that gear",
                row -> Cooling.biot(row.number("h"), row.number("V/A") / 1e3, row.number("k")));
        bindings.quantity(
                "lumped time to temperature",
                row -> Cooling.time(constant(row), row.number("T0"), row.number("T"), row.number("Tinf")));
        bindings.quantity("lumped inverse time constant", row -> 1 / constant(row));
        bindings.quantity("initial cooling rate", row -> (row.number("T0") - row.number("Tinf")) / constant(row));
    }

    // size: one entry a published row
    private static void addTimes(Bindings bindings) {
        bindings.quantity(
                "characteristic length V/A of a gear blank",
                row -> FitAnswers.result(
                                        TimeToGrab.SHEET,
                                        FitAnswers.changed(
                                                TimeToGrab.SHEET,
                                                "outer",
                                                row.text("outer"),
                                                "bore",
                                                row.text("bore"),
                                                "width",
                                                row.text("width")))
                                .length()
                        * 1e3);
        bindings.quantity(
                "free-air time before a chilled race becomes tight",
                row -> FitAnswers.result(
                                TimeToGrab.SHEET,
                                FitAnswers.changed(
                                        TimeToGrab.SHEET,
                                        "outer",
                                        row.text("outer"),
                                        "bore",
                                        row.text("bore"),
                                        "width",
                                        row.text("width"),
                                        "joint",
                                        row.text("outer"),
                                        "part",
                                        "steel: : : : : " + row.text("alpha"),
                                        "start",
                                        row.text("T0"),
                                        "air",
                                        row.text("air"),
                                        "film",
                                        row.text("h").replace("m2K", "(m2·K)"),
                                        "needed",
                                        row.text("contraction_needed")))
                        .timeInAir());
        bindings.quantity(
                "time constant of a hot inner ring once it touches the shaft",
                row -> FitAnswers.result(
                                TimeToGrab.SHEET,
                                FitAnswers.changed(
                                        TimeToGrab.SHEET,
                                        "outer",
                                        row.text("ring_outer"),
                                        "bore",
                                        row.text("bore"),
                                        "joint",
                                        row.text("bore"),
                                        "contact",
                                        String.valueOf(row.number("contact_coefficient"))))
                        .contactTimeConstant());
        bindings.quantity(
                "axial gap opened at the shoulder as a hub cools after gripping",
                row -> FitAnswers.result(
                                        TimeToGrab.SHEET,
                                        FitAnswers.changed(
                                                TimeToGrab.SHEET,
                                                "width",
                                                row.text("width"),
                                                "part",
                                                "steel: : : : " + row.text("alpha"),
                                                "start",
                                                String.format(Locale.ROOT, "%.1f °C", 20 + row.number("drop"))))
                                .shoulderGap()
                        / UM);
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

    private static void addConstants(Bindings bindings) {
        for (String kind : new String[] {"material constant", "material/limit constant"}) {
            bindings.quantity(kind + ": yield strength", row -> material(row).data().yield() / 1e6);
            bindings.quantity(
                    kind + ": thermal expansion", row -> material(row).data().expansion() / 1e-6);
        }
        bindings.quantity("material constant: modulus", row -> material(row).data().modulus() / 1e9);
        bindings.quantity(
                "material/limit constant: Poisson ratio",
                row -> material(row).data().poisson());
        bindings.quantity(
                "material constant: yield 52100 hardened",
                row -> Material.BEARING_STEEL.data().yield() / 1e6);
        bindings.quantity(
                "material constant: thermal expansion ductile iron",
                row -> Material.DUCTILE_IRON_500.data().expansion() / 1e-6);
        bindings.quantity(
                "material/limit constant: bearing heating limit, metal cage, no seals, 8 h",
                row -> HeatedPart.OPEN_BEARING.ceiling() - ZERO);
        bindings.quantity(
                "material/limit constant: tempering range, lower",
                row -> Table.read("heat/ceilings.csv").rows().stream()
                        .filter(part -> part.text("part").equals("BARE_RING"))
                        .findFirst()
                        .orElseThrow()
                        .number("temper"));
    }

    private static Material material(PublishedRow row) {
        String text = row.text("material");
        if (text.startsWith("A380")) {
            return Material.ALUMINUM_A380;
        }
        if (text.startsWith("383")) {
            return Material.ALUMINUM_383;
        }
        if (text.startsWith("AZ91D")) {
            return Material.MAGNESIUM_AZ91D;
        }
        return row.text("condition").startsWith("normalised")
                ? Material.STEEL_4140_NORMALIZED
                : Material.STEEL_4140_TEMPERED_540;
    }
}
