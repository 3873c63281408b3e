package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.ShopActs;

/** Part numbers whose place another has taken. */
public final class NumberPages {
    private static final String HERE = "/numbers";

    private final Desk desk;
    private final Door door;

    public NumberPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> numbers(ctx, List.of(), Map.of()));
        routes.post(HERE, ctx -> Pages.act(ctx, desk, door, ShopActs.ReplaceNumber.class, this::numbers, HERE));
        routes.post(
                HERE + "/stands", ctx -> Pages.act(ctx, desk, door, ShopActs.KeepNumber.class, this::numbers, HERE));
    }

    private void numbers(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Page page = door.page(ctx, "Replaced part numbers", "", null, faults, typed);
        door.show(
                ctx,
                "numbers",
                page,
                Map.of("replaced", desk.shop().replaced().values(), "back", Pages.cameFrom(ctx, typed)));
    }
}
