package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.ClearanceReader;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.rebuild.plan.learn.ShimsFound;
import shimwright.rebuild.unit.edit.AddClearance;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.UnitType;

/** Shims found in the strip-down as a clearance that can be set by travel. */
final class StripClearance {
    private final Desk desk;
    private final Door door;
    private final StripUnit unit;

    StripClearance(Desk desk, Door door, StripUnit unit) {
        this.desk = desk;
        this.door = door;
        this.unit = unit;
    }

    void routes(RoutesConfig routes, String here) {
        routes.get(here, ctx -> ask(ctx, List.of(), Map.of()));
        routes.post(here, this::keep);
    }

    private void ask(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String of = typed.getOrDefault(
                    "of", Optional.ofNullable(ctx.queryParam("of")).orElse(""));
            Optional<ShimsFound> found = ShimsFound.of(bench.unit(), bench.job()).stream()
                    .filter(one -> one.entry().equals(of))
                    .findFirst();
            if (found.isEmpty()) {
                Pages.lost(ctx, door, "No shims with their sizes were written down with that.");
                return;
            }
            door.show(
                    ctx,
                    "stripclearance",
                    door.page(ctx, "A clearance from its shims", "strip", bench, faults, typed),
                    Map.of(
                            "found",
                            found.get(),
                            "first",
                            first(ctx, found.get(), unit.shelved(bench)),
                            "steps",
                            UnitEdit.steps(unit.shelved(bench))));
        });
    }

    /** What the form begins with: what was found, and of what nobody said what is common, marked as a guess. */
    private Map<String, String> first(Context ctx, ShimsFound found, UnitType type) {
        MeasureUnit length = door.system(ctx).display(Kind.LENGTH).unit();
        Map<String, String> first = new LinkedHashMap<>();
        first.put("name", found.reading().isEmpty() ? "end play at the " + found.gone() : found.reading());
        first.put("lower", Quantities.brief(found.usual().lower(), length));
        first.put("upper", Quantities.brief(found.usual().upper(), length));
        first.put("origin", "guess, common practice for " + found.usual().bearing());
        first.put("where", found.place());
        first.put("item", found.shims(type).map(Item::id).orElse(""));
        double[] sizes =
                found.sizes().stream().mapToDouble(size -> size).sorted().toArray();
        first.put("thinnest", Quantities.brief(sizes[0], length));
        first.put("thickest", Quantities.brief(Arrays.stream(sizes).max().orElse(0), length));
        return first;
    }

    private void keep(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form form = door.form(ctx);
            AddClearance edit = ClearanceReader.read(form);
            Outcome<Desk.Done> kept = form.sound() ? unit.put(ctx, form, bench, edit) : Outcome.refused(form.faults());
            if (kept.isOk()) {
                door.on(ctx, "/job/" + bench.job().id() + "/clearances", "It can be set by travel: " + edit.words());
            } else {
                ask(ctx, kept.refusals(), form.typed());
            }
        });
    }
}
