package shimwright.bench.web.clearance;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Behind;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.SharedShims;

/** Clearances that share shim positions, chosen together from one drawer. */
public final class SharedShimsPages {
    private final Desk desk;
    private final Door door;
    private final Behind<SharedShims.Asked, SharedShims> behind;

    public SharedShimsPages(Desk desk, Door door, Behind<SharedShims.Asked, SharedShims> behind) {
        this.desk = desk;
        this.door = door;
        this.behind = behind;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/together", ctx -> show(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/together", this::choose);
    }

    private static List<String> group(JobOnBench bench) {
        return SharedShims.groups(bench.unit()).stream().findFirst().orElse(List.of());
    }

    private void show(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<JobOnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        List<String> group = group(bench.get());
        if (group.isEmpty()) {
            Pages.lost(ctx, door, "No clearances of this unit share a shim.");
            return;
        }
        Optional<SharedShims> together = chosen(behind, bench.get(), group);
        List<Session> sessions =
                group.stream().map(id -> bench.get().session(id)).toList();
        door.show(
                ctx,
                "together",
                door.page(ctx, "Chosen together", "clearances", bench.get(), faults, typed),
                together.<Map<String, Object>>map(made -> Map.of(
                                "group",
                                group,
                                "together",
                                made,
                                "sessions",
                                sessions,
                                "drawer",
                                bench.get().shop().pieces()))
                        .orElse(Map.of("group", group, "sessions", sessions)));
    }

    /**
     * The choice for a group of clearances; empty while it is still looked for.
     *
     * @param behind where it is made
     */
    public static Optional<SharedShims> chosen(
            Behind<SharedShims.Asked, SharedShims> behind, JobOnBench bench, List<String> group) {
        SharedShims.Asked asked = SharedShims.asked(bench.unit(), bench.job(), bench.shop(), group, bench::session);
        return asked.drawer() == null
                ? Optional.of(asked.worked())
                : behind.of(bench.job().id() + "/" + group.get(0), asked, asked::worked);
    }

    private void choose(Context ctx) {
        Optional<JobOnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        List<String> group = group(bench.get());
        Form form = door.form(ctx).with("clearance", group.isEmpty() ? "" : group.get(0));
        Pages.act(
                ctx,
                desk,
                door,
                form,
                ActReader.read(ClearanceActs.ChooseTogether.class, form),
                this::show,
                typed -> "/build");
    }
}
