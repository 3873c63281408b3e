package shimwright.bench.picture.section;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import shimwright.bench.picture.section.SectionLabels.Label;
import shimwright.bench.picture.section.SectionLabels.Look;
import shimwright.bench.picture.section.SectionLabels.PlacedLabel;
import shimwright.bench.picture.section.SectionState.Stand;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** One panel with its labels above and below and, where it owns the loop of a clearance, the chain under it. */
final class LabelledPanel {
    private static final double GAP = 8;
    private static final int MOST_ROWS = 6;
    private static final Svg.Stroke FRAME = new Svg.Stroke(DrawingStyle.FAINT, 1);

    private final UnitSystem units;
    private final Unit unit;
    private final SectionState state;
    private final Optional<Clearance> clearance;
    private final Optional<LoopLayout> loop;
    private final double left;
    private final double right;
    private final SectionPlane panel;
    private final Scene scene;
    private final AnchorPoints anchors;
    private final List<PlacedLabel> above;
    private final List<PlacedLabel> below;
    private final double upBase;
    private final double downBase;
    private final List<PartsKey.Entry> key = new ArrayList<>();
    private final double keyTop;
    private final double chainTop;
    private final double bottom;

    /**
     * Plans the panel with its labels.
     *
     * @param loop the loop to be drawn under this panel; empty for none
     * @param own which items are named here and not on another panel
     * @param draft the panel, its top where the labels begin
     * @param left sheet position where labels and chain may begin
     * @param right sheet position where they must end
     * @param units units of the lengths that are written
     */
    LabelledPanel(
            Unit unit,
            SectionState state,
            Optional<Clearance> clearance,
            Optional<LoopLayout> loop,
            Predicate<Item> own,
            SectionPlane draft,
            double left,
            double right,
            UnitSystem units) {
        this.units = units;
        this.unit = unit;
        this.state = state;
        this.clearance = clearance;
        this.loop = loop;
        this.left = left;
        this.right = right;
        Scene first = new Scene(unit, state, accents(), draft);
        AnchorPoints find = new AnchorPoints(unit, draft, first);
        List<Label> up = new ArrayList<>();
        List<Label> down = new ArrayList<>();
        labels(find, first, own, up, down);
        loop.ifPresent(l -> balloons(find, draft, l, down));
        above = plan(up);
        below = plan(down);
        double base = base(find, draft, above, true);
        double lead = above.isEmpty()
                ? 0
                : Math.max(0, draft.top() - base + 10 + SectionLabels.rows(above) * SectionLabels.ROW);
        panel = draft.movedTo(draft.top() + lead);
        scene = new Scene(unit, state, accents(), panel);
        anchors = new AnchorPoints(unit, panel, scene);
        upBase = base + lead;
        downBase = base(find, draft, below, false) + lead;
        double labelsEnd =
                below.isEmpty() ? panel.bottom() : downBase + 10 + SectionLabels.rows(below) * SectionLabels.ROW;
        double clear = Math.max(labelsEnd, panel.bottom());
        keyTop = clear + GAP;
        chainTop = keyTop + PartsKey.height(key, right - left);
        bottom = loop.isPresent() && clearance.isPresent()
                ? chainTop
                        + new DimensionChain(new Svg(), panel, left, right, units).height(clearance.get(), loop.get())
                : key.isEmpty() ? clear : chainTop;
    }

    /** Names on leaders; where they cannot stand clear of each other, letters with the names in a key. */
    private List<PlacedLabel> plan(List<Label> labels) {
        Optional<List<PlacedLabel>> placed = LabelPlacement.of(labels, left, right);
        boolean whole = labels.stream().allMatch(label -> label.width() <= right - left - 4 * LabelPlacement.PAD);
        if (whole && placed.isPresent() && SectionLabels.rows(placed.get()) <= MOST_ROWS) {
            return placed.get();
        }
        List<Label> letters = new ArrayList<>();
        List<Label> sorted = new ArrayList<>(labels);
        sorted.sort(Comparator.comparingDouble(Label::x));
        share(sorted, (int) ((right - left - 2 * LabelPlacement.PAD) / LabelPlacement.BALLOON_PITCH));
        for (Label label : sorted) {
            if (label.balloon()) {
                letters.add(label);
            } else {
                String letter = PartsKey.letter(key.size());
                key.add(new PartsKey.Entry(letter, label));
                letters.add(label.lettered(letter));
            }
        }
        return LabelPlacement.of(letters, left, right).or(() -> placed).orElse(List.of());
    }

    /** Where there are more names than letters have room, the nearest neighbours share one. */
    private static void share(List<Label> sorted, int most) {
        while (sorted.size() > most) {
            int nearest = -1;
            for (int i = 0; i + 1 < sorted.size(); i++) {
                boolean names = !sorted.get(i).balloon() && !sorted.get(i + 1).balloon();
                if (names && (nearest < 0 || gap(sorted, i) < gap(sorted, nearest))) {
                    nearest = i;
                }
            }
            if (nearest < 0) {
                return;
            }
            sorted.set(nearest, sorted.get(nearest).with(sorted.remove(nearest + 1)));
        }
    }

    private static double gap(List<Label> sorted, int i) {
        return sorted.get(i + 1).x() - sorted.get(i).x();
    }

    double bottom() {
        return bottom;
    }

