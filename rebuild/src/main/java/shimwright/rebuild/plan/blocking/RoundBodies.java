package shimwright.rebuild.plan.blocking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Section.Axis;
import shimwright.rebuild.unit.model.Section.Outline;
import shimwright.rebuild.unit.model.Section.Shaft;
import shimwright.rebuild.unit.model.Unit;

/**
 * The round bodies of a unit and the walls of its castings.
 *
 * @param rings of each item that is drawn, without trial parts and forks, which come in from the side of their sleeve
 * @param walls of each casting, one for each shaft that meets it
 * @param shafts by id
 */
record RoundBodies(Map<String, List<Ring>> rings, Map<String, List<Ring>> walls, Map<String, Shaft> shafts) {

    private static final double TOUCH = 2e-5;

    static RoundBodies of(Unit unit) {
        Map<String, Shaft> shafts = new LinkedHashMap<>();
        unit.type().section().shafts().forEach(shaft -> shafts.put(shaft.id(), shaft));
        Map<String, List<Ring>> rings = new LinkedHashMap<>();
        for (Item item : unit.type().items()) {
            if (!item.trial()
                    && shafts.containsKey(item.shaft())
                    && item.shape() != Shape.NONE
                    && item.shape() != Shape.FORK) {
                rings.computeIfAbsent(item.id(), k -> new ArrayList<>()).addAll(ofItem(item));
            }
        }
        List<Ring> seated = rings.values().stream().flatMap(List::stream).toList();
        for (Shaft shaft : shafts.values()) {
            if (!shaft.item().isEmpty()) {
                List<Ring> own = rings.computeIfAbsent(shaft.item(), k -> new ArrayList<>());
                shaft.steps().forEach(s -> own.addAll(ofStep(shaft, s)));
            }
        }
        Map<String, List<Ring>> walls = new LinkedHashMap<>();
        for (Outline outline : unit.type().section().castings()) {
            for (Shaft shaft : shafts.values()) {
                if (shaft.axis() == Axis.X && !outline.item().isEmpty()) {
                    walls.computeIfAbsent(outline.item(), k -> new ArrayList<>())
                            .addAll(crossings(outline, shaft, shafts, seated));
                }
            }
        }
        return new RoundBodies(rings, walls, shafts);
    }

    /** A step of a shaft, cut where a bore begins or ends: there it is a ring about its bore. */
    private static List<Ring> ofStep(Shaft shaft, List<Double> step) {
        TreeSet<Double> cuts = new TreeSet<>(List.of(step.get(0), step.get(1)));
        shaft.bores().forEach(bore -> cuts.addAll(bore.subList(0, 2)));
        List<Double> at = List.copyOf(cuts.subSet(step.get(0), true, step.get(1), true));
        List<Ring> rings = new ArrayList<>();
        for (int i = 0; i + 1 < at.size(); i++) {
            double hole = bore(shaft, at.get(i), at.get(i + 1));
            rings.add(new Ring(shaft.id(), at.get(i), at.get(i + 1), hole, step.get(2) / 2));
        }
        return rings;
    }

    /** Radius of the bore that runs through all of a part of the shaft; 0 where none does. */
    private static double bore(Shaft shaft, double from, double to) {
        return shaft.bores().stream()
                .filter(b -> b.get(0) <= from + TOUCH && b.get(1) >= to - TOUCH)
                .mapToDouble(b -> b.get(2) / 2)
                .max()
                .orElse(0);
    }

    /**
     * The shaft in a bore of which an item lies.
     *
     * @return empty for what lies round a shaft, or between two
     */
    Optional<Shaft> around(String item) {
        List<Ring> own = rings.getOrDefault(item, List.of());
        return own.isEmpty()
                ? Optional.empty()
                : shafts.values().stream()
                        .filter(shaft -> !shaft.item().equals(item))
                        .filter(shaft -> apart(shaft.id(), own.get(0).line()) == 0)
                        .filter(shaft -> own.stream().allMatch(r -> within(shaft, r)))
                        .findFirst();
    }

    private static boolean within(Shaft shaft, Ring ring) {
        double hole = bore(shaft, ring.from(), ring.to());
        return hole > 0 && ring.outer() <= hole + TOUCH;
    }

