package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.Svg;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** Everything that one panel shows, and its drawing: behind, cut castings, shafts and what is on them. */
final class Scene {
    /** Parts thinner than this on the sheet are drawn this wide, so that a shim can be seen. */
    private static final double LEAST = 3.2;
    /** Parts with a wall below this get a tone in place of section lines. */
    private static final double HATCHED = 5.5;
    /** Air round a shaft that passes through a casting, m. */
    private static final double AIR = 1.5e-3;

    private final Unit unit;
    private final SectionState state;
    private final Set<String> accents;
    private final SectionPlane panel;
    private final EndView endView;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Metal> metals = new ArrayList<>();

    /**
     * An item laid on the sheet.
     *
     * @param body true for the shaft itself
     */
    record Placed(Item item, PartFigure figure, AffineTransform at, Extent extent, int rank, boolean body) {}

    /** A casting laid on the sheet, its bores cut. */
    record Metal(Section.Outline outline, Area area) {}

    /**
     * Lays everything out.
     *
     * @param accents items of the shims of the clearance that is shown
     */
    Scene(Unit unit, SectionState state, Set<String> accents, SectionPlane panel) {
        this.unit = unit;
        this.state = state;
        this.accents = accents;
        this.panel = panel;
        this.endView = new EndView(unit, panel);
        PartFigures figures = new PartFigures(unit, LEAST / panel.scale());
        for (Section.Shaft shaft : unit.type().section().shafts()) {
            panel.place(shaft).filter(at -> shaft.drawn()).ifPresent(at -> shaft(shaft, at, figures));
        }
        placed.sort(Comparator.comparingInt(Placed::rank));
        if (!panel.flat()) {
            cutCastings();
        }
        placed.removeIf(
                p -> !new Area(p.at().createTransformedShape(p.figure().silhouette())).intersects(panel.frame()));
        metals.removeIf(m -> !m.area().intersects(panel.frame()));
    }

    List<Placed> placed() {
        return placed;
    }

    List<Metal> metals() {
        return metals;
    }

    EndView endView() {
        return endView;
    }

