package shimwright.bench.picture.photo;

import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.rebuild.job.Entry.Mark;
import shimwright.rebuild.job.Entry.PictureMarked;

/** Marks as a drawing that is laid over their picture: in marking blue on a white edge, so that they are seen on steel and on oil alike. */
public final class MarkDrawing {
    private static final String WHITE = "#ffffff";
    private static final double HEAD = 4.5;

    private final Svg svg = new Svg();
    private final double wide;
    private final double high;
    private final double line;

    private MarkDrawing(double wide, double tall) {
        this.wide = wide;
        this.high = wide * tall;
        this.line = Math.max(1.6, wide / 180);
    }

    /**
     * The drawing over a picture of some width.
     *
     * @param id begins the ids of the drawing
     * @param drawn of one picture, in order; at least one
     * @param wide drawing units, about as many as pixels where it is shown
     */
    public static String over(String id, List<PictureMarked> drawn, double wide) {
        MarkDrawing drawing = new MarkDrawing(wide, drawn.get(drawn.size() - 1).tall());
        drawing.svg.root(id, wide, drawing.high, "Drawn on the picture", said(drawn));
        drawn.forEach(one -> one.marks().forEach(drawing::draw));
        return drawing.svg.done();
    }

    private static String said(List<PictureMarked> drawn) {
        return drawn.stream()
                .flatMap(one -> one.marks().stream())
                .map(mark -> mark.shape().name().toLowerCase(Locale.ROOT)
                        + (mark.text().isEmpty() ? "" : " " + mark.text()))
                .collect(Collectors.joining(", "));
    }

    private double x(Mark mark, int point) {
        return wide * mark.at().get(2 * point);
    }

    private double y(Mark mark, int point) {
        return high * mark.at().get(2 * point + 1);
    }

    private void draw(Mark mark) {
        switch (mark.shape()) {
            case ARROW -> arrow(mark);
            case RING ->
                inked(Svg.data(new Ellipse2D.Double(
                        Math.min(x(mark, 0), x(mark, 1)),
                        Math.min(y(mark, 0), y(mark, 1)),
                        Math.abs(x(mark, 1) - x(mark, 0)),
                        Math.abs(y(mark, 1) - y(mark, 0)))));
            case LINE -> {
                StringBuilder path = new StringBuilder();
                for (int i = 0; 2 * i < mark.at().size(); i++) {
                    path.append(i == 0 ? 'M' : 'L').append(Svg.p(x(mark, i), y(mark, i)));
                }
                inked(path.toString());
            }
            default -> text(mark);
        }
    }

    private void inked(String path) {
        svg.path(path, "", new Stroke(WHITE, 2.2 * line));
        svg.path(path, "", new Stroke(DrawingStyle.BLUE, line));
    }

    /** A shaft, and a head whose length is a few times the line. */
    private void arrow(Mark mark) {
        double way = Math.atan2(y(mark, 1) - y(mark, 0), x(mark, 1) - x(mark, 0));
        double head = HEAD * line;
        String path = "M" + Svg.p(x(mark, 0), y(mark, 0)) + "L" + Svg.p(x(mark, 1), y(mark, 1));
        StringBuilder both = new StringBuilder(path);
        for (double turn : new double[] {2.6, -2.6}) {
            both.append('M')
                    .append(Svg.p(x(mark, 1), y(mark, 1)))
                    .append('L')
                    .append(Svg.p(x(mark, 1) + head * Math.cos(way + turn), y(mark, 1) + head * Math.sin(way + turn)));
        }
        inked(both.toString());
    }

    /** Words on a white label that stays within the picture. */
    private void text(Mark mark) {
        double size = Math.max(9, Math.min(17, wide / 26));
        String words = TextMetrics.fit(mark.text(), size, true, wide - size);
        double room = TextMetrics.width(words, size, true) + size * 0.7;
        double left = Math.max(1, Math.min(x(mark, 0), wide - room - 1));
        double top = Math.max(1, Math.min(y(mark, 0) - size * 0.75, high - size * 1.5 - 1));
        svg.rect(left, top, room, size * 1.5, WHITE, new Stroke(DrawingStyle.BLUE, 1));
        svg.text(
                left + size * 0.35,
                top + size * 1.1,
                words,
                Letter.start(size).strong().in(DrawingStyle.BLUE));
    }
}
