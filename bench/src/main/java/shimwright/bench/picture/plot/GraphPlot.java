package shimwright.bench.picture.plot;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.diagram.Diagram.Area;
import shimwright.mechanics.diagram.Diagram.Bar;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Disc;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.quantity.UnitSystem;

/** Curves, bars and limits of a worksheet on two axes. */
final class GraphPlot {
    private static final double PLOT = 220;
    private static final double LEFT = 64;
    private static final double ROW = 20;
    private static final double SWATCH = 26;
    private static final double BAR = 0.5;

    private final Graph graph;
    private final UnitSystem units;
    private final double width;
    private final Page page;
    private final Svg svg = new Svg();
    private final List<List<Part>> legend;
    private final double top;
    private final double bottom;
    private final double right;
    private final Axis across;
    private final Axis up;

    GraphPlot(Graph graph, Page page) {
        this.graph = graph;
        this.page = page;
        units = page.units();
        width = page.width();
        legend = legend();
        top = PlotLayout.TITLE + ROW * legend.size() + 34;
        bottom = top + PLOT;
        right = width - PlotLayout.MARGIN - 46;
        int ticks = width < 500 ? 4 : 7;
        across = graph.across().names().isEmpty()
                ? Axis.over(values(true), graph.across().kind(), units, LEFT, right, ticks)
                : row();
        up = Axis.over(values(false), graph.up().kind(), units, bottom, top, 5);
    }

    private Axis row() {
        int count = graph.across().names().size();
        return new Axis(
                0.4,
                count + 0.6,
                LEFT,
                right,
                units.display(graph.across().kind()).unit(),
                1);
    }

