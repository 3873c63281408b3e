package shimwright.bench.picture.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.bench.picture.section.PartFigure.Fill;
import shimwright.bench.picture.section.PartFigure.Mark;
import shimwright.bench.picture.section.PartFigure.Sketch;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Section;

/** Shafts as stepped bodies, not cut, with their shoulders. */
final class ShaftFigures {
    private static final double CHAMFER = 1e-3;
    private static final double SAME = 1e-5;

    private ShaftFigures() {}

    /** One step: from, to along the axis and radius, m. */
    record Step(double from, double to, double radius) {}

    /** The usable steps in order along the axis. */
    static List<Step> steps(Section.Shaft shaft) {
        List<Step> steps = new ArrayList<>();
        for (List<Double> s : shaft.steps()) {
            if (s.size() == 3 && s.get(1) > s.get(0) && s.get(2) > 0) {
                steps.add(new Step(s.get(0), s.get(1), s.get(2) / 2));
            }
        }
        steps.sort(Comparator.comparingDouble(Step::from));
        return steps;
    }

    /** The shaft's body; a stretch between two steps that is not given is drawn as a taper from one to the other. */
    static Optional<PartFigure> figure(Section.Shaft shaft, Item item) {
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
        Sketch figure = PartFigure.of(item).polygon(Fill.PLAIN, top.toArray(new double[0][]));
        figure.across(Mark.EDGE, first.from() + chamfer(first), first.radius());
        figure.across(Mark.EDGE, last.to() - chamfer(last), last.radius());
        shoulders(figure, steps);
        return Optional.of(figure.build());
    }

    private static void shoulders(Sketch figure, List<Step> steps) {
        for (int i = 1; i < steps.size(); i++) {
            Step before = steps.get(i - 1);
            Step after = steps.get(i);
            if (after.from() - before.to() > SAME) {
                figure.across(Mark.EDGE, before.to(), before.radius());
                figure.across(Mark.EDGE, after.from(), after.radius());
            } else if (Math.abs(before.radius() - after.radius()) > SAME) {
                figure.across(Mark.EDGE, after.from(), Math.max(before.radius(), after.radius()));
            }
        }
    }

    private static double chamfer(Step step) {
        return Math.min(CHAMFER, Math.min((step.to() - step.from()) / 4, step.radius() / 4));
    }
}
