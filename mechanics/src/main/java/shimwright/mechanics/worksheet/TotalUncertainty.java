package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;

/**
 * One uncertainty for each number: what a sheet sums itself and what comes from inputs typed with ± are independent and put
 * together by squares (JCGM 100:2008 5.1.2), in the result as well as behind its ±.
 *
 * @param result with the whole uncertainty in the components that hold it
 * @param budgets by output path, the sheet's own part among them
 */
record TotalUncertainty<R extends Record>(R result, Map<String, Budget> budgets) {
    /** What the sheet's own part is called in a budget. */
    static final String OWN = "summed by the sheet";

    /**
     * Puts together.
     *
     * @param sheet the worksheet
     * @param result as computed
     * @param fromInputs by output path
     * @param within output whose own uncertainty holds that of the inputs already; may be empty
     */
    static <R extends Record> TotalUncertainty<R> of(
            Worksheet<?, R> sheet, R result, Map<String, Budget> fromInputs, String within) {
        R total = result;
        Map<String, Budget> budgets = new LinkedHashMap<>(fromInputs);
        for (Map.Entry<String, Budget> entry : fromInputs.entrySet()) {
            String path = entry.getKey();
            Budget typed = entry.getValue();
            SheetField.UncertaintyPlace place = Fields.at(sheet.outputs(), path).uncertainty();
            if (place.u().isEmpty() || typed.u() == 0) {
                continue;
            }
            String beside = path.substring(0, path.length() - lastName(path).length());
            double own = Records.number(result, beside + place.u());
            if (path.equals(within)) {
                own = Math.sqrt(Math.max(0, own * own - typed.u() * typed.u()));
            }
            double nu = place.nu().isEmpty() ? Double.POSITIVE_INFINITY : Records.number(result, beside + place.nu());
            List<Contribution> parts = new ArrayList<>(typed.contributions());
            parts.add(Contribution.of(OWN, own, nu));
            Budget together = Budget.of(parts);
            budgets.put(path, together);
            total = Records.with(total, beside + place.u(), together.u(), sheet.resultType());
            if (!place.nu().isEmpty()) {
                total = Records.with(total, beside + place.nu(), together.nu(), sheet.resultType());
            }
            if (!place.budget().isEmpty()) {
                Budget listed = (Budget) Records.at(result, beside + place.budget());
                List<Contribution> all = new ArrayList<>(listed.contributions());
                all.addAll(typed.contributions());
                total = Records.with(total, beside + place.budget(), Budget.of(all), sheet.resultType());
            }
        }
        return new TotalUncertainty<>(total, budgets);
    }

    private static String lastName(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
