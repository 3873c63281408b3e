package shimwright.rebuild.plan;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.Search;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.search.Solution;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * How far plans of units by chance are proven: a line each and how many were, in seconds of processor time. Arguments: steps, first
 * seed, how many, seconds, parts on their way. Run with {@code -Xmx256m}.
 */
final class ProofFigures {
    private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();
    private static final double DAY = 86_400;

    private ProofFigures() {}

    /** Runs it. */
    public static void main(String[] args) {
        PrintStream out = System.out;
        int size = Integer.parseInt(args[0]);
        int first = Integer.parseInt(args[1]);
        int count = Integer.parseInt(args[2]);
        double seconds = Double.parseDouble(args[3]);
        int arrivals = Integer.parseInt(args[4]);
        int proven = 0;
        List<Double> gaps = new ArrayList<>();
        out.println("| seed | first answer, s | page, s | value | bound | gap, % | proven | s | states |");
        out.println("|---|---|---|---|---|---|---|---|---|");
        for (int seed = first; seed < first + count; seed++) {
            SequencingProblem problem = problem(RandomUnits.of(seed, size), seed, arrivals);
            Figures figures = new Figures(problem, seconds);
            proven += figures.last.proven() ? 1 : 0;
            gaps.add(figures.gap());
            out.println(figures.line(seed));
        }
        gaps.sort(Double::compare);
        out.printf(
                Locale.ROOT,
                "%d steps, %d on their way, %.0f s: %d of %d proven; gap %.2f %% in the middle, %.2f at 90 %%, %.2f at most%n",
                size,
                arrivals,
                seconds,
                proven,
                count,
                gaps.get(count / 2),
                gaps.get(count * 9 / 10),
                gaps.get(count - 1));
    }

    private static SequencingProblem problem(Unit unit, long seed, int arrivals) {
        Random random = new Random(seed);
        List<Step> steps = unit.type().steps();
        Map<String, Double> arrives = new HashMap<>();
        while (arrives.size() < arrivals) {
            arrives.put(steps.get(random.nextInt(steps.size())).id(), DAY * (0.5 + 3 * random.nextDouble()));
        }
        return Planner.problem(unit, Map.of(), new BuildState(List.of(), true, Map.of(), arrives));
    }

    /** One problem, first as a page asks and then for as long as was said. */
    private static final class Figures {
        private final double page;
        private final double pageValue;
        private final double took;
        private final Solution last;
        private double firstAfter = -1;

        Figures(SequencingProblem problem, double seconds) {
            double began = now();
            pageValue = Search.best(problem, SearchBudget.page(), SearchObserver.nobody())
                    .orElseThrow()
                    .cost()
                    .total();
            page = now() - began;
            double then = now();
            SearchObserver watch = new SearchObserver(() -> now() - then > seconds, progress -> {
                firstAfter = firstAfter < 0 && progress.value() < Double.POSITIVE_INFINITY ? now() - then : firstAfter;
            });
            last = Search.best(problem, new SearchBudget(1 << 20, Long.MAX_VALUE / 4), watch)
                    .orElseThrow();
            took = now() - then;
        }

        private static double now() {
            return CPU.getCurrentThreadCpuTime() / 1e9;
        }

        double gap() {
            return 100 * (last.cost().total() - last.bound()) / last.cost().total();
        }

        String line(int seed) {
            return String.format(
                    Locale.ROOT,
                    "| %d | %.2f | %.1f, %.2f | %.1f | %.1f | %.2f | %s | %.1f | %d |",
                    seed,
                    firstAfter,
                    pageValue / 60,
                    page,
                    last.cost().total() / 60,
                    last.bound() / 60,
                    gap(),
                    last.proven() ? "yes" : "no",
                    took,
                    last.states());
        }
    }
}
