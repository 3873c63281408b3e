package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.OrderActs;

/** What was ordered or sent out, what it holds up, and what was measured on it when it came. */
public final class OrderPages {
    private final Desk desk;
    private final Door door;

    public OrderPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/orders", ctx -> orders(ctx, List.of(), Map.of()));
        routes.post(
                "/job/{job}/orders",
                ctx -> Pages.act(ctx, desk, door, OrderActs.SendOut.class, this::orders, form -> "/orders"));
        routes.post(
                "/job/{job}/orders/back",
                ctx -> Pages.act(ctx, desk, door, OrderActs.TakeDelivery.class, this::orders, form -> "/orders"));
    }

    private void orders(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Pages.bench(ctx, desk, door).ifPresent(bench -> {
            Page page = door.page(ctx, "Orders", "orders", bench, faults, typed);
            Map<String, String> items = new TreeMap<>();
            bench.unit().type().items().forEach(item -> items.put(item.id(), item.name()));
            door.show(
                    ctx,
                    "orders",
                    page,
                    Map.of("items", items, "today", page.show().date(desk.now())));
        });
    }
}
