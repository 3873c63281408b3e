package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitVersions;
import shimwright.bench.sheet.PartLookup;
import shimwright.bench.web.kit.ClearanceReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.PartPhotos;
import shimwright.bench.web.kit.UnitPictures;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.learn.StepTimes;
import shimwright.rebuild.plan.learn.BoxDifference;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.edit.FileSection;
import shimwright.rebuild.unit.edit.OwnTimes;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.edit.UnitGap;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** One unit type: what it can do, what it lacks, and a form for each fact. A job from which one comes moves to the changed file. */
public final class UnitPages {
    private static final String HERE = "/units/type/{type}";

    private final Desk desk;
    private final Door door;
    private final UnitChange change;

    public UnitPages(Desk desk, Door door) {
        this.desk = desk;
        this.change = new UnitChange(desk, door);
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        new OverJobsPages(desk, door).routes(routes);
        routes.get(HERE, ctx -> unit(ctx, List.of(), Map.of()));
        on(
                routes,
                "weigh",
                form -> new UnitEdit.Weigh(form.quantity("mass", Kind.MASS, "what it weighs", new Range(1, 1000))));
        on(
                routes,
                "fill",
                form -> new UnitEdit.Fill(
                        needed(form, "spec", "oil", "Write specification and grade"),
                        form.quantity("volume", Kind.VOLUME, "how much", new Range(0.05e-3, 0.1)),
                        needed(form, "level", "where the level is read", "Write it as the book does")));
        on(
                routes,
                "item",
                form -> new UnitEdit.NameItem(
                        form.raw("id"),
                        needed(form, "name", "name", "Name the part"),
                        form.raw("part").strip(),
                        form.has("renew")));
        on(
                routes,
                "add",
                form -> new UnitEdit.AddItem(
                        needed(form, "name", "name", "Name the part"),
                        form.raw("part").strip(),
                        whole(form, "quantity", "how many"),
                        form.raw("after")));
        on(routes, "remove", form -> new UnitEdit.RemoveItem(form.raw("id")));
        on(routes, "fastener", UnitPages::fastener);
        on(routes, "clearance", ClearanceReader::read);
        routes.post(HERE + "/times", ctx -> change(ctx, form -> times(ctx, form)));
        routes.post(HERE + "/copy", this::copy);
        routes.post(HERE + "/back", this::takeBack);
    }

    private void on(RoutesConfig routes, String what, Function<Form, UnitEdit> read) {
        routes.post(HERE + "/" + what, ctx -> change(ctx, read));
    }

    private static UnitEdit fastener(Form form) {
        return new UnitEdit.AddFastener(
                needed(form, "where", "what they hold", "Name the cover or part"),
                needed(form, "thread", "thread and length", "Write it as M8x30"),
                form.raw("class").strip(),
                whole(form, "quantity", "how many"),
                form.quantity("torque", Kind.TORQUE, "torque", new Range(0.1, 2000)),
                needed(form, "origin", "where the torque comes from", "Say book and page, computed, told or guess"),
                form.raw("step"));
    }

    private Optional<OwnTimes> times(UnitType type) {
        return StepTimes.of(type, desk.lessons(type.id()).memories());
    }

    private UnitEdit times(Context ctx, Form form) {
        Optional<OwnTimes> own = desk.shelf().type(ctx.pathParam("type")).flatMap(this::times);
        if (own.isEmpty()) {
            form.fault("times", "times", "no step took another time than is written", "Load the page again");
        }
        return own.orElseGet(() -> new OwnTimes(Map.of(), ""));
    }

    private static String needed(Form form, String name, String place, String hint) {
        String text = form.raw(name).strip();
        if (text.isEmpty()) {
            form.fault(name, place, "nothing typed", hint);
        }
        return text;
    }

    private static int whole(Form form, String name, String place) {
        String typed = form.raw(name).strip();
        if (typed.matches("[1-9][0-9]{0,2}")) {
            return Integer.parseInt(typed);
        }
        form.fault(name, place, "\"" + typed + "\" is not a count", "Give a whole number from 1 to 999");
        return 1;
    }

