package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.StripActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.learn.AsFound;
import shimwright.rebuild.plan.learn.PartsStillIn;
import shimwright.rebuild.plan.learn.StripDown;
import shimwright.rebuild.unit.edit.OrderChanges;
import shimwright.rebuild.unit.edit.StripDownOrder;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** The strip-down: what comes off and what was in its way, what is to be read before, and its order put into the unit. */
public final class StripPages {
    private static final String HERE = "/job/{job}/strip";

    private final Desk desk;
    private final Door door;

    public StripPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> strip(ctx, List.of(), Map.of()));
        routes.post(HERE, this::takeOff);
        routes.post(
                HERE + "/right",
                ctx -> Pages.act(ctx, desk, door, StripActs.CorrectTakenOff.class, this::strip, form -> "/strip"));
        routes.post(
                HERE + "/found",
                ctx -> Pages.act(ctx, desk, door, StripActs.ReadAsFound.class, this::strip, form -> "/strip"));
        routes.get(HERE + "/order", ctx -> order(ctx, List.of(), Map.of()));
        routes.post(HERE + "/order", this::putIn);
    }

    /** A part that was tapped stands for its name and its item. */
    private void takeOff(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form form = door.form(ctx);
            String tapped = form.raw("tap");
            Form read = bench.unit().type().items().stream()
                    .filter(item -> item.id().equals(tapped))
                    .findFirst()
                    .map(item -> form.with("gone", item.name()).with("items1", item.id()))
                    .orElse(form);
            Pages.act(
                    ctx,
                    desk,
                    door,
                    read,
                    ActReader.read(StripActs.TakeOff.class, read),
                    this::strip,
                    kept -> "/strip" + (kept.raw("asOneWith").isEmpty() ? "" : "?on=" + kept.raw("asOneWith")));
        });
    }

    void strip(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            List<Said<Entry.TakenOff>> off = bench.job().takenOff();
            String right = typed.getOrDefault("takenOff", asked(ctx, "right"));
            StripView view = StripView.of(
                    PartsStillIn.of(bench.unit(), StripView.items(off)),
                    off,
                    AsFound.of(bench.unit(), bench.job()),
                    right);
            door.show(
                    ctx,
                    "strip",
                    door.page(ctx, "Strip-down", "strip", bench, faults, typed),
                    Map.of("view", view, "on", typed.getOrDefault("asOneWith", asked(ctx, "on"))));
        });
    }

    private static String asked(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    private void order(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            StripDownOrder edit = StripDown.order(bench.job().takenOff());
            UnitType was = shelved(bench);
            Outcome<OrderChanges> changes = changes(was, edit);
            Map<String, Object> more = new LinkedHashMap<>();
            more.put(
                    "changes", changes instanceof Outcome.Ok<OrderChanges> ok ? ok.value() : OrderChanges.of(was, was));
            more.put("refused", changes.refusals());
            more.put("bolts", edit.withoutTorque());
            more.put("off", edit.strip().size());
            door.show(
                    ctx,
                    "striporder",
                    door.page(ctx, "The order of the strip-down", "strip", bench, faults, typed),
                    more);
        });
    }

    /** The file of the shelf, which a change goes into; the job's own where the shelf has none. */
    private UnitType shelved(JobOnBench bench) {
        return desk.shelf()
                .type(bench.unit().type().id())
                .orElse(bench.bench().file().type());
    }

    private static Outcome<OrderChanges> changes(UnitType was, StripDownOrder edit) {
        return UnitEdit.text(was, edit)
                .flatMap(text -> UnitFiles.read("strip-down", text).outcome())
                .map(now -> OrderChanges.of(was, now));
    }

    /** The order goes into the unit on the shelf, and the job goes with it. */
    private void putIn(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form form = door.form(ctx);
            StripDownOrder edit = StripDown.order(bench.job().takenOff());
            String type = bench.unit().type().id();
            Desk.Signed signed = door.signed(ctx, form);
            Outcome<Desk.Done> moved = desk.versions()
                    .change(type, signed, edit.words(), "", now -> UnitEdit.text(now, edit))
                    .flatMap(now -> moved(bench, type, signed, edit));
            if (moved.isOk()) {
                door.on(ctx, "/job/" + bench.job().id() + "/strip", "The order of the strip-down stands in the unit");
            } else {
                order(ctx, moved.refusals(), form.typed());
            }
        });
    }

    private Outcome<Desk.Done> moved(JobOnBench bench, String type, Desk.Signed signed, StripDownOrder edit) {
        PinnedUnit now = Objects.requireNonNull(desk.shelf().units().get(type), "it was laid there a moment ago");
        return desk.act(
                bench.job().id(),
                new IntakeActs.MoveUnit(
                        now.hash(), bench.job().variant(), "at the bench it was found: " + edit.words()),
                new Desk.Signed(signed.id() + "-job", signed.by(), signed.units()));
    }
}
