package shimwright.bench.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.web.kit.ConstructionReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.DropEntry;
import shimwright.rebuild.unit.edit.FileSection;
import shimwright.rebuild.unit.edit.PutEntry;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.edit.UnitGap;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The door for programs to unit files: begun, read, changed entry by entry with all checks of the file. An entry is an object with
 * the keys of the file and its values as the file writes them.
 */
public final class UnitRoutes {
    private static final String UNIT = ApiRoutes.ROOT + "/units/{type}";
    private static final String ENTRY = UNIT + "/entries/{section}/{id}";

    private final Desk desk;
    private final Door door;

    public UnitRoutes(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of this door. */
    public void routes(RoutesConfig routes) {
        routes.post(ApiRoutes.ROOT + "/units", this::begin);
        routes.get(UNIT, this::read);
        routes.get(UNIT + "/history", this::history);
        routes.post(UNIT + "/entries/{section}", this::put);
        routes.post(ENTRY, this::put);
        routes.delete(ENTRY, this::drop);
    }

    private static void answer(Context ctx, int status, Object value) {
        ctx.status(status);
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(SheetJson.line(value));
    }

    private Optional<PinnedUnit> unit(Context ctx) {
        PinnedUnit unit = desk.shelf().units().get(ctx.pathParam("type"));
        if (unit == null) {
            ApiRoutes.refuse(ctx, 404, "unit type", "there is none of that name here", "GET /api/units lists them");
        }
        return Optional.ofNullable(unit);
    }

    private Desk.Signed signed(Context ctx) {
        return door.signed(ctx, new Form(ctx.queryParamMap(), UnitSystem.METRIC));
    }

    private static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
    }

    /** A first file from how the box is built; the inputs are those of the page. */
    private void begin(Context ctx) {
        Optional<Form> form = ActRoutes.form(ctx);
        if (form.isEmpty()) {
            return;
        }
        List<Refusal> faults = new ArrayList<>();
        Construction built = ConstructionReader.read(form.get(), faults);
        String maker = form.get().raw("maker");
        String model = form.get().raw("model");
        Outcome<String> text = FirstUnit.text(built, maker, model);
        faults.addAll(text.refusals());
        String id = FirstUnit.id(maker, model);
        if (faults.isEmpty() && desk.shelf().type(id).isPresent()) {
            faults.add(
                    Refusal.of("model", "a unit file of that name is on the shelf already", "Call this one otherwise"));
        }
        Outcome<UnitType> begun = faults.isEmpty()
                ? desk.versions()
                        .add(
                                id + ".yaml",
                                text.orElseThrow().getBytes(StandardCharsets.UTF_8),
                                door.signed(ctx, form.get()),
                                "begun from what can be seen")
                : Outcome.refused(faults);
        done(ctx, begun);
    }

    /** The file as keys and values, or as its text where format=yaml is asked for. */
    private void read(Context ctx) {
        unit(ctx).ifPresent(unit -> {
            if (query(ctx, "format").equals("yaml")) {
                ctx.contentType("application/yaml; charset=utf-8");
                ctx.result(desk.versions().text(unit.type().id()).orElse(""));
                return;
            }
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("type", unit.type().id());
            one.put("file", unit.hash());
            one.put(
                    "lacks",
                    UnitGap.of(unit.type()).stream().map(UnitRoutes::gap).toList());
            one.put("content", UnitTree.seen(unit.type()));
            answer(ctx, 200, one);
        });
    }

