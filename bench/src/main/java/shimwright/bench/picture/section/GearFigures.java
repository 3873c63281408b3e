package shimwright.bench.picture.section;

import static shimwright.bench.picture.section.PartFigure.at;

import java.awt.geom.Area;
import java.util.List;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;

/** Gears in section: the body hatched, the teeth not, with the pitch line. */
final class GearFigures {
    private GearFigures() {}

    /**
     * What the gear pairs say about a gear.
     *
     * @param depth tooth depth, m, above 0
     * @param addendum from pitch line to tip, m
     */
    record Teeth(double depth, double addendum) {
        /** Full depth teeth of a module (ISO 53: addendum 1 module, depth 2.25 modules). */
        static Teeth ofModule(double module) {
            return new Teeth(2.25 * module, module);
        }
    }

    /** A spur or helical gear; with the rings that are made in one with it. */
    static void cylindrical(Sketch figure, Extent e, Teeth teeth, List<Extent> also) {
        double root = Math.max(e.outer() - teeth.depth(), e.inner() + 0.15 * e.wall());
        double chamfer = Math.min(0.4 * teeth.addendum(), 0.1 * e.width());
        Area body = block(e.from(), e.to(), e.inner(), root);
        also.forEach(ring -> body.add(block(ring.from(), ring.to(), ring.inner(), ring.outer())));
        figure.both(e.inner() > 0 ? Fill.RISING : Fill.PLAIN, body);
        figure.polygon(
                Fill.PLAIN,
                at(e.from(), root),
                at(e.from(), e.outer() - chamfer),
                at(e.from() + chamfer, e.outer()),
                at(e.to() - chamfer, e.outer()),
                at(e.to(), e.outer() - chamfer),
                at(e.to(), root));
        double pitch = e.outer() - teeth.addendum();
        double over = 0.12 * e.width();
        figure.line(Mark.CENTRE, at(e.from() - over, pitch), at(e.to() + over, pitch));
    }

    private static Area block(double from, double to, double inner, double outer) {
        return PartFigure.closed(at(from, inner), at(from, outer), at(to, outer), at(to, inner));
    }

    /**
     * A bevel gear whose teeth run towards the crossing of the axes.
     *
     * @param apex where the axes cross, along this gear's axis, m
     * @param angle pitch angle, rad, between 0 and a quarter turn
     */
    static void bevel(Sketch figure, Extent e, Teeth teeth, double apex, double angle) {
        Cone cone = new Cone(e, apex);
        if (angle > Math.PI / 4) {
            crown(figure, cone, teeth);
        } else {
            pinion(figure, cone, teeth, angle);
        }
    }

    /** Distances from the crossing of the axes along the gear's axis. */
    private record Cone(Extent e, double apex) {
        double near() {
            return away() > 0 ? e.from() - apex : apex - e.to();
        }

        double far() {
            return away() > 0 ? e.to() - apex : apex - e.from();
        }

        int away() {
            return e.centre() >= apex ? 1 : -1;
        }

        /** A point at a distance from the crossing of the axes. */
        double[] p(double distance, double r) {
            return at(apex + away() * distance, r);
        }
    }

    private static void pinion(Sketch figure, Cone c, Teeth teeth, double angle) {
        double tip = c.e.outer();
        double span = c.far() - c.near();
        double tipAngle = angle + Math.atan2(teeth.addendum(), tip / Math.sin(angle));
        double heel = clamp(tip / Math.tan(tipAngle), c.near() + 0.3 * span, c.far() - 0.15 * span);
        double toe = Math.max(c.near() + 0.04 * span, 0.1 * heel);
        double rTip = tip * toe / heel;
        double rootHeel = Math.max(tip - teeth.depth(), 0.4 * tip);
        double rootToe = rootHeel * toe / heel;
        double back = Math.min(heel + teeth.depth() * Math.sin(angle) + 0.02 * span, c.far());
        double hub = Math.max(0.86 * tip, rootHeel);
        figure.polygon(
                Fill.PLAIN,
                c.p(c.near(), 0),
                c.p(c.near(), rootToe),
                c.p(toe, rootToe),
                c.p(heel, rootHeel),
                c.p(back, hub),
                c.p(c.far(), hub),
                c.p(c.far(), 0));
        figure.polygon(
                Fill.PLAIN, c.p(toe, rootToe), c.p(toe, rTip), c.p(heel, tip), c.p(back, hub), c.p(heel, rootHeel));
        double rPitch = tip - teeth.addendum();
        figure.line(Mark.CENTRE, c.p(toe * 0.96, rPitch * toe * 0.96 / heel), c.p(heel * 1.04, rPitch * 1.04));
    }

    private static void crown(Sketch figure, Cone c, Teeth teeth) {
        double rHeel = c.e.outer();
        double rToe = Math.max(c.e.inner() * 1.06, 0.68 * rHeel);
        double heel = c.near();
        double toe = heel * rToe / rHeel;
        double rootHeel = Math.min(heel + teeth.depth(), c.far() - 0.2 * (c.far() - heel));
        double rootToe = rootHeel * rToe / rHeel;
        double rim = heel + 0.62 * (c.far() - heel);
        figure.polygon(
                Fill.FALLING,
                c.p(rootToe, rToe),
                c.p(rootHeel, rHeel - 0.3 * teeth.depth()),
                c.p(rim, rHeel - 0.35 * teeth.depth()),
                c.p(c.far(), rHeel - teeth.depth()),
                c.p(c.far(), c.e.inner()),
                c.p(Math.max(rootToe + 0.2 * teeth.depth(), heel), c.e.inner()));
        figure.polygon(
                Fill.PLAIN,
                c.p(toe, rToe),
                c.p(heel, rHeel),
                c.p(rootHeel, rHeel - 0.3 * teeth.depth()),
                c.p(rootToe, rToe));
        double pitch = heel + teeth.addendum();
        figure.line(Mark.CENTRE, c.p(pitch * rToe * 0.96 / rHeel, rToe * 0.96), c.p(pitch * 1.03, rHeel * 1.03));
    }

    private static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
