package shimwright.mechanics.history;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.diagram.Plotting;
import shimwright.mechanics.quantity.Kind;

/** What the sheets of this topic have to look at. */
final class HistoryPictures {
    private HistoryPictures() {}

    /** The fitted share failed against life, and the share failed that the parts show (Kaplan and Meier). */
    static List<Diagram> weibull(Weibull.Case c, Weibull.Result r) {
        Double scale = r.scale();
        if (scale == null) {
            return List.of();
        }
        double last = Stream.concat(c.failures().stream(), c.unfailed().stream())
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(scale);
        double end = 1.1 * Math.max(last, scale);
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "fitted", Plotting.curve(0, end, t -> 100 * -Math.expm1(-Math.pow(t / scale, r.shape()))), Look.MAIN));
        parts.add(new Rule("share asked for", false, 100 * c.share()));
        double running = 1;
        for (double life : c.failures().stream().distinct().sorted().toList()) {
            long atRisk = Stream.concat(c.failures().stream(), c.unfailed().stream())
                    .filter(other -> other >= life)
                    .count();
            long failed = c.failures().stream().filter(other -> other == life).count();
            running *= 1 - (double) failed / atRisk;
            parts.add(new Dot("", life, 100 * (1 - running)));
        }
        return List.of(new Graph(
                "Share failed by life",
                Scale.of("life, in the unit given", Kind.NUMBER),
                Scale.of("failed, %", Kind.NUMBER),
                false,
                parts));
    }

    /** Pieces to hold by size. */
    static List<Diagram> drawer(DrawerStock.Case c, DrawerStock.Result r) {
        List<Part> parts = new ArrayList<>();
        for (DrawerStock.Size size : r.sizes()) {
            if (size.pieces() > 0) {
                double at = size.thickness();
                parts.add(new Curve("", List.of(new Point(at, 0), new Point(at, size.pieces())), Look.MAIN));
                parts.add(new Dot(String.valueOf(size.pieces()), at, size.pieces()));
            }
        }
        if (parts.isEmpty()) {
            return List.of();
        }
        parts.add(new Rule("mean wanted", true, c.mean()));
        return List.of(new Graph(
                "What the drawer should hold",
                Scale.of("thickness", Kind.LENGTH),
                Scale.of("pieces", Kind.NUMBER),
                false,
                parts));
    }
}
