package shimwright.rebuild.plan.estimate;

import java.time.LocalDate;
import java.util.Map;

/**
 * When a job will be done. By Monte Carlo: the same input and seed give the same forecast.
 *
 * @param early day by which it is done in 10 % of the draws
 * @param middle in 50 %
 * @param late in 90 %
 * @param meanMinutes mean of the minutes at the bench, waiting left out
 * @param sdMinutes their standard deviation
 * @param critical for each task and arrival the share of draws in which it lay on the path that set the last day; of a cure
 *     its task. Those of share 0 are left out; in the order of the plan, arrivals first
 * @param draws how many
 * @param seed of the draws
 */
public record Forecast(
        LocalDate early,
        LocalDate middle,
        LocalDate late,
        double meanMinutes,
        double sdMinutes,
        Map<String, Double> critical,
        int draws,
        long seed) {}
