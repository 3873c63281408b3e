package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.UnitActs;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** How the file of a unit type came to be as it is: who changed what, when and why; each version to look at and to go back to. */
public final class UnitHistoryPages {
    private static final String HERE = "/units/type/{type}/history";

    private final Desk desk;
    private final Door door;
    private final UnitChange change;

    public UnitHistoryPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
        this.change = new UnitChange(desk, door);
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> history(ctx, List.of(), Map.of()));
        routes.get(HERE + "/{hash}", this::version);
        routes.post(HERE + "/back", this::back);
        routes.post(HERE + "/text", this::text);
    }

    private void history(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        PinnedUnit now = desk.shelf().units().get(ctx.pathParam("type"));
        if (now == null) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        String type = now.type().id();
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("type", now.type());
        all.put("hash", now.hash());
        all.put("versions", desk.versions().of(type));
        all.put("cameIn", CameIn.of(desk, type));
        all.put("text", typed.getOrDefault("text", desk.versions().text(type).orElse("")));
        all.put(
                "job",
                typed.getOrDefault(
                        "job", Optional.ofNullable(ctx.queryParam("job")).orElse("")));
        door.show(ctx, "history", door.page(ctx, now.type().model(), "", null, faults, typed), all);
    }

    private void version(Context ctx) {
        Optional<String> text = desk.versions().text(ctx.pathParam("type"), ctx.pathParam("hash"));
        if (text.isEmpty()) {
            Pages.lost(ctx, door, "No file of this unit is kept under that hash.");
            return;
        }
        ctx.contentType("text/plain; charset=utf-8");
        ctx.result(text.get());
    }

    private void back(Context ctx) {
        Form form = door.form(ctx);
        String type = ctx.pathParam("type");
        String hash = form.raw("hash");
        String words = "back to " + (hash.length() > 12 ? hash.substring(0, 12) : hash);
        done(ctx, form, type, words, desk.versions().back(type, hash, door.signed(ctx, form), words, form.raw("why")));
    }

    /** The whole text, changed by hand. */
    private void text(Context ctx) {
        Form form = door.form(ctx);
        String type = ctx.pathParam("type");
        String text = form.typed().getOrDefault("text", "").replace("\r\n", "\n");
        Outcome<Desk.Done> done = desk.act(
                new UnitActs.ChangeUnit(type, form.raw("before"), text, "its text", form.raw("why")),
                door.signed(ctx, form));
        done(
                ctx,
                form,
                type,
                "its text",
                done.map(kept -> desk.shelf().type(type).orElseThrow()));
    }

    private void done(Context ctx, Form form, String type, String words, Outcome<UnitType> done) {
        if (done.isOk()) {
            change.follow(ctx, form, type, words, "");
        } else {
            history(ctx, done.refusals(), form.typed());
        }
    }
}
