package shimwright.bench.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.SideChoices;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.UnitType.Choice;

/** Which sides of the choices still open make the cheapest plan; worked out when the page is asked for. */
public final class SidesPages {
    private static final SearchBudget EACH = new SearchBudget(64, 5_000, 8 << 20);
    /** On a slow machine it ends here with what it has, and says so. */
    private static final long LONGEST = 10_000_000_000L;

    private final Desk desk;
    private final Door door;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    /** What was worked out for a plan. */
    private record Known(Plan plan, Outcome<SidesView> view) {}

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
                Outcome<SidesView> view = found(bench, ok.value(), page);
                more.put("refusals", view.refusals());
                if (view.isOk()) {
                    more.put("view", view.orElseThrow());
                }
            } else {
                more.put("refusals", bench.plan().refusals());
            }
            door.show(ctx, "sides", page, more);
        });
    }

    private Outcome<SidesView> found(JobOnBench bench, Plan plan, Page page) {
        String job = bench.job().id();
        Known before = known.get(job);
        if (before != null && before.plan().equals(plan)) {
            return before.view();
        }
        Set<String> settled = new LinkedHashSet<>(bench.job().sides().keySet());
        List<Choice> open = PlanView.choices(bench.unit()).stream()
                .filter(choice -> !settled.contains(choice.id()))
                .toList();
        bench.unit().type().choices().stream()
                .filter(choice -> !open.contains(choice))
                .forEach(choice -> settled.add(choice.id()));
        long end = System.nanoTime() + LONGEST;
        boolean[] late = {false};
        SearchObserver watch = new SearchObserver(
                () -> {
                    late[0] |= System.nanoTime() - end > 0;
                    return late[0];
                },
                progress -> {});
        Outcome<SidesView> view = SideChoices.of(
                        bench.unit(), bench.job().sides(), settled, bench.present(), EACH, watch)
                .map(ranked -> SidesView.of(open, ranked, late[0], page.show()));
        known.put(job, new Known(plan, view));
        return view;
    }
}
