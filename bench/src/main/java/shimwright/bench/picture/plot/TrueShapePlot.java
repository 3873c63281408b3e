package shimwright.bench.picture.plot;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.List;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Disc;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;

/** Outlines and circles of a worksheet in their true shape, without axes. */
final class TrueShapePlot {
    private static final double TALLEST = 0.62;
    private static final double WORDS = 8;

    private final Graph graph;
    private final Page page;
    private final Svg svg = new Svg();
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;
    private double scale;

    TrueShapePlot(Graph graph, Page page) {
        this.graph = graph;
        this.page = page;
    }

    String draw() {
        graph.parts().forEach(this::reach);
        double room = page.width() - 2 * PlotLayout.MARGIN - 4;
        scale = Math.min(room / Math.max(right - left, 1e-12), TALLEST * page.width() / Math.max(high - low, 1e-12));
        double height = PlotLayout.TITLE + 12 + scale * (high - low) + PlotLayout.MARGIN;
        svg.root(page.idPrefix(), page.width(), height, graph.title(), about());
        PlotLayout.title(svg, graph.title(), page.width());
        graph.parts().forEach(this::part);
        return svg.done();
    }

    private String about() {
        StringBuilder words = new StringBuilder(graph.title());
        graph.parts().stream()
                .map(Part::name)
                .filter(name -> !name.isEmpty())
                .forEach(name -> words.append("; ").append(name));
        return words.append('.').toString();
    }

    private void reach(Part part) {
        if (part instanceof Curve curve) {
            curve.points().forEach(p -> reach(p.x(), p.y(), 0));
        } else if (part instanceof Diagram.Area area) {
            area.points().forEach(p -> reach(p.x(), p.y(), 0));
        } else if (part instanceof Disc disc) {
            reach(disc.x(), disc.y(), disc.radius());
        } else if (part instanceof Dot dot) {
            reach(dot.x(), dot.y(), 0);
        }
    }

    private void reach(double x, double y, double r) {
        left = Math.min(left, x - r);
        right = Math.max(right, x + r);
        low = Math.min(low, y - r);
        high = Math.max(high, y + r);
    }

    private double x(double si) {
        return page.width() / 2 + scale * (si - (left + right) / 2);
    }

    private double y(double si) {
        return PlotLayout.TITLE + 12 + scale * (high - si);
    }

    private void part(Part part) {
        if (part instanceof Curve curve) {
            svg.path(Svg.data(path(curve.points(), false)), "", GraphPlot.stroke(curve.look()));
        } else if (part instanceof Diagram.Area area) {
            Path2D shape = path(area.points(), true);
            svg.path(Svg.data(shape), DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 0));
            svg.path(Hatching.lines(new Area(shape), 45, 6), "", new Stroke(DrawingStyle.INK, 0.55));
            svg.path(Svg.data(shape), "", GraphPlot.stroke(area.look()));
        } else if (part instanceof Disc disc) {
            disc(disc);
        } else if (part instanceof Dot dot) {
            svg.circle(x(dot.x()), y(dot.y()), 4, DrawingStyle.INK, new Stroke(DrawingStyle.SECTION, 1));
            svg.text(
                    x(dot.x()) + WORDS,
                    y(dot.y()) + 16,
                    dot.name(),
                    Letter.start(DrawingStyle.SMALL).strong());
        }
    }

    private Path2D path(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < points.size(); i++) {
            if (i == 0) {
                path.moveTo(x(points.get(i).x()), y(points.get(i).y()));
            } else {
                path.lineTo(x(points.get(i).x()), y(points.get(i).y()));
            }
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private void disc(Disc disc) {
        boolean main = disc.look() == Look.MAIN;
        svg.circle(
                x(disc.x()),
                y(disc.y()),
                scale * disc.radius(),
                main ? DrawingStyle.BLUE_WASH : DrawingStyle.SECTION,
                GraphPlot.stroke(disc.look()));
        svg.text(
                x(disc.x()),
                y(disc.y()) + 5,
                disc.name(),
                Letter.middle(DrawingStyle.HEAD).strong().in(main ? DrawingStyle.BLUE : DrawingStyle.INK));
    }
}
