package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.inspect.Checks;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;

/** The build: one step at a time, its hold point, notes and pictures. */
final class BuildPages {
    private static final int LARGEST_PICTURE = 12 * 1024 * 1024;

    private final Desk desk;
    private final Door door;

    BuildPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/build", ctx -> build(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/done", this::done);
        routes.post("/job/{job}/jumped", this::jumped);
        routes.post("/job/{job}/leftout", this::leftOut);
        routes.post("/job/{job}/cannot", this::cannot);
        routes.post("/job/{job}/undo", this::undo);
        routes.post("/job/{job}/check", this::check);
        routes.post("/job/{job}/overrule", this::overrule);
        routes.post("/job/{job}/note", this::note);
        routes.post("/job/{job}/picture", this::picture);
        routes.get("/picture/{hash}", this::showPicture);
    }

    private void build(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<Desk.OnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        Desk.OnBench bench = found.get();
        String asked = typed.getOrDefault("step", ctx.queryParam("step") == null ? "" : ctx.queryParam("step"));
        Optional<Step> step = bench.order().steps().containsKey(asked)
                ? Optional.ofNullable(bench.order().steps().get(asked))
                : bench.next();
        Page page = door.page(ctx, "Build", "build", bench, faults, typed);
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("view", StepView.of(bench, desk.shop(), step.orElse(null), desk.now(), page.show()));
        door.show(ctx, "build", page, more);
    }

    private void keep(Context ctx, String said, Pages.Make make) {
        Pages.keep(ctx, desk, door, said, make, this::build, (entry, form) -> {
            boolean on = entry instanceof Entry.StepDone
                    || entry instanceof Entry.StepJumped
                    || entry instanceof Entry.StepLeftOut;
            return "/build" + (on ? "" : "?step=" + form.raw("step"));
        });
    }

    private void done(Context ctx) {
        keep(ctx, "Kept", (bench, form) -> new Entry.StepDone(step(form), form.text("note", "note")));
    }

    private static String step(Form form) {
        return form.needed("step", "step", "Go back to the build page");
    }

    private void jumped(Context ctx) {
        keep(
                ctx,
                "Kept: done out of order, it stands on the record",
                (bench, form) -> new Entry.StepJumped(
                        step(form), form.needed("reason", "reason", "Say how it came about; it stands on the record")));
    }

    private void leftOut(Context ctx) {
        keep(
                ctx,
                "Kept: left out, it stands on the record",
                (bench, form) -> new Entry.StepLeftOut(
                        step(form),
                        form.needed("reason", "reason", "Say why it is left out; it stands on the record")));
    }

    private void cannot(Context ctx) {
        keep(
                ctx,
                "Kept",
                (bench, form) -> new Entry.StepCannot(
                        step(form), form.needed("reason", "reason", "Say what stands in the way")));
    }

    private void undo(Context ctx) {
        keep(
                ctx,
                "Kept: undone",
                (bench, form) ->
                        new Entry.StepUndone(step(form), form.needed("reason", "reason", "Say why it was undone")));
    }

    private void overrule(Context ctx) {
        keep(
                ctx,
                "Kept: passed by your decision, it stands on the record",
                (bench, form) -> new Entry.HoldOverruled(
                        step(form),
                        form.needed("hold", "hold point", "Go back to the build page"),
                        form.needed("reason", "reason", "Say why it may be passed; it stands on the record")));
    }

    private void note(Context ctx) {
        keep(
                ctx,
                "Note kept",
                (bench, form) -> new Entry.NoteMade(
                        form.raw("step").isEmpty() ? "job" : "step " + form.raw("step"),
                        form.needed("text", "note", "Type the note")));
    }

    private void check(Context ctx) {
        keep(ctx, "Reading kept", (bench, form) -> {
            String holdId = form.needed("hold", "hold point", "Go back to the build page");
            String checkId = form.raw("check");
            Optional<Check> check = bench.unit().type().holdPoints().stream()
                    .filter(h -> h.id().equals(holdId))
                    .map(HoldPoint::checks)
                    .flatMap(List::stream)
                    .filter(c -> c.id().equals(checkId))
                    .findFirst();
            if (check.isEmpty()) {
                form.fault("hold point " + holdId, "it has no check " + checkId, "Go back to the build page");
                return new Entry.NoteMade("job", "");
            }
            return check.get().kind() == CheckKind.NONE
                    ? attested(form, holdId, check.get())
                    : measured(form, holdId, check.get());
        });
    }

    private static Entry.CheckRead attested(Form form, String hold, Check check) {
        String step = step(form);
        String answer = form.raw("attest");
        if (!answer.equals("yes") && !answer.equals("no")) {
            form.fault(check.what(), "nothing chosen", "Say yes or no");
        }
        boolean yes = answer.equals("yes");
        return new Entry.CheckRead(
                step,
                hold,
                check.id(),
                List.of(),
                Kind.NUMBER,
                yes,
                yes ? Verdict.IN : Verdict.OUT,
                form.text("words", "remark"),
                List.of());
    }

    private static Entry.CheckRead measured(Form form, String hold, Check check) {
        String step = step(form);
        Kind kind = check.kind().quantity();
        List<Double> values = InspectPages.readings(form, "values", check, check.what());
        String words = form.text("words", "remark");
        if (form.sound()) {
            Outcome<Checks.Judged> judged = Checks.judge(check, values, form.system());
            judged.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
            if (judged instanceof Outcome.Ok<Checks.Judged> ok) {
                Checks.Judged j = ok.value();
                return new Entry.CheckRead(
                        step,
                        hold,
                        check.id(),
                        values,
                        kind,
                        false,
                        j.verdict(),
                        words.isEmpty() ? j.say() : words + " " + j.say(),
                        j.working());
            }
        }
        return new Entry.CheckRead(step, hold, check.id(), values, kind, false, Verdict.NOT_PROVEN, words, List.of());
    }

    private void picture(Context ctx) {
        keep(ctx, "Picture kept", (bench, form) -> {
            String about = form.raw("about").isEmpty() ? "job" : form.raw("about");
            UploadedFile file = ctx.uploadedFile("picture");
            if (file == null || file.size() == 0) {
                form.fault("picture", "no picture was chosen", "Take or choose a PNG or JPEG picture");
                return new Entry.NoteMade(about, "");
            }
            if (file.size() > LARGEST_PICTURE) {
                form.fault("picture " + file.filename(), "it is larger than 12 MB", "Take it at a lower setting");
                return new Entry.NoteMade(about, "");
            }
            Outcome<PictureStore.Picture> kept = desk.pictures().keep(file.filename(), bytes(file));
            kept.refusals().forEach(r -> form.fault(r.place(), r.fact(), r.hint()));
            if (kept instanceof Outcome.Ok<PictureStore.Picture> ok) {
                PictureStore.Picture p = ok.value();
                return new Entry.PictureAdded(
                        about, p.hash(), p.mediaType(), p.size(), form.text("caption", "caption"));
            }
            return new Entry.NoteMade(about, "");
        });
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
    }

    private void showPicture(Context ctx) {
        String hash = ctx.pathParam("hash");
        Optional<byte[]> content =
                hash.matches("[0-9a-f]{64}") ? desk.pictures().find(hash) : Optional.empty();
        if (content.isEmpty()) {
            Pages.lost(ctx, door, "There is no such picture, or it no longer matches its hash.");
            return;
        }
        byte[] bytes = content.get();
        boolean png = bytes.length > 1 && bytes[0] == (byte) 0x89 && bytes[1] == 'P';
        ctx.contentType(png ? "image/png" : "image/jpeg");
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.result(bytes);
    }
}
