package shimwright.bench.web.record;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.StepActs;

/** The bench sheet: printed to be written on, and a page in the same order into which it is typed back. */
public final class BenchSheetPages {
    private final Desk desk;
    private final Door door;
    private final Paper paper;

    public BenchSheetPages(Desk desk, Door door, Paper paper) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/benchsheet", ctx -> sheet(ctx, List.of(), Map.of()));
        routes.get("/job/{job}/benchsheet.pdf", this::pdf);
        routes.post(
                "/job/{job}/benchsheet/check",
                ctx -> Pages.act(ctx, desk, door, HoldActs.ReadCheck.class, this::sheet, BenchSheetPages::same));
        routes.post(
                "/job/{job}/benchsheet/done",
                ctx -> Pages.act(ctx, desk, door, StepActs.Done.class, this::sheet, form -> "/benchsheet"));
    }

    private static String same(Form form) {
        return "/benchsheet#s-" + Pages.encoded(form.raw("step"));
    }

    private void sheet(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door)
                .ifPresent(bench -> door.show(
                        ctx,
                        "benchsheet",
                        door.page(ctx, "Bench sheet", "build", bench, faults, typed),
                        Map.of("sheet", BenchSheet.of(bench))));
    }

    private void pdf(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Bench sheet", "build", bench);
            ctx.contentType("application/pdf");
            ctx.header(
                    "Content-Disposition",
                    "inline; filename=\"sheet-" + bench.job().id() + ".pdf\"");
            ctx.result(paper.pdf(door.render("benchsheetpaper", Map.of("page", page, "sheet", BenchSheet.of(bench)))));
        });
    }
}
