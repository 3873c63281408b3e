package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.inspect.Identification;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.TellTale;

/** A new job: which unit, which variant by its tell-tales, what the owner said. */
final class IntakePages {
    private final Desk desk;
    private final Door door;

    IntakePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/new", this::choose);
        routes.get("/new/{type}", ctx -> form(ctx, List.of(), Map.of()));
        routes.post("/new/{type}", this::open);
    }

    private void choose(Context ctx) {
        if (desk.shelf().types().size() == 1) {
            ctx.redirect("/new/" + desk.shelf().types().iterator().next().id());
            return;
        }
        door.show(
                ctx,
                "newjob-type",
                door.page(ctx, "New job", "", null),
                Map.of("types", desk.shelf().types()));
    }

    private static Map<String, String> seen(UnitType type, Map<String, String> typed) {
        Map<String, String> seen = new LinkedHashMap<>();
        for (TellTale tale : type.tellTales()) {
            String saw = typed.getOrDefault("tale-" + tale.id(), "").strip();
            if (!saw.isEmpty()) {
                seen.put(tale.id(), saw);
            }
        }
        return seen;
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
        Optional<UnitType> found = desk.shelf().type(ctx.pathParam("type"));
        if (found.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        UnitType type = found.get();
        Form form = door.form(ctx);
        Map<String, String> seen = seen(type, form.typed());
        Identification told = Identification.of(type, seen);
        String number = form.needed("number", "job number", "Give the job a number, such as V-0094");
        String owner = form.needed("owner", "owner", "Say whose unit it is");
        String because = form.text("because", "reason");
        String chosen = form.raw("variant");
        String variant = told.variant() != null ? told.variant() : chosen;
        if (told.variant() != null && !chosen.isEmpty() && !chosen.equals(told.variant())) {
            form.fault("variant", "the tell-tales say " + told.variant() + ", " + chosen + " was chosen", "Look again");
        }
        if (told.variant() == null && (chosen.isEmpty() || because.isEmpty())) {
            form.fault(
                    "variant",
                    told.say(),
                    "Read another tell-tale, or choose the variant yourself and say why you are sure");
        }
        Unit unit = desk.shelf().unit(type.id(), variant).orElse(null);
        if (unit == null && !variant.isEmpty()) {
            form.fault("variant", "there is no variant \"" + variant + "\" of this unit", "Choose one of those shown");
        }
        if (!form.sound() || unit == null) {
            form(ctx, form.faults(), form.typed());
            return;
        }
        List<String> said = Arrays.stream(
                        form.text("said", "what the owner said").split("\n"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        String job = desk.freeJobId(number);
        Outcome<Kept> kept = desk.keep(
                job,
                unit,
                door.entryId(form),
                door.who(ctx),
                new Entry.JobOpened(
                        number,
                        type.id(),
                        variant,
                        owner,
                        said,
                        seen,
                        told.variant() == null ? because : "",
                        form.text("remark", "remark")));
        if (kept.isOk()) {
            door.on(ctx, "/job/" + job + "/strip", "Job " + number + " is open");
        } else {
            form(ctx, kept.refusals(), form.typed());
        }
    }
}
