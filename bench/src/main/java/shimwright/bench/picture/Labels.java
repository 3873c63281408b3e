package shimwright.bench.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shimwright.bench.picture.Svg.Letter;
import shimwright.bench.picture.Svg.Stroke;

/**
 * Names in rows above or below a section, each on its own pole, like flags. No text covers another and no pole runs
 * through a text.
 */
final class Labels {
    static final double ROW = 20;
    private static final double POLE_GAP = 12;
    private static final double BALLOON = 18;
    private static final double PAD = 5;
    private static final int MOST_ROWS = 40;

    /** What a label looks like. */
    enum Look {
        /** The name of a part. */
        NAME,
        /** The name of what is in the hand, in heavy blue. */
        HAND,
        /** The place of a shim: heavy blue with an arrowhead. */
        SHIM,
        /** A number in a circle. */
        BALLOON
    }

    /**
     * A label to be placed.
     *
     * @param item the item named
     * @param text what it says; for a balloon its number
     * @param x sheet position of the thing named
     */
    record Tag(String item, String text, Look look, double x) {
        boolean balloon() {
            return look == Look.BALLOON;
        }

        boolean strong() {
            return look == Look.HAND || look == Look.SHIM;
        }

        String colour() {
            return strong() ? Ink.BLUE : Ink.INK;
        }

        double width() {
            return balloon() ? BALLOON : Type.width(text, Ink.TEXT, strong());
        }

        Tag within(double room) {
            return balloon() ? this : new Tag(item, Type.fit(text, Ink.TEXT, strong(), room), look, x);
        }
    }

    /** A tag with its pole and text placed; row 0 is nearest to the section. */
    record Flag(Tag tag, double pole, double textLeft, int row) {
        private boolean clashes(Flag other) {
            double gap = 2 * PAD;
            boolean sameRow =
                    row == other.row && textLeft < other.textRight() + gap && other.textLeft < textRight() + gap;
            return sameRow || crosses(other) || other.crosses(this);
        }

        /** True where the other's pole runs through this text. */
        private boolean crosses(Flag other) {
            return row <= other.row && other.pole > textLeft - PAD && other.pole < textRight() + PAD;
        }

        double textRight() {
            return textLeft + tag.width();
        }
    }

    private Labels() {}

    /**
     * Places the tags between two sheet positions.
     *
     * @return the flags, in the order of the tags' positions
     */
    static List<Flag> place(List<Tag> tags, double left, double right) {
        List<Tag> sorted = new ArrayList<>();
        tags.forEach(tag -> sorted.add(tag.within(right - left - 4 * PAD)));
        sorted.sort(Comparator.comparingDouble(Tag::x));
        double[] poles = poles(sorted, left, right);
        List<Flag> placed = new ArrayList<>();
        for (int i = sorted.size() - 1; i >= 0; i--) {
            placed.add(0, fit(sorted.get(i), poles[i], left, right, placed));
        }
        return placed;
    }

    static int rows(List<Flag> flags) {
        return flags.stream().mapToInt(f -> f.row() + 1).max().orElse(0);
    }

    private static double[] poles(List<Tag> tags, double left, double right) {
        double[] x = new double[tags.size()];
        double low = left + PAD;
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.max(tags.get(i).x(), low);
            low = x[i] + gap(tags, i);
        }
        double high = right - PAD;
        for (int i = x.length - 1; i >= 0; i--) {
            x[i] = Math.min(x[i], high);
            high = x[i] - (i > 0 ? gap(tags, i - 1) : 0);
        }
        return x;
    }

    private static double gap(List<Tag> tags, int i) {
        boolean one = tags.get(i).balloon();
        boolean next = i + 1 < tags.size() && tags.get(i + 1).balloon();
        if (one && next) {
            return BALLOON + 2 * PAD + 0.5;
        }
        return one || next ? BALLOON / 2 + PAD + 1 : POLE_GAP;
    }

    private static Flag fit(Tag tag, double pole, double left, double right, List<Flag> placed) {
        double[] lefts =
                tag.balloon() ? new double[] {pole - BALLOON / 2} : new double[] {pole + PAD, pole - PAD - tag.width()};
        int row = 0;
        while (row < MOST_ROWS) {
            for (double textLeft : lefts) {
                Flag flag = new Flag(tag, pole, textLeft, row);
                boolean onSheet = tag.balloon() || (textLeft >= left && flag.textRight() <= right);
                if (onSheet && placed.stream().noneMatch(flag::clashes)) {
                    return flag;
                }
            }
            row++;
        }
        int beyond = placed.stream().mapToInt(Flag::row).max().orElse(-1) + 1;
        return new Flag(tag, pole, Math.max(left, Math.min(pole + PAD, right - tag.width())), beyond);
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
            double end = tag.balloon() ? y - side * BALLOON / 2 : y;
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
