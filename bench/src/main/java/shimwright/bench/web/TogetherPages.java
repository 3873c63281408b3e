package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance.Position;

/** Clearances that share shim positions, chosen together from one drawer. */
final class TogetherPages {
    private final Desk desk;
    private final Door door;

    TogetherPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/together", ctx -> show(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/together", this::choose);
    }

    private static List<String> group(Desk.OnBench bench) {
        return SharedShims.groups(bench.unit()).stream().findFirst().orElse(List.of());
    }

    private void show(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<Desk.OnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        List<String> group = group(bench.get());
        if (group.isEmpty()) {
            Pages.lost(ctx, door, "No clearances of this unit share a shim.");
            return;
        }
        Shop shop = desk.shop();
        SharedShims together = SharedShims.of(bench.get().unit(), bench.get().job(), shop, group);
        List<Session> sessions =
                group.stream().map(id -> desk.session(bench.get(), id)).toList();
        door.show(
                ctx,
                "together",
                door.page(ctx, "Chosen together", "clearances", bench.get(), faults, typed),
                Map.of("together", together, "sessions", sessions));
    }

    private void choose(Context ctx) {
        Optional<Desk.OnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        Desk.OnBench bench = found.get();
        Form form = door.form(ctx);
        Shop shop = desk.shop();
        List<String> group = group(bench);
        Map<String, List<PieceIn>> pieces = new LinkedHashMap<>();
        for (Position place :
                SharedShims.of(bench.unit(), bench.job(), shop, group).places()) {
            pieces.put(
                    place.id(),
                    ClearancePages.pieces(
                            form, "at-" + place.id(), shop, bench.job().opened().number()));
        }
        Outcome<List<PackChosen>> chosen =
                SharedShims.choose(bench.unit(), bench.job(), shop, group, pieces, form.text("because", "reason"));
        chosen.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
        String id = door.entryId(form);
        String job = bench.job().id();
        boolean repeated = bench.job().entries().stream()
                .anyMatch(kept -> kept.draft().id().equals(id + "-1"));
        if (!form.sound() && !repeated) {
            show(ctx, form.faults(), form.typed());
            return;
        }
        List<Refusal> refusals = new ArrayList<>();
        if (form.sound() && chosen instanceof Outcome.Ok<List<PackChosen>> ok) {
            int number = 0;
            for (PackChosen pack : ok.value()) {
                Outcome<Kept> kept = desk.keep(job, bench.unit(), id + "-" + ++number, door.who(ctx), pack);
                refusals.addAll(kept.refusals());
            }
        }
        if (refusals.isEmpty()) {
            door.on(ctx, "/job/" + job + "/build", "Packs kept");
        } else {
            show(ctx, refusals, form.typed());
        }
    }
}
