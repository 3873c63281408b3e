package shimwright.bench.web.sheet;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.SheetWork;
import shimwright.bench.web.kit.Show;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.SheetActs;
import shimwright.rebuild.sheet.JobSheet;
import shimwright.rebuild.sheet.JobSheets;
import shimwright.rebuild.unit.model.Item;

/** Worksheets in a job: filled in with what unit and job know, kept with the job, one tap from the step and back. */
public final class JobSheetPages {
    private final Desk desk;
    private final Door door;
    private final SheetWork work;

    public JobSheetPages(Desk desk, Door door, SheetWork work) {
        this.desk = desk;
        this.door = door;
        this.work = work;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/sheets", ctx -> list(ctx, List.of(), Map.of()));
        routes.get("/job/{job}/sheet/{name}", this::sheet);
        routes.post(
                "/job/{job}/sheet",
                ctx -> Pages.act(ctx, desk, door, SheetActs.KeepSheet.class, this::list, JobSheetPages::onto));
    }

    private static String onto(Form form) {
        String step = form.raw("step");
        return step.isEmpty() ? "/sheets" : "/build?step=" + Pages.encoded(step);
    }

    /** All sheets of the job, or those of an item. */
    public void list(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            UnitSystem units = door.system(ctx);
            JobSheets sheets = JobSheets.of(bench.bench(), units);
            Optional<Item> item = bench.unit().type().items().stream()
                    .filter(one -> one.id().equals(ctx.queryParam("item")))
                    .findFirst();
            List<JobSheet> shown = item.map(one -> sheets.ofItem(one.id())).orElseGet(sheets::all);
            Map<String, List<SheetLine>> groups = shown.stream()
                    .map(sheet -> SheetLine.of(bench.job(), sheet, "", units))
                    .collect(Collectors.groupingBy(SheetLine::name, LinkedHashMap::new, Collectors.toList()));
            Page page = door.page(ctx, "Worksheets of this job", "sheets", bench, faults, typed);
            door.show(
                    ctx,
                    "jobsheets",
                    page,
                    Map.of("groups", groups, "item", item.map(Item::name).orElse("")));
        });
    }

    private void sheet(Context ctx) {
        Optional<JobOnBench> found = Pages.bench(ctx, desk, door);
        if (found.isEmpty()) {
            return;
        }
        JobOnBench bench = found.get();
        Show show = new Show(door.system(ctx), door.zone());
        Optional<JobSheet> sheet =
                JobSheets.of(bench.bench(), show.system()).find(asked(ctx, "about"), ctx.pathParam("name"));
        if (sheet.isEmpty()) {
            Pages.lost(ctx, door, "This unit has no such thing, or no such worksheet of it.");
            return;
        }
        Map<String, List<String>> typed = new LinkedHashMap<>(ctx.queryParamMap());
        boolean asked = typed.containsKey("asked");
        List.of("about", "step", "asked", "who").forEach(typed::remove);
        if (!asked) {
            sheet.get().typed().forEach((input, text) -> typed.putIfAbsent(input, List.of(text)));
        }
        String step = bench.unit().findStep(asked(ctx, "step")).isPresent() ? asked(ctx, "step") : "";
        SheetInJob of = new SheetInJob(
                "/job/" + bench.job().id(),
                sheet.get(),
                step,
                asked,
                bench.job()
                        .worked()
                        .get(sheet.get().about() + "/" + sheet.get().sheet().name()),
                Map.of());
        SheetView view = SheetPages.read(work::answer, sheet.get().sheet(), typed, Door.draws(ctx), show, of);
        Page page = door.page(ctx, view.sheet().title(), "sheets", bench);
        door.show(ctx, "sheet", page, Map.of("view", view));
        ctx.status(asked && view.faults() > 0 ? 422 : 200);
    }

    private static String asked(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }
}
