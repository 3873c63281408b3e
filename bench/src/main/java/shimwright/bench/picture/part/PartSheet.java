package shimwright.bench.picture.part;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private static final Stroke LEADER = new Stroke(DrawingStyle.INK, 0.8);

    private final PartSubject subject;
    private final PartDrawing drawing;
    private final UnitSystem units;
    private final PartFigure side;
    private final Optional<PartFigure> face;
    private final double left;
    private final double between;
    private final double scale;
    private final Rectangle2D room;

    PartSheet(PartSubject subject, PartDrawing drawing, UnitSystem units) {
        this.subject = subject;
        this.drawing = drawing;
        this.units = units;
        this.side = drawing.half() ? HalfSection.of(drawing.side()) : drawing.side();
        this.face = drawing.face();
        Rectangle2D wanted = side.box();
        for (Pointer pointer : drawing.pointers()) {
            wanted.add(pointer.atW(), pointer.atR());
        }
        this.room = wanted;
        this.left = column(Line.LEFT, MARGIN);
        this.between = column(Line.RIGHT, face.isPresent() ? 2 * MARGIN : MARGIN) + (drawing.pointers().isEmpty() ? 0 : 8);
        double width = PartPicture.WIDTH - left - between - (face.isPresent() ? 2 * MARGIN : 0);
        double high = Math.max(room.getHeight(), face.map(f -> f.box().getHeight()).orElse(0.0));
        double wide = room.getWidth() + face.map(f -> f.box().getWidth()).orElse(0.0);
        this.scale = Math.min(width / wide, HIGHEST / high);
    }

    private double column(Line line, double least) {
        return drawing.dimensions().stream()
                .filter(d -> d.line() == line)
                .mapToDouble(d -> TextMetrics.width(text(d), DrawingStyle.SMALL, false) + 26)
                .max()
                .orElse(least);
    }

    private boolean any(Line line) {
        return drawing.dimensions().stream().anyMatch(d -> d.line() == line);
    }

    String draw(String prefix) {
        List<String> head =
                TextMetrics.wrap(DimensionPen.upper(subject.name()), DrawingStyle.TEXT, true, PartPicture.WIDTH - 2 * MARGIN);
        List<String> lines = new ArrayList<>();
        told().forEach(line -> lines.addAll(
                TextMetrics.wrap(line, DrawingStyle.SMALL, false, PartPicture.WIDTH - 2 * MARGIN)));
        double top = 8 + 17 * head.size() + (any(Line.ABOVE) ? 30 : 14);
        double high = scale * Math.max(room.getHeight(), face.map(f -> f.box().getHeight()).orElse(0.0));
        long below = drawing.dimensions().stream().filter(d -> d.line() == Line.BELOW).count();
        double under = top + high + Math.max(STEP * below, any(Line.FACE) ? STEP : 0) + 26;
        Svg svg = new Svg();
        svg.root(
                prefix,
                PartPicture.WIDTH,
                under + 16 * lines.size(),
                DimensionPen.upper(subject.name()),
                String.join(" ", told()));
        svg.rect(0, 0, PartPicture.WIDTH, under + 16 * lines.size(), DrawingStyle.SECTION, new Stroke("none", 0));
        for (int i = 0; i < head.size(); i++) {
            svg.text(MARGIN, 20 + 17 * i, head.get(i), Letter.start(DrawingStyle.TEXT).strong());
        }
        views(svg, top, high);
        for (int i = 0; i < lines.size(); i++) {
            svg.text(MARGIN, under + 16 * i, lines.get(i), Letter.start(DrawingStyle.SMALL));
        }
        return svg.done();
    }

    private void views(Svg svg, double top, double high) {
        FigurePen pen = new FigurePen(svg);
        double free = PartPicture.WIDTH
                - left
                - between
                - scale * (room.getWidth() + face.map(f -> f.box().getWidth()).orElse(0.0))
                - (face.isPresent() ? 2 * MARGIN : 0);
        double x = left + Math.max(0, free / 2) - scale * room.getMinX();
        boolean turned = drawing.half() || face.isPresent();
        double middle = turned && drawing.pointers().isEmpty() ? 0 : room.getCenterY();
        double axis = top + high / 2 + scale * middle;
        AffineTransform place = new AffineTransform(scale, 0, 0, -scale, x, axis);
        boolean thin = scale * side.box().getWidth() < THIN;
        FigurePen.Look look = new FigurePen.Look(Stand.FITTED, thin, false, subject.brass());
        pen.figure(side, place, look);
        DimensionPen dimensions = new DimensionPen(svg, this::text, drawing.half());
        if (turned || any(Line.LEFT)) {
            pen.centreLine(x + scale * side.box().getMinX() - 8, axis, x + scale * side.box().getMaxX() + 8, axis);
        }
        dimensions.side(drawing.dimensions(), side, place);
        face.ifPresent(view -> {
            double right = x + scale * room.getMaxX() + between + MARGIN;
            double centreX = right - scale * view.box().getMinX();
            AffineTransform facing = new AffineTransform(scale, 0, 0, -scale, centreX, axis);
            pen.figure(view, facing, new FigurePen.Look(Stand.FITTED, false, false, subject.brass()));
            pen.centreLine(right - 6, axis, right + scale * view.box().getWidth() + 6, axis);
            pen.centreLine(
                    centreX,
                    axis - scale * view.box().getMaxY() - 6,
                    centreX,
                    axis - scale * view.box().getMinY() + 6);
            dimensions.face(drawing.dimensions(), view, facing);
        });
        for (int i = 0; i < drawing.pointers().size(); i++) {
            pointer(svg, place, drawing.pointers().get(i), i + 1);
        }
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
                        .add(size.place().words() + " " + value(size));
            }
        }
        String unit = units == UnitSystem.INCH ? "inches" : "mm";
        sizes.forEach((origin, words) ->
                lines.add("In " + unit + ", " + origin.words() + ": " + String.join(", ", words) + "."));
        if (subject.quantity() > 1) {
            lines.add(subject.quantity() + " pieces in one unit.");
        }
        if (subject.holes() > 0 && subject.form().outline()) {
            lines.add("Held by " + subject.holes() + " bolts.");
        }
        subject.notes().forEach(note -> lines.add(DimensionPen.upper(note) + "."));
        if (subject.form() == PartForm.UNKNOWN) {
            lines.add("What it looks like is not known; a photograph of it helps.");
        } else if (!drawing.scale()) {
            lines.add("Shape not to scale.");
        } else if (subject.form().compareTo(PartForm.LIP_SEAL) <= 0) {
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
