package shimwright.bench.picture.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.plot.Plots.Places;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.UnitSystem.Display;

/** Readings round a ring: place 1 on top, clockwise; the farther out, the larger. */
final class PolarPlot {
    private static final double LARGEST = 118;
    private static final double HOLE = 38;
    private static final double NOTE = 18;
    /** With more places, or a smaller ring, the readings are listed instead of standing round the ring. */
    private static final int MOST_FIGURES = 8;

    private static final double LEAST = 70;
    private static final double LEAST_NOTE = 170;
    private static final double LETTERS = 34;

    private final Places places;
    private final Page page;
    private final Svg svg = new Svg();
    private final boolean listed;
    private final double ring;
    private final double x;
    private final double y;
    private final Axis axis;

    PolarPlot(Places places, Page page) {
        this.places = places;
        this.page = page;
        double figures = widest();
        listed = places.values().size() > MOST_FIGURES || page.width() / 2 - figures - 4 < LEAST;
        double room = listed ? 2 * LETTERS : figures + 4;
        ring = Math.min(LARGEST, page.width() / 2 - room);
        x = Math.min(page.width() / 2, ring + room);
        y = PlotLayout.TITLE + LETTERS + ring + 4;
        double[] span = PlotLayout.span(places.values(), places.lower(), places.upper());
        axis = Axis.over(span, places.kind(), page.units(), HOLE, ring, 3);
    }

    /** Width of the widest place and reading. */
    private double widest() {
        return places.values().stream()
                .mapToDouble(v -> TextMetrics.width("88: " + reading(v), DrawingStyle.SMALL, true))
                .max()
                .orElse(0);
    }

    private String reading(double si) {
        return print(si).replace(" " + symbol(), "");
    }

    private double besideX() {
        return x + ring + LETTERS + (listed ? 0 : widest());
    }

    private boolean beside() {
        return page.width() - besideX() >= LEAST_NOTE;
    }

    String draw() {
        double noteX = beside() ? besideX() : PlotLayout.MARGIN;
        List<String> lines = new ArrayList<>();
        notes().forEach(n ->
                lines.addAll(TextMetrics.wrap(n, DrawingStyle.SMALL, false, page.width() - noteX - PlotLayout.MARGIN)));
        double notes = beside() ? 0 : NOTE * lines.size() + 8;
        double height = y + ring + LETTERS + notes + 4;
        svg.root(page.idPrefix(), page.width(), height, places.title(), about());
        PlotLayout.title(svg, places.title(), page.width());
        limits();
        line();
        svg.text(
                x,
                y - 2,
                print(places.mean()).replace(" " + symbol(), ""),
                Letter.middle(DrawingStyle.TEXT).strong().in(DrawingStyle.BLUE));
        svg.text(
                x,
                y + 13,
                "mean, " + symbol(),
                Letter.middle(DrawingStyle.SMALL).in(DrawingStyle.BLUE));
        double noteY = beside() ? y - NOTE / 2 * (lines.size() - 1) : y + ring + LETTERS + 18;
        for (String note : lines) {
            svg.text(noteX, noteY, note, Letter.start(DrawingStyle.SMALL));
            noteY += NOTE;
        }
        return svg.done();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (places.lower().isPresent() && places.upper().isPresent()) {
            notes.add("Between the two heavy rings: " + whole(places.lower().getAsDouble()) + " to "
                    + whole(places.upper().getAsDouble()));
        }
        double least =
                places.values().stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most =
                places.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        notes.add("Largest minus smallest: " + whole(most - least));
        if (listed) {
            notes.add(IntStream.range(0, places.values().size())
                    .mapToObj(i -> (i + 1) + ": " + reading(places.values().get(i)))
                    .collect(Collectors.joining("; ")));
        }
        if (places.outlier().isPresent()) {
            notes.add("Place " + (places.outlier().getAsInt() + 1) + ": " + places.said());
        }
        return notes;
    }

    /** A value that is not broken from its unit. */
    private String whole(double si) {
        return print(si).replace(' ', '\u00a0');
    }

    private String about() {
        return places.values().size() + " places, mean " + print(places.mean()) + ". " + String.join(". ", notes())
                + ".";
    }

    private String print(double si) {
        return PlotLayout.print(si, places.kind(), page.units());
    }

    private String symbol() {
        return display().unit().symbol();
    }

    private Display display() {
        return page.units().display(places.kind());
    }

    private void limits() {
        for (double tick : axis.ticks()) {
            svg.circle(x, y, axis.at(tick), "", new Stroke(DrawingStyle.FAINT, 0.6));
        }
        for (OptionalDouble limit : List.of(places.lower(), places.upper())) {
            limit.ifPresent(l -> svg.circle(x, y, axis.at(l), "", PlotLayout.LIMIT));
        }
        double r = axis.at(places.mean());
        svg.circle(x, y, r, "", new Stroke(DrawingStyle.BLUE, 1, "6 3"));
    }

    private double[] at(int place, double radius) {
        double angle = 2 * Math.PI * place / places.values().size();
        return new double[] {x + radius * Math.sin(angle), y - radius * Math.cos(angle)};
    }

    private void line() {
        StringBuilder d = new StringBuilder();
        int count = places.values().size();
        for (int i = 0; i < count; i++) {
            double[] p = at(i, axis.at(places.values().get(i)));
            d.append(i == 0 ? 'M' : 'L').append(Svg.p(p[0], p[1]));
            double[] spoke = at(i, ring + 3);
            svg.line(
                    x + (spoke[0] - x) * HOLE / ring,
                    y + (spoke[1] - y) * HOLE / ring,
                    spoke[0],
                    spoke[1],
                    new Stroke(DrawingStyle.FAINT, 0.6));
        }
        svg.path(count > 0 ? d + "Z" : "", "", new Stroke(DrawingStyle.GREY, 1));
        for (int i = 0; i < count; i++) {
            double[] p = at(i, axis.at(places.values().get(i)));
            svg.circle(p[0], p[1], 4.2, DrawingStyle.INK, new Stroke(DrawingStyle.SECTION, 0.8));
            boolean outlier = places.outlier().isPresent() && places.outlier().getAsInt() == i;
            if (outlier) {
                svg.circle(p[0], p[1], 10, "", new Stroke(DrawingStyle.BLUE, 1.8));
            }
            figure(i, outlier);
        }
    }

    /** The place's number and reading outside the ring. */
    private void figure(int place, boolean outlier) {
        double[] p = at(place, ring + 16);
        String text =
                (place + 1) + (listed ? "" : ": " + reading(places.values().get(place)));
        double lean = (p[0] - x) / (ring + 16);
        String anchor = Math.abs(lean) < 0.3 ? "middle" : lean > 0 ? "start" : "end";
        Letter letter = new Letter(DrawingStyle.SMALL, anchor, outlier, outlier ? DrawingStyle.BLUE : DrawingStyle.INK);
        svg.text(p[0], p[1] + 4.2 + (Math.abs(lean) < 0.3 ? (p[1] < y ? -2 : 4) : 0), text, letter);
    }
}
