package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.backout.BackOut;
import shimwright.rebuild.plan.backout.Target;
import shimwright.rebuild.plan.backout.Target.Want;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;

/** The whole plan, what a job leaves out or adds, and the way back to anything. */
final class PlanPages {
    private static final double DAY = 24 * 3600;

    private final Desk desk;
    private final Door door;

    PlanPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/plan", ctx -> plan(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/plan/look", ctx -> look(ctx, true));
        routes.post("/job/{job}/plan/stop", ctx -> look(ctx, false));
        routes.post("/job/{job}/added", this::added);
        routes.post("/job/{job}/takenup", this::takenUp);
        routes.get("/job/{job}/back", this::back);
    }

    private void plan(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "The plan", "build", bench, faults, typed);
            Map<String, Object> more = new LinkedHashMap<>();
            if (bench.plan() instanceof Outcome.Ok<Plan> ok) {
                more.put("view", PlanView.of(bench, ok.value(), page.show()));
                more.put(
                        "forecast",
                        ForecastView.of(
                                ctx, door, bench, ok.value(), page.show().date(desk.now())));
            }
            more.put("ownId", ownId(bench));
            desk.plans()
                    .looking(bench.job().id())
                    .ifPresent(one -> more.put("looking", one.words(desk.now(), page.show())));
            door.show(ctx, "plan", page, more);
        });
    }

    private void look(Context ctx, boolean on) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            String job = bench.job().id();
            if (on) {
                desk.plans().look(job);
            } else {
                desk.plans().stop(job);
            }
            door.on(ctx, "/job/" + job + "/plan", "");
        });
    }

    private void added(Context ctx) {
        Pages.keep(
                ctx,
                desk,
                door,
                "Kept: your own step, it stands in the plan",
                (bench, form) -> new Entry.StepAdded(
                        // said by the page, so that a post repeated is the same entry
                        form.needed("step", "step", "Go back to the plan"),
                        form.needed("todo", "what to do", "Say what is to be done"),
                        form.needed("at", "station", "Choose where it is done"),
                        form.quantity("duration", Kind.TIME, "time", new Range(0, DAY)),
                        steps(bench, form.raw("after")),
                        steps(bench, form.raw("before")),
                        form.needed("reason", "reason", "Say why it is needed; it stands on the record")),
                this::plan,
                (entry, form) -> "/plan");
    }

    private void takenUp(Context ctx) {
        Pages.keep(
                ctx,
                desk,
                door,
                "Kept: it is to be done after all",
                (bench, form) -> new Entry.StepTakenUp(
                        form.needed("step", "step", "Go back to the plan"), form.text("reason", "reason")),
                this::plan,
                (entry, form) -> "/plan");
    }

    /** A name that no step of this job has yet. */
    private static String ownId(Desk.OnBench bench) {
        int number = 1;
        while (bench.unit().findStep("OWN" + number).isPresent()) {
            number++;
        }
        return "OWN" + number;
    }

    /** Steps by what was typed, capitals or not; one that the unit does not have stays as typed and is refused by name. */
    private static List<String> steps(Desk.OnBench bench, String text) {
        return Arrays.stream(text.split("[\\s,;]+"))
                .filter(typed -> !typed.isEmpty())
                .map(typed -> bench.order().steps().keySet().stream()
                        .filter(typed::equalsIgnoreCase)
                        .findFirst()
                        .orElse(typed))
                .toList();
    }

    private void back(Context ctx) {
        Optional<Desk.OnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        Desk.OnBench bench = found.get();
        String to = ctx.queryParam("to") == null ? "" : ctx.queryParam("to");
        String asked =
                ctx.queryParam("find") == null ? "" : ctx.queryParam("find").strip();
        Want want = want(ctx.queryParam("want"));
        Outcome<BackOut> way = target(to, want)
                .map(target -> BackOut.to(
                        bench.unit(),
                        bench.job().sides(),
                        List.copyOf(bench.job().stepsDone()),
                        target))
                .orElse(Outcome.refused("back to", "nothing chosen", "Choose a part, step or clearance"));
        List<Refusal> faults = to.isEmpty() ? List.of() : way.refusals();
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("way", way.isOk() ? way.orElseThrow() : null);
        more.put("want", want.name().toLowerCase(Locale.ROOT));
        more.put("to", to);
        more.put("name", name(bench, to));
        more.put("find", asked);
        more.put("aims", aims(bench, asked.toLowerCase(Locale.ROOT)));
        door.show(ctx, "back", door.page(ctx, "Get back to it", "build", bench, faults, Map.of()), more);
    }

    private static Optional<Target> target(String to, Want want) {
        String[] part = (to + ":").split(":", 3);
        return switch (part[0]) {
            case "item" -> Optional.of(new Target.OfItem(part[1], want));
            case "step" -> Optional.of(new Target.OfStep(part[1]));
            case "clearance" -> Optional.of(new Target.OfClearance(part[1]));
            default -> Optional.empty();
        };
    }

    private static Want want(@Nullable String asked) {
        return Arrays.stream(Want.values())
                .filter(want -> want.name().equalsIgnoreCase(asked))
                .findFirst()
                .orElse(Want.REACH);
    }

    private static String name(Desk.OnBench bench, String to) {
        return all(bench).stream()
                .filter(aim -> aim.to().equals(to))
                .map(Aim::name)
                .findFirst()
                .orElse("");
    }

    /** What is in the unit or done, by what was asked for; clearances and parts first. */
    private static List<Aim> aims(Desk.OnBench bench, String asked) {
        return all(bench).stream()
                .filter(aim ->
                        (aim.to() + " " + aim.name()).toLowerCase(Locale.ROOT).contains(asked))
                .toList();
    }

    private static List<Aim> all(Desk.OnBench bench) {
        List<Aim> aims = new ArrayList<>();
        for (Clearance c : bench.unit().type().clearances()) {
            if (bench.job().accepted().containsKey(c.id())) {
                aims.add(new Aim("clearance:" + c.id(), "Clearance " + c.id() + ", " + c.name()));
            }
        }
        for (String id : bench.unit()
                .itemsIn(bench.job().stepsDone().stream()
                        .filter(step -> bench.unit().findStep(step).isPresent())
                        .toList())) {
            Item item = bench.unit().item(id);
            aims.add(new Aim("item:" + id, item.name()));
        }
        for (String id : bench.job().stepsDone()) {
            bench.unit()
                    .findStep(id)
                    .map(Step::todo)
                    .ifPresent(todo -> aims.add(new Aim("step:" + id, "Step " + id + ", " + todo)));
        }
        return List.copyOf(aims);
    }
}
