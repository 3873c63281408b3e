package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.ConstructionReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.model.UnitType;

/** A box that is in no file: how it is built, as it can be seen, becomes a first unit file on the shelf. */
public final class FirstUnitPages {
    private static final String HERE = "/begin";

    private final Desk desk;
    private final Door door;

    public FirstUnitPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> ask(ctx, List.of(), Map.of()));
        routes.post(HERE, this::begin);
    }

    private void ask(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        door.show(
                ctx,
                "begin",
                door.page(ctx, "A box without a file", "", null, faults, filled(typed)),
                Map.of(
                        "ordinals",
                        IntStream.rangeClosed(0, Construction.MOST)
                                .mapToObj(FirstUnit::gear)
                                .toList()));
    }

    /** What the form begins with: five gears with a cone each, which most boxes have; the person looks and says otherwise. */
    private static Map<String, String> filled(Map<String, String> typed) {
        if (!typed.isEmpty()) {
            return typed;
        }
        Map<String, String> first = new LinkedHashMap<>();
        first.put("gears", "5");
        first.put("straight", "0");
        IntStream.rangeClosed(1, Construction.MOST).forEach(gear -> first.put("cones" + gear, "1"));
        return first;
    }

    private void begin(Context ctx) {
        Form form = door.form(ctx);
        List<Refusal> faults = new ArrayList<>();
        Construction built = ConstructionReader.read(form, faults);
        String maker = form.raw("maker").strip();
        String model = form.raw("model").strip();
        Outcome<String> text = FirstUnit.text(built, maker, model);
        faults.addAll(text.refusals());
        if (faults.isEmpty() && desk.shelf().type(FirstUnit.id(maker, model)).isPresent()) {
            faults.add(Refusal.of(
                    "model",
                    "a unit file of " + maker + " " + model + " is on the shelf already",
                    "Open the job with that one, or call this one otherwise"));
        }
        if (!faults.isEmpty()) {
            ask(ctx, faults, form.typed());
            return;
        }
        String id = FirstUnit.id(maker, model);
        Outcome<UnitType> added = desk.versions()
                .add(
                        id + ".yaml",
                        text.orElseThrow().getBytes(StandardCharsets.UTF_8),
                        door.signed(ctx, form),
                        "begun from what can be seen");
        if (added instanceof Outcome.Ok<UnitType> ok) {
            door.on(ctx, "/new/" + id, ok.value().items().size() + " parts stand there to begin with. Open the job");
        } else {
            ask(ctx, added.refusals(), form.typed());
        }
    }
}
