package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;

import java.util.Map;
import java.util.function.ToDoubleFunction;

/** Rows answered by {@code limits-and-fits}. */
final class LimitsBindings {
    private static final double UM = 1e-6;
    private static final double MM = 1e-3;

    private LimitsBindings() {}

    static void addTo(Map<String, ToDoubleFunction<CheckRow>> bindings) {
        bindings.put("upper limit deviation", row -> limits(row).upper() / UM);
        bindings.put("lower limit deviation", row -> limits(row).lower() / UM);
        bindings.put(
                "upper limit deviation (corrected by corrigendum)",
                row -> limits(row).upper() / UM);
        bindings.put("maximum hole size", row -> limits(row).largest() / MM);
        bindings.put("maximum shaft size", row -> limits(row).largest() / MM);
        bindings.put("minimum shaft size", row -> limits(row).smallest() / MM);
        bindings.put("standard tolerance IT", row -> graded(row, "H").tolerance() / UM);
        bindings.put(
                "delta for holes K..ZC (ITn - IT(n-1))",
                row -> requireNonNull(graded(row, "P").delta()) / UM);
        bindings.put(
                "JS limit magnitude, rounded down (IT odd, grades 7-11)",
                row -> requireNonNull(limits(row).roundedHalf()) / UM);
        bindings.put("maximum clearance", row -> -pair(row, false));
        bindings.put("minimum clearance", row -> -pair(row, true));
    }

    private static SizeLimits limits(CheckRow row) {
        return limitsOf(row.text("nominal"), row.text("class"));
    }

    private static SizeLimits graded(CheckRow row, String letter) {
        return limitsOf(row.text("nominal"), letter + row.text("grade").substring(2));
    }

    static SizeLimits limitsOf(String nominal, String typed) {
        boolean hole = Character.isUpperCase(typed.charAt(0));
        LimitsAndFits.Result both =
                FitAnswers.result(LimitsAndFits.SHEET, "nominal", nominal, hole ? "hole" : "shaft", typed);
        return requireNonNull(hole ? both.hole() : both.shaft());
    }

    /** From classes, in mm. */
    static double pair(CheckRow row, boolean tightest) {
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
