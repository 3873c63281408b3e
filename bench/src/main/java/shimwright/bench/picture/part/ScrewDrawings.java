package shimwright.bench.picture.part;

import static shimwright.bench.picture.section.PartFigure.at;

import java.awt.geom.Area;
import shimwright.bench.picture.part.PartDrawing.DrawingDraft;
import shimwright.bench.picture.part.PartDrawing.Line;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;

/** What holds parts together, alone: screws, nuts, plugs, pins, keys and balls. */
final class ScrewDrawings {
    private final PartSubject subject;
    private final PartSizes sizes;

    ScrewDrawings(PartSubject subject) {
        this.subject = subject;
        this.sizes = subject.sizes();
    }

    private double thread() {
        return sizes.or(Place.THREAD, 8e-3);
    }

    /** A screw from its head to the right. */
    PartDrawing screw(boolean socket) {
        double d = thread();
        double head = sizes.or(Place.HEAD_HEIGHT, socket ? d : 0.66 * d);
        double flats = sizes.or(Place.FLATS, 1.6 * d);
        double key = sizes.or(Place.SOCKET, 0.75 * d);
        double wide = socket ? sizes.or(Place.HEAD, 1.5 * d) / 2 : flats / Math.sqrt(3);
        double length = sizes.or(Place.LENGTH, 3 * d);
        Sketch side = PartFigure.of(FaceView.ALONE);
        double collar = sizes.or(Place.COLLAR, 0) / 2;
        shank(side, head, head + length, d);
        if (collar > wide) {
            side.ring(Fill.PLAIN, 0.75 * head, head, 0, collar);
        }
        FaceView face = new FaceView();
        if (socket) {
            side.ring(Fill.PLAIN, 0, head, 0, wide);
            side.line(Mark.EDGE, at(0, key / 2), at(0.5 * head, key / 2));
            face.annulus(Fill.PLAIN, 0, wide).piece(Fill.OPEN, FaceView.hexagon(key));
        } else {
            hexHead(side, collar > wide ? 0.75 * head : head, wide);
            if (collar > wide) {
                face.annulus(Fill.PLAIN, 0, collar);
            }
            face.piece(Fill.PLAIN, FaceView.hexagon(flats)).circle(Mark.EDGE, 0.47 * flats);
        }
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .needs(Place.THREAD, Place.LENGTH)
                .needs(socket ? Place.HEAD : Place.FLATS)
                .words(Line.RIGHT, subject.thread(), head + length, d / 2)
                .size(Line.ABOVE, Place.LENGTH, "", head, head + length)
                .size(Line.BELOW, Place.HEAD_HEIGHT, "", 0, head)
                .size(Line.FACE, socket ? Place.SOCKET : Place.FLATS, "", 0, (socket ? key : flats) / 2)
                .build();
    }

    private static void hexHead(Sketch side, double head, double wide) {
        side.polygon(Fill.PLAIN, at(0, 0), at(0, 0.84 * wide), at(0.12 * head, wide), at(head, wide), at(head, 0));
        side.line(Mark.EDGE, at(0.06 * head, wide / 2), at(head, wide / 2));
    }

    private static void shank(Sketch side, double from, double to, double d) {
        double chamfer = Math.min(0.12 * d, 0.3 * (to - from));
        side.polygon(
                Fill.PLAIN, at(from, 0), at(from, d / 2), at(to - chamfer, d / 2), at(to, d / 2 - chamfer), at(to, 0));
        side.line(Mark.THREAD, at(from + 0.1 * (to - from), 0.42 * d), at(to - chamfer, 0.42 * d));
        side.across(Mark.EDGE, to - chamfer, d / 2);
    }

    /** A nut in half section with its hexagon. */
    PartDrawing nut() {
        double bore = sizes.or(Place.THREAD, sizes.or(Place.INSIDE, 24e-3)) / 2;
        double outer = Math.max(sizes.or(Place.OUTSIDE, 3.1 * bore) / 2, 1.15 * bore);
        double width = sizes.or(Place.WIDTH, 0.8 * bore);
        Sketch side = PartFigure.of(FaceView.ALONE);
        double chamfer = Math.min(0.18 * width, 0.3 * (outer - bore));
        side.polygon(
                Fill.FALLING,
                at(0, bore),
                at(0, outer - chamfer),
                at(chamfer, outer),
                at(width - chamfer, outer),
                at(width, outer - chamfer),
                at(width, bore));
        side.line(Mark.THREAD, at(0, 1.07 * bore), at(width, 1.07 * bore));
        PartFigure drawn = subject.figure().orElse(side.build());
        Area hexagon = FaceView.without(FaceView.hexagon(2 * outer * 0.866), FaceView.disc(0, 0, bore));
        FaceView face = new FaceView()
                .annulus(Fill.OPEN, bore, outer)
                .piece(Fill.PLAIN, hexagon)
                .threadCircle(1.07 * bore);
        double from = drawn.box().getMinX();
        double to = drawn.box().getMaxX();
        DrawingDraft drawing = PartDrawing.of(subject, drawn).face(face.build()).half();
        if (!sizes.has(Place.OUTSIDE, Place.WIDTH)) {
            drawing.notToScale();
        }
        drawing.size(Line.LEFT, Place.OUTSIDE, "⌀", from, outer).size(Line.ABOVE, Place.WIDTH, "", from, to);
        return subject.thread().isEmpty()
                ? drawing.size(Line.RIGHT, Place.INSIDE, "⌀", to, bore).build()
                : drawing.words(Line.RIGHT, subject.thread(), to, bore).build();
    }

