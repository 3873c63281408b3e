package shimwright.bench.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.web.clearance.SharedShimsPages;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Behind;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.Acts;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.UnitChanges;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.workbench.PinnedUnit;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The door for programs to jobs and shop: the same acts as on the pages, each by its name, and how everything stands.
 * Quantities are texts with their unit; a bare number is in millimetres, newton metres and so on.
 */
public final class ActRoutes {
    private static final int LARGEST_PICTURE = 12 * 1024 * 1024;

    private final Desk desk;
    private final Door door;
    private final Behind<SharedShims.Asked, SharedShims> shims;

    /**
     * Over one desk.
     *
     * @param shims where choices for several clearances are made
     */
    public ActRoutes(Desk desk, Door door, Behind<SharedShims.Asked, SharedShims> shims) {
        this.desk = desk;
        this.door = door;
        this.shims = shims;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        String root = ApiRoutes.ROOT;
        routes.get(root + "/shop", ctx -> answer(ctx, 200, JobJson.shop(desk.shop())));
        routes.get(
                root + "/units",
                ctx -> answer(
                        ctx,
                        200,
                        Map.of(
                                "units",
                                desk.shelf().units().values().stream()
                                        .map(UnitJson::unit)
                                        .toList())));
        routes.get(
                root + "/jobs",
                ctx -> answer(
                        ctx,
                        200,
                        Map.of("jobs", desk.lines().stream().map(JobJson::card).toList())));
        routes.get(root + "/jobs/{job}", this::job);
        routes.get(root + "/jobs/{job}/entries", this::entries);
        routes.get(root + "/jobs/{job}/clearances/{clearance}", this::clearance);
        routes.get(root + "/jobs/{job}/changes", this::changes);
        routes.post(root + "/jobs/{job}/acts/{act}", this::onJob);
        routes.post(root + "/jobs/{job}/pictures", this::picture);
        routes.post(root + "/shop/acts/{act}", this::inShop);
    }

    private static void answer(Context ctx, int status, Object value) {
        ctx.status(status);
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(SheetJson.line(value));
    }

    /** What a move to a file of the shelf would change for a job, before it is decided. */
    private void changes(Context ctx) {
        Optional<JobOnBench> bench = desk.bench(ctx.pathParam("job"));
        if (bench.isEmpty()) {
            noJob(ctx);
            return;
        }
        String variant = asked(ctx, "variant");
        Optional<PinnedUnit> to = desk.shelf().units().values().stream()
                .filter(unit -> unit.hash().equals(asked(ctx, "file")))
                .filter(unit -> unit.unit(variant).isPresent())
                .findFirst();
        if (to.isEmpty()) {
            ApiRoutes.refuse(
                    ctx,
                    422,
                    "unit file",
                    "this shop has no such file, or it has no such variant",
                    "Ask with file= and variant= as GET /api/units lists them");
            return;
        }
        answer(ctx, 200, Map.of("changes", UnitChanges.of(bench.get().bench(), to.get(), variant)));
    }

    private static String asked(Context ctx, String name) {
        String typed = ctx.queryParam(name);
        return typed == null ? "" : typed.strip();
    }

    private void job(Context ctx) {
        desk.bench(ctx.pathParam("job"))
                .ifPresentOrElse(
                        bench -> answer(
                                ctx, 200, JobJson.bench(bench, group -> SharedShimsPages.chosen(shims, bench, group))),
                        () -> noJob(ctx));
    }

    private void clearance(Context ctx) {
        Optional<JobOnBench> bench = desk.bench(ctx.pathParam("job"));
        String id = ctx.pathParam("clearance");
        if (bench.isEmpty()) {
            noJob(ctx);
        } else if (bench.get().bench().clearance(id).isEmpty()) {
            ApiRoutes.refuse(
                    ctx, 404, "clearance " + id, "this unit has no such clearance", "GET /api/jobs/{job} lists them");
        } else {
            answer(ctx, 200, JobJson.session(bench.get(), bench.get().session(id)));
        }
    }

    private static void noJob(Context ctx) {
        ApiRoutes.refuse(ctx, 404, "job", "there is no such job here", "GET /api/jobs lists them");
    }

    private void entries(Context ctx) {
        Optional<Job> job = desk.bench(ctx.pathParam("job")).map(bench -> bench.job());
        if (job.isEmpty()) {
            noJob(ctx);
            return;
        }
        answer(
                ctx,
                200,
                Map.of(
                        "entries",
                        job.get().entries().stream().map(ActRoutes::entry).toList()));
    }

