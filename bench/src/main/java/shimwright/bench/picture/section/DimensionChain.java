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
    private static final double NUMBER = 21;
    private static final double NARROW = 520;
    private static final double LIFT = 14;
    private static final Stroke LINE = new Stroke(DrawingStyle.INK, 1.5);
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

    /** Height of the chain of a clearance on a sheet of this width. */
    static double height(Clearance clearance, double width) {
        return clearance.loop().isEmpty()
                ? 0
                : row(width) * clearance.loop().size() + ROW * 2 + (narrow(width) ? 22 : 6);
    }

    /** On a narrow sheet the words stand above their arrow and need a line of their own. */
    private static double row(double width) {
        return narrow(width) ? 1.7 * ROW : ROW;
    }

    private static boolean narrow(double width) {
        return width < NARROW;
    }

    /** A text of the chain with its room on the sheet. */
    private record Words(String text, double from, double to, double y) {
        boolean meets(double x, double above, double below) {
            return x > from - 3 && x < to + 3 && y > above && y < below;
        }
    }

    /** Draws the chain with its first row below the given sheet height. */
    void draw(Clearance clearance, LoopLayout loop, double top) {
        double row = row(right - left);
        double first = top + row - ROW / 2;
        List<LoopLayout.Arrow> arrows = loop.arrows();
        List<Words> words = new ArrayList<>();
        for (int i = 0; i < arrows.size(); i++) {
            double y = first + i * row;
            words.add(narrow(right - left) ? above(arrows.get(i), y - LIFT) : beside(arrows.get(i), y));
        }
        double last = first + (arrows.size() - 1) * row;
        double gapRow = last + ROW;
        link(x(loop.from()), top - 4, gapRow, words);
        for (int i = 0; i < arrows.size(); i++) {
            LoopLayout.Arrow arrow = arrows.get(i);
            double y = first + i * row;
            if (i > 0) {
                link(x(arrow.from()), y - row, y, words);
            }
            arrow(arrow, y, words.get(i));
            label(i + 1, words.get(i));
        }
        link(x(loop.to()), last, gapRow, words);
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
            svg.line(low, y, words.from() - 5, y, LINE);
            svg.line(words.to() + 5, y, high, y, LINE);
        } else {
            svg.line(low, y, high, y, LINE);
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
            svg.path(d, "", LINE);
        } else {
            svg.line(x(u), y - 5, x(u), y + 5, new Stroke(DrawingStyle.INK, 1));
        }
    }

    private void head(double x, double y, double way, boolean full) {
        double back = x - way * HEAD;
        String d = "M" + Svg.p(x, y) + "L" + Svg.p(back, y - 3.4) + "L" + Svg.p(back, y + 3.4) + "Z";
        svg.path(d, full ? DrawingStyle.INK : DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 1.1));
    }

    /** Words above their arrow. */
    private Words above(LoopLayout.Arrow arrow, double y) {
        Words words = words(arrow, right - left);
        double low = Math.min(x(arrow.from()), x(arrow.to()));
        double from = Math.max(left, Math.min(low, right - words.to()));
        return new Words(words.text(), from, from + words.to(), y);
    }

    /** Words beside their arrow where there is room, else in a break of its line. */
    private Words beside(LoopLayout.Arrow arrow, double y) {
        double low = Math.min(x(arrow.from()), x(arrow.to()));
        double high = Math.max(x(arrow.from()), x(arrow.to()));
        double pad = high - low < HEAD + 3 ? STUB + 8 : 9;
        double rightRoom = right - high - pad;
        double leftRoom = low - pad - left;
        double inside = high - low - 4 * HEAD;
        double wanted = words(arrow, Double.MAX_VALUE).to();
        double room = Math.max(inside, Math.max(rightRoom, leftRoom));
        Words words = words(arrow, room);
        double from;
        if (wanted <= rightRoom || (wanted > leftRoom && room == rightRoom)) {
            from = high + pad;
        } else if (wanted <= leftRoom || room == leftRoom) {
            from = low - pad - words.to();
        } else {
            from = (low + high - words.to()) / 2;
        }
        return new Words(words.text(), from, from + words.to(), y);
    }

    /** The words of a length from 0 to their width; a name too long for the room is cut, never its figure. */
    private Words words(LoopLayout.Arrow arrow, double room) {
        String figure =
                "  " + (arrow.opens() ? "+" : "−") + " " + length(arrow.length().nominal());
        double spare = room - NUMBER - TextMetrics.width(figure, DrawingStyle.SMALL, false);
        String text = TextMetrics.fit(arrow.length().name(), DrawingStyle.SMALL, false, Math.max(spare, 0)) + figure;
        return new Words(text, 0, NUMBER + TextMetrics.width(text, DrawingStyle.SMALL, false), 0);
    }

    private void label(int number, Words words) {
        double x = words.from() + 8;
        svg.circle(x, words.y(), 7.5, "", new Stroke(DrawingStyle.INK, 1));
        svg.text(x, words.y() + 3.8, Integer.toString(number), Letter.middle(10.5));
        svg.text(words.from() + NUMBER, words.y() + 4.2, words.text(), Letter.start(DrawingStyle.SMALL));
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
        gapLabel(clearance, a - (wide ? 8 : STUB + HEAD + 8), b + (wide ? 8 : STUB + HEAD + 8), y);
    }

    private void accentHead(double x, double y, double way) {
        double back = x - way * (HEAD + 1);
        svg.path(
                "M" + Svg.p(x, y) + "L" + Svg.p(back, y - 4) + "L" + Svg.p(back, y + 4) + "Z",
                DrawingStyle.BLUE,
                new Stroke(DrawingStyle.BLUE, 0.5));
    }

    private void gapLabel(Clearance clearance, double before, double after, double y) {
        Letter bold = Letter.start(DrawingStyle.TEXT).strong().in(DrawingStyle.BLUE);
        String name = clearance.name();
        String limits = limits(clearance);
        String one = name + ": " + limits;
        double width = TextMetrics.width(one, DrawingStyle.TEXT, true);
        if (after + width <= right) {
            svg.text(after, y + 4.5, one, bold);
        } else if (before - width >= left) {
            svg.text(before - width, y + 4.5, one, bold);
        } else {
            double room = right - left;
            boolean two = width > room;
            String first = two ? TextMetrics.fit(name, DrawingStyle.TEXT, true, room) : one;
            svg.text(left, y + ROW, first, bold);
            svg.text(left, y + ROW + 17, two ? limits : "", bold);
        }
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
