package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.part.WorkDrawing;
import shimwright.bench.picture.plot.Plots;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.tooth.BetweenPins;
import shimwright.mechanics.tooth.OverPins;
import shimwright.mechanics.tooth.SplineRework;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.act.SendOutActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.sendout.OtherWork;
import shimwright.rebuild.unit.model.Spline;

/** The sheet that goes out with work done elsewhere, as page and paper, and its acceptance when it comes back. */
public final class SendOutPages {
    private static final double WIDE = 400;

    private final Desk desk;
    private final Door door;
    private final Paper paper;
    private final OrderPages orders;

    SendOutPages(Desk desk, Door door, Paper paper, OrderPages orders) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
        this.orders = orders;
    }

    /** Lays the addresses of these pages. */
    void routes(RoutesConfig routes) {
        routes.get("/job/{job}/sendout", ctx -> form(ctx, List.of(), Map.of()));
        routes.post(
                "/job/{job}/sendout",
                ctx -> Pages.act(ctx, desk, door, SendOutActs.SendSpline.class, this::form, form -> "/orders"));
        routes.get("/job/{job}/sendout/other/{work}", ctx -> other(ctx, List.of(), Map.of()));
        routes.post(
                "/job/{job}/sendout/other/{work}",
                ctx -> Pages.act(ctx, desk, door, SendOutActs.SendWork.class, this::other, form -> "/orders"));
        routes.get("/job/{job}/sendout/{number}", this::sheet);
        routes.get("/job/{job}/sendout/{number}/sheet.pdf", this::pdf);
        routes.post(
                "/job/{job}/orders/work",
                ctx -> Pages.act(ctx, desk, door, SendOutActs.TakeWork.class, orders::orders, form -> "/orders"));
    }

    /**
     * A field of the form.
     *
     * @param label in words, with the unit of a bare number
     * @param choices one of them; empty where it is typed
     */
    public record Field(String name, String label, String value, List<String> choices) {}

    private void form(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Send out a spline", "orders", bench, faults, typed);
            Map<String, String> known = known(bench, ctx.queryParam("spline"));
            List<Field> fields = new ArrayList<>();
            for (SheetField field : SplineRework.SHEET.inputs()) {
                String name = "in-" + field.name();
                String unit = field.display(page.show().system()).unit().symbol();
                fields.add(new Field(
                        name,
                        field.label() + (unit.isBlank() || !field.choices().isEmpty() ? "" : ", " + unit),
                        typed.getOrDefault(name, known.getOrDefault(field.name(), "")),
                        field.choices()));
            }
            door.show(
                    ctx,
                    "sendout",
                    page,
                    Map.of(
                            "fields",
                            fields,
                            "items",
                            items(bench),
                            "splines",
                            bench.unit().type().splines()));
        });
    }

    private static Map<String, String> items(JobOnBench bench) {
        Map<String, String> items = new LinkedHashMap<>();
        bench.unit().type().items().forEach(item -> items.put(item.id(), item.name()));
        return items;
    }

    /** Work other than on a spline, each sort with the fields of its own. */
    private void other(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Optional<OtherWork> work = Arrays.stream(OtherWork.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(ctx.pathParam("work")))
                .findFirst();
        if (work.isEmpty()) {
            Pages.lost(ctx, door, "No sheet is written for such work.");
            return;
        }
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Send out work", "orders", bench, faults, typed);
            door.show(ctx, "sendoutother", page, Map.of("work", work.get(), "items", items(bench)));
        });
    }

    /** What the unit file says of a spline: teeth, module, pins. */
    private static Map<String, String> known(JobOnBench bench, String id) {
        Optional<Spline> spline = bench.unit().type().splines().stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
        Map<String, String> known = new LinkedHashMap<>();
        spline.ifPresent(one -> {
            known.put("teeth", Integer.toString(one.teeth()));
            known.put("module", millimetres(one.module()));
            known.put("shaftPin", millimetres(one.pin()));
        });
        return known;
    }

    private static String millimetres(double metres) {
        return String.format(Locale.ROOT, "%.3f mm", metres * 1000);
    }

    private Optional<Said<Entry.Sent>> sent(JobOnBench bench, Context ctx) {
        return bench.job().sent().values().stream()
                .filter(said -> Long.toString(said.number()).equals(ctx.pathParam("number")))
                .filter(said -> !said.what().work().isEmpty())
                .findFirst();
    }

    private void sheet(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Optional<Said<Entry.Sent>> sent = sent(bench, ctx);
            if (sent.isEmpty()) {
                Pages.lost(ctx, door, "No sheet goes with this order.");
                return;
            }
            Page page = door.page(ctx, "Sheet of work", "orders", bench);
            door.show(ctx, "sendoutsheet", page, values(sent.get(), page));
        });
    }

    private void pdf(Context ctx) {
        Pages.bench(ctx, desk, door)
                .ifPresent(bench -> sent(bench, ctx)
                        .ifPresentOrElse(
                                sent -> {
                                    Page page = door.page(ctx, "Sheet of work", "orders", bench);
                                    Map<String, Object> all = new LinkedHashMap<>(values(sent, page));
                                    all.put("page", page);
                                    ctx.contentType("application/pdf");
                                    ctx.result(paper.pdf(door.render("sendoutpaper", all)));
                                },
                                () -> Pages.lost(ctx, door, "No sheet goes with this order.")));
    }

    private static Map<String, Object> values(Said<Entry.Sent> sent, Page page) {
        return Map.of("sent", sent, "drawing", drawing(sent.what(), page.show().system()));
    }

    /** A space of the finished spline with its pin, or what else is worked on; empty where the numbers give none. */
    static String drawing(Entry.Sent sent, UnitSystem system) {
        Map<String, Double> numbers = sent.numbers();
        if (!numbers.containsKey("teeth")) {
            return WorkDrawing.of(numbers, system);
        }
        boolean shaft = numbers.getOrDefault("shaft", 1.0) > 0;
        Map<String, Object> in = new LinkedHashMap<>();
        in.put("teeth", Math.round(numbers.getOrDefault("teeth", 0.0)));
        in.put("module", exact(numbers, "module"));
        in.put("pressureAngle", String.format(Locale.ROOT, "%.6f rad", numbers.getOrDefault("angle", 0.0)));
        in.put("pin", exact(numbers, "pin"));
        in.put(shaft ? "thickness" : "space", exact(numbers, "arc"));
        Worksheet<?, ?> sheet = shaft ? OverPins.SHEET : BetweenPins.SHEET;
        Outcome<Answer> answer = sheet.answer(in, system);
        return answer.isOk()
                ? answer.orElseThrow().diagrams().stream()
                        .filter(Diagram.Graph.class::isInstance)
                        .map(Diagram.Graph.class::cast)
                        .findFirst()
                        .map(graph -> Plots.graph(graph, new Plots.Page("sendout", WIDE, system)))
                        .orElse("")
                : "";
    }

    private static String exact(Map<String, Double> numbers, String name) {
        return String.format(Locale.ROOT, "%.7f mm", numbers.getOrDefault(name, 0.0) * 1000);
    }
}