    private static Map<String, Object> entry(LogEntry kept) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("number", kept.streamNumber());
        one.put("id", kept.draft().id());
        one.put("at", kept.draft().at().toString());
        one.put("by", kept.draft().by());
        one.put("type", kept.body().getClass().getSimpleName());
        return one;
    }

    private void onJob(Context ctx) {
        Optional<Class<? extends Act.OfJob>> type = Acts.find(ctx.pathParam("act"))
                .filter(Act.OfJob.class::isAssignableFrom)
                .map(t -> t.asSubclass(Act.OfJob.class));
        Optional<Form> form = type.isEmpty() ? noAct(ctx) : form(ctx);
        if (type.isEmpty() || form.isEmpty()) {
            return;
        }
        Act.OfJob act = ActReader.read(type.get(), form.get());
        done(
                ctx,
                form.get().sound()
                        ? desk.act(ctx.pathParam("job"), act, door.signed(ctx, form.get()))
                        : Outcome.refused(desk.amiss(
                                ctx.pathParam("job"),
                                act,
                                form.get().faults(),
                                door.signed(ctx, form.get()).units())));
    }

    private void inShop(Context ctx) {
        Optional<Class<? extends Act.OfShop>> type = Acts.find(ctx.pathParam("act"))
                .filter(Act.OfShop.class::isAssignableFrom)
                .map(t -> t.asSubclass(Act.OfShop.class));
        Optional<Form> form = type.isEmpty() ? noAct(ctx) : form(ctx);
        if (type.isEmpty() || form.isEmpty()) {
            return;
        }
        Act.OfShop act = ActReader.read(type.get(), form.get());
        done(
                ctx,
                form.get().sound()
                        ? desk.act(act, door.signed(ctx, form.get()))
                        : Outcome.refused(form.get().faults()));
    }

    private static Optional<Form> noAct(Context ctx) {
        ApiRoutes.refuse(ctx, 404, "act", "there is no act " + ctx.pathParam("act") + " here", "See /api/openapi.json");
        return Optional.empty();
    }

    private void picture(Context ctx) {
        byte[] content = ctx.bodyAsBytes();
        if (content.length > LARGEST_PICTURE) {
            ApiRoutes.refuse(ctx, 413, "picture", "it is larger than 12 MB", "Take it at a lower setting");
            return;
        }
        Form form = new Form(ctx.queryParamMap(), UnitSystem.METRIC);
        Outcome<Desk.Done> done = desk.pictures()
                .keep("picture", content)
                .flatMap(kept -> desk.act(ctx.pathParam("job"), added(form, kept), door.signed(ctx, form)));
        done(ctx, done);
    }

    private static IntakeActs.AddPicture added(Form form, PictureStore.Picture kept) {
        return new IntakeActs.AddPicture(
                form.raw("about"), kept.hash(), kept.mediaType(), kept.size(), form.raw("caption"));
    }

    private static void done(Context ctx, Outcome<Desk.Done> done) {
        if (done instanceof Outcome.Ok<Desk.Done> ok) {
            Map<String, Object> kept = new LinkedHashMap<>();
            kept.put("job", ok.value().stream());
            kept.put("said", ok.value().said());
            kept.put(
                    "entries",
                    ok.value().entries().stream().map(ActRoutes::entry).toList());
            answer(ctx, 201, kept);
        } else {
            ApiRoutes.refuse(ctx, 422, "", done.refusals());
        }
    }

    /** A body of JSON as a form: texts and numbers by name, lists as name1, name2…, objects as name-key. */
    static Optional<Form> form(Context ctx) {
        try {
            JsonNode body = ctx.body().isBlank()
                    ? JsonMapper.shared().createObjectNode()
                    : JsonMapper.shared().readTree(ctx.body());
            if (!body.isObject()) {
                ApiRoutes.refuse(ctx, 400, "body", "it is no JSON object", "Send the inputs by name");
                return Optional.empty();
            }
            Map<String, List<String>> fields = new LinkedHashMap<>();
            body.properties().forEach(field -> put(fields, field.getKey(), field.getValue()));
            boolean inch = "inch".equals(ctx.queryParam("units"));
            return Optional.of(new Form(fields, inch ? UnitSystem.INCH : UnitSystem.METRIC));
        } catch (JacksonException broken) {
            ApiRoutes.refuse(ctx, 400, "body", "it is not JSON", "Send the inputs by name as a JSON object");
            return Optional.empty();
        }
    }

    private static void put(Map<String, List<String>> fields, String name, JsonNode value) {
        if (value.isArray()) {
            int number = 0;
            for (JsonNode one : value) {
                fields.put(name + ++number, List.of(one.asString()));
            }
        } else if (value.isObject()) {
            value.properties().forEach(one -> put(fields, name + "-" + one.getKey(), one.getValue()));
        } else {
            fields.put(name, List.of(value.isNull() ? "" : value.asString()));
        }
    }
}
