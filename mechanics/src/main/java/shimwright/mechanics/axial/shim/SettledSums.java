package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.List;

/**
 * Sums of clearances, each times a number, that some places together do not change: where as many clearances hang on fewer places there
 * are such sums, and each must end between the same sums of the limits.
 */
final class SettledSums {
    /** A number that small beside 1 is what rounding has left of 0. */
    private static final double NOTHING = 1e-9;

    private SettledSums() {}

    /** The numbers by clearance, the largest of each sum 1, of as many sums as do not follow from each other. */
    static double[][] of(DrawerModel m, int[] places) {
        double[][] rows = new double[m.needs][places.length + m.needs];
        for (int n = 0; n < m.needs; n++) {
            for (int j = 0; j < places.length; j++) {
                rows[n][j] = m.effect[n][places[j]];
            }
            rows[n][places.length + n] = 1;
        }
        int done = 0;
        for (int j = 0; j < places.length && done < m.needs; j++) {
            int pivot = done;
            for (int n = done; n < m.needs; n++) {
                pivot = Math.abs(rows[n][j]) > Math.abs(rows[pivot][j]) ? n : pivot;
            }
            if (Math.abs(rows[pivot][j]) > NOTHING) {
                double[] row = rows[pivot];
                rows[pivot] = rows[done];
                rows[done++] = row;
                for (int n = done; n < m.needs; n++) {
                    double times = rows[n][j] / row[j];
                    for (int q = j; q < row.length; q++) {
                        rows[n][q] -= times * row[q];
                    }
                }
            }
        }
        List<double[]> sums = new ArrayList<>();
        for (int n = done; n < m.needs; n++) {
            double[] sum = new double[m.needs];
            double largest = 0;
            for (int q = 0; q < m.needs; q++) {
                sum[q] = rows[n][places.length + q];
                largest = Math.max(largest, Math.abs(sum[q]));
            }
            for (int q = 0; q < m.needs; q++) {
                sum[q] = Math.abs(sum[q]) < NOTHING * largest ? 0 : sum[q] / largest;
            }
            sums.add(sum);
        }
        return sums.toArray(double[][]::new);
    }
}
