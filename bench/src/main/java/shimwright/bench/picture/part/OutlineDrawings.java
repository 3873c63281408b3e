package shimwright.bench.picture.part;

import static shimwright.bench.picture.section.PartFigure.at;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import shimwright.bench.picture.part.PartDrawing.Line;
import shimwright.bench.picture.part.PartSize.Place;
import shimwright.bench.picture.section.PartFigure;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;

/** Outlines of what is not round, as such a part usually looks; of its size they say nothing, so they are drawn on a frame of 100. */
final class OutlineDrawings {
    private final PartSubject subject;

    OutlineDrawings(PartSubject subject) {
        this.subject = subject;
    }

    private PartDrawing flat(FaceView view) {
        return PartDrawing.of(subject, view.build()).notToScale().build();
    }

    /** A shift fork with its pads, its boss and the hole of its pin. */
    PartDrawing fork() {
        Area outer = FaceView.disc(0, 0, 44);
        Area body = FaceView.without(outer, FaceView.disc(0, 0, 33), FaceView.box(-60, -60, 60, -8));
        Area web = FaceView.polygon(-16, 38, 16, 38, 12, 62, -12, 62);
        Area boss = FaceView.disc(0, 72, 16);
        Area fork = FaceView.without(FaceView.with(body, web, boss), FaceView.disc(0, 72, 9));
        Area left = FaceView.box(-45, -14, -31, 4);
        Area right = FaceView.box(31, -14, 45, 4);
        FaceView view = new FaceView()
                .piece(Fill.PLAIN, fork)
                .piece(Fill.CLOSE, left)
                .piece(Fill.CLOSE, right)
                .line(Mark.CENTRE, 0, -16, 0, 96)
                .line(Mark.CENTRE, -24, 72, 24, 72)
                .line(Mark.EDGE, -2.5, 81, -2.5, 88)
                .line(Mark.EDGE, 2.5, 81, 2.5, 88);
        return PartDrawing.of(subject, view.build())
                .notToScale()
                .point(38, -5, 58, -5, "pad: runs in the groove of the sleeve")
                .point(0, 84, 26, 94, "hole of the pin")
                .point(-9, 72, -34, 72, "bore for the rail")
                .build();
    }

    /** A rail with its detent notches and the hole of the pin. */
    PartDrawing rail() {
        double d = subject.sizes().or(Place.OUTSIDE, 16e-3);
        double length = subject.sizes().or(Place.LENGTH, 9 * d);
        boolean plain = subject.name().toLowerCase(java.util.Locale.ROOT).contains("idler");
        double chamfer = 0.08 * d;
        Sketch side = PartFigure.of(FaceView.ALONE);
        Area body = FaceView.polygon(
                0, 0, 0, d / 2 - chamfer, chamfer, d / 2, length - chamfer, d / 2, length, d / 2 - chamfer, length, 0);
        body.add(body.createTransformedArea(java.awt.geom.AffineTransform.getScaleInstance(1, -1)));
        FaceView view = new FaceView();
        if (plain) {
            side.both(Fill.PLAIN, body);
            side.across(Mark.EDGE, length - chamfer, d / 2);
            return PartDrawing.of(subject, side.build())
                    .needs(Place.OUTSIDE, Place.LENGTH)
                    .size(Line.LEFT, Place.OUTSIDE, "⌀", 0, d / 2)
                    .size(Line.ABOVE, Place.LENGTH, "", 0, length)
                    .build();
        }
        for (int i = 0; i < 3; i++) {
            double w = length * (0.72 + 0.09 * i);
            body.subtract(FaceView.polygon(
                    w - 0.22 * d, d, w - 0.22 * d, d / 2, w, 0.3 * d, w + 0.22 * d, d / 2, w + 0.22 * d, d));
        }
        view.piece(Fill.PLAIN, body)
                .piece(Fill.OPEN, FaceView.disc(0.3 * length, 0, 0.16 * d))
                .line(Mark.EDGE, chamfer, -d / 2, chamfer, d / 2);
        return PartDrawing.of(subject, view.build())
                .notToScale()
                .size(Line.LEFT, Place.OUTSIDE, "⌀", 0, d / 2)
                .point(0.81 * length, 0.3 * d, 0.81 * length, 1.25 * d, "detent notches")
                .point(0.3 * length, 0, 0.3 * length, 1.25 * d, "hole of the pin")
                .build();
    }

    /** A lever with its pivot and its finger. */
    PartDrawing lever() {
        Area arm = FaceView.polygon(-6, -9, 62, -4, 62, 4, -6, 9);
        Area finger = FaceView.with(FaceView.box(56, -26, 68, 0), FaceView.disc(62, -26, 8));
        Area body = FaceView.without(
                FaceView.with(arm, FaceView.disc(0, 0, 15), finger, FaceView.disc(62, 0, 7)), FaceView.disc(0, 0, 7));
        return flat(new FaceView()
                .piece(Fill.PLAIN, body)
                .line(Mark.CENTRE, -20, 0, 20, 0)
                .line(Mark.CENTRE, 0, -20, 0, 20));
    }

