package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.ActReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.StripActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.learn.SharpQuestion;
import shimwright.rebuild.plan.learn.StripDown;
import shimwright.rebuild.unit.edit.OrderChanges;
import shimwright.rebuild.unit.edit.StripDownOrder;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.UnitType;

/** The strip-down: what comes off and what was in its way, what is to be read before, and its order put into the unit. */
public final class StripPages {
    private static final String HERE = "/job/{job}/strip";

    private final Desk desk;
    private final Door door;
    private final StripClearance clearance;
    private final StripUnit unit;

    public StripPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
        this.unit = new StripUnit(desk, door);
        this.clearance = new StripClearance(desk, door, unit);
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
        routes.post(HERE + "/without", this::without);
        routes.get(HERE + "/questions", ctx -> questions(ctx, List.of(), Map.of()));
        routes.post(HERE + "/questions", this::nothingElse);
        clearance.routes(routes, HERE + "/clearance");
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
            StripView view = StripView.of(bench, typed.getOrDefault("takenOff", asked(ctx, "right")));
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
            UnitType was = unit.shelved(bench);
            Outcome<OrderChanges> changes = changes(was, edit);
            Map<String, Object> more = new LinkedHashMap<>();
            more.put(
                    "changes", changes instanceof Outcome.Ok<OrderChanges> ok ? ok.value() : OrderChanges.of(was, was));
            // where it would stand in the file helps nobody here
            more.put(
                    "refused",
                    changes.refusals().stream()
                            .map(StripPages::atTheBench)
                            .distinct()
                            .toList());
            more.put("bolts", edit.withoutTorque());
            more.put("off", edit.strip().size());
            more.put("left", left(bench, was));
            door.show(
                    ctx,
                    "striporder",
                    door.page(ctx, "The order of the strip-down", "strip", bench, faults, typed),
                    more);
        });
    }

    /** A fault of the file as who strips the box can mend it. */
    private static Refusal atTheBench(Refusal fault) {
        boolean circle = fault.fact().contains("steps wait for each other");
        return Refusal.at(
                "",
                fault.fact().replaceFirst("in variant \\S+ steps", "steps"),
                circle
                        ? "One of them came off otherwise than was said: put right what it is or what was in its way, or strike it"
                        : fault.hint());
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
            Outcome<Desk.Done> moved = unit.put(ctx, form, bench, edit);
            if (moved.isOk()) {
                door.on(ctx, "/job/" + bench.job().id() + "/strip", "The order of the strip-down stands in the unit");
            } else {
                order(ctx, moved.refusals(), form.typed());
            }
        });
    }

    /** Parts of the unit that never came off; nobody has to have them. */
    private static List<Item> left(JobOnBench bench, UnitType shelved) {
        Set<String> off = StripView.items(bench.job().takenOff());
        Set<String> named = bench.job().takenOff().stream()
                .map(said -> said.what().gone().strip().toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
        return shelved.items().stream()
                .filter(item -> !item.trial() && !off.contains(item.id()))
                .filter(item -> !named.contains(item.name().toLowerCase(Locale.ROOT)))
                .toList();
    }

    /** What was tapped of those goes out of the unit. */
    private void without(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form form = door.form(ctx);
            List<String> gone = form.raw("gone").lines().toList();
            Outcome<Desk.Done> moved = unit.put(ctx, form, bench, new UnitEdit.RemoveItems(gone));
            if (moved.isOk()) {
                door.on(ctx, "/job/" + bench.job().id() + "/strip/order", "Out of the unit: " + gone.size() + " parts");
            } else {
                order(ctx, moved.refusals(), form.typed());
            }
        });
    }

    private void questions(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Map<String, Said<Entry.TakenOff>> off = new LinkedHashMap<>();
            bench.job().takenOff().forEach(said -> off.put(said.id(), said));
            door.show(
                    ctx,
                    "stripquestions",
                    door.page(ctx, "Questions that loosen the order", "strip", bench, faults, typed),
                    Map.of(
                            "questions",
                            SharpQuestion.of(unit.shelved(bench), bench.job().takenOff()),
                            "off",
                            off));
        });
    }

    /** Nothing but what was named was in the way of one thing: what was said of it is put right so. */
    private void nothingElse(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form form = door.form(ctx);
            Optional<Said<Entry.TakenOff>> of = bench.job().takenOff().stream()
                    .filter(said -> said.id().equals(form.raw("takenOff")))
                    .findFirst();
            if (of.isEmpty()) {
                Pages.lost(ctx, door, "That is not among what came off any more.");
                return;
            }
            Entry.TakenOff was = of.get().what();
            List<String> way = Stream.concat(was.inTheWay().stream(), Stream.of(Entry.TakenOff.NOTHING))
                    .distinct()
                    .toList();
            StripActs.CorrectTakenOff act = new StripActs.CorrectTakenOff(
                    of.get().id(),
                    was.gone(),
                    was.items(),
                    was.note(),
                    way,
                    was.asOneWith(),
                    was.byForce(),
                    was.destroyed(),
                    was.sideUp(),
                    was.fasteners(),
                    was.shims(),
                    was.sealedWith(),
                    "asked afterwards: nothing else was in its way");
            Pages.act(ctx, desk, door, form, act, this::questions, kept -> "/strip/questions");
        });
    }
}
