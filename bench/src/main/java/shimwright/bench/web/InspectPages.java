package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Parsed;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.inspect.WearJudgement;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/** Strip-down and inspection: what came off in order, what was measured, what becomes of it. */
final class InspectPages {
    private static final int MOST_READINGS = 24;

    private final Desk desk;
    private final Door door;

    InspectPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/strip", ctx -> strip(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/strip", this::takeOff);
        routes.get("/job/{job}/inspect", ctx -> inspect(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/inspect", this::found);
        routes.post("/job/{job}/judge", this::judge);
    }

    private void strip(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door)
                .ifPresent(bench ->
                        door.show(ctx, "strip", door.page(ctx, "Strip-down", "strip", bench, faults, typed), Map.of()));
    }

    private void takeOff(Context ctx) {
        Form form = door.form(ctx);
        String gone = form.needed("gone", "what came off", "Name the part, as you would on a tag");
        String note = form.text("note", "note");
        if (!form.sound()) {
            strip(ctx, form.faults(), form.typed());
            return;
        }
        String job = ctx.pathParam("job");
        Outcome<Kept> kept =
                desk.keep(job, null, door.entryId(form), door.who(ctx), new Entry.TakenOff(gone, List.of(), note));
        if (kept.isOk()) {
            door.on(ctx, "/job/" + job + "/strip", "Kept: " + gone);
        } else {
            strip(ctx, kept.refusals(), form.typed());
        }
    }

    static List<Views.WearRow> rows(Desk.OnBench bench) {
        List<Views.WearRow> rows = new ArrayList<>();
        for (WearLimit wear : bench.unit().type().wearLimits()) {
            List<Job.Said<Entry.Found>> found = bench.job().found().stream()
                    .filter(said -> said.what().limit().equals(wear.id()))
                    .toList();
            rows.add(new Views.WearRow(
                    wear, found, Optional.ofNullable(bench.job().judged().get(wear.id()))));
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
                    Map.of("rows", rows(bench), "open", limit));
        });
    }

    private void found(Context ctx) {
        Optional<Desk.OnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Form form = door.form(ctx);
        String id = form.raw("limit");
        Optional<WearLimit> wear = bench.get().unit().type().wearLimits().stream()
                .filter(w -> w.id().equals(id))
                .findFirst();
        Entry.Found entry = wear.isPresent() ? measured(form, wear.get()) : seen(form);
        if (!form.sound()) {
            inspect(ctx, form.faults(), form.typed());
            return;
        }
        String job = bench.get().job().id();
        Outcome<Kept> kept = desk.keep(job, bench.get().unit(), door.entryId(form), door.who(ctx), entry);
        if (kept.isOk()) {
            door.on(ctx, "/job/" + job + "/inspect?limit=" + id + "#" + id, entry.outcome());
        } else {
            inspect(ctx, kept.refusals(), form.typed());
        }
    }

    private static Entry.Found seen(Form form) {
        String what = form.needed("what", "item", "Name the part or feature");
        String words = form.needed("words", "what you saw", "Say what you saw");
        return new Entry.Found("", List.of(), what, List.of(), Kind.NUMBER, words, "Noted", List.of());
    }

    private static Entry.Found measured(Form form, WearLimit wear) {
        Kind kind = wear.kind().quantity();
        String words = form.text("words", "remark");
        if (wear.direction() == Direction.ATTEST) {
            boolean good = form.raw("attest").equals("good");
            if (form.raw("attest").isEmpty()) {
                form.fault(wear.id() + " " + wear.what(), "nothing chosen", "Say whether it is as it should be");
            }
            return new Entry.Found(
                    wear.id(),
                    wear.items(),
                    wear.what(),
                    List.of(),
                    kind,
                    words,
                    good ? "As it should be." : "Not as it should be: rework or replace.",
                    List.of());
        }
        List<Double> values = readings(form, "values", wear, wear.id() + " " + wear.what());
        if (!form.sound()) {
            return new Entry.Found(wear.id(), wear.items(), wear.what(), values, kind, words, "", List.of());
        }
        Outcome<WearJudgement> judged = WearJudgement.of(wear, values, form.system());
        judged.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
        if (judged instanceof Outcome.Ok<WearJudgement> ok) {
            WearJudgement j = ok.value();
            return new Entry.Found(wear.id(), wear.items(), wear.what(), values, kind, words, j.say(), j.working());
        }
        return new Entry.Found(wear.id(), wear.items(), wear.what(), values, kind, words, "", List.of());
    }

    /** Readings typed one behind the other, apart by spaces, semicolons or lines; each may carry its unit. */
    static List<Double> readings(Form form, String field, Measurable measured, String place) {
        Kind kind = measured.kind().quantity();
        String text = form.needed(field, place, "Type the readings, apart by a space or a semicolon");
        if (text.isEmpty()) {
            return List.of();
        }
        String[] parts =
                text.contains(";") || text.contains("\n") ? text.split("[;\n]+") : text.split("\\s+(?=[-+.,\\d])");
        if (parts.length > MOST_READINGS) {
            form.fault(place, parts.length + " readings in one line", "Type at most " + MOST_READINGS);
            return List.of();
        }
        List<Double> values = new ArrayList<>();
        Arrays.stream(parts).map(String::strip).filter(part -> !part.isEmpty()).forEach(part -> {
            Outcome<Parsed> parsed = Quantities.parse(
                    part, kind, measured.bareUnit(), place + ", reading " + (values.size() + 1), range(kind));
            parsed.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
            values.add(parsed instanceof Outcome.Ok<Parsed> ok ? ok.value().si() : 0.0);
        });
        return values;
    }

    /** Sizes a bench can meet; what lies beyond is a slip of the point or the unit. */
    static Range range(Kind kind) {
        return switch (kind) {
            case LENGTH -> new Range(-2, 2);
            case TORQUE -> new Range(-5_000, 5_000);
            case FORCE -> new Range(-200_000, 200_000);
            case PRESSURE -> new Range(-1e6, 1e7);
            default -> new Range(-1e6, 1e6);
        };
    }

    private void judge(Context ctx) {
        Optional<Desk.OnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Form form = door.form(ctx);
        String what = form.needed("what", "item", "Say which item");
        String reason = form.needed("reason", "reason", "Say why, so that the record can be stood behind");
        Entry.Decision decision = null;
        try {
            decision = Entry.Decision.valueOf(form.raw("decision").toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException none) {
            form.fault("verdict", "nothing chosen", "Choose reuse, rework or replace");
        }
        if (!form.sound() || decision == null) {
            inspect(ctx, form.faults(), form.typed());
            return;
        }
        String job = bench.get().job().id();
        String limit = form.raw("limit");
        Outcome<Kept> kept = desk.keep(
                job,
                bench.get().unit(),
                door.entryId(form),
                door.who(ctx),
                new Entry.Judged(limit, List.of(), what, decision, reason, form.text("consent", "consent")));
        if (kept.isOk()) {
            door.on(ctx, "/job/" + job + "/inspect#" + limit, "Kept: " + form.raw("decision"));
        } else {
            inspect(ctx, kept.refusals(), form.typed());
        }
    }
}
