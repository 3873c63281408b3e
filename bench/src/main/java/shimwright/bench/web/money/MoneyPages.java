package shimwright.bench.web.money;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.desk.SoFar;
import shimwright.bench.web.kit.CsvRow;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.MoneyActs;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.complaint.Advice;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.money.Invoice;
import shimwright.rebuild.money.QuoteBasis;

/** What it may cost, what the owner says to it, the hours, and what it came to. */
public final class MoneyPages {
    private static final String HERE = "/job/{job}/money";
    /** So many boxes of the type before are asked. */
    private static final int EARLIER = 10;

    private final Desk desk;
    private final Door door;
    private final Paper paper;

    public MoneyPages(Desk desk, Door door, Paper paper) {
        this.desk = desk;
        this.door = door;
        this.paper = paper;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> money(ctx, List.of(), Map.of()));
        post(routes, "quote", MoneyActs.GiveQuote.class);
        post(routes, "owner", MoneyActs.HearOwner.class);
        post(routes, "cost", MoneyActs.SayCost.class);
        post(routes, "hours", MoneyActs.SayHours.class);
        routes.post(
                HERE + "/rate",
                ctx -> Pages.act(
                        ctx,
                        desk,
                        door,
                        ShopActs.DescribeShop.class,
                        this::money,
                        "/job/" + ctx.pathParam("job") + "/money"));
        routes.get("/job/{job}/quote.pdf", ctx -> pdf(ctx, "quotepaper", "quote"));
        routes.get("/job/{job}/invoice.pdf", ctx -> pdf(ctx, "invoicepaper", "invoice"));
        routes.get("/job/{job}/invoice.csv", this::csv);
    }

    private void post(RoutesConfig routes, String what, Class<? extends Act.OfJob> act) {
        routes.post(HERE + "/" + what, ctx -> Pages.act(ctx, desk, door, act, this::money, form -> "/money"));
    }

    private MoneyView view(JobOnBench bench) {
        SoFar<Job> earlier = desk.jobsSoFar(bench.job().opened().unitType(), EARLIER);
        Advice advice = Advice.of(bench.unit(), bench.job(), earlier.values());
        return MoneyView.of(
                bench, QuoteBasis.chances(bench.unit(), bench.job(), advice, earlier.values()), earlier.all());
    }

    private void money(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door)
                .ifPresent(bench -> door.show(
                        ctx,
                        "money",
                        door.page(ctx, "Money", "money", bench, faults, typed),
                        Map.of(
                                "view",
                                view(bench),
                                "today",
                                door.page(ctx, "", "", bench).show().date(desk.now()))));
    }

    private void pdf(Context ctx, String template, String name) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Money", "money", bench);
            ctx.contentType("application/pdf");
            ctx.header(
                    "Content-Disposition",
                    "inline; filename=\"" + name + "-" + bench.job().id() + ".pdf\"");
            ctx.result(paper.pdf(door.render(template, Map.of("page", page, "view", view(bench)))));
        });
    }

    private void csv(Context ctx) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Invoice invoice = view(bench).invoice();
            StringBuilder text = new StringBuilder("what,remark,amount,currency\n");
            invoice.lines()
                    .forEach(line -> text.append(
                            CsvRow.of(line.what(), line.words(), MoneyView.amount(line.cents()), invoice.currency())));
            invoice.open().forEach(open -> text.append(CsvRow.of("not in it", open, "", "")));
            text.append(CsvRow.of("together, without tax", "", MoneyView.amount(invoice.total()), invoice.currency()));
            ctx.contentType("text/csv; charset=utf-8");
            ctx.header("Content-Disposition", "attachment; filename=\"invoice.csv\"");
            ctx.result(text.toString());
        });
    }
}
