package shimwright.mechanics.axial.shim;

import java.util.Arrays;

/** How many ways to lay a drawer leave every clearance within its limits; place after place, cutting off what cannot. */
final class DrawerCount {
    private final DrawerModel m;
    private final boolean[] used;
    /** Of a clearance and a place: least and most that the places from there on make of it. */
    private final double[][] least;

    private final double[][] most;
    private int count;

    private DrawerCount(DrawerModel m) {
        this.m = m;
        this.used = new boolean[m.thickness.length];
        this.least = new double[m.needs][m.places + 1];
        this.most = new double[m.needs][m.places + 1];
        for (int p = m.places - 1; p >= 0; p--) {
            int[] fit = m.fit[p];
            int pieces = Math.min(m.c.places().get(p).most(), fit.length);
            double thickest = Arrays.stream(fit)
                    .skip(fit.length - pieces)
                    .mapToDouble(i -> m.thickness[i])
                    .sum();
            for (int n = 0; n < m.needs; n++) {
                least[n][p] = least[n][p + 1] + Math.min(0, m.effect[n][p] * thickest);
                most[n][p] = most[n][p + 1] + Math.max(0, m.effect[n][p] * thickest);
            }
        }
    }

    /** The number of ways. */
    static int of(DrawerModel m) {
        DrawerCount counting = new DrawerCount(m);
        counting.lay(0, 0, 0, m.bare);
        return counting.count;
    }

    /** So many pieces lie at a place, the next one that may join them is known. */
    private void lay(int place, int pieces, int from, double[] values) {
        if (!possible(place, values)) {
            return;
        }
        if (place == m.places) {
            count++;
            return;
        }
        if (pieces >= m.c.places().get(place).fewest()) {
            lay(place + 1, 0, 0, values);
        }
        int[] fit = m.fit[place];
        for (int k = from; k < fit.length && pieces < m.c.places().get(place).most(); k++) {
            if (!used[fit[k]]) {
                used[fit[k]] = true;
                double[] next = values.clone();
                for (int n = 0; n < m.needs; n++) {
                    next[n] += m.effect[n][place] * m.thickness[fit[k]];
                }
                lay(place, pieces + 1, k + 1, next);
                used[fit[k]] = false;
            }
        }
    }

    private boolean possible(int place, double[] values) {
        for (int n = 0; n < m.needs; n++) {
            if (values[n] + least[n][place] > m.upper[n] + DrawerSearch.DUST
                    || values[n] + most[n][place] < m.lower[n] - DrawerSearch.DUST) {
                return false;
            }
        }
        return true;
    }
}
