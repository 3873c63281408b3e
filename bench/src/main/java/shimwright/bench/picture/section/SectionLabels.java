package shimwright.bench.picture.section;

import java.util.List;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;

/** Names in rows above or below a section, each on its own leader. */
final class SectionLabels {
    static final double ROW = 20;
    private static final double BALLOON = LabelPlacement.BALLOON;

    /** What a label looks like. */
    enum Look {
        /** The name of a part. */
        NAME,
        /** The name of what is in the hand, in heavy blue. */
        HAND,
        /** The place of a shim: heavy blue with an arrowhead. */
        SHIM
    }

    /**
     * A label to be placed.
     *
     * @param item the item named
     * @param text what it says
     * @param balloon true where the text is a number or letter in a circle
     * @param x sheet position of the thing named
     */
    record Label(String item, String text, Look look, boolean balloon, double x) {
        boolean strong() {
            return look == Look.HAND || look == Look.SHIM;
        }

        String colour() {
            return strong() ? DrawingStyle.BLUE : DrawingStyle.INK;
        }

        double width() {
            return balloon ? BALLOON : TextMetrics.width(text, DrawingStyle.TEXT, strong());
        }

        /** True for a number of the loop. */
        boolean loop() {
            return balloon && Character.isDigit(text.charAt(0));
        }

        /** The same as a letter in a circle. */
        Label lettered(String letter) {
            return new Label(item, letter, look, true, x);
        }

        /** One label for two things side by side, which stands at the first and looks like the one that matters more. */
        Label with(Label other) {
            Look more = look.compareTo(other.look) >= 0 ? look : other.look;
            return new Label(item, text + ", " + other.text, more, false, x);
        }

        Label within(double room) {
            return balloon
                    ? this
                    : new Label(item, TextMetrics.fit(text, DrawingStyle.TEXT, strong(), room), look, false, x);
        }
    }

    /** A label with its leader and text placed; row 0 is nearest to the section. */
    record PlacedLabel(Label label, double leader, double textLeft, int row) {
        double textRight() {
            return textLeft + label.width();
        }

        /** True where the text stands across the end of its own leader. */
        boolean across() {
            return leader > textLeft - 1 && leader < textRight() + 1;
        }
    }

    private SectionLabels() {}

    static int rows(List<PlacedLabel> placed) {
        return placed.stream().mapToInt(f -> f.row() + 1).max().orElse(0);
    }

    /** Where the thing a label names lies on the sheet. */
    @FunctionalInterface
    interface Anchors {
        double y(Label label);
    }

    /**
     * Draws placed labels.
     *
     * @param base sheet height from which the rows are counted, clear of the drawing
     * @param up true for rows above the section
     */
    static void draw(Svg svg, List<PlacedLabel> placed, double base, boolean up, Anchors anchors) {
        double side = up ? -1 : 1;
        for (PlacedLabel one : placed) {
            Label label = one.label();
            double y = base + side * (6 + ROW * (one.row() + 0.5));
            double end = label.balloon() ? y - side * BALLOON / 2 : one.across() ? y - side * 8 : y;
            double from = anchors.y(label);
            double bend = side * (end - base) > 0 ? base : end;
            Stroke stroke = new Stroke(label.colour(), label.strong() ? 1.3 : 0.9);
            String leader =
                    "M" + Svg.p(label.x(), from) + "L" + Svg.p(one.leader(), bend) + "L" + Svg.p(one.leader(), end);
            svg.path(leader, "", stroke);
            tip(svg, label, from, side);
            if (label.balloon()) {
                svg.circle(one.leader(), y, BALLOON / 2 - 0.5, "", new Stroke(label.colour(), 1.1));
                svg.text(
                        one.leader(),
                        y + 4.2,
                        label.text(),
                        Letter.middle(DrawingStyle.SMALL).in(label.colour()));
            } else {
                Letter letter = Letter.start(DrawingStyle.TEXT).in(label.colour());
                svg.text(one.textLeft(), y + 4.5, label.text(), label.strong() ? letter.strong() : letter);
            }
        }
    }

    /** The end of a leader: a dot on the part, or an arrowhead at the place of a shim. */
    private static void tip(Svg svg, Label label, double y, double side) {
        if (label.look() == Look.SHIM) {
            String head = "M" + Svg.p(label.x(), y) + "L" + Svg.p(label.x() - 4.5, y + side * 12) + "L"
                    + Svg.p(label.x() + 4.5, y + side * 12) + "Z";
            svg.path(head, DrawingStyle.BLUE, new Stroke(DrawingStyle.SECTION, 0.8));
        } else {
            svg.circle(label.x(), y, 2.5, label.colour(), new Stroke(DrawingStyle.SECTION, 0.8));
        }
    }
}
