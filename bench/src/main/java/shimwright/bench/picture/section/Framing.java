package shimwright.bench.picture.section;

import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Predicate;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/** Which stretches of the upright and the flat section are shown, in u and v, m. */
final class Framing {
    /** How far the flat section reaches behind the largest part of the cross shaft, m. */
    private static final double BEHIND = 45e-3;

    private static final double RIM = 4e-3;
    private static final double FLATTEST = 0.42;
    private static final double TALLEST = 0.62;
    private static final double TALLEST_FLAT = 0.72;
    private static final double TALLEST_NARROW = 1.05;

    private final Unit unit;
    private final SectionView view;

    Framing(Unit unit, SectionView view) {
        this.unit = unit;
        this.view = view;
    }

    boolean anything() {
        return wholeUpright().isPresent() || wholeFlat().isPresent();
    }

    /** What of the upright section is shown; empty when nothing of it is. */
    Optional<Rectangle2D> upright() {
        Optional<Rectangle2D> whole = wholeUpright();
        if (view.around().isEmpty() || whole.isEmpty()) {
            return whole;
        }
        Optional<Rectangle2D> near = around(Section.Axis.X);
        if (near.isPresent()) {
            return near.map(box -> crop(box, whole.get(), TALLEST));
        }
        return around(Section.Axis.Y).isPresent() ? Optional.empty() : whole;
    }

    /** What of the flat section is shown; empty when nothing of it is. */
    Optional<Rectangle2D> flat() {
        Optional<Rectangle2D> whole = wholeFlat();
        if (view.around().isEmpty() || whole.isEmpty()) {
            return whole;
        }
        Optional<Rectangle2D> near = around(Section.Axis.Y);
        if (near.isPresent()) {
            return near.map(box -> crop(box, whole.get(), TALLEST_FLAT));
        }
        return around(Section.Axis.X).isPresent() ? Optional.empty() : whole;
    }

    /** Height of the flat section, z of the cross shaft. */
    double level() {
        return crossShaft().map(s -> s.at().get(1)).orElse(0.0);
    }

    private Optional<Section.Shaft> crossShaft() {
        return unit.type().section().shafts().stream()
                .filter(s -> s.axis() == Section.Axis.Y && s.at().size() == 2)
                .filter(s -> unit.type().items().stream()
                        .anyMatch(i -> i.shaft().equals(s.id()) && Extent.of(i).isPresent()))
                .findFirst();
    }

    /** The whole of the upright section; empty where nothing of it can be drawn. */
    Optional<Rectangle2D> wholeUpright() {
        Box box = new Box();
        for (Section.Shaft shaft : unit.type().section().shafts()) {
            if (shaft.axis() == Section.Axis.X && shaft.drawn() && shaft.at().size() == 2) {
                addItems(box, shaft, item -> true);
                addSteps(box, shaft);
            }
        }
        for (Section.Outline casting : unit.type().section().castings()) {
            casting.points().stream().filter(p -> p.size() == 2).forEach(p -> box.add(p.get(0), p.get(1)));
        }
        return box.grown(RIM);
    }

    /** The whole of the flat section; empty where there is no cross shaft. */
    Optional<Rectangle2D> wholeFlat() {
        return crossShaft().flatMap(shaft -> {
            Box box = new Box();
            addItems(box, shaft, item -> true);
            addSteps(box, shaft);
            return box.grown(RIM)
                    .map(all -> new Rectangle2D.Double(
                            all.getX(), all.getY() - BEHIND, all.getWidth(), all.getHeight() + BEHIND));
        });
    }

    private Optional<Rectangle2D> around(Section.Axis axis) {
        Box items = new Box();
        Box shafts = new Box();
        for (Section.Shaft shaft : unit.type().section().shafts()) {
            if (shaft.axis() == axis && shaft.at().size() == 2) {
                addItems(items, shaft, item -> view.around().contains(item.id()));
                if (view.around().contains(shaft.item())) {
                    addSteps(shafts, shaft);
                }
            }
        }
        return items.grown(view.margin()).or(() -> shafts.grown(view.margin()));
    }

    private void addItems(Box box, Section.Shaft shaft, Predicate<Item> which) {
        unit.type().items().stream()
                .filter(item -> item.shaft().equals(shaft.id()))
                .filter(which)
                .forEach(item -> Extent.of(item).ifPresent(e -> add(box, shaft, e)));
    }

    private static void addSteps(Box box, Section.Shaft shaft) {
        ShaftFigures.steps(shaft).forEach(s -> add(box, shaft, new Extent(s.from(), s.to(), 0, s.radius())));
    }

    private static void add(Box box, Section.Shaft shaft, Extent e) {
        double first = shaft.at().get(0);
        if (shaft.axis() == Section.Axis.X) {
            box.add(e.from(), shaft.at().get(1) - e.outer());
            box.add(e.to(), shaft.at().get(1) + e.outer());
        } else {
            box.add(-e.to(), -first - e.outer());
            box.add(-e.from(), -first + e.outer());
        }
    }

    /** The neighbourhood brought to a shape that suits the page, within the whole where the whole is large enough. */
    private Rectangle2D crop(Rectangle2D box, Rectangle2D whole, double usual) {
        double tallest = view.width() < 560 ? TALLEST_NARROW : usual;
        double tall = Math.min(box.getHeight(), whole.getHeight());
        double width = Math.max(Math.min(box.getWidth(), whole.getWidth()), tall / tallest);
        double height = Math.min(Math.max(tall, width * FLATTEST), whole.getHeight());
        double x = clamp(box.getCenterX() - width / 2, whole.getMinX(), whole.getMaxX() - width);
        double y = clamp(box.getCenterY() - height / 2, whole.getMinY(), whole.getMaxY() - height);
        return new Rectangle2D.Double(x, y, width, height);
    }

    private static double clamp(double value, double low, double high) {
        return high < low ? (low + high) / 2 : Math.max(low, Math.min(high, value));
    }

    /** A box that grows round points. */
    private static final class Box {
        private double minU = Double.POSITIVE_INFINITY;
        private double maxU = Double.NEGATIVE_INFINITY;
        private double minV = Double.POSITIVE_INFINITY;
        private double maxV = Double.NEGATIVE_INFINITY;

        void add(double u, double v) {
            if (Double.isFinite(u) && Double.isFinite(v)) {
                minU = Math.min(minU, u);
                maxU = Math.max(maxU, u);
                minV = Math.min(minV, v);
                maxV = Math.max(maxV, v);
            }
        }

        Optional<Rectangle2D> grown(double by) {
            if (!(maxU > minU) || !(maxV > minV)) {
                return Optional.empty();
            }
            return Optional.of(
                    new Rectangle2D.Double(minU - by, minV - by, maxU - minU + 2 * by, maxV - minV + 2 * by));
        }
    }
}
