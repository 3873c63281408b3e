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

/** Rings alone: seals, O-rings, retaining rings, shims, washers, bushes and whatever else is turned. */
final class RingDrawings {
    private final PartSubject subject;
    private final PartSizes sizes;

    RingDrawings(PartSubject subject) {
        this.subject = subject;
        this.sizes = subject.sizes();
    }

    /** A lip seal with its case, lip and spring; its spring side is to the right. */
    PartDrawing seal() {
        double inner = sizes.or(Place.INSIDE, 40e-3) / 2;
        double outer = Math.max(sizes.or(Place.OUTSIDE, 55e-3) / 2, inner + 1e-3);
        double width = sizes.or(Place.WIDTH, 8e-3);
        double wall = outer - inner;
        double skin = Math.min(0.13 * wall, 0.16 * width);
        double spring = Math.min(0.12 * wall, 0.13 * width);
        double lipAt = 0.62 * width;
        double neck = inner + 0.42 * wall;
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.polygon(
                Fill.RISING,
                at(0, inner + 0.3 * wall),
                at(0, outer),
                at(width, outer),
                at(width, outer - 1.5 * skin),
                at(2.2 * skin, outer - 2.4 * skin),
                at(2.4 * skin, neck),
                at(lipAt - 1.4 * spring, inner + 0.3 * wall),
                at(lipAt + 1.6 * spring, inner + 0.3 * wall),
                at(lipAt + 1.6 * spring, inner + 0.16 * wall),
                at(lipAt, inner),
                at(0.3 * width, inner + 0.22 * wall));
        side.polygon(
                Fill.BLACK,
                at(0.5 * skin, inner + 0.36 * wall),
                at(0.5 * skin, outer - 0.5 * skin),
                at(0.94 * width, outer - 0.5 * skin),
                at(0.94 * width, outer - 1.2 * skin),
                at(1.2 * skin, outer - 1.2 * skin),
                at(1.2 * skin, inner + 0.36 * wall));
        side.both(Fill.PLAIN, FaceView.disc(lipAt, inner + 0.3 * wall + spring, spring));
        FaceView face = new FaceView()
                .annulus(Fill.PLAIN, inner + 0.36 * wall, outer)
                .annulus(Fill.OPEN, inner, inner + 0.36 * wall)
                .circle(Mark.EDGE, inner + 0.14 * wall);
        return detailed(side.build(), face, 0, width, inner, outer)
                .point(lipAt, inner, width + 0.22 * wall, inner + 0.06 * wall, "sealing lip")
                .point(
                        lipAt,
                        inner + 0.3 * wall + spring,
                        width + 0.22 * wall,
                        inner + 0.62 * wall,
                        "spring of the lip: this side to the oil")
                .build();
    }

    PartDrawing oRing() {
        double inner = sizes.or(Place.INSIDE, 32e-3) / 2;
        double cord = sizes.or(Place.CORD, 3e-3);
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.both(Fill.CLOSE, FaceView.disc(cord / 2, inner + cord / 2, cord / 2));
        FaceView face = new FaceView().annulus(Fill.PLAIN, inner, inner + cord).circle(Mark.CENTRE, inner + cord / 2);
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .half()
                .detail()
                .needs(Place.INSIDE, Place.CORD)
                .size(Line.FACE, Place.INSIDE, "⌀", 0, inner)
                .size(Line.ABOVE, Place.CORD, "⌀", 0, cord)
                .build();
    }

