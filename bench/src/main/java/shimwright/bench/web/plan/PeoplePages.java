package shimwright.bench.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.crew.ConflictLimit;
import shimwright.rebuild.plan.people.CrewPlan;
import shimwright.rebuild.plan.people.People;

/** What a second person is worth; worked out when the page is asked for. */
public final class PeoplePages {
    private static final ConflictLimit ALONE = new ConflictLimit(300);
    private static final ConflictLimit TWO = new ConflictLimit(4000);
    /** On a slow machine it ends here with what it has, and says how far that is from proven. */
    private static final long LONGEST = 6_000_000_000L;

    private final Desk desk;
    private final Door door;
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    /** What was worked out for a plan. */
    private record Known(Plan plan, Outcome<CrewPlan> alone, Outcome<CrewPlan> two) {}

    public PeoplePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/people", this::people);
    }

    private void people(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "With a second person", "build", bench);
            Map<String, Object> more = new LinkedHashMap<>();
            if (bench.plan() instanceof Outcome.Ok<Plan> ok
                    && !ok.value().ahead().isEmpty()) {
                Known found = found(bench, ok.value());
                Outcome<PeopleView> view = found.alone()
                        .flatMap(alone -> found.two().map(two -> PeopleView.of(bench.unit(), alone, two, page.show())));
                more.put("refusals", view.refusals());
                if (view.isOk()) {
                    more.put("view", view.orElseThrow());
                }
            }
            door.show(ctx, "people", page, more);
        });
    }

    private Known found(JobOnBench bench, Plan plan) {
        String job = bench.job().id();
        Known before = known.get(job);
        if (before != null && before.plan().equals(plan)) {
            return before;
        }
        Known found = new Known(plan, share(bench, plan, 1, ALONE), share(bench, plan, 2, TWO));
        known.put(job, found);
        return found;
    }

    private static Outcome<CrewPlan> share(JobOnBench bench, Plan plan, int persons, ConflictLimit effort) {
        long end = System.nanoTime() + LONGEST;
        BooleanSupplier late = () -> System.nanoTime() - end > 0;
        BuildState present = BuildState.inOrder(List.copyOf(bench.job().stepsDone()));
        return People.share(bench.unit(), bench.job().sides(), present, plan, persons, effort, late);
    }
}
