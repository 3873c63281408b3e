package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;

import shimwright.mechanics.published.Bindings;
import shimwright.mechanics.published.PublishedRow;

/** Rows answered by {@code limits-and-fits}. */
final class LimitsBindings {
    private static final double UM = 1e-6;
    private static final double MM = 1e-3;

    private LimitsBindings() {}

    static void addTo(Bindings bindings) {
        bindings.quantity("upper limit deviation", row -> limits(row).upper() / UM);
        bindings.quantity("lower limit deviation", row -> limits(row).lower() / UM);
        bindings.quantity(
                "upper limit deviation (corrected by corrigendum)",
                row -> limits(row).upper() / UM);
        bindings.quantity("maximum hole size", row -> limits(row).largest() / MM);
        bindings.quantity("maximum shaft size", row -> limits(row).largest() / MM);
        bindings.quantity("minimum shaft size", row -> limits(row).smallest() / MM);
        bindings.quantity("standard tolerance IT", row -> graded(row, "H").tolerance() / UM);
        bindings.quantity(
                "delta for holes K..ZC (ITn - IT(n-1))",
                row -> requireNonNull(graded(row, "P").delta()) / UM);
        bindings.quantity(
                "JS limit magnitude, rounded down (IT odd, grades 7-11)",
                row -> requireNonNull(limits(row).roundedHalf()) / UM);
        bindings.quantity("maximum clearance", row -> -pair(row, false));
        bindings.quantity("minimum clearance", row -> -pair(row, true));
    }

    private static SizeLimits limits(PublishedRow row) {
        return limitsOf(row.text("nominal"), row.text("class"));
    }

    private static SizeLimits graded(PublishedRow row, String letter) {
        return limitsOf(row.text("nominal"), letter + row.text("grade").substring(2));
    }

    static SizeLimits limitsOf(String nominal, String typed) {
        boolean hole = Character.isUpperCase(typed.charAt(0));
        LimitsAndFits.Result both =
                FitAnswers.result(LimitsAndFits.SHEET, "nominal", nominal, hole ? "hole" : "shaft", typed);
        return requireNonNull(hole ? both.hole() : both.shaft());
    }

    /** From classes, in mm. */
    static double pair(PublishedRow row, boolean tightest) {
        LimitsAndFits.Result both = FitAnswers.result(
                LimitsAndFits.SHEET,
                "nominal",
                row.text("nominal"),
                "hole",
                row.text("hole"),
                "shaft",
                row.text("shaft"));
        return requireNonNull(tightest ? both.tightest() : both.loosest()) / MM;
    }
}
