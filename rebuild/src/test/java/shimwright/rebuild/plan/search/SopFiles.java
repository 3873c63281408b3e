package shimwright.rebuild.plan.search;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringTokenizer;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;

/**
 * Public instances: those kept in the tree, and those in {@code -Dshimwright.instances} or else in {@code shared/instances} beside the
 * project; see SOURCES.md beside them.
 */
final class SopFiles {
    private static final Path ROOT = Path.of(System.getProperty("shimwright.root", ".."));
    private static final List<Path> FOLDERS = List.of(
            ROOT.resolve("published/instances"),
            Path.of(System.getProperty(
                    "shimwright.instances", ROOT.resolve("../shared/instances").toString())));

    private SopFiles() {}

    /** True where the file is in one of the folders. */
    static boolean has(String file) {
        return FOLDERS.stream().anyMatch(folder -> Files.exists(folder.resolve(file)));
    }

    static String text(String file) throws IOException {
        Path found = FOLDERS.stream()
                .map(folder -> folder.resolve(file))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow(() -> new IOException(file + " is in none of " + FOLDERS));
        return Files.readString(found, StandardCharsets.US_ASCII);
    }

    /**
     * A sequential ordering problem of TSPLIB: a path from the first node to the last, an entry of -1 at (i, j) meaning that j
     * comes before i. Every node is an orientation of its own, its distance the time to turn.
     */
    static SequencingProblem sop(String file) throws IOException {
        String text = text(file);
        StringTokenizer words = new StringTokenizer(text.substring(text.indexOf("EDGE_WEIGHT_SECTION") + 19));
        int n = Integer.parseInt(words.nextToken());
        Map<String, Map<String, Double>> turn = new HashMap<>();
        List<Task> tasks = new ArrayList<>();
        Set<String> stands = new LinkedHashSet<>();
        for (int i = 0; i < n; i++) {
            Map<String, Double> row = new HashMap<>();
            Set<String> after = new LinkedHashSet<>();
            for (int j = 0; j < n; j++) {
                int entry = Integer.parseInt(words.nextToken());
                if (entry < 0) {
                    after.add("n" + j);
                } else {
                    row.put("n" + j, (double) entry);
                }
            }
            turn.put("n" + i, row);
            stands.add("n" + i);
            tasks.add(new Task("n" + i, "node " + i, 0, "n" + i, Set.of(), after, 0));
        }
        return SequencingProblem.of(tasks, new SetUps(stands, turn, 1, 0, Map.of()));
    }

    /** What an order costs, counted from the file's own numbers alone; a fault where it breaks what the file says. */
    static long cost(String file, List<String> order) throws IOException {
        String text = text(file);
        int[] entries = Arrays.stream(text.substring(text.indexOf("EDGE_WEIGHT_SECTION") + 19)
                        .replace("EOF", "")
                        .trim()
                        .split("\\s+"))
                .mapToInt(Integer::parseInt)
                .toArray();
        int n = entries[0];
        int[] path =
                order.stream().mapToInt(id -> Integer.parseInt(id.substring(1))).toArray();
        if (path.length != n
                || path[0] != 0
                || path[n - 1] != n - 1
                || Set.copyOf(order).size() != n) {
            throw new IllegalStateException("not a path through all nodes from the first to the last: " + order);
        }
        long cost = 0;
        for (int k = 1; k < n; k++) {
            cost += entries[1 + path[k - 1] * n + path[k]];
            for (int before = 0; before < k; before++) {
                if (entries[1 + path[before] * n + path[k]] < 0) {
                    throw new IllegalStateException(path[k] + " must come before " + path[before]);
                }
            }
        }
        return cost;
    }
}