    private double[] values(boolean lying) {
        List<Double> values = new ArrayList<>();
        for (Part part : graph.parts()) {
            if (part instanceof Curve curve) {
                curve.points().forEach(p -> values.add(lying ? p.x() : p.y()));
            } else if (part instanceof Area area) {
                area.points().forEach(p -> values.add(lying ? p.x() : p.y()));
            } else if (part instanceof Bar bar && !lying) {
                values.add(bar.from());
                values.add(bar.to());
            } else if (part instanceof Rule rule && rule.upright() == lying) {
                values.add(rule.at());
            } else if (part instanceof Dot dot) {
                values.add(lying ? dot.x() : dot.y());
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    String draw() {
        svg.root(page.idPrefix(), width, bottom + 46, graph.title(), about());
        PlotLayout.title(svg, graph.title(), width);
        key();
        svg.text(
                LEFT - 40,
                top - 22,
                graph.up().label(),
                Letter.start(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
        up.standing(svg, LEFT, right);
        if (graph.across().names().isEmpty()) {
            across.lying(svg, bottom, top);
        } else {
            names();
        }
        String label = graph.across().label();
        svg.text(
                (LEFT + right) / 2,
                bottom + 37,
                label,
                Letter.middle(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
        graph.parts().forEach(this::part);
        return svg.done();
    }

    private void names() {
        List<String> names = graph.across().names();
        double room = (right - LEFT) / names.size() - 6;
        for (int i = 0; i < names.size(); i++) {
            String name = TextMetrics.fit(names.get(i), DrawingStyle.SMALL, false, room);
            svg.text(across.at(i + 1), bottom + 18, name, Letter.middle(DrawingStyle.SMALL));
        }
        svg.line(LEFT, bottom, right, bottom, new Stroke(DrawingStyle.INK, 1));
    }

    private String about() {
        StringBuilder words = new StringBuilder(graph.title()).append('.');
        for (Part part : graph.parts()) {
            if (part instanceof Rule rule) {
                words.append(' ')
                        .append(rule.name())
                        .append(": ")
                        .append(print(rule))
                        .append('.');
            } else if (part instanceof Bar bar) {
                words.append(' ').append(bar.name()).append(": ");
                words.append(up.figure(bar.from(), digits())).append(" to ");
                words.append(up.figure(bar.to(), digits()))
                        .append(' ')
                        .append(up.unit().symbol())
                        .append('.');
            } else if (part instanceof Dot dot && !dot.name().isEmpty()) {
                words.append(' ').append(dot.name()).append(": ");
                words.append(PlotLayout.print(dot.x(), graph.across().kind(), units))
                        .append(", ");
                words.append(PlotLayout.print(dot.y(), graph.up().kind(), units))
                        .append('.');
            }
        }
        return words.toString();
    }

    private int digits() {
        return units.display(graph.up().kind()).decimals();
    }

    private String print(Rule rule) {
        return PlotLayout.print(
                rule.at(), rule.upright() ? graph.across().kind() : graph.up().kind(), units);
    }

    /** Named curves, a few in each row. */
    private List<List<Part>> legend() {
        List<List<Part>> rows = new ArrayList<>();
        List<Part> row = new ArrayList<>();
        double x = 0;
        for (Part part : graph.parts()) {
            if (!(part instanceof Curve) || part.name().isEmpty()) {
                continue;
            }
            if (x > 0 && x + entry(part) > width - 2 * PlotLayout.MARGIN) {
                rows.add(row);
                row = new ArrayList<>();
                x = 0;
            }
            row.add(part);
            x += entry(part);
        }
        if (!row.isEmpty()) {
            rows.add(row);
        }
        return rows;
    }

    private static double entry(Part part) {
        return SWATCH + 6 + TextMetrics.width(part.name(), DrawingStyle.SMALL, false) + 18;
    }

    private void key() {
        double y = PlotLayout.TITLE + ROW / 2;
        for (List<Part> row : legend) {
            double x = PlotLayout.MARGIN;
            for (Part part : row) {
                svg.line(x, y, x + SWATCH, y, stroke(((Curve) part).look()));
                svg.text(x + SWATCH + 6, y + 4.2, part.name(), Letter.start(DrawingStyle.SMALL));
                x += entry(part);
            }
            y += ROW;
        }
    }

    static Stroke stroke(Look look) {
        return switch (look) {
            case MAIN -> new Stroke(DrawingStyle.BLUE, 2.2);
            case SECOND -> new Stroke(DrawingStyle.INK, 1.3);
            case FAINT -> new Stroke(DrawingStyle.GREY, 1, DrawingStyle.COMING_DASH);
        };
    }

    private void part(Part part) {
        if (part instanceof Curve curve) {
            svg.path(line(curve.points()), "", stroke(curve.look()));
        } else if (part instanceof Area area) {
            svg.path(line(area.points()) + "Z", DrawingStyle.STEEL, stroke(area.look()));
        } else if (part instanceof Bar bar) {
            bar(bar);
        } else if (part instanceof Rule rule) {
            rule(rule);
        } else if (part instanceof Dot dot) {
            dot(dot);
        } else if (part instanceof Disc disc) {
            throw new IllegalArgumentException("a circle needs a true-shape drawing: " + disc.name());
        }
    }

    private String line(List<Point> points) {
        StringBuilder d = new StringBuilder();
        for (Point p : points) {
            d.append(d.isEmpty() ? 'M' : 'L').append(Svg.p(across.at(p.x()), up.at(p.y())));
        }
        return d.toString();
    }

    private void bar(Bar bar) {
        double from = across.at(bar.at() - BAR / 2);
        double upper = up.at(Math.max(bar.from(), bar.to()));
        double height = Math.max(1.5, up.at(Math.min(bar.from(), bar.to())) - upper);
        Rectangle2D box = new Rectangle2D.Double(from, upper, across.at(bar.at() + BAR / 2) - from, height);
        boolean main = bar.look() == Look.MAIN;
        svg.path(Svg.data(box), main ? DrawingStyle.BLUE_WASH : DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 0));
        if (!main) {
            svg.path(Hatching.lines(new Path2D.Double(box), 45, 5), "", new Stroke(DrawingStyle.INK, 0.6));
        }
        svg.path(Svg.data(box), "", stroke(main ? Look.MAIN : Look.SECOND));
        double x = across.at(bar.at());
        svg.text(x, upper - 5, up.figure(Math.max(bar.from(), bar.to()), digits()), Letter.middle(DrawingStyle.SMALL));
        if (Math.min(bar.from(), bar.to()) != 0) {
            String low = up.figure(Math.min(bar.from(), bar.to()), digits());
            svg.text(x, upper + height + 14, low, Letter.middle(DrawingStyle.SMALL));
        }
    }

    private void rule(Rule rule) {
        String words = rule.name() + " " + print(rule);
        double wide = TextMetrics.width(words, DrawingStyle.SMALL, false);
        if (rule.upright()) {
            double x = across.at(rule.at());
            svg.line(x, top - 8, x, bottom, PlotLayout.LIMIT);
            double at = Math.max(LEFT + 4, Math.min(x - wide / 2, width - wide - 2));
            svg.text(at, top - 11, words, Letter.start(DrawingStyle.SMALL).strong());
        } else {
            double y = up.at(rule.at());
            svg.line(LEFT, y, right, y, PlotLayout.LIMIT);
            svg.text(LEFT + 6, y - 5, words, Letter.start(DrawingStyle.SMALL));
        }
    }

    /** Whether the first curve goes down to the right: words stand where it is not. */
    private boolean falls() {
        return graph.parts().stream()
                .filter(Curve.class::isInstance)
                .map(part -> ((Curve) part).points())
                .findFirst()
                .map(points -> points.get(points.size() - 1).y() < points.get(0).y())
                .orElse(false);
    }

    private void dot(Dot dot) {
        double x = across.at(dot.x());
        double y = up.at(dot.y());
        svg.circle(x, y, 5, DrawingStyle.BLUE, new Stroke(DrawingStyle.SECTION, 1));
        double wide = TextMetrics.width(dot.name(), DrawingStyle.SMALL, true);
        double at = x + 9 + wide > right ? x - 9 - wide : x + 9;
        svg.text(
                at,
                y + (falls() ? -9 : 16),
                dot.name(),
                Letter.start(DrawingStyle.SMALL).strong().in(DrawingStyle.BLUE));
    }
}