    /** A cover or plate with its bolt holes round the rim and the bore in its middle. */
    PartDrawing plate() {
        Area rim = new Area(new RoundRectangle2D.Double(-60, -44, 120, 88, 34, 34));
        FaceView view = new FaceView().piece(Fill.PLAIN, rim);
        frame(view, 44, 30, 22);
        view.piece(Fill.OPEN, FaceView.disc(0, 0, 18)).circle(Mark.EDGE, 23);
        return flat(bolts(view, 51, 35));
    }

    /** A housing as a box with its joint, ribs and bolt holes. */
    PartDrawing housing() {
        Path2D skin = new Path2D.Double();
        skin.moveTo(-64, -40);
        skin.lineTo(-64, 40);
        skin.lineTo(-50, 40);
        skin.curveTo(-30, 40, -10, 52, 10, 50);
        skin.curveTo(40, 46, 52, 30, 60, 26);
        skin.lineTo(66, 26);
        skin.lineTo(66, -26);
        skin.lineTo(60, -26);
        skin.curveTo(50, -34, 40, -44, 10, -46);
        skin.lineTo(-50, -40);
        skin.closePath();
        FaceView view = new FaceView()
                .piece(Fill.PLAIN, new Area(skin))
                .line(Mark.EDGE, -54, -40, -54, 40)
                .line(Mark.EDGE, 60, -26, 60, 26)
                .line(Mark.EDGE, -54, 14, 60, 10)
                .line(Mark.EDGE, -54, -18, 60, -12)
                .line(Mark.EDGE, -10, -42, -10, 47)
                .line(Mark.CENTRE, -72, 0, 74, 0);
        int shown = Math.min(subject.holes(), 24);
        for (int i = 0; i < shown; i++) {
            double y = -36 + 72.0 * (i + 0.5) / shown;
            view.line(Mark.EDGE, -69, y, -54, y).circle(Mark.EDGE, -71, y, Math.min(2.2, 30.0 / shown));
        }
        return flat(view);
    }

    private static void frame(FaceView view, double x, double y, double round) {
        Path2D path = new Path2D.Double(new RoundRectangle2D.Double(-x, -y, 2 * x, 2 * y, round, round));
        view.piece(Fill.PLAIN, new Area(path));
    }

    private FaceView bolts(FaceView view, double x, double y) {
        int count = Math.min(subject.holes(), 24);
        double around = 4 * (x + y);
        for (int i = 0; i < count; i++) {
            double s = around * (i + 0.5) / count;
            double px = s < 2 * x ? -x + s : s < 2 * x + 2 * y ? x : s < 4 * x + 2 * y ? x - (s - 2 * x - 2 * y) : -x;
            double py = s < 2 * x
                    ? y
                    : s < 2 * x + 2 * y ? y - (s - 2 * x) : s < 4 * x + 2 * y ? -y : -y + (s - 4 * x - 2 * y);
            double corner = Math.abs(px) > 0.93 * x && Math.abs(py) > 0.9 * y ? 0.95 : 1;
            view.piece(Fill.OPEN, FaceView.disc(corner * px, corner * py, 3.4));
        }
        return view;
    }

    /** A coil spring from the side. */
    PartDrawing spring() {
        return flat(coil(new FaceView(), 0, 90, 16));
    }

    private static FaceView coil(FaceView view, double from, double to, double r) {
        int turns = 7;
        double step = (to - from) / turns;
        for (int i = 0; i <= turns; i++) {
            double w = from + i * step;
            view.piece(Fill.PLAIN, FaceView.disc(w, r, 2.4)).piece(Fill.PLAIN, FaceView.disc(w, -r, 2.4));
            if (i < turns) {
                view.line(Mark.EDGE, w - 2, r - 1, w + step / 2 - 2, -r + 1)
                        .line(Mark.EDGE, w + 2, r + 1, w + step / 2 + 2, -r - 1);
            }
        }
        return view;
    }

    /** A detent: ball, spring and plug in a row. */
    PartDrawing detent() {
        FaceView view = new FaceView().piece(Fill.PLAIN, FaceView.disc(0, 0, 13));
        coil(view, 24, 84, 11);
        view.piece(Fill.PLAIN, FaceView.box(98, -14, 124, 14))
                .piece(Fill.PLAIN, FaceView.box(124, -19, 134, 19))
                .line(Mark.CENTRE, -18, 0, 142, 0)
                .line(Mark.THREAD, 98, 12, 124, 12)
                .line(Mark.THREAD, 98, -12, 124, -12);
        return PartDrawing.of(subject, view.build())
                .notToScale()
                .point(0, 13, 0, 34, "ball")
                .point(54, 12, 54, 34, "spring: look whether one is longer")
                .point(116, 14, 116, 34, "plug or plate over it")
                .build();
    }

