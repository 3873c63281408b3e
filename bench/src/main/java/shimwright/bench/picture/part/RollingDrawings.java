package shimwright.bench.picture.part;

import static shimwright.bench.picture.section.PartFigure.at;

import java.awt.geom.Area;
import shimwright.bench.picture.part.PartDrawing.DrawingDraft;
import shimwright.bench.picture.part.PartDrawing.Line;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.bench.picture.section.BearingFigures;
import shimwright.bench.picture.section.Extent;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;

/**
 * Rolling bearings alone. Boundary sizes are the known ones; rings and rollers inside are drawn in the proportions usual for the
 * kind (common practice, no source).
 */
final class RollingDrawings {
    private static final double BORE = 30e-3;
    private static final double OUTSIDE = 62e-3;
    private static final double WIDTH = 16e-3;

    private final PartSubject subject;
    private final double inner;
    private final double outer;
    private final double width;

    RollingDrawings(PartSubject subject) {
        this.subject = subject;
        PartSizes sizes = subject.sizes();
        double free = sizes.has(Place.OUTSIDE) ? 0.6 * sizes.or(Place.OUTSIDE, OUTSIDE) : BORE;
        this.inner = sizes.or(Place.INSIDE, free) / 2;
        this.outer = Math.max(sizes.or(Place.OUTSIDE, OUTSIDE * 2 * inner / BORE) / 2, 1.05 * inner);
        this.width = sizes.or(Place.WIDTH, 0.6 * WIDTH / (OUTSIDE - BORE) * 2 * (outer - inner));
    }

    private double wall() {
        return outer - inner;
    }

    private Extent whole() {
        return new Extent(0, width, inner, outer);
    }

