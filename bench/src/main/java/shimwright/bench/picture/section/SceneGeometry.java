package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/**
 * Everything of one section plane that does not change with the job: figures and cut castings laid on the sheet. It is made
 * once for a unit and a plane and remembered, for the cutting of castings takes most of the time of a drawing.
 *
 * @param placed figures, back to front
 * @param metals castings, their bores cut
 */
record SceneGeometry(List<Placed> placed, List<Metal> metals) {
    /** Parts thinner than this on the sheet are drawn this wide, so that a shim can be seen. */
    private static final double LEAST = 3.2;
    /** Air round a shaft that passes through a casting, m. */
    private static final double AIR = 1.5e-3;
    /** Planes that are remembered: a few units in two widths, each with its clearances. */
    private static final int REMEMBERED = 64;

    private static final Map<Key, SceneGeometry> KNOWN = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, SceneGeometry> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** All that the geometry is made from. */
    private record Key(List<Item> items, Section section, List<GearPair> gears, Set<String> away, SectionPlane plane) {}

    /**
     * An item laid on the sheet.
     *
     * @param shaft id of the shaft that it turns about
     * @param body true for the shaft itself
     */
    record Placed(
            Item item, PartFigure figure, AffineTransform at, Extent extent, int rank, String shaft, boolean body) {
        /** The box of the figure on the sheet. */
        Rectangle2D box() {
            return at.createTransformedShape(figure.box()).getBounds2D();
        }
    }

    /** A casting laid on the sheet, its bores cut. */
    record Metal(Section.Outline outline, Area area) {}

    /**
     * Lays everything out.
     *
     * @param away trial parts that are not drawn
     */
    static SceneGeometry of(Unit unit, Set<String> away, SectionPlane plane) {
        SectionPlane atTop = plane.movedTo(0);
        Key key =
                new Key(unit.type().items(), unit.type().section(), unit.type().gears(), away, atTop);
        SceneGeometry known;
        synchronized (KNOWN) {
            known = KNOWN.get(key);
        }
        if (known == null) {
            known = new Maker(unit, away, atTop).make();
            synchronized (KNOWN) {
                KNOWN.put(key, known);
            }
        }
        return known.lowered(plane.top());
    }

    private SceneGeometry lowered(double by) {
        AffineTransform down = AffineTransform.getTranslateInstance(0, by);
        List<Placed> lower = new ArrayList<>();
        for (Placed p : placed) {
            AffineTransform at = new AffineTransform(down);
            at.concatenate(p.at());
            lower.add(new Placed(p.item(), p.figure(), at, p.extent(), p.rank(), p.shaft(), p.body()));
        }
        return new SceneGeometry(
                List.copyOf(lower),
                metals.stream()
                        .map(m -> new Metal(m.outline(), m.area().createTransformedArea(down)))
                        .toList());
    }

    /** Makes one. */
    private static final class Maker {
        private final Unit unit;
        private final Set<String> away;
        private final SectionPlane plane;
        private final List<Placed> placed = new ArrayList<>();
        private final List<Metal> metals = new ArrayList<>();

        Maker(Unit unit, Set<String> away, SectionPlane plane) {
            this.unit = unit;
            this.away = away;
            this.plane = plane;
        }

        SceneGeometry make() {
            PartFigures figures = new PartFigures(unit, LEAST / plane.scale());
            for (Section.Shaft shaft : unit.type().section().shafts()) {
                plane.place(shaft).filter(at -> shaft.drawn()).ifPresent(at -> shaft(shaft, at, figures));
            }
            placed.sort(Comparator.comparingInt(Placed::rank));
            if (!plane.flat()) {
                cutCastings();
            }
            placed.removeIf(p -> !inFrame(p));
            metals.removeIf(m -> !m.area().intersects(plane.frame()));
            return new SceneGeometry(List.copyOf(placed), List.copyOf(metals));
        }

        private boolean inFrame(Placed p) {
            return plane.frame().contains(p.box())
                    || (p.box().intersects(plane.frame())
                            && p.figure()
                                    .silhouette()
                                    .createTransformedArea(p.at())
                                    .intersects(plane.frame()));
        }

        private void shaft(Section.Shaft shaft, AffineTransform at, PartFigures figures) {
            Item carrier = carrier(shaft);
            ShaftFigures.figure(shaft, carrier).ifPresent(figure -> {
                ShaftFigures.Step longest = ShaftFigures.steps(shaft).stream()
                        .max(Comparator.comparingDouble(s -> s.to() - s.from()))
                        .orElseThrow();
                Extent body = new Extent(longest.from(), longest.to(), 0, longest.radius());
                placed.add(new Placed(carrier, figure, at, body, 0, shaft.id(), true));
            });
            for (Item item : unit.type().items()) {
                if (item.shaft().equals(shaft.id()) && !away.contains(item.id())) {
                    Extent.of(item)
                            .ifPresent(e -> figures.of(item)
                                    .ifPresent(figure -> placed.add(
                                            new Placed(item, figure, at, e, rank(item), shaft.id(), false))));
                }
            }
        }

        /** The item that carries a shaft; one of its own name where the unit file gives none. */
        private Item carrier(Section.Shaft shaft) {
            return unit.type().items().stream()
                    .filter(i -> i.id().equals(shaft.item()))
                    .findFirst()
                    .orElseGet(() -> new Item(
                            "",
                            shaft.name(),
                            "",
                            Item.Shape.BODY,
                            shaft.id(),
                            List.of(),
                            List.of(),
                            List.of(),
                            1,
                            false,
                            false,
                            false,
                            "",
                            Set.of()));
        }

        private int rank(Item item) {
            boolean driver =
                    unit.type().gears().stream().map(GearPair::driverItem).anyMatch(item.id()::equals);
            return switch (item.shape()) {
                case GEAR -> driver ? 12 : 10;
                case BEVEL_GEAR -> driver ? 12 : 11;
                case WASHER, SPACER, BODY, PLATE -> 13;
                case HUB, SLEEVE -> 14;
                case RING -> 15;
                case NUT -> 18;
                case SHIM, SNAP_RING -> 20;
                default -> 16;
            };
        }

        private void cutCastings() {
            Area bores = new Area(bores());
            double middle = unit.type().section().shafts().stream()
                    .filter(s -> s.at().size() == 2)
                    .mapToDouble(s -> s.at().get(1))
                    .average()
                    .orElse(0);
            AffineTransform sheet = new AffineTransform(plane.scale(), 0, 0, -plane.scale(), plane.x(0), plane.y(0));
            for (Section.Outline outline : unit.type().section().castings()) {
                Area area = CastingOutlines.metal(outline, plane.area().getCenterX(), middle)
                        .createTransformedArea(sheet);
                area.subtract(bores);
                if (!area.isEmpty()) {
                    metals.add(new Metal(outline, area));
                }
            }
        }

        /** What parts and shafts need free, as boxes of one direction in one path, so that one sweep joins them all. */
        private Path2D bores() {
            Path2D bores = new Path2D.Double(Path2D.WIND_NON_ZERO);
            placed.forEach(p -> bores.append(CastingOutlines.bore(p.extent(), p.at(), 0), false));
            for (Section.Shaft shaft : unit.type().section().shafts()) {
                plane.place(shaft)
                        .ifPresent(at -> ShaftFigures.steps(shaft).stream()
                                .map(s -> new Extent(s.from(), s.to(), 0, s.radius()))
                                .forEach(e -> bores.append(CastingOutlines.bore(e, at, AIR), false)));
            }
            return bores;
        }
    }
}
