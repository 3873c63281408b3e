package shimwright.bench.picture.section;

import static shimwright.bench.picture.section.PartFigure.at;

import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;

/** Rolling bearings in section: rings with their raceways, and the roller where both rings are known. */
public final class BearingFigures {
    /** Slope of the outer raceway of a usual taper bearing, about 14 degrees; the roller's axis leans a little less. */
    private static final double CUP_SLOPE = 0.25;

    private static final double CONE_SLOPE = 0.19;
    private static final double RIB = 0.14;
    /** Radius of a ball as a share of the wall between bore and outside: usual in deep groove bearings; common practice, no source. */
    private static final double BALL = 0.3;

    private BearingFigures() {}

    /**
     * The raceways of a taper bearing, measured from the back face of the cone.
     *
     * @param side +1 when the cup stands out on the side of growing w, so that the rollers are thin there
     */
    private record Taper(Extent cone, Extent cup, int side) {
        Taper(Extent cone, Extent cup) {
            this(cone, cup, cup.centre() >= cone.centre() ? 1 : -1);
        }

        /** A point at a depth from the back face of the cone. */
        double[] p(double depth, double r) {
            return at(side > 0 ? cone.from() + depth : cone.to() - depth, r);
        }

        double cupFrom() {
            return side > 0 ? cup.from() - cone.from() : cone.to() - cup.to();
        }

        double cupTo() {
            return side > 0 ? cup.to() - cone.from() : cone.to() - cup.from();
        }

        double cupRadius(double depth) {
            double free = cup.inner() + (cupTo() - depth) * CUP_SLOPE;
            return Math.min(free, cup.outer() - 0.12 * cup.wall());
        }

        double coneRadius(double depth) {
            double free = cone.outer() - 0.1 * cone.wall() - depth * CONE_SLOPE;
            return Math.max(free, cone.inner() + 0.2 * cone.wall());
        }
    }

    /** Cone with rib and roller; the roller belongs to it because it comes off with it. */
    public static void cone(Sketch figure, Extent cone, Extent cup) {
        Taper t = new Taper(cone, cup);
        double width = cone.width();
        double rib = RIB * width;
        double end = width - 0.08 * width;
        figure.polygon(
                Fill.CLOSE,
                t.p(0, cone.inner()),
                t.p(0, cone.outer()),
                t.p(rib, cone.outer()),
                t.p(rib, t.coneRadius(rib)),
                t.p(end, t.coneRadius(end)),
                t.p(end, Math.min(t.coneRadius(end) + 0.1 * cone.wall(), cone.outer())),
                t.p(width, Math.min(t.coneRadius(end) + 0.1 * cone.wall(), cone.outer())),
                t.p(width, cone.inner()));
        double first = rib + 0.02 * width;
        double last = end - 0.02 * width;
        double thick = t.cupRadius(first);
        double thin = t.cupRadius(last);
        figure.polygon(
                Fill.PLAIN,
                t.p(first, t.coneRadius(first)),
                t.p(first, thick),
                t.p(last, thin),
                t.p(last, t.coneRadius(last)));
        figure.line(
                Mark.CENTRE,
                t.p(first - 0.12 * width, (t.coneRadius(first) + thick) / 2 + 0.12 * width * 0.22),
                t.p(last + 0.12 * width, (t.coneRadius(last) + thin) / 2 - 0.12 * width * 0.22));
    }

    /** Cup with its raceway, as it stands over its cone. */
    public static void cup(Sketch figure, Extent cup, Extent cone) {
        Taper t = new Taper(cone, cup);
        figure.polygon(
                Fill.CLOSE,
                t.p(t.cupFrom(), t.cupRadius(t.cupFrom())),
                t.p(t.cupFrom(), cup.outer()),
                t.p(t.cupTo(), cup.outer()),
                t.p(t.cupTo(), t.cupRadius(t.cupTo())));
    }

    /** Outer ring with two ribs; its rollers stay in it. */
    public static void outer(Sketch figure, Extent ring, Extent inner) {
        double raceway = inner.outer();
        double gap = ring.inner() - raceway;
        double ribFrom = ring.from() + 0.16 * ring.width();
        double ribTo = ring.to() - 0.16 * ring.width();
        double rib = Math.max(ring.inner() - 0.3 * gap, raceway);
        figure.polygon(
                Fill.CLOSE,
                at(ring.from(), rib),
                at(ring.from(), ring.outer()),
                at(ring.to(), ring.outer()),
                at(ring.to(), rib),
                at(ribTo, rib),
                at(ribTo, ring.inner()),
                at(ribFrom, ring.inner()),
                at(ribFrom, rib));
        figure.ring(Fill.PLAIN, ribFrom, ribTo, raceway, ring.inner());
        double middle = (raceway + ring.inner()) / 2;
        figure.line(
                Mark.CENTRE, at(ring.from() - 0.1 * ring.width(), middle), at(ring.to() + 0.1 * ring.width(), middle));
    }

    /** A bearing that the unit file gives as one part: both rings with the balls between them. */
    public static void whole(Sketch figure, Extent e) {
        double middle = (e.inner() + e.outer()) / 2;
        double ball = Math.min(BALL * e.wall(), 0.4 * e.width());
        double shoulder = 0.45 * ball;
        figure.ring(Fill.CLOSE, e.from(), e.to(), e.inner(), middle - shoulder);
        figure.ring(Fill.CLOSE, e.from(), e.to(), middle + shoulder, e.outer());
        figure.both(Fill.PLAIN, new Area(new Ellipse2D.Double(e.centre() - ball, middle - ball, 2 * ball, 2 * ball)));
        figure.line(Mark.CENTRE, at(e.from() - 0.1 * e.width(), middle), at(e.to() + 0.1 * e.width(), middle));
    }

    /** A taper bearing of which the unit file gives one part: within its measures the cone with its rollers, and the cup over them. */
    public static void taper(Sketch figure, Extent e) {
        double middle = e.inner() + 0.62 * e.wall();
        Extent cone = new Extent(e.from(), e.to(), e.inner(), middle);
        Extent cup = new Extent(e.from() + 0.15 * e.width(), e.to(), middle + 0.08 * e.wall(), e.outer());
        cone(figure, cone, cup);
        cup(figure, cup, cone);
    }

    /** A needle cage: the needle between the two rims of the cage. */
    public static void needles(Sketch figure, Extent e) {
        double rim = Math.min(0.1 * e.width(), e.wall());
        figure.ring(Fill.CLOSE, e.from(), e.to(), e.inner() + 0.15 * e.wall(), e.outer() - 0.15 * e.wall());
        figure.ring(Fill.PLAIN, e.from() + rim, e.to() - rim, e.inner(), e.outer());
    }
}
