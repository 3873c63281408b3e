package shimwright.bench.picture.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shimwright.bench.picture.plot.Plots.Pack;
import shimwright.bench.picture.plot.Plots.Packs;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.Kind;

/** One row a pack: its name, its clearance with the bar of uncertainty, and a note. Below, the drawer as sticks. */
final class PacksPlot {
    private static final double ROW = 30;
    private static final double NARROW = 560;
    private static final double STICK = 34;

    private final Packs packs;
    private final Page page;
    private final boolean narrow;
    private final Svg svg = new Svg();
    private final double row;
    private final double left;
    private final double right;
    private final double top = PlotLayout.TITLE + 30;
    private final double bottom;
    private final Axis axis;

    PacksPlot(Packs packs, Page page) {
        this.packs = packs;
        this.page = page;
        narrow = page.width() < NARROW;
        row = narrow ? ROW + 16 : ROW;
        double names = widest(packs.packs().stream().map(Pack::name).toList());
        double notes = widest(packs.packs().stream().map(Pack::note).toList());
        left = narrow ? PlotLayout.MARGIN + 4 : PlotLayout.MARGIN + Math.min(names, 0.34 * page.width()) + 14;
        right = page.width() - PlotLayout.MARGIN - 26 - (narrow ? 0 : Math.max(notes - 12, 0));
        bottom = top + row * packs.packs().size() + 4;
        List<Double> values = new ArrayList<>();
        packs.packs().forEach(p -> {
            values.add(p.value() - p.expanded());
            values.add(p.value() + p.expanded());
        });
        double[] span = PlotLayout.span(values, packs.lower(), packs.upper(), packs.aim());
        axis = Axis.over(span, Kind.LENGTH, page.units(), left, right, narrow ? 4 : 6);
    }

    private static double widest(List<String> texts) {
        return texts.stream()
                .mapToDouble(t -> TextMetrics.width(t, DrawingStyle.SMALL, true))
                .max()
                .orElse(0);
    }

    String draw() {
        double drawerTop = bottom + 46;
        double height = packs.drawer().isEmpty() ? bottom + 30 : drawerTop + STICK + 34;
        svg.root(page.idPrefix(), page.width(), height, packs.title(), about());
        PlotLayout.title(svg, packs.title(), page.width());
        axis.lying(svg, bottom, bottom);
        limits();
        double y = top + row / 2;
        for (Pack pack : packs.packs()) {
            pack(pack, y);
            y += row;
        }
        if (!packs.drawer().isEmpty()) {
            drawer(drawerTop);
        }
        return svg.done();
    }

    private String about() {
        return packs.packs().stream()
                .filter(Pack::chosen)
                .findFirst()
                .map(p -> "Chosen: " + p.name() + ", gives " + print(p.value()) + ".")
                .orElse(packs.packs().size() + " packs on offer, none chosen.");
    }

    /** The stretch between the limits; on a narrow page only beside the bars, so that no line runs through a name. */
    private void limits() {
        double from = packs.lower().isPresent() ? axis.at(packs.lower().getAsDouble()) : left;
        double to = packs.upper().isPresent() ? axis.at(packs.upper().getAsDouble()) : right;
        for (int i = 0; i < packs.packs().size(); i++) {
            double y = narrow ? top + row * i + row / 2 - 3 : top + row * i;
            double high = narrow ? row / 2 + 3 : row;
            svg.rect(from, y, Math.max(to - from, 0), high, DrawingStyle.STEEL, new Stroke(DrawingStyle.INK, 0));
            for (OptionalDouble limit : List.of(packs.lower(), packs.upper())) {
                limit.ifPresent(l -> svg.line(axis.at(l), y, axis.at(l), y + high, PlotLayout.LIMIT));
            }
            packs.aim()
                    .ifPresent(a ->
                            svg.line(axis.at(a), y, axis.at(a), y + high, new Stroke(DrawingStyle.GREY, 1, "2 3")));
        }
        PlotLayout.limits(
                svg,
                packs.lower().isPresent() ? "least " + print(packs.lower().getAsDouble()) : "",
                from,
                packs.upper().isPresent() ? "most " + print(packs.upper().getAsDouble()) : "",
                to,
                top - 8,
                page.width());
    }

    private String print(double si) {
        return PlotLayout.print(si, Kind.LENGTH, page.units());
    }

    private void pack(Pack pack, double y) {
        String colour = pack.chosen() ? DrawingStyle.BLUE : DrawingStyle.INK;
        Stroke bar = new Stroke(colour, pack.chosen() ? 2.6 : 1.4);
        Letter letter = Letter.start(DrawingStyle.SMALL).in(colour);
        Letter name = pack.chosen() ? letter.strong() : letter;
        double line = narrow ? y + 9 : y;
        double room = narrow
                ? page.width() - 3 * PlotLayout.MARGIN - TextMetrics.width(pack.note(), DrawingStyle.SMALL, true)
                : left - PlotLayout.MARGIN - 10;
        double x = axis.at(pack.value());
        double from = axis.within(pack.value() - pack.expanded());
        double to = axis.within(pack.value() + pack.expanded());
        svg.line(from, line, to, line, bar);
        svg.line(from, line - 5, from, line + 5, bar);
        svg.line(to, line - 5, to, line + 5, bar);
        svg.circle(
                x,
                line,
                pack.chosen() ? 5 : 4,
                pack.chosen() ? DrawingStyle.BLUE : DrawingStyle.SECTION,
                new Stroke(colour, 1.5));
        if (pack.chosen()) {
            svg.circle(x, line, 9.5, "", new Stroke(DrawingStyle.BLUE, 1.6));
        }
        double text = narrow ? y - 8 : y + 4.2;
        String shown = TextMetrics.fit(pack.name(), DrawingStyle.SMALL, pack.chosen(), room);
        svg.text(PlotLayout.MARGIN, text, shown, name);
        if (!pack.note().isEmpty()) {
            double noteWidth = TextMetrics.width(pack.note(), DrawingStyle.SMALL, pack.chosen());
            svg.text(narrow ? page.width() - PlotLayout.MARGIN - noteWidth : right + 12, text, pack.note(), name);
        }
    }

    /** Every thickness in the drawer as a stick; those of the chosen pack are thick, blue and topped by a disc. */
    private void drawer(double y) {
        double base = y + STICK;
        Axis sizes = Axis.over(
                PlotLayout.span(packs.drawer()),
                Kind.LENGTH,
                page.units(),
                PlotLayout.MARGIN + 8,
                page.width() - PlotLayout.MARGIN - 26,
                narrow ? 4 : 8);
        svg.text(
                PlotLayout.MARGIN,
                y - 2,
                "In the drawer, by measured thickness",
                Letter.start(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
        sizes.lying(svg, base, base);
        List<Double> taken = new ArrayList<>(packs.taken());
        for (double thickness : packs.drawer()) {
            boolean chosen = taken.remove(thickness);
            double x = sizes.at(thickness);
            svg.line(
                    x,
                    base - (chosen ? 22 : 14),
                    x,
                    base,
                    new Stroke(chosen ? DrawingStyle.BLUE : DrawingStyle.INK, chosen ? 3 : 1.6));
            if (chosen) {
                svg.circle(x, base - 22, 4, DrawingStyle.BLUE, new Stroke(DrawingStyle.SECTION, 0.8));
            }
        }
    }
}