    /** True where what lies in a bore can leave it by that end: the bore runs to the end of the shaft, as wide as it must. */
    static boolean leaves(Shaft shaft, Ring ring, boolean byHighEnd) {
        double end = byHighEnd
                ? shaft.steps().stream().mapToDouble(s -> s.get(1)).max().orElseThrow()
                : shaft.steps().stream().mapToDouble(s -> s.get(0)).min().orElseThrow();
        TreeSet<Double> cuts = new TreeSet<>();
        cuts.add(byHighEnd ? ring.to() : ring.from());
        cuts.add(end);
        shaft.bores().forEach(bore -> cuts.addAll(bore.subList(0, 2)));
        List<Double> at = List.copyOf(
                byHighEnd ? cuts.subSet(ring.to(), true, end, true) : cuts.subSet(end, true, ring.from(), true));
        for (int i = 0; i + 1 < at.size(); i++) {
            if (bore(shaft, at.get(i), at.get(i + 1)) < ring.outer() - TOUCH) {
                return false;
            }
        }
        return true;
    }

    private static List<Ring> ofItem(Item item) {
        List<Ring> rings = new ArrayList<>();
        if (item.along().size() == 2 && item.diameters().size() == 2) {
            rings.add(new Ring(
                    item.shaft(),
                    item.along().get(0),
                    item.along().get(1),
                    item.diameters().get(0) / 2,
                    item.diameters().get(1) / 2));
        }
        item.also().forEach(r -> rings.add(new Ring(item.shaft(), r.get(0), r.get(1), r.get(2) / 2, r.get(3) / 2)));
        return rings;
    }

    /**
     * Where the outline crosses the axis there is a wall, with a hole for what sits in it on that axis, on whichever shaft. A shaft
     * that runs through alone does not tell how large the hole is: the bearing in it may not be drawn yet.
     */
    private static List<Ring> crossings(Outline outline, Shaft shaft, Map<String, Shaft> shafts, List<Ring> seated) {
        double height = shaft.at().get(1);
        List<Double> at = new ArrayList<>();
        int corners = outline.points().size();
        for (int i = 0; i + (outline.closed() ? 0 : 1) < corners; i++) {
            List<Double> p = outline.points().get(i);
            List<Double> q = outline.points().get((i + 1) % corners);
            if ((p.get(1) > height) != (q.get(1) > height)) {
                double part = (height - p.get(1)) / (q.get(1) - p.get(1));
                at.add(p.get(0) + part * (q.get(0) - p.get(0)));
            }
        }
        at.sort(null);
        List<Ring> walls = new ArrayList<>();
        int stride = outline.closed() ? 2 : 1;
        for (int i = 0; i + stride - 1 < at.size(); i += stride) {
            double from = at.get(i);
            double to = at.get(i + stride - 1);
            double hole = seated.stream()
                    .filter(r -> apart(shafts.get(r.line()), shaft) == 0 && r.to() > from && r.from() < to)
                    .mapToDouble(Ring::outer)
                    .max()
                    .orElse(0);
            walls.add(new Ring(shaft.id(), from, to, hole, Double.POSITIVE_INFINITY));
        }
        return walls;
    }

    /** Distance between two axes; not a number where they are not parallel. */
    double apart(String one, String two) {
        return apart(shafts.get(one), shafts.get(two));
    }

    private static double apart(@Nullable Shaft a, @Nullable Shaft b) {
        if (a == null || b == null || a.axis() != b.axis()) {
            return Double.NaN;
        }
        return Math.hypot(a.at().get(0) - b.at().get(0), a.at().get(1) - b.at().get(1));
    }

    /** Largest radius of the shaft, with all of the item that carries it, between two places on its axis. */
    double shaftRadius(String line, double from, double to) {
        Shaft shaft = shafts.get(line);
        if (shaft == null) {
            return 0;
        }
        double radius = 0;
        for (List<Double> step : shaft.steps()) {
            if (step.get(0) < to && step.get(1) > from) {
                radius = Math.max(radius, step.get(2) / 2);
            }
        }
        for (Ring ring : rings.getOrDefault(shaft.item(), List.of())) {
            if (ring.line().equals(line) && ring.from() < to && ring.to() > from) {
                radius = Math.max(radius, ring.outer());
            }
        }
        return radius;
    }
}
