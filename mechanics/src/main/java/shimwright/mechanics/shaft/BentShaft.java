package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A shaft bent in one plane, exact for steps and point loads: between two marks the moment is a straight line and the
 * stiffness one, so that the slope is a parabola and the deflection a cubic.
 *
 * @param marks ends, steps, loads and bearings, rising, in metres
 * @param curvature M/(E I) just after each mark, 1/m
 * @param growth its change per length up to the next mark, 1/m²
 * @param slopes slope at each mark, rad
 * @param deflections deflection at each mark, m
 * @param left force of the left bearing, N
 * @param right force of the right bearing, N
 */
record BentShaft(
        double[] marks,
        double[] curvature,
        double[] growth,
        double[] slopes,
        double[] deflections,
        double left,
        double right) {
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
        double[] marks = places.stream().mapToDouble(Double::doubleValue).toArray();
        int n = marks.length;
        double[] curvature = new double[n];
        double[] growth = new double[n];
        double[] slopes = new double[n];
        double[] deflections = new double[n];
        for (int i = 0; i + 1 < n; i++) {
            double stiffness = stiffness(c, (marks[i] + marks[i + 1]) / 2);
            double moment = moment(c, direction, left, right, marks[i]);
            double next = moment(c, direction, left, right, marks[i + 1]);
            double step = marks[i + 1] - marks[i];
            curvature[i] = moment / stiffness;
            growth[i] = (next - moment) / stiffness / step;
            slopes[i + 1] = slopes[i] + step * (curvature[i] + growth[i] * step / 2);
            deflections[i + 1] = deflections[i] + step * (slopes[i] + step * (curvature[i] / 2 + growth[i] * step / 6));
        }
        BentShaft free = new BentShaft(marks, curvature, growth, slopes, deflections, left, right);
        double lean = (free.deflection(c.bearingB()) - free.deflection(c.bearingA())) / span;
        double lift = free.deflection(c.bearingA());
        for (int i = 0; i < n; i++) {
            slopes[i] -= lean;
            deflections[i] -= lift + lean * (marks[i] - c.bearingA());
        }
        return free;
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

    private int before(double x) {
        int i = 0;
        while (i + 2 < marks.length && marks[i + 1] <= x) {
            i++;
        }
        return i;
    }

    /** Slope at a place of the shaft, rad. */
    double slope(double x) {
        int i = before(x);
        double step = x - marks[i];
        return slopes[i] + step * (curvature[i] + growth[i] * step / 2);
    }

    /** Deflection at a place of the shaft, m. */
    double deflection(double x) {
        int i = before(x);
        double step = x - marks[i];
        return deflections[i] + step * (slopes[i] + step * (curvature[i] / 2 + growth[i] * step / 6));
    }

    /** Many places along the shaft, all marks among them. */
    List<Double> fine() {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i + 1 < marks.length; i++) {
            for (int k = 0; k < FINE; k++) {
                all.add(marks[i] + (marks[i + 1] - marks[i]) * k / FINE);
            }
        }
        all.add(marks[marks.length - 1]);
        return all;
    }
}
