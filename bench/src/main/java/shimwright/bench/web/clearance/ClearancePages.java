package shimwright.bench.web.clearance;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.SharedShims;

/** The clearance session: trial pieces in, rounds read, pack chosen, closed and read again. */
public final class ClearancePages {
    private final Desk desk;
    private final Door door;

    public ClearancePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/clearances", this::list);
        routes.get("/job/{job}/clearance/{clearance}", ctx -> session(ctx, List.of(), Map.of()));
        on(routes, "trial", ClearanceActs.NamePieces.class, false);
        on(routes, "round", ClearanceActs.ReadRound.class, false);
        on(routes, "strike", IntakeActs.Strike.class, false);
        on(routes, "stood", StepActs.StoodDone.class, false);
        on(routes, "choose", ClearanceActs.ChoosePack.class, true);
        on(routes, "accept", ClearanceActs.AcceptClearance.class, true);
    }

    private void on(RoutesConfig routes, String path, Class<? extends Act.OfJob> type, boolean toBuild) {
        routes.post("/job/{job}/clearance/{clearance}/" + path, ctx -> {
            String id = ctx.pathParam("clearance");
            Form form = door.form(ctx).with("clearance", id);
            Pages.act(
                    ctx,
                    desk,
                    door,
                    form,
                    ActReader.read(type, form),
                    this::session,
                    typed -> toBuild ? "/build" : "/clearance/" + Pages.encoded(id));
        });
    }

    private void list(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            List<Session> sessions = bench.unit().type().settingOrder().stream()
                    .map(id -> bench.session(id))
                    .toList();
            door.show(
                    ctx,
                    "clearances",
                    door.page(ctx, "Clearances", "clearances", bench),
                    Map.of(
                            "sessions",
                            sessions,
                            "shared",
                            !SharedShims.groups(bench.unit()).isEmpty()));
        });
    }

    private static boolean has(JobOnBench bench, String clearance) {
        return bench.unit().type().clearances().stream().anyMatch(c -> c.id().equals(clearance));
    }

    private void session(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<JobOnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        JobOnBench bench = found.get();
        String id = ctx.pathParam("clearance");
        if (!has(bench, id)) {
            Pages.lost(ctx, door, "This unit has no clearance " + id + ".");
            return;
        }
        Session session = bench.session(id);
        Page page = door.page(ctx, session.clearance().name(), "clearances", bench, faults, typed);
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("session", session);
        more.put("view", ClearanceView.of(bench, session, page.show()));
        door.show(ctx, "clearance", page, more);
    }
}
