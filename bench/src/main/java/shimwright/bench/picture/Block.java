package shimwright.bench.picture;

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
import shimwright.bench.picture.Labels.Flag;
import shimwright.bench.picture.Labels.Look;
import shimwright.bench.picture.Labels.Tag;
import shimwright.bench.picture.SectionState.Stand;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** One panel with its labels above and below and, where it owns the loop of a clearance, the chain under it. */
final class Block {
    private static final double GAP = 8;
    private static final int MOST_ROWS = 6;
    private static final Svg.Stroke FRAME = new Svg.Stroke(Ink.FAINT, 1);

    private final Unit unit;
    private final SectionState state;
    private final Optional<Clearance> clearance;
    private final Optional<Loop> loop;
    private final double left;
    private final double right;
    private final Panel panel;
    private final Scene scene;
    private final Finder finder;
    private final List<Flag> above;
    private final List<Flag> below;
    private final double upBase;
    private final double downBase;
    private final List<Key.Entry> key = new ArrayList<>();
    private final double keyTop;
    private final double chainTop;
    private final double bottom;

    /**
     * Plans the block.
     *
     * @param loop the loop to be drawn under this panel; empty for none
     * @param own which items are named here and not on another panel
     * @param draft the panel, its top where the block begins
     * @param left sheet position where labels and chain may begin
     * @param right sheet position where they must end
     */
    Block(
            Unit unit,
            SectionState state,
            Optional<Clearance> clearance,
            Optional<Loop> loop,
            Predicate<Item> own,
            Panel draft,
            double left,
            double right) {
        this.unit = unit;
        this.state = state;
        this.clearance = clearance;
        this.loop = loop;
        this.left = left;
        this.right = right;
        Scene first = new Scene(unit, state, accents(), draft);
        Finder find = new Finder(unit, draft, first);
        List<Tag> up = new ArrayList<>();
        List<Tag> down = new ArrayList<>();
        tags(find, first, own, up, down);
        loop.ifPresent(l -> balloons(find, draft, l, down));
        above = plan(up);
        below = plan(down);
        double base = base(find, draft, above, true);
        double lead = above.isEmpty() ? 0 : Math.max(0, draft.top() - base + 10 + Labels.rows(above) * Labels.ROW);
        panel = draft.movedTo(draft.top() + lead);
        scene = new Scene(unit, state, accents(), panel);
        finder = new Finder(unit, panel, scene);
        upBase = base + lead;
        downBase = base(find, draft, below, false) + lead;
        double labels = below.isEmpty() ? panel.bottom() : downBase + 10 + Labels.rows(below) * Labels.ROW;
        double clear = Math.max(labels, panel.bottom());
        keyTop = clear + GAP;
        chainTop = keyTop + Key.height(key, right - left);
        bottom = loop.isPresent() && clearance.isPresent()
                ? chainTop + LoopChain.height(clearance.get(), right - left)
                : key.isEmpty() ? clear : chainTop;
    }

    /** Names on poles; where they cannot stand clear of each other, letters with the names in a key. */
    private List<Flag> plan(List<Tag> tags) {
        Optional<List<Flag>> flags = FlagPlan.of(tags, left, right);
        if (flags.isPresent() && Labels.rows(flags.get()) <= MOST_ROWS) {
            return flags.get();
        }
        List<Tag> letters = new ArrayList<>();
        List<Tag> sorted = new ArrayList<>(tags);
        sorted.sort(Comparator.comparingDouble(Tag::x));
        for (Tag tag : sorted) {
            if (tag.balloon()) {
                letters.add(tag);
            } else {
                String letter = Key.letter(key.size());
                key.add(new Key.Entry(letter, tag));
                letters.add(tag.lettered(letter));
            }
        }
        return FlagPlan.of(letters, left, right).or(() -> flags).orElse(List.of());
    }

    double bottom() {
        return bottom;
    }

    private static double base(Finder find, Panel panel, List<Flag> flags, boolean upper) {
        double edge = upper ? panel.top() : panel.bottom();
        double from = flags.stream()
                .mapToDouble(f -> Math.min(f.textLeft(), f.pole()))
                .min()
                .orElse(0);
        double to = flags.stream()
                .mapToDouble(f -> Math.max(f.textRight(), f.pole()))
                .max()
                .orElse(0);
        return flags.isEmpty() ? edge : find.skyline(from - 4, to + 4, upper).orElse(edge);
    }

    private Set<String> accents() {
        return clearance.stream()
                .flatMap(c -> c.positions().stream())
                .map(Clearance.Position::item)
                .filter(id -> !id.isEmpty())
                .collect(Collectors.toSet());
    }

    /** Names: what is in the hand, what is highlighted, and where the shims go. */
    private void tags(Finder find, Scene on, Predicate<Item> own, List<Tag> up, List<Tag> down) {
        Set<String> named = new LinkedHashSet<>(accents());
        named.addAll(state.inHand());
        named.addAll(state.highlighted());
        for (Item item : unit.type().items()) {
            if (named.contains(item.id()) && own.test(item)) {
                boolean upper = upper(on, item);
                find.anchor(item.id(), upper).ifPresent(at -> (upper ? up : down).add(tag(item, at)));
            }
        }
    }

    /** The shim that is chosen for the clearance comes first among its places and gets the arrow. */
    private Tag tag(Item item, Point2D at) {
        Stand stand = state.of(item);
        boolean in = stand == Stand.FITTED || stand == Stand.TRIAL;
        Optional<String> first =
                clearance.flatMap(c -> c.positions().stream().findFirst()).map(Clearance.Position::item);
        if (first.isPresent() && first.get().equals(item.id())) {
            return new Tag(item.id(), capital(item.name()) + (in ? "" : " goes here"), Look.SHIM, false, at.getX());
        }
        return new Tag(
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
    private void balloons(Finder find, Panel on, Loop walk, List<Tag> down) {
        int number = 0;
        for (Loop.Arrow arrow : walk.arrows()) {
            number++;
            String item = arrow.length().item();
            String text = Integer.toString(number);
            double middle = on.x((arrow.from() + arrow.to()) / 2);
            along(find, item, middle).ifPresent(at -> down.add(new Tag(item, text, Look.NAME, true, at.getX())));
        }
    }

    /** A point of an item below a sheet position: in the metal of a casting, on a shaft, else on the part itself. */
    private static Optional<Point2D> along(Finder find, String item, double x) {
        return find.metalAnchor(item, x, false)
                .or(() -> find.shaftAnchor(item, x, false))
                .or(() -> find.anchor(item, false));
    }

    void draw(Svg svg, Pen pen, String prefix, boolean cropped, UnitSystem units) {
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
        Labels.draw(svg, above, upBase, true, t -> y(t, true));
        Labels.draw(svg, below, downBase, false, t -> y(t, false));
        Key.draw(svg, key, left, keyTop, right - left);
        if (loop.isPresent() && clearance.isPresent()) {
            new LoopChain(svg, panel, left, right, units).draw(clearance.get(), loop.get(), chainTop);
        }
    }

    private double y(Tag tag, boolean upper) {
        Optional<Point2D> at = tag.loop() ? along(finder, tag.item(), tag.x()) : finder.anchor(tag.item(), upper);
        return at.map(Point2D::getY).orElse(upper ? panel.top() : panel.bottom());
    }
}