    private void shaft(Section.Shaft shaft, AffineTransform at, PartFigures figures) {
        Item carrier = carrier(shaft);
        ShaftFigures.figure(shaft, carrier).ifPresent(figure -> {
            ShaftFigures.Step longest = ShaftFigures.steps(shaft).stream()
                    .max(Comparator.comparingDouble(s -> s.to() - s.from()))
                    .orElseThrow();
            Extent body = new Extent(longest.from(), longest.to(), 0, longest.radius());
            placed.add(new Placed(carrier, figure, at, body, 0, true));
        });
        for (Item item : unit.type().items()) {
            boolean away = item.trial() && state.of(item) == Stand.COMING;
            if (item.shaft().equals(shaft.id()) && !away) {
                Extent.of(item)
                        .ifPresent(e -> figures.of(item)
                                .ifPresent(figure -> placed.add(new Placed(item, figure, at, e, rank(item), false))));
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
        boolean driver = unit.type().gears().stream().map(GearPair::driverItem).anyMatch(item.id()::equals);
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
        Area bores = new Area();
        placed.forEach(p -> bores.add(CastingOutlines.bore(p.extent(), p.at(), 0)));
        unit.type()
                .section()
                .shafts()
                .forEach(shaft -> panel.place(shaft)
                        .ifPresent(at -> ShaftFigures.steps(shaft)
                                .forEach(s -> bores.add(
                                        CastingOutlines.bore(new Extent(s.from(), s.to(), 0, s.radius()), at, AIR)))));
        double middle = unit.type().section().shafts().stream()
                .filter(s -> s.at().size() == 2)
                .mapToDouble(s -> s.at().get(1))
                .average()
                .orElse(0);
        AffineTransform sheet = new AffineTransform(panel.scale(), 0, 0, -panel.scale(), panel.x(0), panel.y(0));
        for (Section.Outline outline : unit.type().section().castings()) {
            Area area = CastingOutlines.metal(outline, panel.area().getCenterX(), middle)
                    .createTransformedArea(sheet);
            area.subtract(bores);
            if (!area.isEmpty()) {
                metals.add(new Metal(outline, area));
            }
        }
    }

    List<Section.Shaft> crossShafts() {
        return panel.flat()
                ? List.of()
                : unit.type().section().shafts().stream()
                        .filter(s -> s.axis() == Section.Axis.Y && s.at().size() == 2)
                        .toList();
    }

    void draw(Svg svg, FigurePen pen, String prefix) {
        crossShafts()
                .forEach(shaft -> endView.seen(shaft).forEach(disc -> {
                    group(
                            svg,
                            prefix + "-end-" + disc.item().id(),
                            disc.item().id(),
                            disc.item().name());
                    endView.draw(svg, shaft, disc, state.of(disc.item()));
                    svg.close();
                }));
        int count = 0;
        for (Metal metal : metals) {
            Section.Outline outline = metal.outline();
            group(svg, prefix + "-case-" + count++, outline.item(), outline.name());
            pen.casting(metal.area(), standOf(outline));
            svg.close();
        }
        for (Stand stand : List.of(Stand.FITTED, Stand.COMING, Stand.TRIAL, Stand.IN_HAND)) {
            placed.stream().filter(p -> standOf(p) == stand).forEach(p -> draw(svg, pen, prefix, p, stand));
            if (stand == Stand.FITTED) {
                hiddenTips(pen);
            }
        }
        centreLines(svg, pen);
    }

    private void draw(Svg svg, FigurePen pen, String prefix, Placed p, Stand stand) {
        String plane = panel.flat() ? "-flat-" : "-up-";
        String id = p.body()
                ? plane + "shaft-" + placed.indexOf(p)
                : plane + p.item().id();
        group(svg, prefix + id, p.item().id(), p.item().name());
        double thickness = Math.min(p.extent().wall(), p.extent().width()) * panel.scale();
        boolean accent = accents.contains(p.item().id());
        pen.figure(p.figure(), p.at(), new FigurePen.Look(stand, thickness < HATCHED, accent, brass(p.item())));
        svg.close();
    }

    private boolean brass(Item item) {
        UnitType.Material material = unit.type().materials().get(item.material());
        String name = material == null ? "" : material.name();
        return name.contains("brass") || name.contains("bronze");
    }

    private static void group(Svg svg, String id, String item, String name) {
        svg.open("g", "id", id, "data-item", item);
        svg.element("title", name);
    }

    /** A casting that belongs to no item is always there. */
    private Stand standOf(Section.Outline outline) {
        return unit.type().items().stream()
                .filter(i -> i.id().equals(outline.item()))
                .findFirst()
                .map(state::of)
                .orElse(Stand.FITTED);
    }

    /** A shaft that no item carries stands as soon as something on it is fitted. */
    private Stand standOf(Placed p) {
        if (!p.item().id().isEmpty()) {
            return state.of(p.item());
        }
        boolean any = placed.stream()
                .anyMatch(o -> o.at().equals(p.at())
                        && state.fitted().contains(o.item().id()));
        return any ? Stand.FITTED : Stand.COMING;
    }

    /** Where a fitted gear covers the teeth of its fitted mate, the mate's tip is drawn hidden. */
    private void hiddenTips(FigurePen pen) {
        for (GearPair pair : unit.type().gears()) {
            Optional<Placed> front = gear(pair.driverItem());
            Optional<Placed> back = gear(pair.drivenItem());
            if (front.isPresent()
                    && back.isPresent()
                    && !front.get().at().equals(back.get().at())) {
                hiddenTip(pen, front.get(), back.get());
            }
        }
    }

    private Optional<Placed> gear(String id) {
        return placed.stream()
                .filter(p -> p.item().id().equals(id) && p.item().shape() == Item.Shape.GEAR)
                .filter(p -> !panel.flat() && standOf(p) == Stand.FITTED)
                .findFirst();
    }

    private static void hiddenTip(FigurePen pen, Placed front, Placed back) {
        double way = front.at().getTranslateY() < back.at().getTranslateY() ? 1 : -1;
        Extent e = back.extent();
        double from = Math.max(e.from(), front.extent().from());
        double to = Math.min(e.to(), front.extent().to());
        if (to > from) {
            Point2D a = back.at().transform(new Point2D.Double(from, way * e.outer()), null);
            Point2D b = back.at().transform(new Point2D.Double(to, way * e.outer()), null);
            pen.hiddenTip(a.getX(), a.getY(), b.getX(), b.getY());
        }
    }

    private void centreLines(Svg svg, FigurePen pen) {
        Map<AffineTransform, double[]> axes = new LinkedHashMap<>();
        for (Placed p : placed) {
            Rectangle2D box = p.figure().silhouette().getBounds2D();
            axes.merge(p.at(), new double[] {box.getMinX(), box.getMaxX()}, (a, b) ->
                    new double[] {Math.min(a[0], b[0]), Math.max(a[1], b[1])});
        }
        double over = 10 / panel.scale();
        axes.forEach((at, ends) -> {
            double[] line = {ends[0] - over, 0, ends[1] + over, 0};
            at.transform(line, 0, line, 0, 2);
            pen.centreLine(line[0], line[1], line[2], line[3]);
        });
        crossShafts().forEach(s -> endView.centre(svg, pen, s));
    }
}
