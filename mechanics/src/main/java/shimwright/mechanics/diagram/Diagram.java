package shimwright.mechanics.diagram;

import java.util.List;
import java.util.OptionalDouble;
import shimwright.mechanics.quantity.Kind;

/** A picture of a worksheet as data, made from its input and output records. Every number is finite. */
public sealed interface Diagram {
    /** What it shows, as a heading. */
    String title();

    /**
     * Curves, bars, limits and outlines on two scales.
     *
     * @param title as a heading
     * @param across the lying scale
     * @param up the standing scale
     * @param trueShape true where both are lengths of one drawing, to one scale and without axes
     * @param parts what is drawn, the first at the back; at least one
     */
    record Graph(String title, Scale across, Scale up, boolean trueShape, List<Part> parts) implements Diagram {
        public Graph {
            parts = List.copyOf(parts);
            if (parts.isEmpty()) {
                throw new IllegalArgumentException("nothing to draw: " + title);
            }
        }
    }

    /**
     * A value with its uncertainty against its limits.
     *
     * @param title as a heading
     * @param kind of the value
     * @param value SI
     * @param u standard uncertainty, SI, 0 or more
     * @param nu degrees of freedom, above 0; infinite for a normal distribution
     * @param lower limit, SI; empty for none
     * @param upper limit, SI; empty for none
     * @param probability of lying within, 0 to 1
     */
    record Distribution(
            String title,
            Kind kind,
            double value,
            double u,
            double nu,
            OptionalDouble lower,
            OptionalDouble upper,
            double probability)
            implements Diagram {
        public Distribution {
            finite(value, u, lower.orElse(0), upper.orElse(0), probability);
        }
    }

    /**
     * Lengths on offer against the limits of what each would leave, and what lies in the drawer.
     *
     * @param title as a heading
     * @param lower limit, m; empty for none
     * @param upper limit, m; empty for none
     * @param aim wanted, m; empty for none
     * @param offers best first
     * @param drawer thicknesses at hand, m
     * @param taken thicknesses of the best offer, m
     */
    record Offers(
            String title,
            OptionalDouble lower,
            OptionalDouble upper,
            OptionalDouble aim,
            List<Offer> offers,
            List<Double> drawer,
            List<Double> taken)
            implements Diagram {
        public Offers {
            offers = List.copyOf(offers);
            drawer = List.copyOf(drawer);
            taken = List.copyOf(taken);
        }
    }

    /**
     * One offer.
     *
     * @param name in words
     * @param value what it would leave, m
     * @param u standard uncertainty of that, m
     * @param probability of lying within the limits
     */
    record Offer(String name, double value, double u, double probability) {
        public Offer {
            finite(value, u, probability);
        }
    }

    /**
     * A scale.
     *
     * @param label what it measures
     * @param kind of its numbers
     * @param names where it is a row of things: the first stands at 1; else empty
     */
    record Scale(String label, Kind kind, List<String> names) {
        public Scale {
            names = List.copyOf(names);
        }

        public static Scale of(String label, Kind kind) {
            return new Scale(label, kind, List.of());
        }

        public static Scale of(String label, List<String> names) {
            return new Scale(label, Kind.NUMBER, names);
        }
    }

    /** How much a part speaks up. */
    enum Look {
        MAIN,
        SECOND,
        FAINT
    }

    /** A point in SI on both scales. */
    record Point(double x, double y) {
        public Point {
            finite(x, y);
        }
    }

    /** Something drawn; a name stands beside it or in the legend, an empty one nowhere. */
    sealed interface Part {
        String name();
    }

    /** A line through two points or more. */
    record Curve(String name, List<Point> points, Look look) implements Part {
        public Curve {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("no line through one point: " + name);
            }
        }
    }

    /** An outline of three points or more, closed. */
    record Area(String name, List<Point> points, Look look) implements Part {
        public Area {
            points = List.copyOf(points);
            if (points.size() < 3) {
                throw new IllegalArgumentException("no outline: " + name);
            }
        }
    }

    /** A standing bar of a row of things. */
    record Bar(String name, double at, double from, double to, Look look) implements Part {
        public Bar {
            finite(at, from, to);
        }
    }

    /** A limit across the whole picture. */
    record Rule(String name, boolean upright, double at) implements Part {
        public Rule {
            finite(at);
        }
    }

    /** A marked point. */
    record Dot(String name, double x, double y) implements Part {
        public Dot {
            finite(x, y);
        }
    }

    /** A circle of a true-shape drawing, its name inside. */
    record Disc(String name, double x, double y, double radius, Look look) implements Part {
        public Disc {
            finite(x, y, radius);
        }
    }

    private static void finite(double... numbers) {
        for (double number : numbers) {
            if (!Double.isFinite(number)) {
                throw new IllegalArgumentException("a picture with " + number);
            }
        }
    }
}
