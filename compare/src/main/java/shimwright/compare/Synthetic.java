package shimwright.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import shimwright.rebuild.plan.model.InitialState;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/**
 * Assemblies by chance: bench modules that enter a case chain, five orientations (3 to 8 min to turn), eight tools (1 to 4
 * min), three windows over three tasks of the case chain with 0.5 to 4 min to spare.
 */
final class Synthetic {
    private Synthetic() {}

    /** A problem of n tasks. */
    static SequencingProblem of(int n, long seed) {
        Random random = new Random(seed);
        List<Task> tasks = new ArrayList<>();
        List<String> ends = new ArrayList<>();
        int modules = 4;
        for (int m = 0; m < modules; m++) {
            String last = "";
            for (int k = 0; k < n / 2 / modules; k++) {
                String id = "m" + m + "_" + k;
                String[] after = last.isEmpty() || random.nextInt(6) == 0 ? new String[0] : new String[] {last};
                tasks.add(Task.of(id, 60 * (2 + random.nextInt(8)), "BENCH", after)
                        .with("T" + random.nextInt(8)));
                last = id;
            }
            ends.add(last);
        }
        int chain = n - tasks.size();
        for (int k = 0; k < chain; k++) {
            Set<String> after = new LinkedHashSet<>();
            if (k > 0 && random.nextInt(5) > 0) {
                after.add("c" + (k - 1));
            }
            if (k > 3 && random.nextInt(3) == 0) {
                after.add("c" + random.nextInt(k - 2));
            }
            if (!ends.isEmpty() && random.nextInt(6) == 0) {
                after.add(ends.remove(0));
            }
            tasks.add(Task.of(
                            "c" + k,
                            60 * (2 + random.nextInt(8)),
                            "O" + random.nextInt(5),
                            after.toArray(new String[0]))
                    .with("T" + random.nextInt(8)));
        }
        List<Window> windows = windows(tasks, chain, random);
        return new SequencingProblem(tasks, List.of(), windows, List.of(), setUps(random), InitialState.fresh(), 1);
    }

    private static List<Window> windows(List<Task> tasks, int chain, Random random) {
        List<Window> windows = new ArrayList<>();
        int first = tasks.size() - chain;
        for (int w = 0; w < 3; w++) {
            int at = first + chain * (w + 1) / 4;
            Task opens = tasks.get(at);
            Task middle = tasks.get(at + 1);
            Task closes = tasks.get(at + 2);
            String tool = opens.tools().iterator().next();
            tasks.set(
                    at + 1,
                    Task.of(middle.id(), middle.seconds(), opens.stand(), opens.id())
                            .with(tool));
            tasks.set(
                    at + 2,
                    Task.of(closes.id(), closes.seconds(), opens.stand(), middle.id())
                            .with(tool));
            double spare = 30 + random.nextInt(210);
            windows.add(new Window(
                    "w" + w,
                    "window " + w,
                    opens.id(),
                    closes.id(),
                    middle.seconds() + closes.seconds() + spare,
                    true));
        }
        return windows;
    }

    private static SetUps setUps(Random random) {
        double[][] apart = new double[5][5];
        for (double[] row : apart) {
            for (int b = 0; b < 5; b++) {
                row[b] = 60 * (3 + random.nextInt(6));
            }
        }
        for (int by = 0; by < 5; by++) {
            for (int a = 0; a < 5; a++) {
                for (int b = 0; b < 5; b++) {
                    apart[a][b] = a == b ? 0 : Math.min(apart[a][b], apart[a][by] + apart[by][b]);
                }
            }
        }
        Map<String, Map<String, Double>> turn = new LinkedHashMap<>();
        Set<String> orientations = new LinkedHashSet<>();
        Map<String, Double> tools = new LinkedHashMap<>();
        for (int a = 0; a < 5; a++) {
            Map<String, Double> row = new LinkedHashMap<>();
            for (int b = 0; b < 5; b++) {
                row.put("O" + b, apart[a][b]);
            }
            turn.put("O" + a, row);
            orientations.add("O" + a);
        }
        for (int t = 0; t < 8; t++) {
            tools.put("T" + t, 60.0 * (1 + random.nextInt(4)));
        }
        return new SetUps(orientations, turn, 1, 0, tools);
    }
}
