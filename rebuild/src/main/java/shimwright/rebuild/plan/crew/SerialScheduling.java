package shimwright.rebuild.plan.crew;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A first answer: one activity after the other as soon as it can be, by several rules of priority, then pushed to the end and
 * back to the beginning as long as that helps (serial generation and justification: Kolisch and Hartmann 1999, Valls,
 * Ballestin and Quintanilla 2005, both from memory).
 */
final class SerialScheduling {
    private static final int PUSHES = 10;

    private final IndexedProject model;
    private final Lags lags;

    private SerialScheduling(IndexedProject model, Lags lags) {
        this.model = model;
        this.lags = lags;
    }

    /** The best timetable found; null where longest waits made all of them fail. */
    static int @Nullable [] best(IndexedProject model, Lags lags) {
        SerialScheduling serial = new SerialScheduling(model, lags);
        int[] best = null;
        for (int rule = 0; rule < 4; rule++) {
            int[] found = serial.pushed(serial.priority(rule));
            if (found != null && (best == null || found[model.n] < best[model.n])) {
                best = found;
            }
        }
        return best;
    }

    /** Smaller is sooner. */
    private double[] priority(int rule) {
        double[] priority = new double[model.n];
        for (int i = 0; i < model.n; i++) {
            double needs = 0;
            for (int r = 0; r < model.capacity.length; r++) {
                needs += (double) model.need[r][i] / model.capacity[r];
            }
            priority[i] = switch (rule) {
                case 0 -> -lags.tail[i];
                case 1 -> -lags.tail[i] - model.duration[i];
                case 2 -> lags.head[i];
                default -> -lags.tail[i] - needs * model.duration[i];
            };
        }
        return priority;
    }

    private int @Nullable [] pushed(double[] priority) {
        int[] best = null;
        double[] now = priority;
        for (int push = 0; push < PUSHES; push++) {
            int[] there = place(model.arcs, model.gap, now, model.soonest);
            if (there == null) {
                return best;
            }
            if (kept(there) && (best == null || there[model.n] < best[model.n])) {
                best = there;
            } else if (push > 0) {
                return best;
            }
            int[] back = place(reversed(), turned(model.gap), later(there), new int[model.n + 1]);
            if (back == null) {
                return best;
            }
            now = later(back);
        }
        return best;
    }

    private double[] later(int[] starts) {
        double[] priority = new double[model.n];
        Arrays.setAll(priority, i -> -(starts[i] + model.duration[i]));
        return priority;
    }

    /** The lags with time running backwards. */
    private int[][] reversed() {
        int[][] back = new int[model.arcs.length][];
        Arrays.setAll(back, a -> {
            int[] arc = model.arcs[a];
            return arc[1] == model.n
                    ? new int[] {arc[0], model.n, model.duration[arc[0]]}
                    : new int[] {arc[1], arc[0], arc[2] + model.duration[arc[1]] - model.duration[arc[0]]};
        });
        return back;
    }

    private static int[][] turned(int[][] gap) {
        int[][] back = new int[gap.length][gap.length];
        for (int i = 0; i < gap.length; i++) {
            for (int j = 0; j < gap.length; j++) {
                back[j][i] = gap[i][j];
            }
        }
        return back;
    }

    private boolean kept(int[] starts) {
        for (int[] arc : model.arcs) {
            if (starts[arc[1]] < starts[arc[0]] + arc[2]) {
                return false;
            }
        }
        for (int i = 0; i <= model.n; i++) {
            if (starts[i] > model.latest[i]) {
                return false;
            }
        }
        return true;
    }

    /** All activities, each as soon as it can be; null where they wait for each other. Longest waits are not looked after. */
    private int @Nullable [] place(int[][] arcs, int[][] gap, double[] priority, int[] soonest) {
        int[] start = new int[model.n + 1];
        boolean[] placed = new boolean[model.n + 1];
        for (int count = 0; count < model.n; count++) {
            int next = -1;
            for (int i = 0; i < model.n; i++) {
                if (!placed[i] && (next < 0 || priority[i] < priority[next]) && free(arcs, placed, i)) {
                    next = i;
                }
            }
            if (next < 0) {
                return null;
            }
            int low = soonest[next];
            for (int[] arc : arcs) {
                low = arc[1] == next && placed[arc[0]] ? Math.max(low, start[arc[0]] + arc[2]) : low;
            }
            start[next] = room(start, placed, gap, next, low);
            placed[next] = true;
            start[model.n] = Math.max(start[model.n], start[next] + model.duration[next]);
        }
        start[model.n] = Math.max(start[model.n], soonest[model.n]);
        return start;
    }

    private boolean free(int[][] arcs, boolean[] placed, int i) {
        for (int[] arc : arcs) {
            if (arc[1] == i && arc[2] >= 0 && !placed[arc[0]]) {
                return false;
            }
        }
        return true;
    }

    /** The soonest start from low on at which every resource has room. */
    private int room(int[] start, boolean[] placed, int[][] gap, int i, int low) {
        int best = fits(start, placed, gap, i, low) ? low : Integer.MAX_VALUE;
        for (int k = 0; best > low && k < model.n; k++) {
            int end = start[k] + model.duration[k] + Math.max(0, gap[k][i]);
            if (placed[k] && end > low && end < best && fits(start, placed, gap, i, end)) {
                best = end;
            }
        }
        return best;
    }

    private boolean fits(int[] start, boolean[] placed, int[][] gap, int i, int at) {
        for (int j = 0; j < model.n; j++) {
            if (placed[j]
                    && gap[i][j] >= 0
                    && at < start[j] + model.duration[j] + gap[j][i]
                    && start[j] < at + model.duration[i] + gap[i][j]) {
                return false;
            }
        }
        for (int r = 0; r < model.capacity.length; r++) {
            if (model.need[r][i] > 0 && !fits(start, placed, i, at, r)) {
                return false;
            }
        }
        return true;
    }

    /** What is held changes upwards only where something starts. */
    private boolean fits(int[] start, boolean[] placed, int i, int at, int r) {
        for (int k = -1; k < model.n; k++) {
            int moment = k < 0 ? at : start[k];
            if (k >= 0 && (!placed[k] || moment < at || moment >= at + model.duration[i])) {
                continue;
            }
            int held = model.need[r][i];
            for (int j = 0; j < model.n; j++) {
                boolean runs = placed[j] && start[j] <= moment && moment < start[j] + model.duration[j];
                held += runs ? model.need[r][j] : 0;
            }
            if (held > model.capacity[r]) {
                return false;
            }
        }
        return true;
    }
}
