package shimwright.mechanics.gauging;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Disc;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.diagram.Plotting;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class GaugingPictures {
    private static final Scale LENGTH = Scale.of("", Kind.LENGTH);

    private GaugingPictures() {}

    /** The readings of each sweep with the curve of a true circle or plane through them. */
    static List<Diagram> alignment(HousingAlignment.Case c, HousingAlignment.Result r) {
        List<Diagram> graphs = new ArrayList<>();
        if (!c.bore().isEmpty()) {
            graphs.add(sweep(
                    "Round the " + (c.surface() == HousingAlignment.Surface.BORE ? "bore" : "rim") + ", sag taken off",
                    HousingAlignment.stiff(c)));
        }
        if (!c.face().isEmpty()) {
            graphs.add(sweep("Round the face", c.face()));
        }
        return graphs;
    }

    private static Diagram sweep(String title, List<Sweep.Reading> readings) {
        Sweep s = Sweep.of(readings);
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "true circle",
                Plotting.curve(0, 2 * Math.PI, a -> s.mean() + s.up() * Math.cos(a) + s.right() * Math.sin(a)),
                Look.MAIN));
        for (Sweep.Reading reading : readings) {
            double turn = reading.angle() / (2 * Math.PI);
            parts.add(new Dot("", (turn - Math.floor(turn)) * 2 * Math.PI, reading.value()));
        }
        return new Graph(
                title, Scale.of("from the top, clockwise", Kind.ANGLE), Scale.of("reading", Kind.LENGTH), false, parts);
    }

    /** A taper with the rollers beside it, small on the plate and again on the blocks. */
    static List<Diagram> outsideTaper(OutsideTaper.Case c, OutsideTaper.Result r) {
        double height = c.blocks() + c.roller();
        List<Part> parts = new ArrayList<>();
        double top = r.plateDiameter() / 2 + height * Math.tan(r.halfAngle());
        parts.add(new Diagram.Area(
                "",
                List.of(
                        new Point(-r.plateDiameter() / 2, 0),
                        new Point(r.plateDiameter() / 2, 0),
                        new Point(top, height),
                        new Point(-top, height)),
                Look.SECOND));
        double radius = c.roller() / 2;
        for (double base : new double[] {0, c.blocks()}) {
            double at = (base == 0 ? c.low() : c.high()) / 2 - radius;
            parts.add(new Disc("", at, base + radius, radius, Look.MAIN));
            parts.add(new Disc("", -at, base + radius, radius, Look.MAIN));
        }
        return List.of(new Graph("Rollers on the plate and on the blocks", LENGTH, LENGTH, true, parts));
    }

    /** A tapered hole with the two balls in it. */
    static List<Diagram> insideTaper(InsideTaper.Case c, InsideTaper.Result r) {
        double depth = c.smallDepth() + c.small();
        double bottom = r.mouthDiameter() / 2 - depth * Math.tan(r.halfAngle());
        List<Part> parts = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            parts.add(new Curve(
                    "",
                    List.of(new Point(side * r.mouthDiameter() / 2, 0), new Point(side * Math.max(bottom, 0), -depth)),
                    Look.MAIN));
        }
        parts.add(new Curve(
                "mouth",
                List.of(new Point(-0.7 * r.mouthDiameter(), 0), new Point(0.7 * r.mouthDiameter(), 0)),
                Look.FAINT));
        parts.add(new Disc("", 0, -c.largeDepth() - c.large() / 2, c.large() / 2, Look.SECOND));
        parts.add(new Disc("", 0, -c.smallDepth() - c.small() / 2, c.small() / 2, Look.SECOND));
        return List.of(new Graph("Two balls in the hole", LENGTH, LENGTH, true, parts));
    }
}