    /** A retaining ring as it is when free, with its gap, lugs and holes; outside pointing lugs where it sits on a shaft. */
    PartDrawing retaining(boolean bore) {
        double nominal = sizes.or(Place.FITS, bore ? sizes.or(Place.OUTSIDE, 30e-3) : sizes.or(Place.INSIDE, 30e-3));
        double thick = sizes.or(Place.WIDTH, 1.5e-3);
        boolean measured = !bore && sizes.has(Place.INSIDE, Place.OUTSIDE);
        double free = bore ? sizes.or(Place.OUTSIDE, 1.07 * nominal) / 2 : sizes.or(Place.INSIDE, 0.93 * nominal) / 2;
        double usual = 0.09 * nominal + 1e-3;
        double radial = measured ? sizes.or(Place.OUTSIDE, 0) / 2 - free : sizes.or(Place.RING_WIDTH, usual);
        double inner = bore ? free - radial : free;
        double outer = bore ? free : free + radial;
        double lug = Math.max(sizes.or(Place.LUG, 1.5 * radial), 1.1 * radial);
        double hole = Math.min(sizes.or(Place.HOLE, 0.45 * lug), 0.6 * lug) / 2;
        double middle = bore ? outer - lug / 2 : inner + lug / 2;
        double spread = Math.min(0.42, 1.25 * lug / (2 * middle) + 0.06);
        Area ring = FaceView.ringArea(inner, outer);
        Area gap = FaceView.polygon(
                0,
                0,
                2 * outer * Math.cos(0.5 * spread),
                2 * outer * Math.sin(0.5 * spread),
                2 * outer * Math.cos(0.5 * spread),
                -2 * outer * Math.sin(0.5 * spread));
        Area body = FaceView.without(ring, gap);
        for (int way : new int[] {1, -1}) {
            double angle = way * (0.5 * spread + 0.62 * lug / middle);
            double x = middle * Math.cos(angle);
            double y = middle * Math.sin(angle);
            body = FaceView.without(FaceView.with(body, FaceView.disc(x, y, lug / 2)), FaceView.disc(x, y, hole));
        }
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.BLACK, 0, thick, inner, outer);
        PartFigure drawn = subject.figure().orElse(side.build());
        double from = drawn.box().getMinX();
        double to = drawn.box().getMaxX();
        DrawingDraft drawing = PartDrawing.of(subject, drawn)
                .face(new FaceView().piece(Fill.PLAIN, body).build())
                .half()
                .needs(Place.WIDTH, bore ? Place.OUTSIDE : Place.INSIDE)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", from, outer)
                .size(Line.RIGHT, Place.INSIDE, "⌀", to, inner)
                .size(Line.ABOVE, Place.WIDTH, "", from, to);
        return drawing.build();
    }

    PartDrawing shim() {
        return plain(Fill.BLACK, 0.5e-3);
    }

    /** A washer, spacer, bush or ring. */
    PartDrawing ring() {
        double outer = sizes.or(Place.OUTSIDE, 40e-3);
        double width = sizes.or(Place.WIDTH, 0.15 * outer);
        return plain(width < 0.03 * outer ? Fill.BLACK : Fill.FALLING, 0.15 * outer);
    }

    private PartDrawing plain(Fill fill, double usual) {
        double outer = sizes.or(Place.OUTSIDE, sizes.or(Place.INSIDE, sizes.or(Place.FITS, 32e-3)) * 1.3) / 2;
        double inner = Math.min(sizes.or(Place.INSIDE, sizes.or(Place.FITS, 1.5 * outer)) / 2, 0.97 * outer);
        double width = sizes.or(Place.WIDTH, usual);
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(fill, 0, width, inner, outer);
        PartFigure drawn = subject.figure().orElse(side.build());
        FaceView face = new FaceView().annulus(Fill.PLAIN, inner, drawn.box().getHeight() / 2);
        if (drawn.box().getHeight() / 2 > 1.01 * outer) {
            face.circle(Mark.EDGE, outer);
        }
        double[] span = subject.span(drawn);
        return sized(drawn, face, span[0], span[1], inner, outer).build();
    }

    /** Something turned as the unit file draws it. */
    PartDrawing turned() {
        if (subject.figure().isEmpty()) {
            return ring();
        }
        PartFigure side = subject.figure().get();
        double outer = side.box().getHeight() / 2;
        double inner = sizes.or(Place.INSIDE, 0) / 2;
        FaceView face = new FaceView().annulus(Fill.PLAIN, inner, outer);
        double main = sizes.or(Place.OUTSIDE, 2 * outer) / 2;
        if (main < 0.99 * outer) {
            face.circle(Mark.EDGE, main);
        }
        holes(face, inner, outer);
        double[] span = subject.span(side);
        return sized(side, face, span[0], span[1], inner, main).build();
    }

    private void holes(FaceView face, double inner, double outer) {
        if (subject.holes() > 0) {
            double circle = (0.35 * inner + 0.65 * outer);
            face.round(Fill.OPEN, FaceView.disc(circle, 0, 0.05 * outer), Math.min(subject.holes(), 24));
        }
    }

    /** With the section of the ring enlarged, and the diameters at the face. */
    private DrawingDraft detailed(PartFigure side, FaceView face, double from, double to, double inner, double outer) {
        return PartDrawing.of(subject, side)
                .face(face.build())
                .half()
                .detail()
                .needs(Place.OUTSIDE, Place.INSIDE, Place.WIDTH)
                .size(Line.FACE, Place.INSIDE, "⌀", 0, inner)
                .size(Line.FACE, Place.OUTSIDE, "⌀", 0, outer)
                .size(Line.ABOVE, Place.WIDTH, "", from, to);
    }

    private DrawingDraft sized(PartFigure side, FaceView face, double from, double to, double inner, double outer) {
        return PartDrawing.of(subject, side)
                .face(face.build())
                .half()
                .needs(Place.OUTSIDE, Place.WIDTH)
                .needs(subject.form() == PartForm.TURNED ? Place.OUTSIDE : Place.INSIDE)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", from, outer)
                .size(Line.RIGHT, Place.INSIDE, "⌀", side.box().getMaxX(), inner)
                .size(Line.ABOVE, Place.WIDTH, "", from, to);
    }
}
