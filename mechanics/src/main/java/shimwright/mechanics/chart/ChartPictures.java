package shimwright.mechanics.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.quantity.Kind;

/** The charts as they hang on the wall: one point a job, limits across, the first jobs that signal marked. */
final class ChartPictures {
    private static final int MOST_MARKED = 6;

    private ChartPictures() {}

    static List<Diagram> individuals(Individuals.Case c, Individuals.Result r, Kind kind) {
        List<Part> parts = new ArrayList<>();
        parts.add(line("values", c.values(), Look.MAIN));
        parts.add(new Rule("center", false, r.center()));
        parts.add(new Rule("upper limit", false, r.upper()));
        parts.add(new Rule("lower limit", false, r.lower()));
        r.signals().stream()
                .mapToInt(Individuals.Result.Signal::job)
                .distinct()
                .limit(MOST_MARKED)
                .forEach(job -> parts.add(mark(job, c.values().get(job - 1))));
        List<Part> ranges = new ArrayList<>();
        List<Double> moving = Series.movingRanges(c.values());
        ranges.add(new Curve(
                "moving ranges",
                IntStream.range(0, moving.size())
                        .mapToObj(i -> new Point(i + 2, moving.get(i)))
                        .toList(),
                Look.MAIN));
        ranges.add(new Rule("mean", false, r.meanRange()));
        ranges.add(new Rule("upper limit", false, r.rangeLimit()));
        return List.of(
                chart("One value a job", "value", kind, parts),
                chart("From each job to the next", "range", kind, ranges));
    }

    static List<Diagram> ewma(Ewma.Case c, Ewma.Result r) {
        List<Double> means = r.points().stream().map(Ewma.Point::mean).toList();
        List<Part> parts = new ArrayList<>();
        parts.add(line("values", c.values(), Look.FAINT));
        parts.add(line("limits", r.points().stream().map(Ewma.Point::upper).toList(), Look.SECOND));
        parts.add(line("", r.points().stream().map(Ewma.Point::lower).toList(), Look.SECOND));
        parts.add(line("weighted mean", means, Look.MAIN));
        parts.add(new Rule("target", false, r.target()));
        if (r.signal() > 0) {
            parts.add(mark(r.signal(), means.get(r.signal() - 1)));
        }
        return List.of(chart("Weighted mean", "value", parts));
    }

    /** The sum downwards is drawn below zero. */
    static List<Diagram> cusum(Cusum.Case c, Cusum.Result r) {
        List<Double> up = r.points().stream().map(Cusum.Point::up).toList();
        List<Double> down =
                r.points().stream().map(Cusum.Point::down).map(sum -> -sum).toList();
        List<Part> parts = new ArrayList<>();
        parts.add(line("sum upwards", up, Look.MAIN));
        parts.add(line("sum downwards", down, Look.SECOND));
        parts.add(new Rule("limit", false, r.limit()));
        parts.add(new Rule("limit", false, -r.limit()));
        if (r.signalUp() > 0) {
            parts.add(mark(r.signalUp(), up.get(r.signalUp() - 1)));
        }
        if (r.signalDown() > 0) {
            parts.add(mark(r.signalDown(), down.get(r.signalDown() - 1)));
        }
        return List.of(chart("Cumulative sums", "sum", parts));
    }

    private static Dot mark(int job, double value) {
        return new Dot("job " + job, job, value);
    }

    private static Curve line(String name, List<Double> values, Look look) {
        List<Point> points = IntStream.range(0, values.size())
                .mapToObj(i -> new Point(i + 1, values.get(i)))
                .toList();
        return new Curve(name, points, look);
    }

    private static Graph chart(String title, String up, List<Part> parts) {
        return chart(title, up, Kind.LENGTH, parts);
    }

    private static Graph chart(String title, String up, Kind kind, List<Part> parts) {
        return new Graph(title, Scale.of("job", Kind.NUMBER), Scale.of(up, kind), false, parts);
    }
}
