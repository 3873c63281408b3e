package shimwright.bench.web.plan;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.desk.PlanCache;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Weights;
import shimwright.rebuild.plan.backout.BackOut;
import shimwright.rebuild.plan.backout.Target;
import shimwright.rebuild.plan.backout.Target.Want;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.rules.ShopWeights;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;

/** The whole plan, what a job leaves out or adds, and the way back to anything. */
public final class PlanPages {
    private final Desk desk;
    private final Door door;

    public PlanPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/plan", ctx -> plan(ctx, List.of(), Map.of()));
        routes.post("/job/{job}/plan/look", ctx -> look(ctx, true));
        routes.post("/job/{job}/plan/stop", ctx -> look(ctx, false));
        on(routes, "added", StepActs.AddStep.class);
        on(routes, "takenup", StepActs.TakeUp.class);
        on(routes, "side", StepActs.TakeSide.class);
        routes.post(
                "/job/{job}/weights",
                ctx -> Pages.act(
                        ctx,
                        desk,
                        door,
                        ShopActs.DescribeShop.class,
                        this::plan,
                        "/job/" + ctx.pathParam("job") + "/plan"));
        routes.get("/job/{job}/back", this::back);
    }

    private void on(RoutesConfig routes, String path, Class<? extends Act.OfJob> type) {
        routes.post("/job/{job}/" + path, ctx -> Pages.act(ctx, desk, door, type, this::plan, form -> "/plan"));
    }

    private void plan(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "The plan", "build", bench, faults, typed);
            Map<String, Object> more = new LinkedHashMap<>();
            if (bench.plan() instanceof Outcome.Ok<Plan> ok) {
                PlanView view = PlanView.of(bench, ok.value(), page.show());
                more.put("view", view);
                more.put("tonight", TonightView.of(ctx, door, bench, ok.value(), view.because(), page.show()));
                more.put(
                        "forecast",
                        ForecastView.of(
                                ctx, door, bench, ok.value(), page.show().date(desk.now())));
            }
            more.put("ownId", ownId(bench));
            String usual = Long.toString(Math.round(Weights.usual().daySooner() / 60));
            more.put("daySooner", minutes(bench, typed, ShopWeights.DAY_SOONER, usual));
            more.put("finishBegun", minutes(bench, typed, ShopWeights.FINISH_BEGUN, ""));
            more.put("daySaid", ShopWeights.said(bench.shop().facts()));
            desk.plans().looking(bench.job().id()).ifPresent(one -> more.put("looking", looking(one, page.show())));
            door.show(ctx, "plan", page, more);
        });
    }

    /** A fact of the shop in minutes, as typed, as known or else as usual. */
    private static String minutes(JobOnBench bench, Map<String, String> typed, String fact, String usual) {
        String known = bench.shop().facts().getOrDefault(fact, "");
        return typed.getOrDefault("fact-" + fact, known.isBlank() ? usual : known);
    }

    /** How a longer look goes, in a sentence or two. */
    private String looking(PlanCache.Looking one, Show show) {
        SearchObserver.Progress seen = one.progress();
        String going = "Looking for "
                + show.span((double) Duration.between(one.since(), desk.now()).toSeconds()) + ".";
        return Double.isInfinite(seen.value())
                ? going
                : going + " The best order so far costs " + show.number(seen.value() / 60, 0)
                        + " min; another could be better by "
                        + show.number(Math.max(0, seen.value() - seen.bound()) / 60, 0) + " min at most.";
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

    /** A name that no step of this job has yet. */
    private static String ownId(JobOnBench bench) {
        int number = 1;
        while (bench.unit().findStep("OWN" + number).isPresent()) {
            number++;
        }
        return "OWN" + number;
    }

    private void back(Context ctx) {
        Optional<JobOnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        JobOnBench bench = found.get();
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
                .orElse(Outcome.refused(Refusal.at("back to", "nothing chosen", "Choose a part, step or clearance")));
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

    private static String name(JobOnBench bench, String to) {
        return all(bench).stream()
                .filter(aim -> aim.to().equals(to))
                .map(BackOutTarget::name)
                .findFirst()
                .orElse("");
    }

    /** What is in the unit or done, by what was asked for; clearances and parts first. */
    private static List<BackOutTarget> aims(JobOnBench bench, String asked) {
        return all(bench).stream()
                .filter(aim ->
                        (aim.to() + " " + aim.name()).toLowerCase(Locale.ROOT).contains(asked))
                .toList();
    }

    private static List<BackOutTarget> all(JobOnBench bench) {
        List<BackOutTarget> aims = new ArrayList<>();
        for (Clearance c : bench.unit().type().clearances()) {
            if (bench.job().accepted().containsKey(c.id())) {
                aims.add(new BackOutTarget("clearance:" + c.id(), "Clearance " + c.id() + ", " + c.name()));
            }
        }
        for (String id : bench.unit().itemsIn(bench.job().stepsDone())) {
            Item item = bench.unit().item(id);
            aims.add(new BackOutTarget("item:" + id, item.name()));
        }
        for (String id : bench.job().stepsDone()) {
            bench.unit()
                    .findStep(id)
                    .map(Step::todo)
                    .ifPresent(todo -> aims.add(new BackOutTarget("step:" + id, "Step " + id + ", " + todo)));
        }
        return List.copyOf(aims);
    }
}
