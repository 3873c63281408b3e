package shimwright.bench.picture.part;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.picture.part.PartDrawing.Dimension;
import shimwright.bench.picture.part.PartDrawing.Line;
import shimwright.bench.picture.part.PartDrawing.Pointer;
import shimwright.bench.picture.part.PartSize.Origin;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.bench.picture.section.FigurePen;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.mechanics.quantity.UnitSystem;

/** Arranges the views of a part with their dimensions, and what is written below them, on one sheet. */
final class PartSheet {
    private static final double MARGIN = 14;
    private static final double HIGHEST = 190;
    private static final double STEP = 22;
    private static final double THIN = 7;
    private static final double DETAIL = 118;
    private static final Set<PartForm> HELD = Set.of(PartForm.PLATE, PartForm.HOUSING, PartForm.LEVER);
    private static final Stroke LEADER = new Stroke(DrawingStyle.INK, 0.8);

    private final PartSubject subject;
    private final PartDrawing drawing;
    private final UnitSystem units;
    private final PartFigure side;
    private final Optional<PartFigure> face;
    private final double left;
    private final double between;
    private final double sideScale;
    private final double faceScale;
    private final Rectangle2D room;

    PartSheet(PartSubject subject, PartDrawing drawing, UnitSystem units) {
        this.subject = subject;
        this.drawing = drawing;
        this.units = units;
        this.side = drawing.detail()
                ? HalfSection.ring(drawing.side())
                : drawing.half() ? HalfSection.of(drawing.side()) : drawing.side();
        this.face = drawing.face();
        Rectangle2D wanted = side.box();
        for (Pointer pointer : drawing.pointers()) {
            wanted.add(pointer.atW(), pointer.atR());
        }
        this.room = wanted;
        this.left = column(Line.LEFT, MARGIN);
        this.between = column(Line.RIGHT, face.isPresent() ? 2 * MARGIN : MARGIN)
                + (drawing.pointers().isEmpty() ? 0 : 12);
        double width = PartPicture.WIDTH - left - between - (face.isPresent() ? 2 * MARGIN : 0);
        Rectangle2D front = front();
        double together = Math.min(
                width / (room.getWidth() + front.getWidth()), HIGHEST / Math.max(room.getHeight(), front.getHeight()));
        double enlarged = Math.min(DETAIL / room.getWidth(), DETAIL / room.getHeight());
        this.sideScale = drawing.detail() ? enlarged : together;
        this.faceScale = drawing.detail()
                ? Math.min((width - enlarged * room.getWidth()) / front.getWidth(), HIGHEST / front.getHeight())
                : together;
    }

    private Rectangle2D front() {
        return face.map(PartFigure::box).orElse(new Rectangle2D.Double());
    }

    /** How far the views reach above their axis, or below it, pixels. */
    private double reach(boolean above) {
        double own = above ? room.getMaxY() : -room.getMinY();
        double facing = faceScale * (above ? front().getMaxY() : -front().getMinY());
        return Math.max(drawing.detail() ? sideScale * room.getHeight() / 2 : sideScale * own, facing);
    }

    private double column(Line line, double least) {
        return drawing.dimensions().stream()
                .filter(d -> d.line() == line)
                .mapToDouble(d -> TextMetrics.width(text(d), DrawingStyle.SMALL, false) + 26)
                .max()
                .orElse(least);
    }

    private long count(Line line) {
        return drawing.dimensions().stream().filter(d -> d.line() == line).count();
    }

    private boolean any(Line line) {
        return count(line) > 0;
    }

    String draw(String prefix) {
        List<String> head = TextMetrics.wrap(
                DimensionPen.upper(subject.name()), DrawingStyle.TEXT, true, PartPicture.WIDTH - 2 * MARGIN);
        List<String> lines = new ArrayList<>();
        told().forEach(line ->
                lines.addAll(TextMetrics.wrap(line, DrawingStyle.SMALL, false, PartPicture.WIDTH - 2 * MARGIN)));
        double top = 8 + 17 * head.size() + (any(Line.ABOVE) ? 32 : 14);
        double high = reach(true) + reach(false);
        long below = Math.max(count(Line.BELOW), count(Line.FACE));
        double under = top + high + STEP * below + 26;
        Svg svg = new Svg();
        svg.root(
                prefix,
                PartPicture.WIDTH,
                under + 16 * lines.size(),
                DimensionPen.upper(subject.name()),
                String.join(" ", told()));
        svg.rect(0, 0, PartPicture.WIDTH, under + 16 * lines.size(), DrawingStyle.SECTION, new Stroke("none", 0));
        for (int i = 0; i < head.size(); i++) {
            svg.text(
                    MARGIN,
                    20 + 17 * i,
                    head.get(i),
                    Letter.start(DrawingStyle.TEXT).strong());
        }
        views(svg, top + reach(true));
        for (int i = 0; i < lines.size(); i++) {
            svg.text(MARGIN, under + 16 * i, lines.get(i), Letter.start(DrawingStyle.SMALL));
        }
        return svg.done();
    }