    private static double base(AnchorPoints find, SectionPlane panel, List<PlacedLabel> placed, boolean upper) {
        double edge = upper ? panel.top() : panel.bottom();
        double from = placed.stream()
                .mapToDouble(f -> Math.min(f.textLeft(), f.leader()))
                .min()
                .orElse(0);
        double to = placed.stream()
                .mapToDouble(f -> Math.max(f.textRight(), f.leader()))
                .max()
                .orElse(0);
        return placed.isEmpty() ? edge : find.skyline(from - 4, to + 4, upper).orElse(edge);
    }

    private Set<String> accents() {
        return clearance.stream()
                .flatMap(c -> c.positions().stream())
                .map(Clearance.Position::item)
                .filter(id -> !id.isEmpty())
                .collect(Collectors.toSet());
    }

    /** Names: what is in the hand, what an inspection did not find good, and where the shims go. */
    private void labels(AnchorPoints find, Scene on, Predicate<Item> own, List<Label> up, List<Label> down) {
        Set<String> named = new LinkedHashSet<>(accents());
        named.addAll(state.inHand());
        state.verdicts().forEach((item, stand) -> {
            if (stand == Stand.OPEN || stand == Stand.REWORK || stand == Stand.REPLACE) {
                named.add(item);
            }
        });
        for (Item item : unit.type().items()) {
            if (named.contains(item.id()) && own.test(item)) {
                boolean upper = upper(on, item);
                find.anchor(item.id(), upper).ifPresent(at -> (upper ? up : down).add(label(item, at)));
            }
        }
    }

    /** The shim that is chosen for the clearance comes first among its places and gets the arrow. */
    private Label label(Item item, Point2D at) {
        Stand stand = state.of(item);
        boolean in = stand == Stand.FITTED || stand == Stand.TRIAL;
        Optional<String> first =
                clearance.flatMap(c -> c.positions().stream().findFirst()).map(Clearance.Position::item);
        if (first.isPresent() && first.get().equals(item.id())) {
            return new Label(item.id(), capital(item.name()) + (in ? "" : " goes here"), Look.SHIM, false, at.getX());
        }
        return new Label(
                item.id(), capital(item.name()), stand == Stand.IN_HAND ? Look.HAND : Look.NAME, false, at.getX());
    }

    private static String capital(String name) {
        return name.isEmpty() ? name : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    /** Labels of the upper shaft stand above, those of the lower one below; of a single shaft all stand above. */
    private static boolean upper(Scene on, Item item) {
        List<Double> axes = on.placed().stream()
                .filter(p -> p.at().getShearY() == 0)
                .map(p -> p.at().getTranslateY())
                .distinct()
                .sorted()
                .toList();
        if (axes.size() < 2) {
            return true;
        }
        double middle = (axes.get(0) + axes.get(axes.size() - 1)) / 2;
        return on.placed().stream()
                .filter(p -> p.item().id().equals(item.id()))
                .findFirst()
                .map(p -> p.at().getTranslateY() < middle)
                .orElse(true);
    }

    /** A number on every part of the loop; on a casting it stands in the metal where the length runs. */
    private void balloons(AnchorPoints find, SectionPlane on, LoopLayout walk, List<Label> down) {
        int number = 0;
        for (LoopLayout.Arrow arrow : walk.arrows()) {
            number++;
            String item = arrow.length().item();
            String text = Integer.toString(number);
            double middle = on.x((arrow.from() + arrow.to()) / 2);
            along(find, item, middle).ifPresent(at -> down.add(new Label(item, text, Look.NAME, true, at.getX())));
        }
    }

    /** A point of an item below a sheet position: in the metal of a casting, on a shaft, else on the part itself. */
    private static Optional<Point2D> along(AnchorPoints find, String item, double x) {
        return find.metalAnchor(item, x, false)
                .or(() -> find.shaftAnchor(item, x, false))
                .or(() -> find.anchor(item, false));
    }

    void draw(Svg svg, FigurePen pen, String prefix, boolean cropped) {
        String clip = prefix + (panel.flat() ? "-clip-flat" : "-clip-up");
        Rectangle2D frame = panel.frame();
        double rim = cropped ? 0 : 12;
        svg.open("clipPath", "id", clip);
        svg.empty(
                "rect",
                "x",
                Svg.n(frame.getX() - rim),
                "y",
                Svg.n(frame.getY() - rim),
                "width",
                Svg.n(frame.getWidth() + 2 * rim),
                "height",
                Svg.n(frame.getHeight() + (panel.flat() ? rim : 2 * rim)));
        svg.close();
        svg.open("g", "clip-path", "url(#" + clip + ")");
        scene.draw(svg, pen, prefix);
        svg.close();
        if (cropped) {
            svg.rect(frame.getX(), frame.getY(), frame.getWidth(), frame.getHeight(), "", FRAME);
        }
        SectionLabels.draw(svg, above, upBase, true, t -> y(t, true));
        SectionLabels.draw(svg, below, downBase, false, t -> y(t, false));
        PartsKey.draw(svg, key, left, keyTop, right - left);
        if (loop.isPresent() && clearance.isPresent()) {
            new DimensionChain(svg, panel, left, right, units).draw(clearance.get(), loop.get(), chainTop);
        }
    }

    private double y(Label label, boolean upper) {
        Optional<Point2D> at =
                label.loop() ? along(anchors, label.item(), label.x()) : anchors.anchor(label.item(), upper);
        return at.map(Point2D::getY).orElse(upper ? panel.top() : panel.bottom());
    }
}
