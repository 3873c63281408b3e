package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Kept;

/** Proof readings, hand-back and the record on screen and on paper. */
final class RecordPages {
    private final Desk desk;
    private final Door door;
    private final Paper paper;

    RecordPages(Desk desk, Door door, Paper paper) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
    }

    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/proof", this::proof);
        routes.get("/job/{job}/record", ctx -> record(ctx, List.of(), Map.of()));
        routes.get("/job/{job}/record.pdf", this::pdf);
        routes.post("/job/{job}/handback", this::handBack);
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
            door.show(ctx, "record", page, values(bench, page));
        });
    }

    private Map<String, Object> values(Desk.OnBench bench, Page page) {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("record", RecordView.of(bench, page.show()));
        return values;
    }

    private void pdf(Context ctx) {
        Optional<Desk.OnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Page page = door.page(ctx, "Record", "record", bench.get());
        Map<String, Object> values = values(bench.get(), page);
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

    private void handBack(Context ctx) {
        Optional<Desk.OnBench> bench = Pages.bench(ctx, desk, door);
        if (bench.isEmpty()) {
            return;
        }
        Form form = door.form(ctx);
        String warranty = form.needed("warranty", "warranty", "Say what you stand behind and for how long");
        String advice = form.text("advice", "advice to the owner");
        String remark = form.text("remark", "remark");
        if (!form.sound()) {
            record(ctx, form.faults(), form.typed());
            return;
        }
        String job = bench.get().job().id();
        Outcome<Kept> kept = desk.keep(
                job,
                bench.get().unit(),
                door.entryId(form),
                door.who(ctx),
                new Entry.HandedBack(warranty, advice, remark));
        if (kept.isOk()) {
            door.on(ctx, "/job/" + job + "/record", "Handed back. The record is closed");
        } else {
            record(ctx, kept.refusals(), form.typed());
        }
    }
}
