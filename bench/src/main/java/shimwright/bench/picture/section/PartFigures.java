package shimwright.bench.picture.section;

import static shimwright.bench.picture.section.PartFigure.at;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/** Makes the figure of every item that has a shape, in its shaft's own coordinates. */
public final class PartFigures {
    /** Teeth are drawn this deep where no gear pair gives a module: a share of the outer radius. */
    private static final double USUAL_TOOTH = 0.11;

    /** A sleeve whose bore is a hub's outside within this slides on it, m (radius). */
    private static final double ON_HUB = 0.5e-3;

    private final Unit unit;
    private final double leastWidth;
    private final Map<String, Double> modules = new HashMap<>();
    private final Map<String, Double> angles = new HashMap<>();

    /**
     * Makes figures for one scale.
     *
     * @param leastWidth width below which a thin part is drawn wider than it is, on both sides alike, m
     */
    public PartFigures(Unit unit, double leastWidth) {
        this.unit = unit;
        this.leastWidth = leastWidth;
        for (GearPair pair : unit.type().gears()) {
            List.of(pair.driverItem(), pair.drivenItem()).stream()
                    .filter(id -> pair.module() > 0)
                    .forEach(id -> modules.put(id, pair.module()));
            angles.put(pair.driverItem(), Math.atan2(pair.driver(), pair.driven()));
            angles.put(pair.drivenItem(), Math.atan2(pair.driven(), pair.driver()));
        }
    }

    /** The figure of an item; empty where the unit file gives no shape. */
    public Optional<PartFigure> of(Item item) {
        return Extent.of(item).map(e -> figure(item, e.atLeast(leastWidth)));
    }

    private PartFigure figure(Item item, Extent e) {
        Sketch figure = PartFigure.of(item);
        List<Extent> also = also(item);
        switch (item.shape()) {
            case GEAR -> GearFigures.cylindrical(figure, e, teeth(item, e), also);
            case BEVEL_GEAR -> bevel(figure, item, e);
            case TAPER_CONE ->
                partner(item, Item.Shape.TAPER_CUP)
                        .ifPresentOrElse(
                                cup -> BearingFigures.cone(figure, e, cup), () -> BearingFigures.taper(figure, e));
            case TAPER_CUP ->
                partner(item, Item.Shape.TAPER_CONE)
                        .ifPresentOrElse(
                                cone -> BearingFigures.cup(figure, e, cone), () -> ring(figure, Fill.CLOSE, e));
            case ROLLER_INNER -> ring(figure, Fill.CLOSE, e);
            case ROLLER_OUTER ->
                partner(item, Item.Shape.ROLLER_INNER)
                        .ifPresentOrElse(
                                inner -> BearingFigures.outer(figure, e, inner), () -> BearingFigures.whole(figure, e));
            case SHIM, SNAP_RING -> ring(figure, Fill.BLACK, e);
            case WASHER, HUB -> ring(figure, Fill.FALLING, e);
            case SPACER -> ring(figure, Fill.CLOSE, e);
            case SLEEVE -> sleeve(figure, item, e);
            case NEEDLES -> BearingFigures.needles(figure, e);
            case NUT -> nut(figure, e);
            case SEAL -> seal(figure, e);
            case PLATE -> ring(figure, Fill.RISING, e);
            case RING -> ring(figure, Fill.FALLING, e);
            case FORK -> new ForkFigures(unit).fork(figure, item, e);
            case BODY -> ring(figure, e.inner() > 0 ? Fill.RISING : Fill.PLAIN, e);
            case NONE -> throw new IllegalStateException("no shape");
            default -> throw new IllegalStateException("unknown shape " + item.shape());
        }
        if (item.shape() != Item.Shape.GEAR) {
            Fill fill = item.shape() == Item.Shape.BODY && e.inner() > 0 ? Fill.RISING : Fill.PLAIN;
            also.forEach(ring -> ring(figure, fill, ring));
        }
        return figure.build();
    }

    private static void ring(Sketch figure, Fill fill, Extent e) {
        figure.ring(fill, e.from(), e.to(), e.inner(), e.outer());
    }

    private static List<Extent> also(Item item) {
        List<Extent> rings = new ArrayList<>();
        item.also().forEach(ring -> Extent.of(ring).ifPresent(rings::add));
        return rings;
    }

    private GearFigures.Teeth teeth(Item item, Extent e) {
        Double module = modules.get(item.id());
        double usual = USUAL_TOOTH * e.outer();
        return module == null ? new GearFigures.Teeth(usual, 0.45 * usual) : GearFigures.Teeth.ofModule(module);
    }

