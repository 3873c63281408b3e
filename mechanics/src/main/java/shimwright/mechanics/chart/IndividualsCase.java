package shimwright.mechanics.chart;

import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/**
 * One value a job.
 *
 * @param values in the order of the jobs, best as final reading minus prediction, m
 * @param baseline so many first values make the limits; 0 for all
 * @param rules that may signal
 * @param confidence of the prediction for the next value
 */
public record IndividualsCase(
        @Input(
                kind = Kind.LENGTH,
                meaning = "values in the order of the jobs",
                min = -10,
                max = 10,
                fewest = 4,
                example = "0.004 -0.006 0.002 0.011 -0.003 0.000 0.007 -0.009 0.005 0.001 mm")
        List<Double> values,

        @Input(meaning = "first values that make the limits, 0 for all", orElse = "0", min = 0, max = 1000)
        int baseline,

        @Input(
                meaning = "rules that may signal",
                fewest = 0,
                most = 8,
                orElse = "beyond limit; nine on one side; six climbing or falling; two of three beyond two sigma")
        List<Rule> rules,

        @Input(meaning = "confidence of the prediction", orElse = "0.95", min = 0.5, max = 0.999)
        double confidence) {
    public IndividualsCase {
        values = List.copyOf(values);
        rules = List.copyOf(rules);
    }
}
