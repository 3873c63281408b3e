package shimwright.bench.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Behind;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.SideChoices;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.UnitType.Choice;

/** Which sides of the choices still open make the cheapest plan; worked out behind the page when it is asked for, one job at a time. */
public final class SidesPages {
    private static final SearchBudget EACH = new SearchBudget(64, 5_000, 8 << 20);
    /** On a slow machine it ends here with what it has, and says so. */
    private static final long LONGEST = 10_000_000_000L;

    private final Desk desk;
    private final Door door;
    private final Behind<Plan, Worked> behind = new Behind<>("compares sides");

    /** What came of it, and whether it was ended early. */
    private record Worked(Outcome<List<SideChoices.Ranked>> ranked, boolean late) {}

    public SidesPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/sides", this::sides);
    }

    private void sides(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Which sides", "build", bench);
            Map<String, Object> more = new LinkedHashMap<>();
            if (bench.plan() instanceof Outcome.Ok<Plan> ok) {
                Optional<Outcome<SidesView>> found = found(bench, ok.value(), page);
                more.put("waiting", found.isEmpty());
                found.ifPresent(view -> {
                    more.put("refusals", view.refusals());
                    if (view.isOk()) {
                        more.put("view", view.orElseThrow());
                    }
                });
            } else {
                more.put("refusals", bench.plan().refusals());
            }
            door.show(ctx, "sides", page, more);
        });
    }

    /** What was found; empty while it is still looked for. */
    private Optional<Outcome<SidesView>> found(JobOnBench bench, Plan plan, Page page) {
        Set<String> settled = new LinkedHashSet<>(bench.job().sides().keySet());
        List<Choice> open = PlanView.choices(bench.unit()).stream()
                .filter(choice -> !settled.contains(choice.id()))
                .toList();
        bench.unit().type().choices().stream()
                .filter(choice -> !open.contains(choice))
                .forEach(choice -> settled.add(choice.id()));
        return behind.of(bench.job().id(), plan, () -> worked(bench, settled))
                .map(done -> done.ranked().map(ranked -> SidesView.of(open, ranked, done.late(), page.show())));
    }

    private static Worked worked(JobOnBench bench, Set<String> settled) {
        long end = System.nanoTime() + LONGEST;
        boolean[] late = {false};
        SearchObserver watch = new SearchObserver(
                () -> {
                    late[0] |= System.nanoTime() - end > 0;
                    return late[0];
                },
                progress -> {});
        Outcome<List<SideChoices.Ranked>> ranked =
                SideChoices.of(bench.unit(), bench.job().sides(), settled, bench.present(), EACH, watch);
        return new Worked(ranked, late[0]);
    }
}
