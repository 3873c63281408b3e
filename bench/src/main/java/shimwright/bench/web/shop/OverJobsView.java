package shimwright.bench.web.shop;

import java.util.ArrayList;
import java.util.List;
import shimwright.bench.picture.plot.Plots;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.chart.Individuals;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.learn.Figure;
import shimwright.rebuild.learn.FigureRow;

/**
 * Readings over the jobs as their page words them.
 *
 * @param rows one a number that the jobs have
 * @param boxes jobs of which there is any
 */
public record OverJobsView(List<Row> rows, long boxes) {
    /** So wide that letters keep their size on a phone. */
    private static final double WIDTH = 350;

    /**
     * One number over the jobs.
     *
     * @param last its latest value in words
     * @param says one sentence: what the chart says, or why there is none
     * @param stands true where a job stands out
     * @param open true where it is to be seen at once
     */
    public record Row(
            FigureRow trend,
            String last,
            String says,
            boolean stands,
            boolean open,
            List<String> plots,
            List<String> cautions,
            List<Line> working) {}

    /** @param asked the clearance or check that was asked for; empty for all */
    static OverJobsView of(List<FigureRow> trends, String asked, Show show) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < trends.size(); i++) {
            rows.add(row(trends.get(i), "trend-" + i, !asked.isEmpty(), show));
        }
        long boxes = trends.stream()
                .flatMap(trend -> trend.figures().stream())
                .map(Figure::job)
                .distinct()
                .count();
        return new OverJobsView(List.copyOf(rows), boxes);
    }

    private static Row row(FigureRow trend, String id, boolean open, Show show) {
        Figure last = trend.figures().get(trend.figures().size() - 1);
        String value = show.value(last.value(), last.kind());
        if (!(trend.chart() instanceof Outcome.Ok<Worked<Individuals.Result>> ok)) {
            return new Row(
                    trend, value, why(trend.chart().refusals().get(0)), false, open, List.of(), List.of(), List.of());
        }
        Individuals.Result result = ok.value().result();
        boolean stands = !result.signals().isEmpty();
        return new Row(
                trend,
                value,
                says(trend, result, show),
                stands,
                open || stands,
                plots(trend, id, show),
                ok.value().cautions(),
                ok.value().working());
    }

    private static String why(Refusal refusal) {
        return refusal.fact() + ". " + refusal.hint() + ".";
    }

    private static String says(FigureRow trend, Individuals.Result result, Show show) {
        String next = "By these " + trend.figures().size() + " jobs the next comes to between "
                + show.value(result.nextLow(), trend.kind()) + " and " + show.value(result.nextHigh(), trend.kind())
                + " in 19 of 20.";
        if (result.signals().isEmpty()) {
            return "No job stands out. " + next;
        }
        Individuals.Result.Signal first = result.signals().get(0);
        return trend.figures().get(first.job() - 1).job() + " stands out (" + first.why()
                + "). What was different: gauge, hands, parts, temperature? " + next;
    }

    private static List<String> plots(FigureRow trend, String id, Show show) {
        List<String> plots = new ArrayList<>();
        for (Diagram diagram : trend.drawn()) {
            if (diagram instanceof Diagram.Graph graph) {
                plots.add(Plots.graph(graph, new Plots.Page(id + "-" + plots.size(), WIDTH, show.system())));
            }
        }
        return plots;
    }
}
