package shimwright.bench.picture.section;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Length;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;
import shimwright.rebuild.unit.model.Unit;

/** Arranges the panels with their labels and chain, and the legend, on one sheet. */
final class SectionSheet {
    private static final double MARGIN = 14;
    private static final double WIDE = 560;
    private static final double BETWEEN = 14;
    /** Scale at which loops are laid out before the panels exist, drawing units per metre. */
    private static final double LAYOUT_SCALE = 1000;

    private final Unit unit;
    private final SectionState state;
    private final SectionView view;
    private final Framing framing;
    private final Optional<Clearance> clearance;
    private final boolean loopIsFlat;
    private final Optional<LoopLayout> loop;

    SectionSheet(Unit unit, SectionState state, SectionView view, Framing framing) {
        this.unit = unit;
        this.state = state;
        this.view = view;
        this.framing = framing;
        this.clearance = SectionDrawing.clearance(unit, state);
        List<Length> lengths = clearance.map(Clearance::loop).orElse(List.of());
        this.loopIsFlat = lengths.stream().anyMatch(l -> onCrossShaft(l.item()));
        this.loop = lengths.isEmpty() ? Optional.empty() : layLoop(lengths);
    }

    private boolean onCrossShaft(String id) {
        return unit.type().items().stream()
                .filter(i -> i.id().equals(id))
                .anyMatch(i -> unit.type().section().shafts().stream()
                        .anyMatch(s -> s.id().equals(i.shaft()) && s.axis() == Section.Axis.Y));
    }

    private Optional<LoopLayout> layLoop(List<Length> lengths) {
        return (loopIsFlat ? framing.wholeFlat() : framing.wholeUpright()).map(area -> {
            SectionPlane panel = new SectionPlane(loopIsFlat, framing.level(), area, LAYOUT_SCALE, 0, 0);
            AnchorPoints anchors = new AnchorPoints(unit, panel, new Scene(unit, state, Set.of(), panel));
            Map<Length, LoopLayout.Span> spans = new HashMap<>();
            lengths.forEach(l -> anchors.span(l).ifPresent(s -> spans.put(l, s)));
            return LoopLayout.of(lengths, spans, area.getCenterX());
        });
    }

    String draw(String prefix) {
        boolean wide = view.width() >= WIDE;
        double right = view.width() - MARGIN;
        double inner = right - MARGIN;
        Optional<Rectangle2D> up = framing.upright().map(a -> withLoop(a, false));
        Optional<Rectangle2D> flat = framing.flat().map(a -> withLoop(a, true));
        if (up.isPresent() && loop.isPresent() && !loopIsFlat && view.around().isEmpty()) {
            flat = Optional.empty();
        }
        double scale = up.map(a -> inner / a.getWidth()).orElse(0.0);
        List<LabelledPanel> panels = new ArrayList<>();
        double y = MARGIN;
        if (up.isPresent()) {
            boolean alone = flat.isEmpty();
            LabelledPanel labelled =
                    labelled(up.get(), false, i -> alone || !onCrossShaft(i.id()), scale, MARGIN, right, y);
            panels.add(labelled);
            y = labelled.bottom() + BETWEEN;
        }
        boolean beside = wide && up.isPresent() && !(loop.isPresent() && loopIsFlat);
        double flatRight = beside ? MARGIN + 0.38 * inner : right;
        double top = y;
        if (flat.isPresent()) {
            double fits = (flatRight - MARGIN) / flat.get().getWidth();
            double flatScale = up.isPresent()
                    ? Math.min(fits, Math.max(scale, 0.7 * inner / flat.get().getWidth() * (wide ? 0 : 1)))
                    : fits;
            boolean alone = up.isEmpty();
            LabelledPanel labelled =
                    labelled(flat.get(), true, i -> alone || onCrossShaft(i.id()), flatScale, MARGIN, flatRight, y);
            panels.add(labelled);
            y = labelled.bottom() + BETWEEN;
        }
        Legend legend = new Legend(
                unit,
                state,
                view,
                up.isPresent(),
                flat.isPresent(),
                unit.type().section().scheme() ? 0 : scale);
        boolean legendBeside = beside && flat.isPresent();
        double legendLeft = legendBeside ? flatRight + 36 : MARGIN;
        double legendHeight = legend.height(right - legendLeft);
        double legendTop = legendBeside ? Math.max(top, y - BETWEEN - legendHeight) : y;
        double room = unit.type().section().scheme() ? 2 * DrawingStyle.TEXT : 0;
        double height = Math.max(y, legendTop + legendHeight + MARGIN) + room;
        return paint(prefix, height, panels, svg -> legend.draw(svg, legendLeft, legendTop, right - legendLeft));
    }

    private String paint(String prefix, double height, List<LabelledPanel> panels, Consumer<Svg> legend) {
        Svg svg = new Svg();
        String title = unit.type().maker() + " " + unit.type().model() + " " + unit.variant() + ", section";
        svg.root(prefix, view.width(), height, title, SectionDrawing.about(unit, state));
        FigurePen pen = new FigurePen(svg);
        panels.forEach(b -> b.draw(svg, pen, prefix, !view.around().isEmpty()));
        legend.accept(svg);
        if (unit.type().section().scheme()) {
            svg.text(
                    MARGIN,
                    height - 6,
                    "Not to scale: a scheme, nothing measured yet",
                    Letter.start(DrawingStyle.TEXT));
        }
        return svg.done();
    }

    private LabelledPanel labelled(
            Rectangle2D area,
            boolean flat,
            Predicate<Item> named,
            double scale,
            double left,
            double right,
            double top) {
        double indent = Math.max(0, (right - left - scale * area.getWidth()) / 2);
        SectionPlane panel = new SectionPlane(flat, framing.level(), area, scale, left + indent, top);
        Optional<LoopLayout> own = flat == loopIsFlat ? loop : Optional.empty();
        return new LabelledPanel(unit, state, clearance, own, named, panel, left, right, view.units());
    }

    /** The area widened so that the whole chain has room, unless that would shrink the picture too much. */
    private Rectangle2D withLoop(Rectangle2D area, boolean flat) {
        if (loop.isEmpty() || flat != loopIsFlat) {
            return area;
        }
        double low = area.getMinX();
        double high = area.getMaxX();
        for (LoopLayout.Arrow arrow : loop.get().arrows()) {
            low = Math.min(low, Math.min(arrow.from(), arrow.to()) - 3e-3);
            high = Math.max(high, Math.max(arrow.from(), arrow.to()) + 3e-3);
        }
        return high - low > 1.6 * area.getWidth()
                ? area
                : new Rectangle2D.Double(low, area.getY(), high - low, area.getHeight());
    }
}
