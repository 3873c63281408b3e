package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.inspect.DamageWords;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.unit.model.WearLimit;

/** Inspection: what was measured and seen, what becomes of it; with complaint and strip-down, whose strikes come here. */
public final class InspectPages {
    private final Desk desk;
    private final Door door;
    private final StripPages strip;
    private final ComplaintPages complaint;

    public InspectPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
        this.strip = new StripPages(desk, door);
        this.complaint = new ComplaintPages(desk, door);
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        complaint.routes(routes);
        strip.routes(routes);
        routes.get("/job/{job}/inspect", ctx -> inspect(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/inspect", ctx -> act(ctx, IntakeActs.Inspect.class, this::inspect, this::onto));
        routes.post("/job/{job}/unread", ctx -> act(ctx, IntakeActs.CannotRead.class, this::inspect, this::onto));
        routes.post("/job/{job}/observe", ctx -> act(ctx, IntakeActs.Observe.class, this::inspect, this::onto));
        routes.post("/job/{job}/judge", ctx -> act(ctx, IntakeActs.Decide.class, this::inspect, this::onto));
        routes.post("/job/{job}/strike", ctx -> act(ctx, IntakeActs.Strike.class, this::struck, Pages::back));
    }

    private void act(Context ctx, Class<? extends Act.OfJob> type, Pages.Again again, Pages.Next next) {
        Pages.act(ctx, desk, door, type, again, next);
    }

    private String onto(Form form) {
        String limit = form.raw("limit");
        return "/inspect" + (limit.isEmpty() ? "" : "?limit=" + Pages.encoded(limit) + "#" + Pages.encoded(limit));
    }

    /** What could not be struck is said on the page that it was struck on. */
    private void struck(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        String page = typed.getOrDefault("page", "");
        if (page.equals("strip")) {
            strip.strip(ctx, faults, typed);
        } else if (page.equals("complaint")) {
            complaint.complaint(ctx, faults, typed);
        } else {
            inspect(ctx, faults, typed);
        }
    }

    static List<WearRows.WearRow> rows(JobOnBench bench) {
        List<WearRows.WearRow> rows = new ArrayList<>();
        for (WearLimit wear : bench.unit().type().wearLimits()) {
            List<Job.Said<Entry.Found>> found = bench.job().found().stream()
                    .filter(said -> said.what().limit().equals(wear.id()))
                    .toList();
            rows.add(new WearRows.WearRow(wear, found, Findings.verdict(bench.job(), wear.id())));
        }
        return rows;
    }

    private void inspect(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String open = ctx.queryParam("limit");
            String limit = typed.getOrDefault("limit", open == null ? "" : open);
            door.show(
                    ctx,
                    "inspect",
                    door.page(ctx, "Inspection", "inspect", bench, faults, typed),
                    Map.of("rows", rows(bench), "open", limit, "damage", DamageWords.all()));
        });
    }
}
