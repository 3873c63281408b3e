package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobSummary;
import shimwright.bench.desk.ShopSummary;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.job.Shop;

/** The shop: jobs on the bench, the drawer, gauges, who signs and in which units. */
public final class ShopPages {
    /** Owners to be asked that are shown at once. */
    private static final int MOST_ASKED = 12;

    private final Desk desk;
    private final Door door;

    public ShopPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/", ctx -> shop(ctx, List.of(), Map.of()));
        routes.get("/job/{job}/card", this::card);
        routes.get("/drawer", ctx -> drawer(ctx, List.of(), Map.of()));
        on(routes, "/drawer", ShopActs.AddShim.class);
        on(routes, "/drawer/list", ShopActs.AddShims.class);
        on(routes, "/drawer/measured", ShopActs.MeasureShim.class);
        on(routes, "/drawer/remove", ShopActs.RemoveShim.class);
        on(routes, "/drawer/returned", ShopActs.ReturnShim.class);
        routes.post("/me", this::me);
        routes.get("/held", ctx -> door.show(ctx, "held", door.page(ctx, "This screen", "", null), Map.of()));
        routes.post("/held", this::held);
    }

    private void shop(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Page page = door.page(ctx, "The shop", "", null, faults, typed);
        String asked = ctx.queryParam("find");
        String find = asked == null ? "" : asked.strip();
        Found found = Found.in(desk.lines(), find, this::model);
        ShopSummary shop = desk.shopSummary();
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("found", found);
        more.put("find", find);
        more.put("loose", (long) shop.pieces().size());
        more.put("gauges", shop.gauges());
        more.put("toAsk", toAsk());
        more.put("today", page.show().date(desk.now()).toString());
        door.show(ctx, "shop", page, more);
    }

    /** Maker and model of a unit type, as long as they need not be read for it: the first page waits for no unit file. */
    private String model(String type) {
        return desk.shelf()
                .typeAtHand(type)
                .map(known -> known.maker() + " " + known.model())
                .orElse("");
    }

    /** The jobs whose owner is to be asked how it goes, the soonest first. */
    private List<JobSummary> toAsk() {
        return desk.lines().stream()
                .filter(line -> !line.toAsk().isEmpty())
                .sorted(Comparator.comparing(JobSummary::toAsk))
                .limit(MOST_ASKED)
                .toList();
    }

    /** The card of a job with what is next, to be put in the place of the one that its entries alone gave. */
    private void card(Context ctx) {
        String job = ctx.pathParam("job");
        Optional<JobCard> card = desk.bench(job)
                .map(JobCard::of)
                .or(() -> desk.lines().stream()
                        .filter(line -> line.job().equals(job))
                        .map(JobCard::offShelf)
                        .findFirst());
        if (card.isEmpty()) {
            Pages.lost(ctx, door, "There is no such job here.");
            return;
        }
        ctx.html(door.render(ctx, "card", Map.of("card", card.get())));
    }

    private void drawer(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Map<String, List<Shop.Piece>> families = desk.shop().pieces().values().stream()
                .filter(piece -> piece.goneBecause() == null)
                .collect(Collectors.groupingBy(Shop.Piece::family, TreeMap::new, Collectors.toList()));
        families.replaceAll((family, pieces) -> pieces.stream()
                .sorted((a, b) -> Double.compare(a.thickness(), b.thickness()))
                .toList());
        Map<String, Double> spreads = new LinkedHashMap<>();
        desk.shelf()
                .types()
                .forEach(type ->
                        type.shimFamilies().forEach((id, family) -> spreads.merge(id, family.spread(), Math::min)));
        Map<String, String> names = new TreeMap<>();
        desk.shelf()
                .types()
                .forEach(type -> type.shimFamilies().forEach((id, family) -> names.putIfAbsent(id, family.name())));
        Page page = door.page(ctx, "The drawer", "", null, faults, typed);
        List<Shop.Piece> gone = desk.shop().pieces().values().stream()
                .filter(piece -> piece.goneBecause() != null)
                .toList();
        Map<String, Object> more = new LinkedHashMap<>();
        more.put("families", families);
        more.put("spreads", spreads);
        more.put("names", names);
        more.put("gone", gone);
        more.put("back", Pages.cameFrom(ctx, typed));
        Map<String, String> types = new TreeMap<>();
        desk.shelf().types().stream()
                .filter(type -> desk.lines().stream()
                        .anyMatch(line -> line.closed() && line.unitType().equals(type.id())))
                .forEach(type -> types.put(type.id(), type.maker() + " " + type.model()));
        more.put("types", types);
        door.show(ctx, "drawer", page, more);
    }

    private void on(RoutesConfig routes, String path, Class<? extends Act.OfShop> type) {
        routes.post(path, ctx -> Pages.act(ctx, desk, door, type, this::drawer, "/drawer"));
    }

    private void held(Context ctx) {
        door.hold(ctx, door.form(ctx));
        door.on(ctx, "/held", "This screen is as you said, from now on.");
    }

    private void me(Context ctx) {
        Form form = door.form(ctx);
        if (!form.raw("who").isEmpty()) {
            door.remember(ctx, "who", form.raw("who"));
        }
        if (!form.raw("units").isEmpty()) {
            door.remember(ctx, "units", form.raw("units").equals("inch") ? "inch" : "metric");
        }
        String back = form.raw("back");
        door.on(ctx, Door.local(back) ? back : "/", "");
    }
}
