package shimwright.bench.picture.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;

/** The loop of a clearance as a chain of arrows below a section, one row a length, closed by the clearance itself. */
final class DimensionChain {
    static final double ROW = 23;
    private static final double HEAD = 8;
    private static final double STUB = 16;
    private static final double NUMBER = 23;
    private static final double NARROW = 520;
    private static final double LIFT = 14;
    private static final double LINE = 16;
    private static final char NO_BREAK = '\u00a0';
    private static final Stroke EDGE = new Stroke(DrawingStyle.INK, 1.5);
    private static final Stroke LINK = new Stroke(DrawingStyle.GREY, 0.8, "1.5 2.5");

    private final Svg svg;
    private final SectionPlane panel;
    private final double left;
    private final double right;
    private final UnitSystem units;

    DimensionChain(Svg svg, SectionPlane panel, double left, double right, UnitSystem units) {
        this.svg = svg;
        this.panel = panel;
        this.left = left;
        this.right = right;
        this.units = units;
    }

    /** Height of the chain. */
    double height(Clearance clearance, LoopLayout loop) {
        if (clearance.loop().isEmpty()) {
            return 0;
        }
        double rows = loop.arrows().stream().mapToDouble(this::row).sum();
        return rows + ROW * 2 + (gapLines(clearance, loop).size() - 1) * LINE + 6;
    }

    private boolean narrow() {
        return right - left < NARROW;
    }

    /** Words that do not fit beside their arrow stand above it, in as many lines as they need. */
    private double row(LoopLayout.Arrow arrow) {
        return stacked(arrow) ? 1.7 * ROW + (lines(arrow).size() - 1) * LINE : ROW;
    }

    private boolean stacked(LoopLayout.Arrow arrow) {
        return narrow() || wanted(arrow) > Math.max(inside(arrow), Math.max(rightRoom(arrow), leftRoom(arrow)));
    }

    /** A line of words of the chain with its room on the sheet. */
    private record Words(String text, double from, double to, double y) {
        boolean meets(double x, double above, double below) {
            return x > from - 3 && x < to + 3 && y > above && y < below;
        }
    }

    /** Draws the chain with its first row below the given sheet height. */
    void draw(Clearance clearance, LoopLayout loop, double top) {
        List<LoopLayout.Arrow> arrows = loop.arrows();
        List<Double> heights = new ArrayList<>();
        List<List<Words>> words = new ArrayList<>();
        double y = top - ROW / 2;
        for (LoopLayout.Arrow arrow : arrows) {
            y += row(arrow);
            heights.add(y);
            words.add(stacked(arrow) ? above(arrow, y - LIFT) : List.of(beside(arrow, y)));
        }
        double gapRow = y + ROW;
        List<Words> all = words.stream().flatMap(List::stream).toList();
        link(x(loop.from()), top - 4, gapRow, all);
        for (int i = 0; i < arrows.size(); i++) {
            LoopLayout.Arrow arrow = arrows.get(i);
            if (i > 0) {
                link(x(arrow.from()), heights.get(i - 1), heights.get(i), all);
            }
            arrow(arrow, heights.get(i), words.get(i).get(0));
            label(i + 1, words.get(i));
        }
        link(x(loop.to()), y, gapRow, all);
        gap(clearance, loop, gapRow);
    }

    /** A dotted line down the sheet, left out where it would run through a text. */
    private void link(double x, double from, double to, List<Words> words) {
        double y = from;
        for (Words w : words) {
            if (w.meets(x, from, to)) {
                svg.line(x, y, x, w.y() - 8, LINK);
                y = w.y() + 8;
            }
        }
        svg.line(x, y, x, to, LINK);
    }

    private double x(double u) {
        return Math.max(left + 4, Math.min(right - 4, panel.x(u)));
    }

    private boolean cut(double u) {
        return panel.x(u) < left + 4 || panel.x(u) > right - 4;
    }

    private void arrow(LoopLayout.Arrow arrow, double y, Words words) {
        double from = x(arrow.from());
        double to = x(arrow.to());
        double way = Math.signum(arrow.to() - arrow.from());
        boolean small = Math.abs(to - from) < HEAD + 3;
        double tail = small ? from - way * STUB : from;
        double low = Math.min(tail, to);
        double high = Math.max(tail, to);
        if (words.y() == y && words.from() > low && words.to() < high) {
            svg.line(low, y, words.from() - 5, y, EDGE);
            svg.line(words.to() + 5, y, high, y, EDGE);
        } else {
            svg.line(low, y, high, y, EDGE);
        }
        end(arrow.from(), from + way * 5, y);
        end(arrow.to(), to - way * 5, y);
        if (!cut(arrow.to())) {
            head(small ? from : to, y, way, arrow.opens());
        }
    }

