package shimwright.compare;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.ToIntFunction;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.crew.Activity;
import shimwright.rebuild.plan.crew.ChangeOver;
import shimwright.rebuild.plan.crew.ConflictLimit;
import shimwright.rebuild.plan.crew.Crew;
import shimwright.rebuild.plan.crew.Link;
import shimwright.rebuild.plan.crew.Project;
import shimwright.rebuild.plan.crew.Timetable;
import shimwright.rebuild.plan.people.People;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Unit;

/**
 * Our timetables and those of a general lazy-clause solver for the same projects, each on one thread with the same time; prints a
 * table. The solver is asked with its own way of choosing and with the soonest first, and once more begun with our first answer.
 *
 * <p>Arguments: seconds of processor time for each, folder of the public instances, then names: {@code demo:A:2} (variant and people)
 * or a file of the folder.
 */
public final class CrewsSideBySide {
    private CrewsSideBySide() {}

    /** Runs the comparison. */
    public static void main(String[] arguments) throws IOException {
        double limit = Double.parseDouble(arguments[0]);
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        out.println("| project | activities | ours: span, bound, s | solver's own choice: span, s"
                + " | soonest first: span, s | begun with | span, s |");
        out.println("|---|---|---|---|---|---|---|");
        for (String name : List.of(arguments).subList(2, arguments.length)) {
            out.println(row(name, project(name, Path.of(arguments[1])), limit));
        }
    }

    private static String row(String name, Project project, double limit) {
        double began = seconds();
        BooleanSupplier late = () -> seconds() - began > limit;
        Outcome<Timetable> ours = Crew.least(project, new ConflictLimit(Long.MAX_VALUE), late);
        double took = seconds() - began;
        int longest = horizon(project);
        int first = Crew.least(project, new ConflictLimit(0), () -> false) instanceof Outcome.Ok<Timetable> ok
                ? ok.value().span()
                : longest;
        return String.format(
                Locale.ROOT,
                "| %s | %d | %s, %.2f | %s | %s | %d | %s |",
                name,
                project.activities().size(),
                ours instanceof Outcome.Ok<Timetable> found ? words(found.value()) : "none",
                took,
                asked(project, longest, LazyClauses.Choice.OWN, limit),
                asked(project, longest, LazyClauses.Choice.SOONEST, limit),
                first,
                asked(project, first, LazyClauses.Choice.OWN, limit));
    }

    private static String words(Timetable table) {
        return table.span() + (table.proven() ? " proven" : ", " + table.bound());
    }

    private static String asked(Project project, int longest, LazyClauses.Choice choice, double limit) {
        double began = seconds();
        LazyClauses.Result found = new LazyClauses(project, longest).shortest(choice, () -> seconds() - began > limit);
        String span = found.span() < 0 ? "none" : "" + found.span();
        return String.format(Locale.ROOT, "%s%s, %.2f", span, found.finished() ? " proven" : "", seconds() - began);
    }

    private static double seconds() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    /** No least timetable is longer. */
    private static int horizon(Project project) {
        ToIntFunction<Link> lag = link -> Math.abs(link.least());
        int apart = project.aparts().isEmpty()
                ? 0
                : project.activities().size()
                        * project.aparts().stream()
                                .mapToInt((ChangeOver one) -> Math.max(one.afterA(), one.afterB()))
                                .max()
                                .orElse(0);
        return project.activities().stream().mapToInt(Activity::duration).sum()
                + project.links().stream().mapToInt(lag).sum()
                + apart;
    }

    private static Project project(String name, Path folder) throws IOException {
        String[] parts = name.split(":", -1);
        return parts[0].equals("demo")
                ? demo(parts[1], Integer.parseInt(parts[2]))
                : ProjectFile.read(folder.resolve(name));
    }

    private static Project demo(String variant, int persons) {
        Unit unit = UnitFiles.read("demo", UnitFiles.example())
                .outcome()
                .orElseThrow()
                .resolve(variant);
        BuildState fresh = BuildState.inOrder(List.of());
        Plan plan = Planner.lay(unit, Map.of(), fresh, SearchBudget.page(), SearchObserver.nobody(), List.of())
                .orElseThrow();
        return People.open(unit, Map.of(), fresh, plan, persons);
    }
}
