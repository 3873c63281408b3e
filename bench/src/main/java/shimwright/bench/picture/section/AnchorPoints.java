package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import shimwright.bench.picture.section.SceneGeometry.Metal;
import shimwright.bench.picture.section.SceneGeometry.Placed;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/** Where things are on a panel: points to hang labels on, stretches along u, and the edge of what is drawn. */
final class AnchorPoints {
    private static final double STRIP = 0.5;

    private final Unit unit;
    private final SectionPlane panel;
    private final Scene scene;

    AnchorPoints(Unit unit, SectionPlane panel, Scene scene) {
        this.unit = unit;
        this.panel = panel;
        this.scene = scene;
    }

    private Optional<Placed> find(String item) {
        return scene.placed().stream()
                .filter(p -> p.item().id().equals(item) && !item.isEmpty())
                .min(Comparator.comparing(Placed::body));
    }

    /** A point of an item to hang its label on, on its upper or lower half; empty where it is not shown. */
    Optional<Point2D> anchor(String item, boolean upper) {
        return find(item)
                .map(p -> anchor(p, upper))
                .or(() -> endAnchor(item, upper))
                .or(() -> castingAnchor(item, upper))
                .filter(at -> panel.frame().contains(at));
    }

    private Point2D anchor(Placed p, boolean upper) {
        Extent e = p.extent();
        double r = e.inner() > 0 ? e.inner() + e.wall() / 2 : e.outer() * 0.5;
        double w = visibleMiddle(p.at(), e);
        Point2D one = p.at().transform(new Point2D.Double(w, r), null);
        Point2D two = p.at().transform(new Point2D.Double(w, -r), null);
        return (one.getY() <= two.getY()) == upper ? one : two;
    }

    /** The middle of what the frame shows of a part, along its axis. */
    private double visibleMiddle(AffineTransform at, Extent e) {
        Point2D from = at.transform(new Point2D.Double(e.from(), 0), null);
        Point2D to = at.transform(new Point2D.Double(e.to(), 0), null);
        double run = to.getX() - from.getX();
        if (Math.abs(run) < 1e-9) {
            return e.centre();
        }
        double a = share((panel.left() - from.getX()) / run);
        double b = share((panel.right() - from.getX()) / run);
        return e.from() + e.width() * (a + b) / 2;
    }

    private static double share(double value) {
        return Math.max(0, Math.min(1, value));
    }

    /** A point on the shaft that an item carries; empty where the item's own ring is, or no shaft of it. */
    Optional<Point2D> shaftAnchor(String item, double x, boolean upper) {
        Optional<Placed> ring = find(item).filter(p -> !p.body());
        return scene.placed().stream()
                .filter(p -> p.body() && p.item().id().equals(item) && p.at().getShearY() == 0)
                .findFirst()
                .flatMap(p -> {
                    double w = (x - p.at().getTranslateX()) / p.at().getScaleX();
                    Rectangle2D box = p.figure().box();
                    boolean onRing = ring.isPresent()
                            && w > ring.get().extent().from()
                            && w < ring.get().extent().to();
                    if (onRing || w <= box.getMinX() || w >= box.getMaxX()) {
                        return Optional.empty();
                    }
                    double r = p.extent().outer() * 0.5;
                    Point2D one = p.at().transform(new Point2D.Double(w, r), null);
                    Point2D two = p.at().transform(new Point2D.Double(w, -r), null);
                    return Optional.of((one.getY() <= two.getY()) == upper ? one : two)
                            .filter(a -> panel.frame().contains(a));
                });
    }

