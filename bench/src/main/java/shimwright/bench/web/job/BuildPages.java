package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
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
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.OrderActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.job.PictureStore;
import shimwright.rebuild.unit.model.Step;

/** The build: one step at a time, its hold point, notes and pictures. */
public final class BuildPages {
    private static final int LARGEST_PICTURE = 12 * 1024 * 1024;

    private final Desk desk;
    private final Door door;
    private final InspectPages inspect;

    /**
     * These pages.
     *
     * @param inspect from whose pages pictures are sent too
     */
    public BuildPages(Desk desk, Door door, InspectPages inspect) {
        this.desk = desk;
        this.door = door;
        this.inspect = inspect;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/build", ctx -> build(ctx, List.of(), Map.of()));
        on(routes, "done", StepActs.Done.class, true);
        on(routes, "jumped", StepActs.DoneOutOfOrder.class, true);
        on(routes, "leftout", StepActs.LeaveOut.class, true);
        on(routes, "cannot", StepActs.CannotNow.class, true);
        on(routes, "clock", StepActs.StartClock.class, false);
        on(routes, "undo", StepActs.Undo.class, false);
        on(routes, "here", OrderActs.HaveHere.class, false);
        on(routes, "check", HoldActs.ReadCheck.class, false);
        on(routes, "overrule", HoldActs.PassHold.class, false);
        routes.post("/job/{job}/note", this::note);
        routes.post("/job/{job}/picture", this::picture);
        routes.get("/picture/{hash}", this::showPicture);
        routes.get("/picture/{hash}/small", new SmallPictures(desk.pictures(), door)::show);
    }

    /** An act on a step: afterwards the next step is shown, or the same one again. */
    private void on(RoutesConfig routes, String path, Class<? extends Act.OfJob> type, boolean onwards) {
        routes.post(
                "/job/{job}/" + path,
                ctx -> Pages.act(ctx, desk, door, type, this::build, onwards ? form -> "/build" : BuildPages::same));
    }

    private static String same(Form form) {
        return "/build?step=" + Pages.encoded(form.raw("step"));
    }

    private void build(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<JobOnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        JobOnBench bench = found.get();
        String asked = typed.getOrDefault("step", ctx.queryParam("step") == null ? "" : ctx.queryParam("step"));
        Optional<Step> step = bench.order().steps().containsKey(asked)
                ? Optional.ofNullable(bench.order().steps().get(asked))
                : bench.next();
        Page page = door.page(ctx, "Build", "build", bench, faults, typed);
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("view", StepView.of(bench, step.orElse(null), page.show()));
        door.show(ctx, "build", page, more);
    }

    private void note(Context ctx) {
        Form form = door.form(ctx);
        String step = form.raw("step");
        if (form.raw("about").isEmpty()) {
            form = form.with("about", step.isEmpty() ? "job" : "step " + step);
        }
        Pages.act(
                ctx, desk, door, form, ActReader.read(IntakeActs.MakeNote.class, form), this::build, BuildPages::same);
    }

    private void picture(Context ctx) {
        Form form = door.form(ctx);
        UploadedFile file = ctx.uploadedFile("picture");
        Optional<PictureStore.Picture> kept = Optional.empty();
        if (file == null || file.size() == 0) {
            form.fault("picture", "picture", "no picture was chosen", "Take or choose a PNG or JPEG picture");
        } else if (file.size() > LARGEST_PICTURE) {
            form.fault(
                    "picture", "picture " + file.filename(), "it is larger than 12 MB", "Take it at a lower setting");
        } else {
            Outcome<PictureStore.Picture> outcome = desk.pictures().keep(file.filename(), bytes(file));
            outcome.refusals().forEach(r -> form.fault("picture", r.place(), r.fact(), r.hint()));
            kept = outcome.isOk() ? Optional.of(outcome.orElseThrow()) : Optional.empty();
        }
        IntakeActs.AddPicture act = new IntakeActs.AddPicture(
                form.raw("about"),
                kept.map(PictureStore.Picture::hash).orElse(""),
                kept.map(PictureStore.Picture::mediaType).orElse(""),
                kept.map(PictureStore.Picture::size).orElse(0L),
                form.text("caption", "caption", "caption", 4000));
        boolean here = form.raw("page").isEmpty();
        Pages.act(
                ctx,
                desk,
                door,
                form,
                act,
                here ? this::build : inspect::struck,
                here ? BuildPages::same : Pages::back);
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
