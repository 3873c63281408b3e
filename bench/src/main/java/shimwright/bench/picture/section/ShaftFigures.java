package shimwright.bench.picture.section;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;

/** Shafts as stepped bodies, not cut, with their shoulders; where one is bored it is broken open, so that its bore is seen. */
public final class ShaftFigures {
    private static final double CHAMFER = 1e-3;
    private static final double SAME = 1e-5;

    private ShaftFigures() {}

    /** One step: from, to along the axis and radius, m. */
    record Step(double from, double to, double radius) {}

    /** The usable steps in order along the axis. */
    static List<Step> steps(Section.Shaft shaft) {
        return usable(shaft.steps());
    }

    private static List<Step> usable(List<List<Double>> given) {
        List<Step> steps = new ArrayList<>();
        for (List<Double> s : given) {
            if (s.size() == 3 && s.get(1) > s.get(0) && s.get(2) > 0) {
                steps.add(new Step(s.get(0), s.get(1), s.get(2) / 2));
            }
        }
        steps.sort(Comparator.comparingDouble(Step::from));
        return steps;
    }

    /** The shaft's body; a stretch between two steps that is not given is drawn as a taper from one to the other. */
    public static Optional<PartFigure> figure(Section.Shaft shaft, Item item) {
        List<Step> steps = steps(shaft);
        if (steps.isEmpty()) {
            return Optional.empty();
        }
        List<double[]> top = new ArrayList<>();
        Step first = steps.get(0);
        Step last = steps.get(steps.size() - 1);
        top.add(PartFigure.at(first.from(), 0));
        top.add(PartFigure.at(first.from(), first.radius() - chamfer(first)));
        top.add(PartFigure.at(first.from() + chamfer(first), first.radius()));
        for (int i = 0; i < steps.size(); i++) {
            Step s = steps.get(i);
            if (i > 0) {
                top.add(PartFigure.at(s.from(), s.radius()));
            }
            if (i < steps.size() - 1) {
                top.add(PartFigure.at(s.to(), s.radius()));
            }
        }
        top.add(PartFigure.at(last.to() - chamfer(last), last.radius()));
        top.add(PartFigure.at(last.to(), last.radius() - chamfer(last)));
        top.add(PartFigure.at(last.to(), 0));
        List<Step> bores = usable(shaft.bores());
        Sketch figure = PartFigure.of(item);
        body(figure, PartFigure.closed(top.toArray(new double[0][])), bores);
        edge(figure, bores, first.from() + chamfer(first), first.radius());
        edge(figure, bores, last.to() - chamfer(last), last.radius());
        shoulders(figure, steps, bores);
        return Optional.of(figure.build());
    }

    /** The body with its bores taken out, and the wall round each bore as cut metal (ISO 128-3:2020, local section). */
    private static void body(Sketch figure, Area half, List<Step> bores) {
        Area whole = new Area(half);
        Area walls = new Area();
        for (Step bore : bores) {
            Area stretch = new Area(half);
            stretch.intersect(new Area(new Rectangle2D.Double(
                    bore.from(), 0, bore.to() - bore.from(), half.getBounds2D().getMaxY())));
            walls.add(stretch);
            whole.subtract(stretch);
        }
        bores.forEach(bore -> walls.subtract(
                new Area(new Rectangle2D.Double(bore.from(), 0, bore.to() - bore.from(), bore.radius()))));
        figure.both(Fill.PLAIN, whole);
        if (!walls.isEmpty()) {
            figure.both(Fill.RISING, walls);
        }
    }

    /** A line across the shaft, left out where it is broken open. */
    private static void edge(Sketch figure, List<Step> bores, double w, double radius) {
        if (bores.stream().noneMatch(bore -> w > bore.from() - SAME && w < bore.to() + SAME)) {
            figure.across(Mark.EDGE, w, radius);
        }
    }

    private static void shoulders(Sketch figure, List<Step> steps, List<Step> bores) {
        for (int i = 1; i < steps.size(); i++) {
            Step before = steps.get(i - 1);
            Step after = steps.get(i);
            if (after.from() - before.to() > SAME) {
                edge(figure, bores, before.to(), before.radius());
                edge(figure, bores, after.from(), after.radius());
            } else if (Math.abs(before.radius() - after.radius()) > SAME) {
                edge(figure, bores, after.from(), Math.max(before.radius(), after.radius()));
            }
        }
    }

    private static double chamfer(Step step) {
        return Math.min(CHAMFER, Math.min((step.to() - step.from()) / 4, step.radius() / 4));
    }
}