    /** A plug with its hexagon and collar; a taper one without a collar. */
    PartDrawing plug() {
        double d = sizes.or(Place.THREAD, 20e-3);
        boolean taper = subject.thread().contains("NPT") || subject.thread().startsWith("R");
        double flats = sizes.or(Place.FLATS, 0.8 * d);
        double collar = taper ? 0 : sizes.or(Place.COLLAR, 1.3 * d) / 2;
        double head = sizes.or(Place.HEAD_HEIGHT, 0.4 * d);
        double rim = taper ? 0 : 0.14 * d;
        double length = sizes.or(Place.LENGTH, 0.6 * d);
        double start = head + rim;
        double end = start + length;
        Sketch side = PartFigure.of(FaceView.ALONE);
        if (taper) {
            double less = length / 32;
            side.polygon(Fill.PLAIN, at(start, 0), at(start, d / 2), at(end, d / 2 - less), at(end, 0));
            side.line(Mark.THREAD, at(start, 0.43 * d), at(end, 0.43 * d - less));
        } else {
            shank(side, start, end, d);
            side.ring(Fill.PLAIN, head, start, 0, collar);
        }
        hexHead(side, head, flats / Math.sqrt(3));
        FaceView face = new FaceView();
        if (collar > 0) {
            face.annulus(Fill.PLAIN, 0, collar);
        } else {
            face.annulus(Fill.PLAIN, 0, d / 2);
        }
        face.piece(Fill.PLAIN, FaceView.hexagon(flats)).circle(Mark.EDGE, 0.45 * flats);
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .needs(Place.THREAD, Place.FLATS, Place.LENGTH)
                .words(Line.RIGHT, subject.thread(), end, d / 2)
                .size(Line.ABOVE, Place.LENGTH, "", start, end)
                .size(Line.BELOW, Place.HEAD_HEIGHT, "", 0, head)
                .size(Line.FACE, Place.FLATS, "", 0, flats / 2)
                .size(Line.LEFT, Place.COLLAR, "⌀", head, collar)
                .build();
    }

    PartDrawing pin() {
        double d = sizes.or(Place.OUTSIDE, 8e-3);
        double length = sizes.or(Place.LENGTH, 3 * d);
        double chamfer = Math.min(sizes.or(Place.CHAMFER, 0.15 * d), 0.3 * d);
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.polygon(
                Fill.PLAIN,
                at(0, 0),
                at(0, d / 2 - 0.6 * chamfer),
                at(chamfer, d / 2),
                at(length - chamfer, d / 2),
                at(length, d / 2 - 0.6 * chamfer),
                at(length, 0));
        side.across(Mark.EDGE, chamfer, d / 2).across(Mark.EDGE, length - chamfer, d / 2);
        FaceView face = new FaceView().annulus(Fill.PLAIN, 0, d / 2).circle(Mark.EDGE, d / 2 - 0.6 * chamfer);
        return rod(side, face, d, length).build();
    }

    private DrawingDraft rod(Sketch side, FaceView face, double d, double length) {
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .needs(Place.OUTSIDE, Place.LENGTH)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", 0, d / 2)
                .size(Line.ABOVE, Place.LENGTH, "", 0, length);
    }

    /** A slotted tube, in half section; its slot is to the right in the face. */
    PartDrawing springPin() {
        double d = sizes.or(Place.OUTSIDE, 5e-3);
        double length = sizes.or(Place.LENGTH, 5 * d);
        double wall = 0.2 * d;
        double chamfer = 0.18 * d;
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.polygon(
                Fill.FALLING,
                at(0, d / 2 - wall),
                at(0, d / 2 - 0.4 * wall),
                at(chamfer, d / 2),
                at(length - chamfer, d / 2),
                at(length, d / 2 - 0.4 * wall),
                at(length, d / 2 - wall));
        Area ring = FaceView.ringArea(d / 2 - wall, d / 2);
        FaceView face = new FaceView().piece(Fill.PLAIN, FaceView.without(ring, FaceView.box(0, -0.1 * d, d, 0.1 * d)));
        return rod(side, face, d, length).half().build();
    }

    /** A parallel key with round ends, from the side and from its end. */
    PartDrawing key() {
        double b = sizes.or(Place.WIDTH, 8e-3);
        double h = sizes.or(Place.HEIGHT, 7e-3);
        double length = sizes.or(Place.LENGTH, 4 * b);
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.PLAIN, 0, length, 0, h / 2);
        side.across(Mark.EDGE, b / 2, h / 2).across(Mark.EDGE, length - b / 2, h / 2);
        FaceView face = new FaceView().piece(Fill.FALLING, FaceView.box(-b / 2, -h / 2, b / 2, h / 2));
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .needs(Place.WIDTH, Place.HEIGHT, Place.LENGTH)
                .size(Line.LEFT, Place.HEIGHT, "", 0, h / 2)
                .size(Line.ABOVE, Place.LENGTH, "", 0, length)
                .size(Line.FACE, Place.WIDTH, "", 0, b / 2)
                .build();
    }

    PartDrawing ball() {
        double r = sizes.or(Place.OUTSIDE, 8e-3) / 2;
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.both(Fill.PLAIN, FaceView.disc(r, 0, r));
        return PartDrawing.of(subject, side.build())
                .needs(Place.OUTSIDE)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", 0, r)
                .build();
    }
}
