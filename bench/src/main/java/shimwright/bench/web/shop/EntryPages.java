package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.edit.DropEntry;
import shimwright.rebuild.unit.edit.EntryField;
import shimwright.rebuild.unit.edit.EntryForm;
import shimwright.rebuild.unit.edit.FileSection;
import shimwright.rebuild.unit.edit.PutEntry;
import shimwright.rebuild.unit.edit.TypedEntry;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType;

/** The sections of a unit file: a page with the entries of each, and a form for each entry, made from the keys of the model. */
public final class EntryPages {
    private static final String SECTION = "/units/type/{type}/{section}";

    /** Cells of a line beside the address of the entry. */
    private static final int CELLS = 5;

    private final Desk desk;
    private final Door door;
    private final UnitChange change;

    public EntryPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
        this.change = new UnitChange(desk, door);
    }

    /**
     * A line of a section's page.
     *
     * @param id address of the entry
     * @param cells the first things that it says
     * @param numbers its limits and torques, and those of its checks
     */
    public record Line(String id, List<String> cells, List<OriginNumber> numbers) {}

    /** Lays the addresses of these pages; those of a unit type itself are laid before. */
    public void routes(RoutesConfig routes) {
        routes.get(SECTION, this::section);
        routes.get(SECTION + "/entry", ctx -> entry(ctx));
        routes.post(SECTION + "/entry", this::put);
        routes.post(SECTION + "/drawing", this::draw);
        routes.post(SECTION + "/drop", this::drop);
    }

    private record Asked(UnitType type, FileSection section) {}

    private Optional<Asked> asked(Context ctx) {
        Optional<UnitType> type = desk.shelf().type(ctx.pathParam("type"));
        Optional<FileSection> section = FileSection.find(ctx.pathParam("section"));
        if (type.isEmpty() || section.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf, or a unit file has no such section.");
            return Optional.empty();
        }
        return Optional.of(new Asked(type.get(), section.get()));
    }

    private static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    private void section(Context ctx) {
        asked(ctx).ifPresent(asked -> {
            if (asked.section().single()) {
                entry(ctx);
            } else {
                show(ctx, asked, query(ctx, "job"), List.of(), Map.of());
            }
        });
    }

    private void show(Context ctx, Asked asked, String job, List<Refusal> faults, Map<String, String> typed) {
        Page page = door.page(ctx, asked.type().model(), "", null, faults, typed);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("type", asked.type());
        all.put("section", asked.section());
        all.put("lines", lines(asked));
        all.put("job", job);
        door.show(ctx, "section", page, all);
    }

    private static List<Line> lines(Asked asked) {
        Map<String, Object> tree = UnitTree.seen(asked.type());
        List<String> ids = asked.section().ids(tree);
        List<Line> lines = new ArrayList<>();
        for (Map<String, Object> one : asked.section().entries(tree)) {
            List<String> cells = one.entrySet().stream()
                    .filter(key -> key.getValue() instanceof String)
                    .filter(key -> !key.getKey().equals("id") && !key.getKey().equals(FileSection.KEY))
                    .map(key -> key.getValue().toString())
                    .limit(CELLS)
                    .toList();
            lines.add(new Line(ids.get(lines.size()), cells, OriginNumber.of(one)));
        }
        return lines;
    }

    /** An entry, a copy of one, or an empty form. */
    private void entry(Context ctx) {
        asked(ctx).ifPresent(asked -> {
            String was = asked.section().single() ? FileSection.ONCE : query(ctx, "id");
            String copy = query(ctx, "copy");
            Map<String, Object> tree = UnitTree.seen(asked.type());
            int index = asked.section().ids(tree).indexOf(was.isEmpty() ? copy : was);
            if (index < 0 && !(was + copy).isEmpty()) {
                Pages.lost(ctx, door, "There is no such entry any more.");
                return;
            }
            Map<String, Object> there =
                    index < 0 ? Map.of() : asked.section().entries(tree).get(index);
            Map<String, Object> begun = new LinkedHashMap<>(there);
            if (was.isEmpty()) {
                begun.remove("id");
                begun.remove(FileSection.KEY);
            }
            form(ctx, asked, new Shown(was, query(ctx, "job"), begun, ""), List.of(), Map.of());
        });
    }

    /** What the form of an entry shows: which, for which job, what it says, and why it is changed. */
    private record Shown(String was, String job, Map<String, Object> entry, String why) {}

    private void form(Context ctx, Asked asked, Shown shown, List<Refusal> faults, Map<String, String> typed) {
        List<EntryField> fields = EntryForm.of(asked.section(), shown.entry(), asked.type(), door.system(ctx));
        List<Refusal> placed =
                faults.stream().map(fault -> TypedEntry.atField(fault, fields)).toList();
        Page page = door.page(ctx, asked.type().model(), "", null, placed, typed);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("type", asked.type());
        all.put("section", asked.section());
        all.put("was", shown.was());
        all.put("called", shown.entry().getOrDefault("name", shown.was()));
        all.put("job", shown.job());
        all.put("why", shown.why());
        all.put("fields", fields);
        UnitDrawings.of(
                        asked.type(),
                        variant -> unit(asked.type(), variant),
                        asked.section(),
                        shown.entry(),
                        page.show())
                .ifPresent(drawing -> all.put("drawing", drawing));
        door.show(ctx, "entry", page, all);
    }

    private Optional<Unit> unit(UnitType type, String variant) {
        return Optional.ofNullable(desk.shelf().units().get(type.id())).flatMap(file -> file.unit(variant));
    }

    /** The drawing as it would be with what stands in the form; nothing is kept. What cannot be is said over the drawing as it is. */
    private void draw(Context ctx) {
        asked(ctx).ifPresent(asked -> {
            if (!UnitDrawings.shows(asked.section())) {
                Pages.lost(ctx, door, "What stands in that form is not drawn.");
                return;
            }
            Form form = door.form(ctx);
            Map<String, Object> entry = TypedEntry.of(asked.section(), form.typed(), form.system());
            Show show = new Show(form.system(), door.zone());
            Outcome<UnitType> typed = new PutEntry(asked.section().name(), form.raw("was"), entry).on(asked.type());
            Optional<Drawings> drawing = typed instanceof Outcome.Ok<UnitType> ok
                    ? UnitDrawings.of(
                            ok.value(),
                            variant -> Optional.of(ok.value().resolve(variant)),
                            asked.section(),
                            entry,
                            show)
                    : UnitDrawings.of(
                            asked.type(), variant -> unit(asked.type(), variant), asked.section(), entry, show);
            String said = typed.refusals().stream()
                    .findFirst()
                    .map(fault -> "Not drawn yet: " + fault.sentence())
                    .orElse("As typed, not kept yet");
            ctx.status(typed.isOk() ? 200 : 422);
            ctx.html(door.render("unitdrawing", Map.of("drawing", drawing.orElseThrow(), "said", said)));
        });
    }

    private void put(Context ctx) {
        asked(ctx).ifPresent(asked -> {
            Form form = door.form(ctx);
            Map<String, Object> entry = TypedEntry.of(asked.section(), form.typed(), form.system());
            String was = form.raw("was");
            UnitEdit edit = new PutEntry(asked.section().name(), was, entry);
            List<Refusal> faults = change.keep(form, asked.type().id(), edit, ctx);
            if (faults.isEmpty()) {
                change.follow(
                        ctx,
                        form,
                        asked.type().id(),
                        edit.words(),
                        asked.section().single() ? "" : "/" + asked.section().name());
            } else {
                form(ctx, asked, new Shown(was, form.raw("job"), entry, form.raw("why")), faults, form.typed());
            }
        });
    }

    private void drop(Context ctx) {
        asked(ctx).ifPresent(asked -> {
            Form form = door.form(ctx);
            UnitEdit edit = new DropEntry(asked.section().name(), form.raw("id"), form.has("mentions"));
            List<Refusal> faults = change.keep(form, asked.type().id(), edit, ctx);
            if (faults.isEmpty()) {
                change.follow(
                        ctx,
                        form,
                        asked.type().id(),
                        edit.words(),
                        "/" + asked.section().name());
            } else {
                show(ctx, asked, form.raw("job"), faults, form.typed());
            }
        });
    }
}
