package shimwright.bench.picture.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/**
 * A shaft that stands square to the section: its parts as circles, seen from the side that was cut away, so what lies
 * wholly on the near side is not there and what is covered by a nearer part is not drawn.
 */
final class EndView {
    /** Hand of a usual spiral, for the eye only. */
    private static final double SPIRAL = 0.28;

    private final Unit unit;
    private final SectionPlane panel;

    EndView(Unit unit, SectionPlane panel) {
        this.unit = unit;
        this.panel = panel;
    }

    /** An item's circle with where it lies square to the plane. */
    record Disc(Item item, Extent extent) {}

    /** What is seen of a shaft along y, farthest first; trial parts are not drawn here. */
    List<Disc> seen(Section.Shaft shaft) {
        List<Disc> all = new ArrayList<>();
        for (Item item : unit.type().items()) {
            if (item.shaft().equals(shaft.id()) && !item.trial()) {
                Extent.of(item).filter(e -> e.to() > 0).ifPresent(e -> all.add(new Disc(item, e)));
            }
        }
        all.sort(Comparator.comparingDouble((Disc d) -> -d.extent().centre()));
        List<Disc> seen = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Disc disc = all.get(i);
            boolean covered = all.subList(i + 1, all.size()).stream()
                    .anyMatch(near -> near.extent().outer() >= disc.extent().outer() - 1e-6
                            && near.extent().inner() <= disc.extent().outer());
            if (!covered) {
                seen.add(disc);
            }
        }
        return seen;
    }

    /** Draws one circle. */
    void draw(Svg svg, Section.Shaft shaft, Disc disc, Stand stand) {
        double x = panel.x(shaft.at().get(0));
        double y = panel.y(shaft.at().get(1));
        double r = disc.extent().outer() * panel.scale();
        if (stand == Stand.COMING) {
            svg.circle(x, y, r, "", new Stroke(DrawingStyle.GREY, 0.8, DrawingStyle.COMING_DASH));
            return;
        }
        boolean hand = stand == Stand.IN_HAND;
        Stroke edge = new Stroke(
                hand ? DrawingStyle.BLUE : DrawingStyle.INK, hand ? 2.2 : 1.1, stand == Stand.TRIAL ? "8 2.5" : "");
        svg.circle(x, y, r, hand ? DrawingStyle.BLUE_WASH : DrawingStyle.STEEL, edge);
        if (disc.item().shape() == Item.Shape.BEVEL_GEAR) {
            teeth(svg, x, y, r, disc.item(), hand ? DrawingStyle.BLUE : DrawingStyle.GREY);
        }
        if (disc.extent().inner() > 0 && disc.item().shape() != Item.Shape.BEVEL_GEAR) {
            svg.circle(x, y, disc.extent().inner() * panel.scale(), "", new Stroke(edge.colour(), 0.7));
        }
    }

    private void teeth(Svg svg, double x, double y, double r, Item item, String colour) {
        int count = unit.type().gears().stream()
                .filter(pair ->
                        pair.drivenItem().equals(item.id()) || pair.driverItem().equals(item.id()))
                .mapToInt(pair -> pair.drivenItem().equals(item.id()) ? pair.driven() : pair.driver())
                .findFirst()
                .orElse(36);
        double toe = 0.68 * r;
        StringBuilder d = new StringBuilder();
        for (int i = 0; i < count; i++) {
            double a = 2 * Math.PI * i / count;
            double middle = a + SPIRAL * 0.42;
            d.append('M').append(at(x, y, toe, a)).append('Q').append(at(x, y, 0.85 * r, middle));
            d.append(' ').append(at(x, y, r, a + SPIRAL));
        }
        svg.path(d.toString(), "", new Stroke(colour, 0.8));
        svg.circle(x, y, toe, "", new Stroke(colour, 0.8));
    }

    private static String at(double x, double y, double r, double angle) {
        return Svg.p(x + r * Math.cos(angle), y - r * Math.sin(angle));
    }

    /** Centre lines of the circle. */
    void centre(Svg svg, FigurePen pen, Section.Shaft shaft) {
        double x = panel.x(shaft.at().get(0));
        double y = panel.y(shaft.at().get(1));
        double r =
                seen(shaft).stream().mapToDouble(d -> d.extent().outer()).max().orElse(0) * panel.scale();
        if (r > 0) {
            pen.centreLine(x, y - r - 8, x, y + r + 8);
            svg.circle(x, y, 1.6, DrawingStyle.INK, new Stroke(DrawingStyle.INK, 0));
        }
    }
}