    PartDrawing ball() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        double middle = (inner + outer) / 2;
        int rows = (int) Math.round(subject.sizes().or(Place.ROWS, 1));
        double ball = Math.min(0.3 * wall(), 0.4 * width / rows);
        if (rows < 2) {
            BearingFigures.whole(side, whole());
        } else {
            side.ring(Fill.CLOSE, 0, width, inner, middle - 0.45 * ball);
            side.ring(Fill.CLOSE, 0, width, middle + 0.45 * ball, outer);
            side.both(Fill.PLAIN, FaceView.disc(0.25 * width, middle, ball));
            side.both(Fill.PLAIN, FaceView.disc(0.75 * width, middle, ball));
        }
        FaceView face = rings(middle - 0.45 * ball, middle + 0.45 * ball);
        balls(face, middle, ball);
        return bounded(side.build(), face);
    }

    /** Angular contact: each row has one shoulder and a line of contact that leans; two rows lean back to back. */
    PartDrawing angular() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        double middle = (inner + outer) / 2;
        int rows = subject.sizes().or(Place.ROWS, 1) > 1 ? 2 : 1;
        double ball = Math.min(0.3 * wall(), 0.4 * width / rows);
        double low = 0.3 * ball;
        double high = 0.85 * ball;
        double first = rows == 1 ? width : width / 2;
        side.polygon(
                Fill.CLOSE,
                at(0, middle + (rows == 1 ? low : high)),
                at(0, outer),
                at(width, outer),
                at(width, middle + high),
                at(0.75 * width, middle + (rows == 1 ? high : low)),
                at(0.25 * width, middle + low));
        side.polygon(
                Fill.CLOSE,
                at(0, inner),
                at(0, middle - (rows == 1 ? high : low)),
                at(0.25 * width, middle - (rows == 1 ? high : low)),
                at(0.5 * width, middle - (rows == 1 ? low : high)),
                at(0.75 * width, middle - low),
                at(width, middle - low),
                at(width, inner));
        for (int row = 0; row < rows; row++) {
            double w = first * (row + 0.5);
            double lean = (rows == 1 || row == 1 ? -1 : 1) * 1.5 * ball;
            side.both(Fill.PLAIN, FaceView.disc(w, middle, ball));
            side.line(Mark.THREAD, at(w + 0.7 * lean, middle - 1.5 * ball), at(w - 0.7 * lean, middle + 1.5 * ball));
        }
        FaceView face = rings(middle - 0.45 * ball, middle + 0.45 * ball);
        balls(face, middle, ball);
        return bounded(side.build(), face);
    }

    private FaceView rings(double innerRing, double outerRing) {
        return new FaceView()
                .annulus(Fill.OPEN, innerRing, outerRing)
                .annulus(Fill.PLAIN, outerRing, outer)
                .annulus(Fill.PLAIN, inner, innerRing);
    }

    private static void balls(FaceView face, double middle, double ball) {
        int count = (int) Math.max(3, Math.floor(2 * Math.PI * middle / (2.35 * ball)));
        face.round(Fill.OPEN, FaceView.disc(middle, 0, ball), Math.min(count, 36));
    }

    PartDrawing roller() {
        double raceIn = subject.sizes().or(Place.INNER_RACEWAY, 2 * inner + 0.48 * wall()) / 2;
        double raceOut = subject.sizes().or(Place.OUTER_RACEWAY, 2 * outer - 0.4 * wall()) / 2;
        if (raceIn <= inner || raceOut >= outer || raceOut - raceIn < 0.1 * wall()) {
            raceIn = inner + 0.24 * wall();
            raceOut = outer - 0.2 * wall();
        }
        if (subject.figure().isPresent()) {
            return outerRing(subject.figure().get());
        }
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.CLOSE, 0, width, inner, raceIn);
        BearingFigures.outer(side, new Extent(0, width, raceOut, outer), new Extent(0, width, inner, raceIn));
        double roller = (raceOut - raceIn) / 2;
        FaceView face = rings(raceIn, outer - 0.9 * (outer - raceOut));
        balls(face, (raceIn + raceOut) / 2, 0.9 * roller);
        return bounded(side.build(), face);
    }

    /** An outer ring with its rollers as the unit file draws it. */
    private PartDrawing outerRing(PartFigure side) {
        double low = outer;
        for (PartFigure.Piece piece : side.pieces()) {
            if (piece.fill() == Fill.PLAIN) {
                Area upper = new Area(piece.outline());
                upper.intersect(
                        FaceView.box(side.box().getMinX() - 1, 0, side.box().getMaxX() + 1, outer));
                low = Math.min(low, upper.getBounds2D().getMinY());
            }
        }
        FaceView face = new FaceView().annulus(Fill.PLAIN, inner - 0.2 * wall(), outer);
        balls(face, (low + inner) / 2, 0.96 * Math.max(inner - low, 0.2 * wall()) / 2);
        return bounded(side, face);
    }

    PartDrawing taper() {
        PartSizes sizes = subject.sizes();
        double cone = Math.min(sizes.or(Place.CONE_WIDTH, 0.94 * width), width);
        double cup = Math.min(sizes.or(Place.CUP_WIDTH, 0.77 * width), width);
        double bore = sizes.or(Place.CUP_INSIDE, 2 * (outer - 0.4 * wall())) / 2;
        Extent coneRing = new Extent(0, cone, inner, inner + 0.47 * wall());
        Extent cupRing = new Extent(width - cup, width, Math.min(bore, outer - 0.12 * wall()), outer);
        Sketch side = PartFigure.of(FaceView.ALONE);
        BearingFigures.cup(side, cupRing, coneRing);
        BearingFigures.cone(side, coneRing, cupRing);
        FaceView face = rings(coneRing.outer() - 0.2 * wall(), bore + 0.16 * wall());
        balls(face, inner + 0.52 * wall(), 0.17 * wall());
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .half()
                .needs(Place.INSIDE, Place.OUTSIDE, Place.WIDTH)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", 0, outer)
                .size(Line.RIGHT, Place.INSIDE, "⌀", cone, inner)
                .size(Line.ABOVE, Place.WIDTH, "", 0, width)
                .size(Line.BELOW, Place.CONE_WIDTH, "", 0, cone)
                .size(Line.BELOW, Place.CUP_WIDTH, "", width - cup, width)
                .build();
    }

    /** A cone or a cup as the unit file draws it; without a shape of its own as the ring of a usual bearing. */
    PartDrawing taperRing(boolean cup) {
        double middle = (inner + outer) / 2;
        PartFigure side = subject.figure().orElseGet(() -> loose(cup));
        double to = side.box().getMaxX();
        FaceView face = new FaceView();
        double outside = side.box().getHeight() / 2;
        if (cup) {
            face.annulus(Fill.PLAIN, middle, outer).circle(Mark.EDGE, inner + 0.1 * wall());
        } else {
            face.annulus(Fill.PLAIN, inner, inner + 0.6 * wall());
            balls(face, (outside + inner + 0.6 * wall()) / 2, (outside - inner - 0.6 * wall()) / 2);
        }
        double[] span = subject.span(side);
        return PartDrawing.of(subject, side)
                .face(face.build())
                .half()
                .needs(Place.INSIDE, Place.OUTSIDE, Place.WIDTH)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", span[0], outer)
                .size(Line.RIGHT, Place.INSIDE, "⌀", to, inner)
                .size(Line.ABOVE, Place.WIDTH, "", span[0], span[1])
                .build();
    }

    private PartFigure loose(boolean cup) {
        Sketch side = PartFigure.of(FaceView.ALONE);
        Extent coneRing = new Extent(0, width, inner, inner + 0.47 * wall());
        Extent cupRing = new Extent(0.2 * width, 1.1 * width, outer - 0.4 * wall(), outer);
        if (cup) {
            BearingFigures.cup(side, cupRing, coneRing);
        } else {
            BearingFigures.cone(side, coneRing, cupRing);
        }
        return side.build();
    }

    PartDrawing needles(boolean shell, boolean innerRing) {
        double race = innerRing ? subject.sizes().or(Place.INNER_RACEWAY, 2 * inner + 0.7 * wall()) / 2 : inner;
        double wall = outer - race;
        Sketch side = PartFigure.of(FaceView.ALONE);
        double top = shell ? outer - 0.28 * wall : outer;
        if (shell) {
            double lip = 0.09 * width;
            side.polygon(
                    Fill.CLOSE,
                    at(0, race + 0.2 * wall),
                    at(0, outer),
                    at(width, outer),
                    at(width, race + 0.2 * wall),
                    at(width - lip, race + 0.2 * wall),
                    at(width - lip, top),
                    at(lip, top),
                    at(lip, race + 0.2 * wall));
            side.ring(Fill.PLAIN, 0.13 * width, 0.87 * width, race, top);
        } else {
            BearingFigures.needles(side, new Extent(0, width, race, top));
        }
        if (innerRing) {
            side.ring(Fill.CLOSE, 0, width, inner, race);
        }
        FaceView face = new FaceView();
        if (innerRing) {
            face.annulus(Fill.PLAIN, inner, race);
        }
        double roller = (top - race) / 2;
        if (shell) {
            face.annulus(Fill.PLAIN, top, outer).annulus(Fill.OPEN, race + 0.05 * wall, top);
        } else {
            face.annulus(Fill.OPEN, race + 0.15 * wall, top - 0.15 * wall);
        }
        int count = (int) Math.max(6, Math.floor(2 * Math.PI * (race + roller) / (3.1 * roller)));
        face.round(Fill.PLAIN, FaceView.disc(race + roller, 0, 0.92 * roller), Math.min(count, 48));
        return bounded(side.build(), face);
    }

    PartDrawing thrustNeedles() {
        double from = inner + 0.14 * wall();
        double to = outer - 0.12 * wall();
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.CLOSE, 0.18 * width, 0.82 * width, inner, outer);
        side.ring(Fill.PLAIN, 0, width, from, to);
        FaceView face = new FaceView().annulus(Fill.OPEN, inner, outer);
        double thick = Math.min(0.5 * width, 0.1 * inner);
        int count = (int) Math.min(36, Math.floor(2 * Math.PI * from / (3.2 * thick)));
        Area needle = FaceView.box(from, -thick / 2, to, thick / 2);
        face.round(Fill.PLAIN, needle, Math.max(count, 8));
        return bounded(side.build(), face);
    }

    PartDrawing thrustBall() {
        double middle = (inner + outer) / 2;
        double ball = Math.min(0.3 * width, 0.34 * wall());
        double washer = 0.34 * width;
        double loose = subject.sizes().or(Place.INNER_RACEWAY, 2 * inner + 0.06 * wall()) / 2;
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.CLOSE, 0, washer, inner, outer - 0.02 * wall());
        side.ring(Fill.CLOSE, width - washer, width, loose, outer);
        side.both(Fill.PLAIN, FaceView.disc(width / 2, middle, ball));
        FaceView face = new FaceView().annulus(Fill.PLAIN, inner, outer).circle(Mark.CENTRE, middle);
        return bounded(side.build(), face);
    }

    private PartDrawing bounded(PartFigure side, FaceView face) {
        PartFigure drawn = subject.figure().orElse(side);
        double from = drawn.box().getMinX();
        double to = drawn.box().getMaxX();
        DrawingDraft drawing = PartDrawing.of(subject, drawn)
                .face(face.build())
                .half()
                .needs(Place.INSIDE, Place.OUTSIDE, Place.WIDTH)
                .size(Line.LEFT, Place.OUTSIDE, "⌀", from, outer)
                .size(Line.RIGHT, Place.INSIDE, "⌀", to, inner)
                .size(Line.ABOVE, Place.WIDTH, "", from, to);
        return drawing.build();
    }
}
