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

/** What has teeth, and shafts, alone: gears, hubs, sliding sleeves, blocker rings, splines. */
final class ToothedDrawings {
    /** Half the angle of the cone of a usual blocker ring, rad: 6.5 degrees; common practice, no source. */
    private static final double CONE = Math.toRadians(6.5);

    private static final int MOST_TEETH = 90;

    private final PartSubject subject;
    private final PartSizes sizes;
    private final double inner;
    private final double outer;
    private final double width;

    ToothedDrawings(PartSubject subject) {
        this.subject = subject;
        this.sizes = subject.sizes();
        this.outer = sizes.or(Place.OUTSIDE, 80e-3) / 2;
        this.inner = sizes.has(Place.OUTSIDE) ? sizes.or(Place.INSIDE, 0) / 2 : 0.45 * outer;
        this.width = sizes.or(Place.WIDTH, 0.5 * outer);
    }

    PartDrawing gear() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        double module = sizes.or(Place.MODULE, 0.05 * outer);
        side.ring(Fill.RISING, 0, width, inner, outer - 2.25 * module);
        side.ring(Fill.PLAIN, 0, width, outer - 2.25 * module, outer);
        int teeth = (int) sizes.or(Place.TEETH, 0);
        FaceView face = new FaceView();
        if (teeth > 0 && teeth <= MOST_TEETH) {
            face.piece(Fill.PLAIN, bored(FaceView.toothed(teeth, outer - 2.25 * module, outer)));
        } else {
            face.annulus(Fill.PLAIN, inner, outer).circle(Mark.EDGE, outer - 2.25 * module);
        }
        face.circle(Mark.CENTRE, outer - module);
        return sized(subject.figure().orElse(side.build()), face);
    }

    private Area bored(Area area) {
        return inner > 0 ? FaceView.without(area, FaceView.disc(0, 0, inner)) : area;
    }

    PartDrawing bevel() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        double thick = 0.7 * width;
        side.polygon(
                Fill.FALLING,
                at(0, inner),
                at(0, 0.62 * outer),
                at(0.45 * width, 0.94 * outer),
                at(thick, 0.94 * outer),
                at(width, 0.75 * outer),
                at(width, inner));
        side.polygon(
                Fill.PLAIN,
                at(0, 0.62 * outer),
                at(-0.12 * width, 0.66 * outer),
                at(0.36 * width, outer),
                at(0.45 * width, 0.94 * outer));
        FaceView face = new FaceView().annulus(Fill.PLAIN, inner, outer).circle(Mark.EDGE, 0.66 * outer);
        for (int i = 0; i < 24; i++) {
            double a = 2 * Math.PI * i / 24;
            face.line(
                    Mark.EDGE,
                    0.67 * outer * Math.cos(a),
                    0.67 * outer * Math.sin(a),
                    0.99 * outer * Math.cos(a + 0.16),
                    0.99 * outer * Math.sin(a + 0.16));
        }
        return sized(subject.figure().orElse(side.build()), face);
    }

    PartDrawing hub() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.FALLING, 0, width, inner, inner + 0.25 * (outer - inner));
        side.ring(Fill.FALLING, 0.3 * width, 0.7 * width, inner, outer);
        side.ring(Fill.PLAIN, 0.1 * width, 0.9 * width, 0.93 * outer, outer);
        Area body = FaceView.toothed(36, 0.94 * outer, outer);
        Area slots = new Area();
        for (int i = 0; i < 3; i++) {
            double a = Math.PI / 2 + 2 * Math.PI * i / 3;
            slots.add(FaceView.box(0.8 * outer, -0.09 * outer, 1.2 * outer, 0.09 * outer)
                    .createTransformedArea(java.awt.geom.AffineTransform.getRotateInstance(a)));
        }
        Area bore = inner > 0 ? FaceView.toothed(24, 1.06 * inner, inner) : new Area();
        FaceView face = new FaceView()
                .piece(Fill.PLAIN, FaceView.without(body, slots, bore))
                .circle(Mark.EDGE, inner + 0.3 * (outer - inner));
        return sized(subject.figure().orElse(side.build()), face);
    }

    PartDrawing slidingSleeve() {
        double bore = inner > 0 ? inner : 0.8 * outer;
        Sketch side = PartFigure.of(FaceView.ALONE);
        double floor = outer - 0.5 * (outer - bore);
        side.polygon(
                Fill.RISING,
                at(0, bore),
                at(0, outer),
                at(0.39 * width, outer),
                at(0.39 * width, floor),
                at(0.61 * width, floor),
                at(0.61 * width, outer),
                at(width, outer),
                at(width, bore));
        Area teeth = FaceView.toothed(36, 1.05 * bore, bore);
        PartFigure drawn = subject.figure().orElse(side.build());
        FaceView face = new FaceView();
        if (drawn.box().getHeight() > 2.02 * outer) {
            face.annulus(Fill.PLAIN, outer, drawn.box().getHeight() / 2);
        }
        face.piece(Fill.PLAIN, FaceView.without(FaceView.disc(0, 0, outer), teeth))
                .circle(Mark.EDGE, floor);
        return sized(drawn, face);
    }

    /** A blocker ring: its teeth and the wide end of its cone to the left. */
    PartDrawing blockerRing() {
        double own = sizes.has(Place.OUTSIDE) ? width : 0.18 * outer;
        double bore = sizes.has(Place.OUTSIDE) && inner > 0 ? inner : 0.88 * outer;
        double taper = Math.min(own * Math.tan(CONE), 0.4 * (outer - bore));
        double rim = outer - 0.4 * (outer - bore - taper);
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.polygon(Fill.FALLING, at(0, bore + taper), at(0, rim), at(own, rim), at(own, bore));
        side.polygon(
                Fill.PLAIN, at(0.06 * own, rim), at(0.18 * own, outer), at(0.42 * own, outer), at(0.42 * own, rim));
        Area ring = FaceView.without(
                FaceView.with(FaceView.toothed(36, 0.96 * outer, outer), FaceView.disc(0, 0, rim)),
                FaceView.disc(0, 0, bore));
        for (int i = 0; i < 3; i++) {
            double a = Math.PI / 2 + 2 * Math.PI * i / 3;
            ring.subtract(FaceView.box(rim - 0.4 * (rim - bore), -0.13 * outer, 1.2 * outer, 0.13 * outer)
                    .createTransformedArea(java.awt.geom.AffineTransform.getRotateInstance(a)));
        }
        FaceView face = new FaceView().piece(Fill.PLAIN, ring).circle(Mark.EDGE, bore + taper);
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .half()
                .detail()
                .needs(Place.OUTSIDE, Place.INSIDE, Place.WIDTH)
                .size(Line.FACE, Place.INSIDE, "⌀", 0, bore)
                .size(Line.FACE, Place.OUTSIDE, "⌀", 0, outer)
                .size(Line.ABOVE, Place.WIDTH, "", 0, own)
                .point(
                        0.5 * own,
                        bore + 0.5 * taper,
                        0.5 * own,
                        bore - 0.35 * own,
                        "cone, wide end to its wheel: look for threads worn smooth")
                .build();
    }

    PartDrawing spline() {
        int teeth = (int) sizes.or(Place.TEETH, 20);
        double root = Math.min(sizes.or(Place.ROOT, 1.8 * outer) / 2, 0.98 * outer);
        double length = 1.6 * outer;
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.PLAIN, 0, length, 0, outer);
        side.line(Mark.EDGE, at(0, root), at(length, root));
        FaceView face = new FaceView().piece(Fill.PLAIN, FaceView.toothed(teeth, root, outer));
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .needs(Place.OUTSIDE, Place.ROOT, Place.TEETH)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", 0, outer)
                .size(Line.RIGHT, Place.ROOT, "⌀", length, root)
                .build();
    }

    /** A shaft by its steps; without them a stepped shaft as such. */
    PartDrawing shaft() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.PLAIN, 0, 40e-3, 0, 10e-3);
        side.ring(Fill.PLAIN, 40e-3, 110e-3, 0, 15e-3);
        side.ring(Fill.PLAIN, 110e-3, 150e-3, 0, 11e-3);
        PartFigure drawn = subject.figure().orElse(side.build());
        double from = drawn.box().getMinX();
        double to = drawn.box().getMaxX();
        return PartDrawing.of(subject, drawn)
                .needs(Place.LENGTH)
                .size(Line.ABOVE, Place.LENGTH, "", from, to)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", from, drawn.box().getHeight() / 2)
                .build();
    }

    private PartDrawing sized(PartFigure side, FaceView face) {
        double[] span = subject.span(side);
        DrawingDraft drawing =
                PartDrawing.of(subject, side).face(face.build()).half().needs(Place.OUTSIDE, Place.WIDTH);
        return drawing.size(Line.LEFT, Place.OUTSIDE, "⌀", span[0], outer)
                .size(Line.RIGHT, Place.INSIDE, "⌀", side.box().getMaxX(), inner)
                .size(Line.ABOVE, Place.WIDTH, "", span[0], span[1])
                .build();
    }
}
