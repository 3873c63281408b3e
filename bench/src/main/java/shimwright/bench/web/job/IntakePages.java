package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.inspect.Identification;
import shimwright.rebuild.unit.model.UnitType;

/** A new job: which unit, which variant by its tell-tales, what the owner said. */
public final class IntakePages {
    private final Desk desk;
    private final Door door;

    public IntakePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/new", this::choose);
        routes.get("/new/{type}", ctx -> form(ctx, List.of(), Map.of()));
        routes.post("/new/{type}", this::open);
    }

    private void choose(Context ctx) {
        door.show(
                ctx,
                "newjob-type",
                door.page(ctx, "New job", "", null),
                Map.of("types", desk.shelf().types()));
    }

    private static Map<String, String> seen(UnitType type, Map<String, String> typed) {
        Map<String, String> tales = new LinkedHashMap<>();
        typed.forEach((field, text) -> {
            if (field.startsWith("tale-")) {
                tales.put(field.substring("tale-".length()), text);
            }
        });
        return ShopActs.seen(type, tales);
    }

    private void form(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<UnitType> type = desk.shelf().type(ctx.pathParam("type"));
        if (type.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        Identification told = Identification.of(type.get(), seen(type.get(), typed));
        door.show(
                ctx,
                "newjob",
                door.page(ctx, "New job", "", null, faults, typed),
                Map.of("type", type.get(), "told", told));
    }

    private void open(Context ctx) {
        if (desk.shelf().type(ctx.pathParam("type")).isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        Form form = door.form(ctx).with("type", ctx.pathParam("type"));
        ShopActs.OpenJob act = ActReader.read(ShopActs.OpenJob.class, form);
        if (!form.sound()) {
            form(ctx, form.faults(), form.typed());
            return;
        }
        Outcome<Desk.Done> done = desk.act(act, door.signed(ctx, form));
        if (done instanceof Outcome.Ok<Desk.Done> ok) {
            door.on(ctx, "/job/" + ok.value().stream() + "/strip", ok.value().said());
        } else {
            form(ctx, done.refusals(), form.typed());
        }
    }
}
