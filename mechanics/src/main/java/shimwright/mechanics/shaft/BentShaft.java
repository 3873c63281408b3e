package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A shaft bent in one plane, exact for steps and point loads: between two marks the moment is a straight line and the
 * stiffness one, so that the slope is a parabola and the deflection a cubic.
 *
 * @param marks ends, steps, loads and bearings, rising
 * @param left force of the left bearing, N
 * @param right force of the right bearing, N
 */
record BentShaft(List<Mark> marks, double left, double right) {
    BentShaft {
        marks = List.copyOf(marks);
    }

    /**
     * One place where something changes.
     *
     * @param at along the shaft, m
     * @param curvature M/(E I) just after it, 1/m
     * @param growth its change per length up to the next mark, 1/m²
     * @param slope rad
     * @param deflection m
     */
    record Mark(double at, double curvature, double growth, double slope, double deflection) {
        double slopeAfter(double step) {
            return slope + step * (curvature + growth * step / 2);
        }

        double deflectionAfter(double step) {
            return deflection + step * (slope + step * (curvature / 2 + growth * step / 6));
        }

        /** The same with the whole shaft lifted and leant the other way. */
        Mark level(double lift, double lean, double from) {
            return new Mark(at, curvature, growth, slope - lean, deflection - lift - lean * (at - from));
        }
    }

    private static final int FINE = 40;

    /** In the plane of a direction round the shaft; the case has been checked. */
    static BentShaft of(ShaftBend.Case c, double direction) {
        double span = c.bearingB() - c.bearingA();
        double sum = 0;
        double turn = 0;
        for (ShaftBend.Load load : c.loads()) {
            double force = load.force() * Math.cos(load.direction() - direction);
            sum += force;
            turn += force * (load.at() - c.bearingA());
        }
        double right = -turn / span;
        double left = -sum - right;
        TreeSet<Double> places = new TreeSet<>(List.of(0.0, c.bearingA(), c.bearingB()));
        c.loads().forEach(load -> places.add(load.at()));
        c.stretches().forEach(stretch -> places.add(stretch.end()));
        List<Double> marks = List.copyOf(places);
        List<Mark> bent = new ArrayList<>();
        double slope = 0;
        double deflection = 0;
        for (int i = 0; i + 1 < marks.size(); i++) {
            double from = marks.get(i);
            double step = marks.get(i + 1) - from;
            double stiffness = stiffness(c, from + step / 2);
            double moment = moment(c, direction, left, right, from);
            double next = moment(c, direction, left, right, marks.get(i + 1));
            Mark mark = new Mark(from, moment / stiffness, (next - moment) / stiffness / step, slope, deflection);
            bent.add(mark);
            slope = mark.slopeAfter(step);
            deflection = mark.deflectionAfter(step);
        }
        bent.add(new Mark(marks.get(marks.size() - 1), 0, 0, slope, deflection));
        BentShaft free = new BentShaft(bent, left, right);
        double lift = free.deflection(c.bearingA());
        double lean = (free.deflection(c.bearingB()) - lift) / span;
        return new BentShaft(
                bent.stream().map(mark -> mark.level(lift, lean, c.bearingA())).toList(), left, right);
    }

    private static double moment(ShaftBend.Case c, double direction, double left, double right, double x) {
        double moment = left * Math.max(0, x - c.bearingA()) + right * Math.max(0, x - c.bearingB());
        for (ShaftBend.Load load : c.loads()) {
            moment += load.force() * Math.cos(load.direction() - direction) * Math.max(0, x - load.at());
        }
        return moment;
    }

    private static double stiffness(ShaftBend.Case c, double x) {
        for (ShaftBend.Stretch s : c.stretches()) {
            if (x < s.end()) {
                return c.modulus() * Math.PI / 64 * (Math.pow(s.diameter(), 4) - Math.pow(s.bore(), 4));
            }
        }
        throw new IllegalStateException("no stretch at " + x);
    }

    private Mark before(double x) {
        int i = 0;
        while (i + 2 < marks.size() && marks.get(i + 1).at() <= x) {
            i++;
        }
        return marks.get(i);
    }

    /** Slope at a place of the shaft, rad. */
    double slope(double x) {
        Mark mark = before(x);
        return mark.slopeAfter(x - mark.at());
    }

    /** Deflection at a place of the shaft, m. */
    double deflection(double x) {
        Mark mark = before(x);
        return mark.deflectionAfter(x - mark.at());
    }

    /** Many places along the shaft, all marks among them. */
    List<Double> fine() {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i + 1 < marks.size(); i++) {
            double from = marks.get(i).at();
            double step = marks.get(i + 1).at() - from;
            for (int k = 0; k < FINE; k++) {
                all.add(from + step * k / FINE);
            }
        }
        all.add(marks.get(marks.size() - 1).at());
        return all;
    }
}
