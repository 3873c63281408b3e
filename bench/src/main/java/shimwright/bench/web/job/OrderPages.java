package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.web.kit.CsvRow;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.bench.web.money.MoneyView;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.OrderActs;
import shimwright.rebuild.supply.KitCover;
import shimwright.rebuild.supply.Need;
import shimwright.rebuild.supply.Needs;
import shimwright.rebuild.supply.OneNumber;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Kit;

/** What was ordered or sent out, what it holds up, and what was measured on it when it came. */
public final class OrderPages {
    private final Desk desk;
    private final Door door;
    private final Paper paper;

    public OrderPages(Desk desk, Door door, Paper paper) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/orders", ctx -> orders(ctx, List.of(), Map.of()));
        routes.post(
                "/job/{job}/orders",
                ctx -> Pages.act(ctx, desk, door, OrderActs.SendOut.class, this::orders, form -> "/orders"));
        post(routes, "needed", OrderActs.OrderNeeded.class);
        post(routes, "here", OrderActs.HaveHere.class);
        post(routes, "return", OrderActs.SendBack.class);
        post(routes, "due", OrderActs.MoveDue.class);
        new SendOutPages(desk, door, paper, this).routes(routes);
        routes.get("/job/{job}/orders.csv", this::csv);
        routes.get("/job/{job}/orders.pdf", this::pdf);
        routes.post(
                "/job/{job}/orders/back",
                ctx -> Pages.act(ctx, desk, door, OrderActs.TakeDelivery.class, this::orders, form -> "/orders"));
    }

    private void post(RoutesConfig routes, String what, Class<? extends Act.OfJob> act) {
        routes.post(
                "/job/{job}/orders/" + what, ctx -> Pages.act(ctx, desk, door, act, this::orders, form -> "/orders"));
    }

    /** What is to be ordered as a table for others. */
    private void csv(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            StringBuilder text = new StringBuilder("from,what,price,why,check\n");
            for (OrderList.Line line :
                    OrderList.of(bench.unit(), bench.job(), bench.shop()).lines()) {
                text.append(CsvRow.of(
                        line.from(),
                        line.what(),
                        line.price() > 0 ? String.format(Locale.ROOT, "%.2f", line.price()) : "",
                        String.join("; ", line.why()),
                        line.look()));
            }
            ctx.contentType("text/csv; charset=utf-8");
            ctx.header("Content-Disposition", "attachment; filename=\"orders.csv\"");
            ctx.result(text.toString());
        });
    }

    private void pdf(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "To order", "orders", bench, List.of(), Map.of());
            OrderList list = OrderList.of(bench.unit(), bench.job(), bench.shop());
            ctx.contentType("application/pdf");
            ctx.result(paper.pdf(door.render("orderpaper", Map.of("page", page, "list", list))));
        });
    }

    void orders(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Orders", "orders", bench, faults, typed);
            Map<String, String> items = new TreeMap<>();
            bench.unit().type().items().forEach(item -> items.put(item.id(), item.name()));
            door.show(
                    ctx,
                    "orders",
                    page,
                    Map.of(
                            "items",
                            items,
                            "today",
                            page.show().date(desk.now()),
                            "list",
                            OrderList.of(bench.unit(), bench.job(), bench.shop()),
                            "kits",
                            kits(bench),
                            "consent",
                            MoneyView.consent(bench)));
        });
    }

    /**
     * A kit against what is needed.
     *
     * @param has needs that it has
     * @param lacks needs that it has not
     * @param wrong lines with another part number than this unit has
     */
    public record KitAgainst(Kit kit, List<Need> has, List<Need> lacks, List<Kit.Line> wrong) {}

    private static List<KitAgainst> kits(JobOnBench bench) {
        OneNumber numbers = OneNumber.of(bench.unit(), bench.shop());
        List<Need> needs = Needs.of(bench.unit(), bench.job(), numbers);
        return bench.bench().file().type().kits().stream()
                .map(kit -> new KitAgainst(
                        kit,
                        needs.stream().filter(need -> has(kit, need, numbers)).toList(),
                        needs.stream().filter(need -> !has(kit, need, numbers)).toList(),
                        KitCover.wrong(bench.unit(), kit, numbers)))
                .toList();
    }

    private static boolean has(Kit kit, Need need, OneNumber numbers) {
        return kit.contents().stream().anyMatch(line -> numbers.has(line, need));
    }
}