    private void views(Svg svg, double axis) {
        FigurePen pen = new FigurePen(svg);
        double free = PartPicture.WIDTH
                - left
                - between
                - sideScale * room.getWidth()
                - faceScale * front().getWidth()
                - (face.isPresent() ? 2 * MARGIN : 0);
        double x = left + Math.max(0, free / 2) - sideScale * room.getMinX();
        double shift = drawing.detail() ? sideScale * room.getCenterY() : 0;
        AffineTransform place = new AffineTransform(sideScale, 0, 0, -sideScale, x, axis + shift);
        boolean thin = sideScale * side.box().getWidth() < THIN;
        pen.figure(side, place, new FigurePen.Look(Stand.FITTED, thin, false, subject.brass()));
        boolean turned = drawing.half() || face.isPresent() || any(Line.LEFT);
        if (turned && !drawing.detail()) {
            pen.centreLine(
                    x + sideScale * side.box().getMinX() - 8,
                    axis,
                    x + sideScale * side.box().getMaxX() + 8,
                    axis);
        }
        DimensionPen dimensions = new DimensionPen(svg, this::text, drawing.half());
        dimensions.side(drawing.dimensions(), side, place);
        face.ifPresent(view -> {
            double near = x + sideScale * room.getMaxX() + between + MARGIN;
            face(svg, pen, view, near, axis);
        });
        for (int i = 0; i < drawing.pointers().size(); i++) {
            pointer(svg, place, drawing.pointers().get(i), i + 1);
        }
    }

    private void face(Svg svg, FigurePen pen, PartFigure view, double near, double axis) {
        Rectangle2D box = view.box();
        double centre = near - faceScale * box.getMinX();
        AffineTransform facing = new AffineTransform(faceScale, 0, 0, -faceScale, centre, axis);
        pen.figure(view, facing, new FigurePen.Look(Stand.FITTED, false, false, subject.brass()));
        pen.centreLine(near - 6, axis, near + faceScale * box.getWidth() + 6, axis);
        pen.centreLine(centre, axis - faceScale * box.getMaxY() - 6, centre, axis - faceScale * box.getMinY() + 6);
        new DimensionPen(svg, this::text, drawing.half()).face(drawing.dimensions(), view, facing);
    }

    private static void pointer(Svg svg, AffineTransform place, Pointer pointer, int number) {
        double[] at = {pointer.w(), pointer.r(), pointer.atW(), pointer.atR()};
        place.transform(at, 0, at, 0, 2);
        svg.line(at[0], at[1], at[2], at[3], LEADER);
        svg.circle(at[0], at[1], 1.6, DrawingStyle.INK, new Stroke(DrawingStyle.INK, 0));
        svg.circle(at[2], at[3], 9, DrawingStyle.SECTION, LEADER);
        svg.text(at[2], at[3] + 4.3, String.valueOf(number), Letter.middle(DrawingStyle.SMALL));
    }

    private String text(Dimension dimension) {
        PartSize size = dimension.size();
        return size == null ? dimension.text() : dimension.text() + DimensionPen.number(size.value(), units);
    }

    /** What is written below the views. */
    private List<String> told() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < drawing.pointers().size(); i++) {
            lines.add((i + 1) + "  " + drawing.pointers().get(i).words());
        }
        Map<Origin, List<String>> sizes = new EnumMap<>(Origin.class);
        for (PartSize size : subject.sizes().all()) {
            boolean single = size.place() == Place.ROWS && size.value() < 2;
            if (!single) {
                sizes.computeIfAbsent(size.origin(), origin -> new ArrayList<>())
                        .add(size.place().words() + "\u00a0" + value(size));
            }
        }
        String unit = units == UnitSystem.INCH ? "inches" : "mm";
        sizes.forEach((origin, words) ->
                lines.add("In " + unit + ", " + origin.words() + ": " + String.join(", ", words) + "."));
        if (subject.quantity() > 1) {
            lines.add(subject.quantity() + " pieces in one unit.");
        }
        if (subject.holes() > 0 && HELD.contains(subject.form())) {
            lines.add("Held by " + subject.holes() + " bolts.");
        }
        if (drawing.detail()) {
            lines.add("Its section is enlarged.");
        }
        subject.notes().forEach(note -> lines.add(DimensionPen.upper(note) + "."));
        if (subject.form() == PartForm.UNKNOWN) {
            lines.add("What it looks like is not known; a photograph of it helps.");
        } else if (!drawing.scale()) {
            boolean chosen = subject.chosen() && subject.sizes().has(Place.INSIDE, Place.OUTSIDE);
            lines.add(chosen ? "Its thickness is not to scale." : "Shape not to scale.");
        } else if (subject.form().compareTo(PartForm.LIP_SEAL) <= 0 && subject.form() != PartForm.TAPER_CUP) {
            lines.add("What is inside is drawn in usual proportions.");
        }
        return lines;
    }

    private String value(PartSize size) {
        return size.place() == Place.TEETH || size.place() == Place.ROWS
                ? String.valueOf(Math.round(size.value()))
                : DimensionPen.number(size.value(), units);
    }
}
