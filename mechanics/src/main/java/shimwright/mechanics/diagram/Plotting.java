package shimwright.mechanics.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import shimwright.mechanics.diagram.Diagram.Point;

/** Points of curves. */
public final class Plotting {
    private static final int STEPS = 48;

    private Plotting() {}

    /** Points of a function between two values, ends included. */
    public static List<Point> curve(double from, double to, DoubleUnaryOperator f) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double x = from + (to - from) * i / STEPS;
            points.add(new Point(x, f.applyAsDouble(x)));
        }
        return points;
    }
}