    private Optional<Point2D> endAnchor(String item, boolean upper) {
        for (Section.Shaft shaft : scene.crossShafts()) {
            for (EndView.Disc disc : scene.endView().seen(shaft)) {
                if (disc.item().id().equals(item)) {
                    double r = disc.extent().outer();
                    double v = shaft.at().get(1) + (upper ? 1 : -1) * 0.8 * r;
                    return Optional.of(new Point2D.Double(panel.x(shaft.at().get(0) - 0.42 * r), panel.y(v)));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Point2D> castingAnchor(String item, boolean upper) {
        return scene.metals().stream()
                .filter(m -> m.outline().item().equals(item) && !item.isEmpty())
                .map(m -> m.area().getBounds2D())
                .max(Comparator.comparingDouble(Rectangle2D::getWidth))
                .flatMap(box -> metalAnchor(
                        item,
                        Math.max(panel.left(), box.getMinX()) / 2 + Math.min(panel.right(), box.getMaxX()) / 2,
                        upper));
    }

    /** A point in the metal of an item's castings at a sheet position, the outermost on that side. */
    Optional<Point2D> metalAnchor(String item, double x, boolean upper) {
        List<Rectangle2D> cuts = new ArrayList<>();
        for (Metal metal : scene.metals()) {
            if (metal.outline().item().equals(item) && !item.isEmpty()) {
                strips(metal.area(), x - STRIP, x + STRIP).forEach(cuts::add);
            }
        }
        return cuts.stream()
                .filter(c -> c.getHeight() > 2)
                .min(Comparator.comparingDouble(c -> upper ? c.getCenterY() : -c.getCenterY()))
                .map(c -> (Point2D) new Point2D.Double(x, c.getHeight() > 24 ? edge(c, upper) : c.getCenterY()))
                .filter(at -> panel.frame().contains(at));
    }

    private static double edge(Rectangle2D cut, boolean upper) {
        return upper ? cut.getMinY() + 8 : cut.getMaxY() - 8;
    }

    private List<Rectangle2D> strips(Area area, double from, double to) {
        Area cut = new Area(new Rectangle2D.Double(from, panel.top() - 1e4, to - from, 2e4));
        cut.intersect(area);
        List<Rectangle2D> pieces = new ArrayList<>();
        for (List<double[]> ring : Polygons.of(cut)) {
            pieces.add(Polygons.box(ring));
        }
        return pieces;
    }

    /**
     * The edge of what is drawn between two sheet positions.
     *
     * @param upper true for the upper edge, else the lower one
     * @return a sheet height within the panel; empty where nothing is drawn
     */
    OptionalDouble skyline(double from, double to, boolean upper) {
        Rectangle2D strip = new Rectangle2D.Double(from, panel.top(), Math.max(to - from, 1), panel.height());
        Stream<Rectangle2D> metals = scene.metals().stream().map(m -> {
            Area cut = new Area(strip);
            cut.intersect(m.area());
            return cut.getBounds2D();
        });
        Stream<Rectangle2D> parts = scene.placed().stream().map(Placed::box).map(strip::createIntersection);
        Stream<Rectangle2D> discs = scene.crossShafts().stream()
                .flatMap(s -> scene.endView().seen(s).stream().map(d -> {
                    double r = d.extent().outer() * panel.scale();
                    Rectangle2D box = new Rectangle2D.Double(
                            panel.x(s.at().get(0)) - r, panel.y(s.at().get(1)) - r, 2 * r, 2 * r);
                    return strip.createIntersection(box);
                }));
        return Stream.of(metals, parts, discs)
                .flatMap(s -> s)
                .filter(b -> b.getWidth() > 0 && b.getHeight() > 0)
                .mapToDouble(b -> upper ? b.getMinY() : -b.getMaxY())
                .min()
                .stream()
                .map(v -> upper ? v : -v)
                .findFirst();
    }

    /** Where a length's item lies along u: its ring, the whole bearing where that suits the length, shaft or casting. */
    Optional<LoopLayout.Span> span(Clearance.Length length) {
        Optional<LoopLayout.Span> own = span(length.item());
        Optional<LoopLayout.Span> whole = unit.type().bearings().stream()
                .filter(b -> b.items().contains(length.item()))
                .flatMap(b -> b.items().stream())
                .flatMap(id -> span(id).stream())
                .reduce((a, b) -> new LoopLayout.Span(Math.min(a.from(), b.from()), Math.max(a.to(), b.to())));
        return Stream.of(own, whole)
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(s -> Math.abs(s.to() - s.from() - length.nominal())));
    }

    private Optional<LoopLayout.Span> span(String item) {
        Optional<Placed> part = find(item);
        if (part.isPresent()) {
            Placed p = part.get();
            Rectangle2D box = p.figure().box();
            return Optional.of(
                    p.body()
                            ? along(p.at(), box.getMinX(), box.getMaxX())
                            : along(p.at(), p.extent().from(), p.extent().to()));
        }
        return scene.metals().stream()
                .filter(m -> m.outline().item().equals(item) && !item.isEmpty())
                .map(m -> m.area().getBounds2D())
                .map(b -> new LoopLayout.Span(u(b.getMinX()), u(b.getMaxX())))
                .reduce((a, b) -> new LoopLayout.Span(Math.min(a.from(), b.from()), Math.max(a.to(), b.to())));
    }

    private LoopLayout.Span along(AffineTransform at, double from, double to) {
        double a = u(at.transform(new Point2D.Double(from, 0), null).getX());
        double b = u(at.transform(new Point2D.Double(to, 0), null).getX());
        return new LoopLayout.Span(Math.min(a, b), Math.max(a, b));
    }

    private double u(double x) {
        return panel.area().getMinX() + (x - panel.left()) / panel.scale();
    }
}