    private void change(Context ctx, Function<Form, UnitEdit> read) {
        Optional<UnitType> type = desk.shelf().type(ctx.pathParam("type"));
        if (type.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        Form form = door.form(ctx);
        UnitEdit edit = read.apply(form);
        List<Refusal> faults = form.sound() ? change.keep(form, type.get().id(), edit, ctx) : form.faults();
        if (!faults.isEmpty()) {
            unit(ctx, faults, form.typed());
            return;
        }
        change.follow(ctx, form, type.get().id(), edit.words(), "");
    }

    /** The shelf's file is as it was before the last change, and the job goes with it. */
    private void takeBack(Context ctx) {
        Form form = door.form(ctx);
        String type = ctx.pathParam("type");
        Optional<UnitVersions.Version> last = desk.versions().last(type);
        if (last.isEmpty()) {
            unit(
                    ctx,
                    List.of(Refusal.at("unit file", "there is no change to take back", "Look at its history")),
                    form.typed());
            return;
        }
        String words = "taken back, " + last.get().change().what();
        Outcome<UnitType> was = desk.versions()
                .back(type, last.get().change().before(), door.signed(ctx, form), words, form.raw("why"));
        if (was.isOk()) {
            change.follow(ctx, form, type, words, "");
        } else {
            unit(ctx, was.refusals(), form.typed());
        }
    }

    /** Another unit type begins as a copy of this one; that one stays as it is. */
    private void copy(Context ctx) {
        Optional<UnitType> type = desk.shelf().type(ctx.pathParam("type"));
        if (type.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        Form form = door.form(ctx);
        String maker = needed(form, "maker", "maker", "Write who made it, or \"maker not known\"");
        String model = needed(form, "model", "model", "Write what it is called, or what is cast on it");
        String id = FirstUnit.id(maker, model);
        if (form.sound() && desk.shelf().type(id).isPresent()) {
            form.fault("model", "model", "a unit file of that name is on the shelf already", "Call this one otherwise");
        }
        Outcome<UnitType> added = form.sound()
                ? UnitEdit.text(type.get(), new UnitEdit.CopyAs(maker, model))
                        .flatMap(text -> desk.versions()
                                .add(
                                        id + ".yaml",
                                        text.getBytes(StandardCharsets.UTF_8),
                                        door.signed(ctx, form),
                                        "begun as a copy of " + type.get().model()))
                : Outcome.refused(form.faults());
        if (added.isOk()) {
            door.on(
                    ctx,
                    "/units/type/" + id,
                    "It begins with everything that " + type.get().model() + " has");
        } else {
            unit(ctx, added.refusals(), form.typed());
        }
    }

    private void unit(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<UnitType> found = desk.shelf().type(ctx.pathParam("type"));
        if (found.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
            return;
        }
        UnitType type = found.get();
        String item = typed.getOrDefault(
                "id", Optional.ofNullable(ctx.queryParam("item")).orElse(""));
        String job = typed.getOrDefault(
                "job", Optional.ofNullable(ctx.queryParam("job")).orElse(""));
        Optional<Item> open =
                type.items().stream().filter(one -> one.id().equals(item)).findFirst();
        Page page = door.page(ctx, type.model(), "", null, faults, typed);
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("type", type);
        all.put("sections", FileSection.all());
        all.put("gaps", UnitGap.of(type));
        all.put("times", times(type).map(own -> own.seconds().size()).orElse(0));
        all.put("steps", UnitEdit.steps(type));
        all.put(
                "last",
                desk.versions()
                        .last(type.id())
                        .map(last -> last.change().what())
                        .orElse(""));
        all.put("job", job.toLowerCase(Locale.ROOT));
        all.put(
                "differs",
                desk.bench(job.toLowerCase(Locale.ROOT))
                        .filter(bench -> bench.unit().type().id().equals(type.id()))
                        .map(bench -> BoxDifference.open(bench.unit(), bench.job()))
                        .orElse(List.of()));
        all.put(
                "pictures",
                open.map(one -> UnitPictures.ofItems(desk.shop(), type.id(), List.of(one.id())))
                        .orElseGet(() -> desk.shop().unitPictures(type.id())));
        all.put("open", open.orElse(null));
        PinnedUnit file = Objects.requireNonNull(desk.shelf().units().get(type.id()), "it was found there");
        all.put(
                "drawing",
                UnitDrawings.of(type, file::unit, "items", open.map(Item::id).orElse(""), page.show()));
        PartPhotos photos = PartPhotos.of(desk, type);
        all.put("photos", open.map(one -> photos.ofItem(one.id())).orElse(List.of()));
        all.put(
                "stamp",
                open.filter(one -> !one.part().isBlank())
                        .map(one -> PartLookup.of(one.part(), "", page.show().system()))
                        .orElse(PartLookup.of("", "", page.show().system())));
        door.show(ctx, "unit", page, all);
    }
}
