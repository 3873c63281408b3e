package shimwright.bench.web.record;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.HandBackActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.UnitChanges;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.money.Labour;
import shimwright.rebuild.workbench.PinnedUnit;

/** Proof readings, hand-back and the record on screen and on paper. */
public final class RecordPages {
    private final Desk desk;
    private final Door door;
    private final Paper paper;

    public RecordPages(Desk desk, Door door, Paper paper) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/proof", this::proof);
        routes.get("/job/{job}/record", ctx -> record(ctx, List.of(), Map.of()));
        routes.get("/job/{job}/record.pdf", this::pdf);
        routes.post(
                "/job/{job}/handback",
                ctx -> Pages.act(ctx, desk, door, HandBackActs.HandBack.class, this::record, form -> "/record"));
        on(routes, "followup", HandBackActs.FollowUp.class);
        on(routes, "ask", HandBackActs.PlanFollowUp.class);
        on(routes, "return", HandBackActs.TakeReturn.class);
        on(routes, "return/why", HandBackActs.ExplainReturn.class);
        on(routes, "lesson", IntakeActs.MakeNote.class);
        routes.post(
                "/job/{job}/unit",
                ctx -> Pages.act(ctx, desk, door, IntakeActs.MoveUnit.class, this::record, form -> "/record"));
        routes.post(
                "/job/{job}/intake",
                ctx -> Pages.act(ctx, desk, door, IntakeActs.CorrectIntake.class, this::record, form -> "/record"));
    }

    private void on(RoutesConfig routes, String what, Class<? extends Act.OfJob> act) {
        routes.post("/job/{job}/" + what, ctx -> Pages.act(ctx, desk, door, act, this::record, form -> "/record"));
    }

    private void proof(Context ctx) {
        Pages.bench(ctx, desk, door)
                .ifPresent(bench -> door.show(
                        ctx,
                        "proof",
                        door.page(ctx, "Proof", "proof", bench),
                        Map.of("proofs", RecordView.proofs(bench))));
    }

    private void record(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Record", "record", bench, faults, typed);
            Map<String, Object> values = values(bench, page, RecordPicture.onPage(bench), false);
            values.put("labour", labour(bench, page.show()));
            values.put("after", AfterView.of(bench));
            newer(bench).ifPresent(file -> {
                values.put("newerFile", file.hash());
                values.put(
                        "newer", UnitChanges.of(bench.bench(), file, bench.job().variant()));
            });
            door.show(ctx, "record", page, values);
        });
    }

    /** What the work comes to, for the shop and not for the record; empty where the shop has no rate. */
    private static String labour(JobOnBench bench, Show show) {
        String rate = bench.shop().facts().getOrDefault("rate", "");
        return Labour.of(bench.job(), bench.unit(), rate)
                .map(labour -> show.number(labour.hours(), 1) + " h by the times of the unit file, at " + rate.strip()
                        + " an hour: " + show.number(labour.amount(), 2) + " " + labour.currency())
                .orElse("");
    }

    /** The shelf's file of this unit type, where it is another than the one that the job stands on. */
    private Optional<PinnedUnit> newer(JobOnBench bench) {
        PinnedUnit stands = bench.bench().file();
        return Optional.ofNullable(desk.shelf().units().get(stands.type().id()))
                .filter(file -> !bench.job().closed() && !file.hash().equals(stands.hash()))
                .filter(file -> file.unit(bench.job().variant()).isPresent());
    }

    private Map<String, Object> values(JobOnBench bench, Page page, List<RecordPicture> pictures, boolean onPaper) {
        Map<String, Object> values = new LinkedHashMap<>();
        String stream = bench.job().id();
        Head head = bench.job().head();
        values.put(
                "record",
                RecordView.of(
                        bench, page.show(), pictures, HeadCode.of(stream, head, paper.signed(stream, head)), onPaper));
        values.put("shop", bench.shop().facts().getOrDefault("name", ""));
        return values;
    }

    private void pdf(Context ctx) {
        Optional<JobOnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Page page = door.page(ctx, "Record", "record", bench.get());
        Map<String, Object> values =
                values(bench.get(), page, RecordPicture.onPaper(bench.get(), desk.pictures()), true);
        values.put("page", page);
        byte[] pdf = paper.record(
                door.render("paper", values),
                bench.get().job().id(),
                bench.get().job().head());
        ctx.contentType("application/pdf");
        ctx.header(
                "Content-Disposition",
                "inline; filename=\"record-" + bench.get().job().id() + ".pdf\"");
        ctx.result(pdf);
    }
}