    private static Map<String, Object> gap(UnitGap gap) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("ability", gap.ability());
        one.put("lacks", gap.lacks());
        one.put("at", gap.kind().at());
        return one;
    }

    private void history(Context ctx) {
        unit(ctx)
                .ifPresent(unit -> answer(
                        ctx,
                        200,
                        Map.of(
                                "changes",
                                desk.versions().of(unit.type().id()).stream()
                                        .map(version -> {
                                            Map<String, Object> one = new LinkedHashMap<>();
                                            one.put(
                                                    "at",
                                                    version.entry().draft().at().toString());
                                            one.put(
                                                    "by",
                                                    version.entry().draft().by());
                                            one.put("what", version.change().what());
                                            one.put("why", version.change().why());
                                            one.put("before", version.change().before());
                                            one.put("after", version.change().after());
                                            one.put("changes", version.change().changes());
                                            return one;
                                        })
                                        .toList())));
    }

    private void put(Context ctx) {
        Optional<FileSection> section = section(ctx);
        if (section.isEmpty()) {
            return;
        }
        Map<String, Object> fields = new LinkedHashMap<>();
        try {
            JsonNode body = JsonMapper.shared().readTree(ctx.body());
            if (!body.isObject()) {
                ApiRoutes.refuse(ctx, 400, "body", "it is no JSON object", "Send the keys of the entry");
                return;
            }
            body.properties().forEach(field -> fields.put(field.getKey(), plain(field.getValue())));
        } catch (JacksonException broken) {
            ApiRoutes.refuse(ctx, 400, "body", "it is not JSON", "Send the keys of the entry as a JSON object");
            return;
        }
        String id = ctx.pathParamMap().getOrDefault("id", "");
        change(ctx, now -> {
            boolean there = section.get().ids(UnitTree.seen(now)).contains(id);
            String key = section.get().form() == FileSection.Shape.KEYED ? FileSection.KEY : "id";
            Map<String, Object> named = new LinkedHashMap<>(fields);
            boolean names = key.equals(FileSection.KEY)
                    || section.get().keys().stream().anyMatch(c -> c.key().equals(key));
            if (!id.isEmpty() && !section.get().single() && names) {
                named.putIfAbsent(key, id);
            }
            return new PutEntry(section.get().name(), there || section.get().single() ? id : "", named);
        });
    }

    private static Object plain(JsonNode value) {
        if (value.isArray()) {
            List<Object> all = new ArrayList<>();
            value.forEach(one -> all.add(plain(one)));
            return all;
        }
        if (value.isObject()) {
            Map<String, Object> map = new LinkedHashMap<>();
            value.properties().forEach(field -> map.put(field.getKey(), plain(field.getValue())));
            return map;
        }
        return value.isNull() ? "" : value.asString();
    }

    private void drop(Context ctx) {
        section(ctx)
                .ifPresent(section -> change(
                        ctx,
                        now -> new DropEntry(
                                section.name(),
                                ctx.pathParam("id"),
                                query(ctx, "mentions").equals("true"))));
    }

    private Optional<FileSection> section(Context ctx) {
        if (unit(ctx).isEmpty()) {
            return Optional.empty();
        }
        Optional<FileSection> section = FileSection.find(ctx.pathParam("section"));
        if (section.isEmpty()) {
            ApiRoutes.refuse(
                    ctx, 404, "section", "a unit file has none of that name", "GET /api/units/{type} has them");
        }
        return section;
    }

    private interface Change {
        UnitEdit of(UnitType now);
    }

    private void change(Context ctx, Change change) {
        UnitType type = desk.shelf().type(ctx.pathParam("type")).orElseThrow();
        done(
                ctx,
                desk.versions()
                        .change(
                                type.id(),
                                signed(ctx),
                                change.of(type).words(),
                                query(ctx, "why"),
                                now -> UnitEdit.text(now, change.of(now))));
    }

    private void done(Context ctx, Outcome<UnitType> done) {
        if (done instanceof Outcome.Ok<UnitType> ok) {
            String id = ok.value().id();
            Map<String, Object> kept = new LinkedHashMap<>();
            kept.put("type", id);
            kept.put(
                    "file",
                    Optional.ofNullable(desk.shelf().units().get(id))
                            .map(PinnedUnit::hash)
                            .orElse(""));
            answer(ctx, 201, kept);
        } else {
            ApiRoutes.refuse(ctx, 422, "", done.refusals());
        }
    }
}