    /** A tick where the length ends, or a break mark where it runs off the sheet. */
    private void end(double u, double breakAt, double y) {
        if (cut(u)) {
            String d = "M" + Svg.p(breakAt - 3, y + 5) + "L" + Svg.p(breakAt, y - 5) + "M" + Svg.p(breakAt + 1, y + 5)
                    + "L" + Svg.p(breakAt + 4, y - 5);
            svg.path(d, "", EDGE);
        } else {
            svg.line(x(u), y - 5, x(u), y + 5, new Stroke(DrawingStyle.INK, 1));
        }
    }

    private void head(double x, double y, double way, boolean full) {
        double back = x - way * HEAD;
        String d = "M" + Svg.p(x, y) + "L" + Svg.p(back, y - 3.4) + "L" + Svg.p(back, y + 3.4) + "Z";
        svg.path(d, full ? DrawingStyle.INK : DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 1.1));
    }

    /** Words above their arrow, the last line nearest to it. */
    private List<Words> above(LoopLayout.Arrow arrow, double y) {
        List<String> lines = lines(arrow);
        double wide =
                NUMBER + lines.stream().mapToDouble(DimensionChain::width).max().orElse(0);
        double from = Math.max(left, Math.min(low(arrow), right - wide));
        List<Words> words = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double to = from + NUMBER + width(lines.get(i));
            words.add(new Words(lines.get(i), from, to, y - (lines.size() - 1 - i) * LINE));
        }
        return words;
    }

    /** Words beside their arrow where there is room, else in a break of its line. */
    private Words beside(LoopLayout.Arrow arrow, double y) {
        double wanted = wanted(arrow);
        double from;
        if (wanted <= rightRoom(arrow)) {
            from = high(arrow) + pad(arrow);
        } else if (wanted <= leftRoom(arrow)) {
            from = low(arrow) - pad(arrow) - wanted;
        } else {
            from = (low(arrow) + high(arrow) - wanted) / 2;
        }
        return new Words(text(arrow), from, from + wanted, y);
    }

    private double low(LoopLayout.Arrow arrow) {
        return Math.min(x(arrow.from()), x(arrow.to()));
    }

    private double high(LoopLayout.Arrow arrow) {
        return Math.max(x(arrow.from()), x(arrow.to()));
    }

    private double pad(LoopLayout.Arrow arrow) {
        return high(arrow) - low(arrow) < HEAD + 3 ? STUB + 8 : 9;
    }

    private double rightRoom(LoopLayout.Arrow arrow) {
        return right - high(arrow) - pad(arrow);
    }

    private double leftRoom(LoopLayout.Arrow arrow) {
        return low(arrow) - pad(arrow) - left;
    }

    private double inside(LoopLayout.Arrow arrow) {
        return high(arrow) - low(arrow) - 4 * HEAD;
    }

    private double wanted(LoopLayout.Arrow arrow) {
        return NUMBER + width(text(arrow));
    }

    private static double width(String text) {
        return TextMetrics.width(text, DrawingStyle.SMALL, false);
    }

    /** A length's name and figure; the figure is never broken from its sign and unit. */
    private String text(LoopLayout.Arrow arrow) {
        return arrow.length().name() + " " + figure(arrow);
    }

    private String figure(LoopLayout.Arrow arrow) {
        String figure = (arrow.opens() ? "+ " : "− ") + length(arrow.length().nominal());
        return figure.replace(' ', NO_BREAK);
    }

    private List<String> lines(LoopLayout.Arrow arrow) {
        return TextMetrics.wrap(text(arrow), DrawingStyle.SMALL, false, right - left - NUMBER);
    }

    /** As it is written: the spaces at which no line may end are spaces again. */
    private static String spaced(String text) {
        return text.replace(NO_BREAK, ' ');
    }

    private void label(int number, List<Words> lines) {
        double x = lines.get(0).from() + 9;
        svg.circle(x, lines.get(0).y(), 8.5, "", new Stroke(DrawingStyle.INK, 1));
        svg.text(x, lines.get(0).y() + 4.2, Integer.toString(number), Letter.middle(DrawingStyle.SMALL));
        for (Words line : lines) {
            svg.text(line.from() + NUMBER, line.y() + 4.2, spaced(line.text()), Letter.start(DrawingStyle.SMALL));
        }
    }

    private void gap(Clearance clearance, LoopLayout loop, double y) {
        double a = x(Math.min(loop.from(), loop.to()));
        double b = x(Math.max(loop.from(), loop.to()));
        Stroke bold = new Stroke(DrawingStyle.BLUE, 2.2);
        boolean wide = b - a > 2 * HEAD + 6;
        if (wide) {
            svg.line(a, y, b, y, bold);
            accentHead(a, y, -1);
            accentHead(b, y, 1);
        } else {
            svg.line(a - STUB - HEAD, y, a - 1, y, bold);
            svg.line(b + 1, y, b + STUB + HEAD, y, bold);
            accentHead(a - 1, y, 1);
            accentHead(b + 1, y, -1);
        }
        svg.line(a - (wide ? 0 : 0.6), y - 7, a - (wide ? 0 : 0.6), y + 7, new Stroke(DrawingStyle.BLUE, 1.2));
        svg.line(b + (wide ? 0 : 0.6), y - 7, b + (wide ? 0 : 0.6), y + 7, new Stroke(DrawingStyle.BLUE, 1.2));
        gapLabel(clearance, loop, y);
    }

    private void accentHead(double x, double y, double way) {
        double back = x - way * (HEAD + 1);
        svg.path(
                "M" + Svg.p(x, y) + "L" + Svg.p(back, y - 4) + "L" + Svg.p(back, y + 4) + "Z",
                DrawingStyle.BLUE,
                new Stroke(DrawingStyle.BLUE, 0.5));
    }

    /** The clearance in words: beside its arrows where there is room, else below them in as many lines as it needs. */
    private void gapLabel(Clearance clearance, LoopLayout loop, double y) {
        Letter bold = Letter.start(DrawingStyle.TEXT).strong().in(DrawingStyle.BLUE);
        List<String> lines = gapLines(clearance, loop);
        double width = TextMetrics.width(lines.get(0), DrawingStyle.TEXT, true);
        if (lines.size() == 1 && after(loop) + width <= right) {
            svg.text(after(loop), y + 4.5, spaced(lines.get(0)), bold);
        } else if (lines.size() == 1 && before(loop) - width >= left) {
            svg.text(before(loop) - width, y + 4.5, spaced(lines.get(0)), bold);
        } else {
            for (int i = 0; i < lines.size(); i++) {
                svg.text(left, y + ROW + i * LINE, spaced(lines.get(i)), bold);
            }
        }
    }

    private List<String> gapLines(Clearance clearance, LoopLayout loop) {
        String one = clearance.name() + ": " + limits(clearance).replace(' ', NO_BREAK);
        double width = TextMetrics.width(one, DrawingStyle.TEXT, true);
        return after(loop) + width <= right || before(loop) - width >= left
                ? List.of(one)
                : TextMetrics.wrap(one, DrawingStyle.TEXT, true, right - left);
    }

    private double end(LoopLayout loop) {
        boolean wide = x(Math.max(loop.from(), loop.to())) - x(Math.min(loop.from(), loop.to())) > 2 * HEAD + 6;
        return wide ? 8 : STUB + HEAD + 8;
    }

    private double before(LoopLayout loop) {
        return x(Math.min(loop.from(), loop.to())) - end(loop);
    }

    private double after(LoopLayout loop) {
        return x(Math.max(loop.from(), loop.to())) + end(loop);
    }

    private String limits(Clearance c) {
        boolean preload = c.sense() == Clearance.Sense.PRELOAD;
        double low = preload ? -c.upper() : c.lower();
        double high = preload ? -c.lower() : c.upper();
        String unit = units.display(Kind.LENGTH).unit().symbol();
        String first = Quantities.print(low, Kind.LENGTH, units).replace(" " + unit, "");
        return String.format(Locale.ROOT, "%s to %s", first, Quantities.print(high, Kind.LENGTH, units));
    }

    /** A nominal length with one decimal less than a reading. */
    private String length(double metres) {
        UnitSystem.Display display = units.display(Kind.LENGTH);
        return Quantities.print(metres, display.unit(), Math.max(0, display.decimals() - 1));
    }
}
