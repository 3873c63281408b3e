package shimwright.mechanics.measure;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Fixed Gauss-Legendre quadrature over equal panels: the same numbers on every machine and run. */
public final class Quadrature {
    private static final int POINTS = 20;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(POINTS);

    private Quadrature() {}

    /** ∫ f from a to b over a number of panels of 20 points each. */
    public static double integral(DoubleUnaryOperator f, double a, double b, int panels) {
        double width = (b - a) / panels;
        double sum = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = a + (panel + 0.5) * width;
            for (int i = 0; i < POINTS; i++) {
                sum += RULE.getWeight(i) * f.applyAsDouble(middle + RULE.getPoint(i) * width / 2);
            }
        }
        return sum * width / 2;
    }

    /** The x between a and b where a rising function reaches a level, by halving to 1e-13 of the width. */
    public static double crossing(DoubleUnaryOperator rising, double level, double a, double b) {
        double low = a;
        double high = b;
        for (int i = 0; i < 60 && high - low > 1e-13 * (b - a); i++) {
            double middle = (low + high) / 2;
            if (rising.applyAsDouble(middle) < level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
