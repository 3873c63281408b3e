package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.plan.learn.BoxDifference;
import shimwright.rebuild.unit.edit.AsVariant;
import shimwright.rebuild.unit.edit.UnitEdit;
import shimwright.rebuild.workbench.PinnedUnit;

/** What is not in this box as its unit file says: made a variant, changed in the file, or left to this box alone, by one tap each. */
public final class DifferencePages {
    private static final String HERE = "/job/{job}/differs";

    private final Desk desk;
    private final Door door;
    private final StripUnit unit;

    public DifferencePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
        this.unit = new StripUnit(desk, door);
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> differs(ctx, List.of(), Map.of()));
        routes.post(HERE + "/leave", ctx -> decide(ctx, (bench, form, one) -> leave(ctx, bench, form, one)));
        routes.post(
                HERE + "/change",
                ctx -> decide(ctx, (bench, form, one) -> changed(one, edit -> unit.put(ctx, form, bench, edit))));
        routes.post(HERE + "/known", ctx -> decide(ctx, (bench, form, one) -> known(ctx, bench, form, one)));
        routes.post(HERE + "/variant", ctx -> decide(ctx, (bench, form, one) -> variant(ctx, bench, form, one)));
    }

    private interface Decision {
        Outcome<Desk.Done> of(JobOnBench bench, Form form, BoxDifference one);
    }

    private interface Put {
        Outcome<Desk.Done> into(UnitEdit edit);
    }

    private void differs(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            List<BoxDifference> all = BoxDifference.of(bench.unit(), bench.job());
            door.show(
                    ctx,
                    "differs",
                    door.page(ctx, "Otherwise in this box", "strip", bench, faults, typed),
                    Map.of("all", all, "known", BoxDifference.known(unit.shelved(bench), bench.job(), all)));
        });
    }

    private void decide(Context ctx, Decision decision) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Form form = door.form(ctx);
            Optional<BoxDifference> one = BoxDifference.of(bench.unit(), bench.job()).stream()
                    .filter(there -> there.id().equals(form.raw("difference")))
                    .findFirst();
            Outcome<Desk.Done> done = one.map(there -> decision.of(bench, form, there))
                    .orElseGet(() -> Outcome.refused(
                            Refusal.at("difference", "it is none any more", "Look at what the page says now")));
            if (done instanceof Outcome.Ok<Desk.Done> ok) {
                door.on(ctx, "/job/" + bench.job().id() + "/differs", ok.value().said());
            } else {
                differs(ctx, done.refusals(), form.typed());
            }
        });
    }

    private Outcome<Desk.Done> leave(Context ctx, JobOnBench bench, Form form, BoxDifference one) {
        return desk.act(
                bench.job().id(),
                new IntakeActs.MakeNote(one.about(), "Peculiar to this box: " + one.sentence()),
                door.signed(ctx, form));
    }

    private static Outcome<Desk.Done> changed(BoxDifference one, Put put) {
        return one.change()
                .map(put::into)
                .orElseGet(() -> Outcome.refused(Refusal.at(
                        "unit file", "what is to stand there must be typed", "Open the unit's page and type it")));
    }

    /** The box is one of a variant that the file has already. */
    private Outcome<Desk.Done> known(Context ctx, JobOnBench bench, Form form, BoxDifference one) {
        String file = Optional.ofNullable(
                        desk.shelf().units().get(bench.unit().type().id()))
                .map(PinnedUnit::hash)
                .orElse("");
        return desk.act(
                bench.job().id(),
                new IntakeActs.MoveUnit(file, form.raw("variant"), "at the bench it was found: " + one.sentence()),
                door.signed(ctx, form));
    }

    private Outcome<Desk.Done> variant(Context ctx, JobOnBench bench, Form form, BoxDifference one) {
        String key = AsVariant.key(unit.shelved(bench));
        return changed(
                one,
                edit -> unit.put(
                        ctx,
                        form,
                        bench,
                        new AsVariant(
                                bench.job().variant(),
                                or(form, "look", one.look()),
                                or(form, "was", one.was()),
                                or(form, "is", one.is()),
                                edit),
                        key));
    }

    private static String or(Form form, String field, String first) {
        return form.raw(field).isEmpty() ? first : form.raw(field);
    }
}
