package shimwright.bench.picture.section;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.unit.model.Item;

/**
 * Where an item lies on its shaft.
 *
 * @param from along the axis, m
 * @param to along the axis, not less than from, m
 * @param inner inner radius, m, 0 or more
 * @param outer outer radius, m, not less than inner
 */
public record Extent(double from, double to, double inner, double outer) {

    /** The item's main ring; empty where the unit file gives no usable shape for it. */
    public static Optional<Extent> of(Item item) {
        if (item.shape() == Item.Shape.NONE || item.shaft().isEmpty()) {
            return Optional.empty();
        }
        return of(item.along(), item.diameters());
    }

    /** A further ring of an item: from, to, inner and outer diameter. */
    static Optional<Extent> of(List<Double> ring) {
        return ring.size() == 4 ? of(ring.subList(0, 2), ring.subList(2, 4)) : Optional.empty();
    }

    private static Optional<Extent> of(List<Double> along, List<Double> diameters) {
        if (along.size() != 2 || diameters.size() != 2) {
            return Optional.empty();
        }
        double from = Math.min(along.get(0), along.get(1));
        double to = Math.max(along.get(0), along.get(1));
        double inner = Math.min(diameters.get(0), diameters.get(1)) / 2;
        double outer = Math.max(diameters.get(0), diameters.get(1)) / 2;
        boolean drawable = Double.isFinite(from) && Double.isFinite(to) && inner >= 0 && outer > inner && to > from;
        return drawable ? Optional.of(new Extent(from, to, inner, outer)) : Optional.empty();
    }

    double centre() {
        return (from + to) / 2;
    }

    double width() {
        return to - from;
    }

    double wall() {
        return outer - inner;
    }

    /** The same, widened about its middle where it is narrower than this, m. */
    Extent atLeast(double least) {
        double add = Math.max(0, least - width()) / 2;
        return new Extent(from - add, to + add, inner, outer);
    }

    boolean overlaps(Extent other) {
        return from < other.to && other.from < to;
    }
}
