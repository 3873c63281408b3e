package shimwright.rebuild.plan.blocking;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Section.Axis;
import shimwright.rebuild.unit.model.Section.Outline;
import shimwright.rebuild.unit.model.Section.Shaft;
import shimwright.rebuild.unit.model.Unit;

/**
 * The round bodies of a unit and the walls of its castings.
 *
 * @param rings of each item that is drawn, trial parts left out
 * @param walls of each casting, one for each shaft that meets it
 * @param shafts by id
 */
record RoundBodies(Map<String, List<Ring>> rings, Map<String, List<Ring>> walls, Map<String, Shaft> shafts) {

    static RoundBodies of(Unit unit) {
        Map<String, Shaft> shafts = new LinkedHashMap<>();
        unit.type().section().shafts().forEach(shaft -> shafts.put(shaft.id(), shaft));
        Map<String, List<Ring>> rings = new LinkedHashMap<>();
        for (Item item : unit.type().items()) {
            if (!item.trial() && shafts.containsKey(item.shaft()) && item.shape() != Shape.NONE) {
                rings.computeIfAbsent(item.id(), k -> new ArrayList<>()).addAll(ofItem(item));
            }
        }
        for (Shaft shaft : shafts.values()) {
            if (!shaft.item().isEmpty()) {
                List<Ring> own = rings.computeIfAbsent(shaft.item(), k -> new ArrayList<>());
                shaft.steps().forEach(s -> own.add(new Ring(shaft.id(), s.get(0), s.get(1), 0, s.get(2) / 2)));
            }
        }
        Map<String, List<Ring>> walls = new LinkedHashMap<>();
        for (Outline outline : unit.type().section().castings()) {
            for (Shaft shaft : shafts.values()) {
                if (shaft.axis() == Axis.X && !outline.item().isEmpty()) {
                    walls.computeIfAbsent(outline.item(), k -> new ArrayList<>())
                            .addAll(crossings(outline, shaft, rings));
                }
            }
        }
        return new RoundBodies(rings, walls, shafts);
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

    /** Where the outline crosses the axis there is a wall, with a hole for what is drawn in it on that axis. */
    private static List<Ring> crossings(Outline outline, Shaft shaft, Map<String, List<Ring>> rings) {
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
            double hole = rings.values().stream()
                    .flatMap(List::stream)
                    .filter(r -> r.line().equals(shaft.id()) && r.to() > from && r.from() < to)
                    .mapToDouble(Ring::outer)
                    .max()
                    .orElse(0);
            walls.add(new Ring(shaft.id(), from, to, hole, Double.POSITIVE_INFINITY));
        }
        return walls;
    }

    /** Distance between two axes; not a number where they are not parallel. */
    double apart(String one, String two) {
        Shaft a = shafts.get(one);
        Shaft b = shafts.get(two);
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
        DoubleStream steps = shaft.steps().stream()
                .filter(s -> s.get(0) < to && s.get(1) > from)
                .mapToDouble(s -> s.get(2) / 2);
        DoubleStream carrier = rings.getOrDefault(shaft.item(), List.of()).stream()
                .filter(r -> r.line().equals(line) && r.from() < to && r.to() > from)
                .mapToDouble(Ring::outer);
        return DoubleStream.concat(steps, carrier).max().orElse(0);
    }
}
