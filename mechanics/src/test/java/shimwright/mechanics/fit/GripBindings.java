package shimwright.mechanics.fit;

import shimwright.mechanics.fit.BearingClearance.Case.Finish;
import shimwright.mechanics.published.Bindings;
import shimwright.mechanics.published.PublishedRow;

/** Rows answered by {@code housing-grip} and {@code bearing-clearance}. */
final class GripBindings {
    private static final double UM = 1e-6;
    private static final double ZERO = 273.15;

    private GripBindings() {}

    static void addTo(Bindings bindings) {
        bindings.quantity(
                "interference lost when housing and ring warm uniformly",
                row -> grip(row.number("diameter"), 50, row, 20 + row.number("rise"))
                                .heatLoss()
                        / UM);
        bindings.quantity(
                "temperature at which interference is gone",
                row -> grip(row.number("diameter"), row.number("interference_at_20C"), row, 80)
                                .lettingGo()
                        - ZERO);
        bindings.quantity(
                "contact pressure at 80 C, race in A380 boss",
                row -> race(row, 80).pressureHot() / 1e6);
        bindings.quantity(
                "cold-start contact pressure, race in A380 boss at -40 C",
                row -> race(row, -40).pressureHot() / 1e6);
        bindings.quantity(
                "cold-start boss hoop stress at -40 C",
                row -> Cylinder.hoopUnderInside(
                        row.number("contact_pressure"),
                        row.number("joint_diameter"),
                        row.number("boss_outer"),
                        row.number("joint_diameter")));
        bindings.quantity(
                "axial equivalent of a radial raceway change",
                row -> HousingGrip.axial(
                        2 * row.number("radial_change"), Math.toRadians(row.number("cup_half_angle"))));
        bindings.quantity(
                "internal clearance lost per unit interference, inner ring on solid steel shaft",
                row -> inner(row).innerShare());
        bindings.quantity("internal clearance lost, inner ring", row -> inner(row).innerLoss() / UM);
        bindings.quantity(
                "internal clearance lost, inner ring on hollow shaft",
                row -> inner(row).innerLoss() / UM);
        bindings.quantity("internal clearance lost, outer ring", row -> outer(row) / UM);
        bindings.quantity("effective interference, ground shaft in bearing bore", row -> effective(row, Finish.GROUND));
        bindings.quantity("effective interference, turned shaft in bearing bore", row -> effective(row, Finish.TURNED));
        bindings.quantity(
                "interference lost by radial load, inner ring",
                row -> FitAnswers.result(
                                        BearingClearance.SHEET,
                                        FitAnswers.changed(
                                                BearingClearance.SHEET,
                                                "bore",
                                                row.text("d"),
                                                "width",
                                                row.text("B"),
                                                "radialLoad",
                                                row.text("Fr")))
                                .loadLoss()
                        / UM);
    }

    /** A race whose coefficient is 12.5, in a housing that exceeds it by the difference of the row. */
    private static HousingGrip.Result grip(double diameter, double interferenceUm, PublishedRow row, double celsius) {
        double alpha = 12.5e-6 + row.number("alpha_difference");
        return FitAnswers.result(
                HousingGrip.SHEET,
                FitAnswers.changed(
                        HousingGrip.SHEET,
                        "seat",
                        PressBindings.mm(diameter),
                        "cup",
                        PressBindings.mm(diameter + interferenceUm / 1e3),
                        "cupBore",
                        PressBindings.mm(diameter - 10),
                        "boss",
                        PressBindings.mm(diameter + 20),
                        "housing",
                        "aluminum a380: 71 GPa: 0.33: : " + alpha + " 1/K",
                        "race",
                        "bearing steel: 206 GPa: 0.30: : 12.5e-6 1/K",
                        "housingTemperature",
                        celsius + " °C",
                        "raceTemperature",
                        celsius + " °C"));
    }

    private static HousingGrip.Result race(PublishedRow row, double celsius) {
        return grip(row.number("joint_diameter"), row.number("interference_20C") * 1e3, row, celsius);
    }

    private static BearingClearance.Result inner(PublishedRow row) {
        String fit = row.has("effective_interference") ? row.text("effective_interference") : "20 um";
        return FitAnswers.result(
                BearingClearance.SHEET,
                FitAnswers.changed(
                        BearingClearance.SHEET,
                        "bore",
                        row.text("d"),
                        "innerRaceway",
                        row.text("raceway"),
                        "shaftBore",
                        row.text("shaft_bore"),
                        "innerFit",
                        fit,
                        "shaft",
                        "steel: 206 GPa: 0.3",
                        "ring",
                        "bearing steel: 206 GPa: 0.3"));
    }

    private static double outer(PublishedRow row) {
        String around = row.text("housing_outer");
        return FitAnswers.result(
                        BearingClearance.SHEET,
                        FitAnswers.changed(
                                BearingClearance.SHEET,
                                "outside",
                                row.text("D"),
                                "outerRaceway",
                                row.text("raceway"),
                                "housingOutside",
                                around.equals("infinite") ? "10 m" : around,
                                "housing",
                                "steel: " + row.text("E_housing") + ": " + row.text("nu_housing"),
                                "ring",
                                "bearing steel: " + row.text("E_ring") + ": " + row.text("nu_ring"),
                                "outerFit",
                                row.text("interference")))
                .outerLoss();
    }

    private static double effective(PublishedRow row, Finish finish) {
        return FitAnswers.result(
                                BearingClearance.SHEET,
                                FitAnswers.changed(
                                        BearingClearance.SHEET,
                                        "bore",
                                        row.text("d"),
                                        "innerFit",
                                        row.text("measured_interference"),
                                        "finish",
                                        finish.name()))
                        .innerEffective()
                / UM;
    }
}
