package shimwright.bench.picture;

import java.util.List;
import shimwright.bench.picture.Svg.Letter;
import shimwright.bench.picture.Svg.Stroke;

/** Names in rows above or below a section, each on its own pole, like flags. */
final class Labels {
    static final double ROW = 20;
    private static final double BALLOON = FlagPlan.BALLOON;

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
    record Tag(String item, String text, Look look, boolean balloon, double x) {
        boolean strong() {
            return look == Look.HAND || look == Look.SHIM;
        }

        String colour() {
            return strong() ? Ink.BLUE : Ink.INK;
        }

        double width() {
            return balloon ? BALLOON : Type.width(text, Ink.TEXT, strong());
        }

        /** True for a number of the loop. */
        boolean loop() {
            return balloon && Character.isDigit(text.charAt(0));
        }

        /** The same as a letter in a circle. */
        Tag lettered(String letter) {
            return new Tag(item, letter, look, true, x);
        }

        Tag within(double room) {
            return balloon ? this : new Tag(item, Type.fit(text, Ink.TEXT, strong(), room), look, false, x);
        }
    }

    /** A tag with its pole and text placed; row 0 is nearest to the section. */
    record Flag(Tag tag, double pole, double textLeft, int row) {
        double textRight() {
            return textLeft + tag.width();
        }

        /** True where the text stands across the end of its own pole. */
        boolean across() {
            return pole > textLeft - 1 && pole < textRight() + 1;
        }
    }

    private Labels() {}

    static int rows(List<Flag> flags) {
        return flags.stream().mapToInt(f -> f.row() + 1).max().orElse(0);
    }

    /** Where the thing a label names lies on the sheet. */
    @FunctionalInterface
    interface Anchors {
        double y(Tag tag);
    }

    /**
     * Draws placed flags.
     *
     * @param base sheet height from which the rows are counted, clear of the drawing
     * @param up true for rows above the section
     */
    static void draw(Svg svg, List<Flag> flags, double base, boolean up, Anchors anchors) {
        double side = up ? -1 : 1;
        for (Flag flag : flags) {
            Tag tag = flag.tag();
            double y = base + side * (6 + ROW * (flag.row() + 0.5));
            double end = tag.balloon() ? y - side * BALLOON / 2 : flag.across() ? y - side * 8 : y;
            double from = anchors.y(tag);
            double bend = side * (end - base) > 0 ? base : end;
            Stroke leader = new Stroke(tag.colour(), tag.strong() ? 1.3 : 0.9);
            String pole = "M" + Svg.p(tag.x(), from) + "L" + Svg.p(flag.pole(), bend) + "L" + Svg.p(flag.pole(), end);
            svg.path(pole, "", leader);
            tip(svg, tag, from, side);
            if (tag.balloon()) {
                svg.circle(flag.pole(), y, BALLOON / 2 - 0.5, "", new Stroke(tag.colour(), 1.1));
                svg.text(
                        flag.pole(),
                        y + 4.2,
                        tag.text(),
                        Letter.middle(Ink.SMALL).in(tag.colour()));
            } else {
                Letter letter = Letter.start(Ink.TEXT).in(tag.colour());
                svg.text(flag.textLeft(), y + 4.5, tag.text(), tag.strong() ? letter.strong() : letter);
            }
        }
    }

    /** The end of a leader: a dot on the part, or an arrowhead at the place of a shim. */
    private static void tip(Svg svg, Tag tag, double y, double side) {
        if (tag.look() == Look.SHIM) {
            String head = "M" + Svg.p(tag.x(), y) + "L" + Svg.p(tag.x() - 4.5, y + side * 12) + "L"
                    + Svg.p(tag.x() + 4.5, y + side * 12) + "Z";
            svg.path(head, Ink.BLUE, new Stroke(Ink.SECTION, 0.8));
        } else {
            svg.circle(tag.x(), y, 2.5, tag.colour(), new Stroke(Ink.SECTION, 0.8));
        }
    }
}