    private void bevel(Sketch figure, Item item, Extent e) {
        double shape = Math.atan2(e.outer(), e.width());
        double angle = angles.getOrDefault(item.id(), shape);
        apex(item.shaft())
                .ifPresentOrElse(
                        apex -> GearFigures.bevel(figure, e, teeth(item, e), apex, angle),
                        () -> ring(figure, Fill.PLAIN, e));
    }

    /** Where another shaft of the other direction crosses this one, along this one. */
    private Optional<Double> apex(String shaftId) {
        List<Section.Shaft> shafts = unit.type().section().shafts();
        return shafts.stream()
                .filter(s -> s.id().equals(shaftId))
                .findFirst()
                .flatMap(own -> shafts.stream()
                        .filter(s -> s.axis() != own.axis()
                                && s.at().size() == 2
                                && own.at().size() == 2)
                        .filter(s -> Math.abs(s.at().get(1) - own.at().get(1)) < 1e-3)
                        .map(s -> s.at().get(0))
                        .findFirst());
    }

    /** The nearest ring of a shape on the same axis, so also on a shaft that runs in line, that overlaps along it. */
    private Optional<Extent> partner(Item item, Item.Shape shape) {
        Extent own = Extent.of(item).orElseThrow();
        return unit.type().items().stream()
                .filter(other -> other.shape() == shape && inLine(other.shaft(), item.shaft()))
                .flatMap(other -> Extent.of(other).stream())
                .filter(own::overlaps)
                .min(Comparator.comparingDouble(other -> Math.abs(other.centre() - own.centre()) + apart(own, other)));
    }

    /** How far the surfaces of two rings that face each other are apart, m. */
    private static double apart(Extent one, Extent other) {
        return Math.min(Math.abs(one.inner() - other.outer()), Math.abs(one.outer() - other.inner()));
    }

    /** True for one shaft, and for two whose axes are the same line. */
    private boolean inLine(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        List<Section.Shaft> shafts = unit.type().section().shafts();
        return shafts.stream()
                .filter(s -> s.id().equals(one))
                .anyMatch(a -> shafts.stream()
                        .filter(s -> s.id().equals(other))
                        .anyMatch(b -> a.axis() == b.axis() && a.at().equals(b.at())));
    }

    private static void nut(Sketch figure, Extent e) {
        double chamfer = Math.min(0.18 * e.width(), 0.3 * e.wall());
        figure.polygon(
                Fill.FALLING,
                at(e.from(), e.inner()),
                at(e.from(), e.outer()),
                at(e.to() - chamfer, e.outer()),
                at(e.to(), e.outer() - chamfer),
                at(e.to(), e.inner()));
        double thread = e.inner() - 0.06 * e.inner();
        figure.line(Mark.THREAD, at(e.from(), thread), at(e.to(), thread));
    }

    /** A lip seal: case, lip and the ring of its spring. */
    private static void seal(Sketch figure, Extent e) {
        double wall = 0.16 * e.wall();
        double side = e.from() + 0.22 * e.width();
        figure.polygon(
                Fill.BLACK,
                at(e.from(), e.inner() + 0.3 * e.wall()),
                at(e.from(), e.outer()),
                at(e.to(), e.outer()),
                at(e.to(), e.outer() - wall),
                at(side, e.outer() - wall),
                at(side, e.inner() + 0.45 * e.wall()),
                at(e.to() - 0.2 * e.width(), e.inner() + 0.3 * e.wall()),
                at(e.to() - 0.35 * e.width(), e.inner()),
                at(e.from() + 0.3 * e.width(), e.inner() + 0.2 * e.wall()));
    }

    /** A plain sleeve, or one that slides on a hub and has the groove of its fork. */
    private void sleeve(Sketch figure, Item item, Extent e) {
        boolean slides = unit.type().items().stream()
                .filter(hub -> hub.shape() == Item.Shape.HUB && inLine(hub.shaft(), item.shaft()))
                .flatMap(hub -> Extent.of(hub).stream())
                .anyMatch(hub -> hub.overlaps(e) && Math.abs(hub.outer() - e.inner()) < ON_HUB);
        if (!slides) {
            ring(figure, Fill.CLOSE, e);
            return;
        }
        double half = 0.11 * e.width();
        double floor = e.outer() - 0.5 * e.wall();
        double chamfer = 0.2 * e.wall();
        figure.polygon(
                Fill.RISING,
                at(e.from(), e.inner()),
                at(e.from(), e.outer() - chamfer),
                at(e.from() + chamfer, e.outer()),
                at(e.centre() - half, e.outer()),
                at(e.centre() - half, floor),
                at(e.centre() + half, floor),
                at(e.centre() + half, e.outer()),
                at(e.to() - chamfer, e.outer()),
                at(e.to(), e.outer() - chamfer),
                at(e.to(), e.inner()));
    }
}
