package shimwright.compare;

import com.google.ortools.Loader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringTokenizer;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.search.Solution;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Our search and a constraint solver on the same problems with the same time limit; prints a table. The solver is asked
 * twice, alone and begun with the answer of our narrowest beams; it runs on two threads, the search on one.
 *
 * <p>Arguments: seconds for each, folder of the public instances, then names of problems: {@code demo:A}, {@code demo:B},
 * {@code n:80:1} (tasks and seed) or a file of the folder.
 */
public final class SideBySide {
    private SideBySide() {}

    /** Runs the comparison. */
    public static void main(String[] arguments) throws IOException {
        Loader.loadNativeLibraries();
        double limit = Double.parseDouble(arguments[0]);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.println("| problem | tasks | ours: value, bound | proven | first answer s | s"
                + " | solver: value, bound | status | s | begun with | value, bound | status | s |");
        out.println("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        for (String name : List.of(arguments).subList(2, arguments.length)) {
            out.println(row(name, problem(name, Path.of(arguments[1])), limit));
        }
    }

    private static String row(String name, SequencingProblem problem, double limit) {
        long began = System.nanoTime();
        List<Double> told = new ArrayList<>();
        SearchObserver watch = new SearchObserver(() -> since(began) > limit, progress -> told.add(since(began)));
        Solution answer =
                Search.best(problem, new SearchBudget(1024, 4_000_000), watch).orElseThrow();
        double seconds = since(began);
        Solution first = Search.best(problem, new SearchBudget(8, 0), SearchObserver.nobody())
                .orElseThrow();
        SolverModel.Result alone = new SolverModel(problem, List.of()).solve(limit);
        SolverModel.Result helped = new SolverModel(problem, first.order()).solve(limit);
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f, %.1f | %s | %.2f | %.2f | %s | %.1f | %s |",
                name,
                problem.tasks().size(),
                answer.cost().total(),
                answer.bound(),
                answer.proven() ? "yes" : "no",
                told.isEmpty() ? seconds : told.get(0),
                seconds,
                alone,
                first.cost().total(),
                helped);
    }

    private static double since(long began) {
        return (System.nanoTime() - began) / 1e9;
    }

    private static SequencingProblem problem(String name, Path folder) throws IOException {
        String[] parts = name.split(":", -1);
        return switch (parts[0]) {
            case "demo" -> demo(parts[1]);
            case "n" -> Synthetic.of(Integer.parseInt(parts[1]), Long.parseLong(parts[2]));
            default -> sop(Files.readString(folder.resolve(name), StandardCharsets.US_ASCII));
        };
    }

    /** The demo unit, turning as fast with the differential in as without it. */
    private static SequencingProblem demo(String variant) {
        UnitType type = UnitFiles.read("demo", UnitFiles.example()).outcome().orElseThrow();
        SequencingProblem p = Planner.problem(type.resolve(variant), Map.of(), BuildState.inOrder(List.of()));
        SetUps s = p.setUps();
        SetUps light = new SetUps(s.orientations(), s.turn(), 1, s.walk(), s.tools());
        return new SequencingProblem(p.tasks(), p.lags(), p.windows(), p.risks(), light, p.start(), 1);
    }

    private static SequencingProblem sop(String text) {
        StringTokenizer words = new StringTokenizer(text.substring(text.indexOf("EDGE_WEIGHT_SECTION") + 19));
        int n = Integer.parseInt(words.nextToken());
        Map<String, Map<String, Double>> turn = new LinkedHashMap<>();
        List<Task> tasks = new ArrayList<>();
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
            tasks.add(Task.of("n" + i, 0, "n" + i, after.toArray(new String[0])));
        }
        return SequencingProblem.of(tasks, new SetUps(turn.keySet(), turn, 1, 0, Map.of()));
    }
}
