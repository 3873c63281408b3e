package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.study.GaugeStudy.Case.Round;
import shimwright.mechanics.working.Working;

/** One person, one check part: repeats within days, days within runs. */
record NestedStudy(GaugeStudy.Case c, Working w) {

    /**
     * Pooled standard deviation of groups of like size: √ mean of s².
     *
     * @param groups each of at least two values
     */
    static double pooled(List<List<Double>> groups) {
        return Math.sqrt(Statistics.mean(groups.stream()
                .map(group -> Math.pow(Statistics.deviation(group), 2))
                .toList()));
    }

    private int repeats() {
        return c.rounds().get(0).readings().size();
    }

    GaugeStudy.Result result() {
        Map<String, List<Double>> dayMeans = new LinkedHashMap<>();
        for (Round day : c.rounds()) {
            dayMeans.computeIfAbsent(day.name(), run -> new ArrayList<>()).add(Statistics.mean(day.readings()));
        }
        List<List<Double>> runs = List.copyOf(dayMeans.values());
        double one = w.line(
                "level 1",
                "pooled standard deviation within days",
                pooled(c.rounds().stream().map(Round::readings).toList()),
                Kind.LENGTH,
                GaugeStudy.NESTED);
        double two = w.line(
                "level 2",
                "pooled standard deviation of day means within runs",
                pooled(runs),
                Kind.LENGTH,
                GaugeStudy.NESTED);
        double between = component("days", two, one, repeats());
        Double third = null;
        double ofRuns = 0;
        if (runs.size() > 1) {
            List<Double> means = runs.stream().map(Statistics::mean).toList();
            double three = w.line(
                    "level 3",
                    "standard deviation of run means",
                    Statistics.deviation(means),
                    Kind.LENGTH,
                    GaugeStudy.NESTED);
            ofRuns = component("runs", three, two, runs.get(0).size());
            third = three;
        } else {
            w.caution("One run: what a new set-up months later would add is not in this.");
        }
        double day = w.line(
                "one day's mean", "√(runs² + level 2²)", Math.hypot(ofRuns, two), Kind.LENGTH, GaugeStudy.NESTED);
        Double tolerance = c.tolerance();
        Double share = tolerance == null ? null : c.deviations() * day / tolerance;
        return new GaugeStudy.Result(
                one,
                between,
                third == null ? null : ofRuns,
                day,
                null,
                null,
                null,
                null,
                share,
                null,
                null,
                null,
                null,
                List.of(),
                false,
                levels(one, two, third, runs.size(), runs.get(0).size(), repeats()),
                share == null
                        ? "Take the uncertainty of one day's mean for what this gauge reads on one day."
                        : GaugeStudy.advice(share, "the tolerance"));
    }

    private double component(String name, double level, double below, int count) {
        double variance = level * level - below * below / count;
        if (variance < 0) {
            w.caution("Between " + name + " there is no more than the level below explains: taken as 0.");
        }
        return w.line(
                "between " + name,
                "√(level² − level below²/" + count + ")",
                Math.sqrt(Math.max(0, variance)),
                Kind.LENGTH,
                GaugeStudy.NESTED);
    }

    private static List<GaugeStudy.Result.Row> levels(
            double one, double two, @Nullable Double three, int runs, int days, int repeats) {
        List<GaugeStudy.Result.Row> rows = new ArrayList<>();
        rows.add(row("within days", one, runs * days * (repeats - 1)));
        rows.add(row("day means within runs", two, runs * (days - 1)));
        if (three != null) {
            rows.add(row("run means", three, runs - 1));
        }
        return rows;
    }

    private static GaugeStudy.Result.Row row(String name, double s, int freedom) {
        return new GaugeStudy.Result.Row(name, freedom, s * s * freedom, s * s, null, null);
    }
}
