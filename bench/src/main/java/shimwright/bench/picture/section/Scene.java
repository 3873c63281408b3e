package shimwright.bench.picture.section;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.picture.section.SceneGeometry.Metal;
import shimwright.bench.picture.section.SceneGeometry.Placed;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.Svg;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** Everything that one panel shows, and its drawing: behind, cut castings, shafts and what is on them. */
final class Scene {
    /** Parts with a wall below this get a tone in place of section lines. */
    private static final double HATCHED = 5.5;

    private final Unit unit;
    private final SectionState state;
    private final Set<String> accents;
    /** In this order, so that what matters lies on top. */
    private static final List<Stand> DRAWN = List.of(
            Stand.FITTED,
            Stand.COMING,
            Stand.TRIAL,
            Stand.IN_HAND,
            Stand.GOOD,
            Stand.OPEN,
            Stand.REWORK,
            Stand.REPLACE);

    private final SectionPlane panel;
    private final EndView endView;
    private final List<Placed> placed;
    private final List<Metal> metals;

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
        Set<String> away = unit.type().items().stream()
                .filter(item -> item.trial() && state.of(item) == Stand.COMING)
                .map(Item::id)
                .collect(Collectors.toSet());
        SceneGeometry geometry = SceneGeometry.of(unit, away, panel);
        this.placed = geometry.placed();
        this.metals = geometry.metals();
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
        for (Stand stand : DRAWN) {
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
                .anyMatch(o -> o.shaft().equals(p.shaft())
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
            Rectangle2D box = p.figure().box();
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
