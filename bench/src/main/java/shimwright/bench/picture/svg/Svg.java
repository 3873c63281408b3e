package shimwright.bench.picture.svg;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes SVG with presentation attributes only. A number that is not finite is a bug and throws. */
public final class Svg {
    /** Far above any sheet, and far below where hundredths leave the whole numbers. */
    private static final double LARGEST_QUICK = 1e12;

    private final StringBuilder out = new StringBuilder(32_000);
    private final Deque<String> open = new ArrayDeque<>();

    /** How a line is drawn; an empty dash is a solid line. */
    public record Stroke(String colour, double width, String dash) {
        public Stroke(String colour, double width) {
            this(colour, width, "");
        }
    }

    /** How a text is set. Anchor is start, middle or end. */
    public record Letter(double size, String anchor, boolean bold, String colour) {
        public static Letter start(double size) {
            return new Letter(size, "start", false, DrawingStyle.INK);
        }

        public static Letter middle(double size) {
            return new Letter(size, "middle", false, DrawingStyle.INK);
        }

        public static Letter end(double size) {
            return new Letter(size, "end", false, DrawingStyle.INK);
        }

        public Letter strong() {
            return new Letter(size, anchor, true, colour);
        }

        public Letter in(String other) {
            return new Letter(size, anchor, bold, other);
        }
    }

    /**
     * Opens the root with title and description; ids begin with the prefix. Width and height are rounded up to whole
     * numbers, for the printer takes no others.
     */
    public Svg root(String prefix, double width, double height, String title, String about) {
        return root("img", prefix, width, height, title, about);
    }

    /** The same for a picture with links in it: a reader of the screen goes into it. */
    public Svg rootOfLinks(String prefix, double width, double height, String title, String about) {
        return root("group", prefix, width, height, title, about);
    }

    private Svg root(String role, String prefix, double width, double height, String title, String about) {
        String wide = n(Math.ceil(width));
        String high = n(Math.ceil(height));
        open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + wide + " " + high,
                "width",
                wide,
                "height",
                high,
                "role",
                role,
                "aria-labelledby",
                prefix + "-title " + prefix + "-desc",
                "font-family",
                DrawingStyle.FONT,
                "fill",
                "none");
        element("title", title, "id", prefix + "-title");
        element("desc", about, "id", prefix + "-desc");
        return this;
    }

    /** Begins an element; attributes are names and values by turns. */
    public Svg open(String tag, String... attributes) {
        start(tag, attributes);
        out.append(">\n");
        open.push(tag);
        return this;
    }

    /** Ends the element begun last. */
    public Svg close() {
        out.append("</").append(open.pop()).append(">\n");
        return this;
    }

    /** An element without content. */
    public Svg empty(String tag, String... attributes) {
        start(tag, attributes);
        out.append("/>\n");
        return this;
    }

    /** A whole element with text in it; attributes are names and values by turns. */
    public Svg element(String tag, String content, String... attributes) {
        start(tag, attributes);
        out.append('>').append(escape(content)).append("</").append(tag).append(">\n");
        return this;
    }

    /** A line between two points, drawing units. */
    public Svg line(double x1, double y1, double x2, double y2, Stroke stroke) {
        return path("M" + p(x1, y1) + "L" + p(x2, y2), "", stroke);
    }

    /** A circle round a point, drawing units. */
    public Svg circle(double x, double y, double r, String fill, Stroke stroke) {
        start("circle", "cx", n(x), "cy", n(y), "r", n(r));
        paint(fill, stroke);
        out.append("/>\n");
        return this;
    }

    /** A rectangle from its upper left corner, drawing units. */
    public Svg rect(double x, double y, double width, double height, String fill, Stroke stroke) {
        start("rect", "x", n(x), "y", n(y), "width", n(width), "height", n(height));
        paint(fill, stroke);
        out.append("/>\n");
        return this;
    }

    /** A path; nothing is written for an empty one. An empty fill is none; a stroke of width 0 is none. */
    public Svg path(String d, String fill, Stroke stroke) {
        if (d.isEmpty()) {
            return this;
        }
        start("path", "d", d);
        paint(fill, stroke);
        out.append("/>\n");
        return this;
    }

    /** A text; nothing is written for an empty one. */
    public Svg text(double x, double y, String content, Letter letter) {
        if (content.isEmpty()) {
            return this;
        }
        start("text", "x", n(x), "y", n(y), "font-size", n(letter.size()), "fill", letter.colour());
        if (!"start".equals(letter.anchor())) {
            attribute("text-anchor", letter.anchor());
        }
        if (letter.bold()) {
            attribute("font-weight", "bold");
        }
        out.append('>').append(escape(content)).append("</text>\n");
        return this;
    }

    /** Everything written, all elements closed. */
    public String done() {
        while (!open.isEmpty()) {
            close();
        }
        return out.toString();
    }

    private void start(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            attribute(attributes[i], attributes[i + 1]);
        }
    }

    private void attribute(String name, String value) {
        out.append(' ').append(name).append("=\"").append(escape(value)).append('"');
    }

    private void paint(String fill, Stroke stroke) {
        if (!fill.isEmpty()) {
            attribute("fill", fill);
        }
        if (stroke.width() > 0) {
            attribute("stroke", stroke.colour());
            attribute("stroke-width", n(stroke.width()));
            if (!stroke.dash().isEmpty()) {
                attribute("stroke-dasharray", stroke.dash());
            }
        }
    }

    /** Path data of a shape, lines and curves. */
    public static String data(Shape shape) {
        StringBuilder d = new StringBuilder();
        double[] c = new double[6];
        for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
            switch (i.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> d.append('M').append(p(c[0], c[1]));
                case PathIterator.SEG_LINETO -> d.append('L').append(p(c[0], c[1]));
                case PathIterator.SEG_QUADTO ->
                    d.append('Q').append(p(c[0], c[1])).append(' ').append(p(c[2], c[3]));
                case PathIterator.SEG_CUBICTO ->
                    d.append('C')
                            .append(p(c[0], c[1]))
                            .append(' ')
                            .append(p(c[2], c[3]))
                            .append(' ')
                            .append(p(c[4], c[5]));
                default -> d.append('Z');
            }
        }
        return d.toString();
    }

    /** A point of a path, as two numbers. */
    public static String p(double x, double y) {
        return n(x) + " " + n(y);
    }

    /** A number with at most two decimals. */
    public static String n(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("not a finite number in a drawing: " + value);
        }
        if (Math.abs(value) > LARGEST_QUICK) {
            return BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP).toPlainString();
        }
        long hundredths = Math.round(Math.abs(value) * 100);
        if (hundredths == 0) {
            return "0";
        }
        long rest = hundredths % 100;
        StringBuilder text = new StringBuilder(value < 0 ? "-" : "").append(hundredths / 100);
        if (rest > 0) {
            text.append('.').append(rest / 10);
            if (rest % 10 > 0) {
                text.append(rest % 10);
            }
        }
        return text.toString();
    }

    private static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().filter(Svg::allowed).forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    /** Characters that XML 1.0 (fifth edition, 2.2) allows. */
    private static boolean allowed(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c > 0xFFFF;
    }
}