    /** A sliding key of a hub with its bump, and the wire ring that presses the keys out. */
    PartDrawing hubKeys() {
        Area bar = FaceView.with(
                new Area(new RoundRectangle2D.Double(-34, -7, 68, 14, 5, 5)),
                FaceView.polygon(-9, 7, -4, 13, 4, 13, 9, 7));
        FaceView key = new FaceView().piece(Fill.PLAIN, bar);
        Area ring = FaceView.without(FaceView.ringArea(36, 39.5), FaceView.polygon(0, 0, 80, 14, 80, -14));
        ring.add(FaceView.box(33, 10, 36.5, 15));
        return PartDrawing.of(subject, key.build())
                .face(new FaceView().piece(Fill.PLAIN, ring).build())
                .notToScale()
                .point(0, 13, 0, 27, "bump: into the groove of the sleeve")
                .build();
    }

    /** A drive flange with its stub, in half section. */
    PartDrawing flange() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.FALLING, 0, 12, 10, 50);
        side.ring(Fill.FALLING, 12, 34, 10, 28);
        side.ring(Fill.PLAIN, 34, 78, 0, 14);
        int count = subject.holes() > 2 ? Math.min(subject.holes(), 12) : 4;
        FaceView face =
                new FaceView().annulus(Fill.PLAIN, 0, 50).circle(Mark.EDGE, 28).circle(Mark.CENTRE, 40);
        face.round(Fill.OPEN, FaceView.disc(40, 0, 4.5), count).annulus(Fill.OPEN, 0, 6);
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .half()
                .notToScale()
                .build();
    }

    PartDrawing tube() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.FALLING, 0, 8, 16, 34);
        side.ring(Fill.FALLING, 8, 80, 16, 20);
        FaceView face = new FaceView().annulus(Fill.PLAIN, 16, 34).circle(Mark.EDGE, 20);
        face.round(Fill.OPEN, FaceView.disc(27, 0, 2.6), Math.min(Math.max(subject.holes(), 3), 12));
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .half()
                .notToScale()
                .build();
    }

    /** A switch or sensor: thread, hexagon, body and plug. */
    PartDrawing electric() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.PLAIN, 0, 10, 0, 5);
        side.ring(Fill.PLAIN, 10, 38, 0, 12);
        side.line(Mark.THREAD, at(12, 10.3), at(38, 10.3));
        side.ring(Fill.PLAIN, 38, 50, 0, 20);
        side.line(Mark.EDGE, at(38, 10), at(50, 10));
        side.ring(Fill.OPEN, 50, 78, 0, 13);
        FaceView face = new FaceView()
                .piece(Fill.PLAIN, FaceView.hexagon(36))
                .annulus(Fill.OPEN, 0, 13)
                .circle(Mark.EDGE, -5, 0, 2)
                .circle(Mark.EDGE, 5, 0, 2);
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .notToScale()
                .words(Line.LEFT, subject.thread(), 10, 12)
                .build();
    }

    PartDrawing breather() {
        Sketch side = PartFigure.of(FaceView.ALONE);
        side.ring(Fill.PLAIN, 0, 24, 0, 9);
        side.line(Mark.THREAD, at(2, 7.6), at(24, 7.6));
        side.ring(Fill.PLAIN, 24, 32, 0, 15);
        side.ring(Fill.PLAIN, 32, 40, 0, 7);
        side.polygon(Fill.PLAIN, at(40, 0), at(40, 17), at(52, 17), at(58, 11), at(58, 0));
        FaceView face = new FaceView().annulus(Fill.PLAIN, 0, 17).circle(Mark.EDGE, 11);
        return PartDrawing.of(subject, side.build())
                .face(face.build())
                .notToScale()
                .build();
    }

    PartDrawing magnet() {
        Area body = FaceView.without(
                new Area(new RoundRectangle2D.Double(-40, -24, 80, 48, 12, 12)), FaceView.disc(0, 0, 8));
        return flat(new FaceView()
                .piece(Fill.PLAIN, body)
                .line(Mark.CENTRE, 0, -32, 0, 32)
                .line(Mark.CENTRE, -48, 0, 48, 0));
    }

    /** A frame with a camera in it: nothing is known of the part's look. */
    PartDrawing unknown() {
        Area camera = FaceView.with(
                new Area(new RoundRectangle2D.Double(-30, -18, 60, 40, 8, 8)),
                FaceView.polygon(-14, 20, -9, 30, 9, 30, 14, 20));
        FaceView view = new FaceView()
                .piece(Fill.OPEN, new Area(new RoundRectangle2D.Double(-80, -46, 160, 92, 6, 6)))
                .piece(Fill.PLAIN, camera)
                .piece(Fill.OPEN, FaceView.disc(0, 1, 13))
                .circle(Mark.EDGE, 0, 1, 8);
        return flat(view);
    }
}
