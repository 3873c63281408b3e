package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Step.Phase;

/** What the shop measures with, and the few things a new shop says of itself. */
public final class GaugePages {
    private final Desk desk;
    private final Door door;

    public GaugePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/gauges", ctx -> gauges(ctx, List.of(), Map.of()));
        on(routes, "/gauges", ShopActs.AddGauge.class, "/gauges", this::gauges);
        on(routes, "/gauges/retired", ShopActs.RetireGauge.class, "/gauges", this::gauges);
        routes.get("/setup", ctx -> setUp(ctx, List.of(), Map.of()));
        on(routes, "/setup", ShopActs.DescribeShop.class, "/setup", this::setUp);
    }

    private void on(
            RoutesConfig routes, String path, Class<? extends Act.OfShop> type, String next, Pages.Again again) {
        routes.post(path, ctx -> Pages.act(ctx, desk, door, type, again, next));
    }

    private void gauges(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Map<String, String> filled = new LinkedHashMap<>(typed.isEmpty() ? first(ctx) : typed);
        Page page = door.page(ctx, "Gauges", "", null, faults, filled);
        door.show(
                ctx,
                "gauges",
                page,
                Map.of(
                        "gauges",
                        List.copyOf(desk.shop().gauges().values()),
                        "presets",
                        GaugeKinds.ALL,
                        "wanted",
                        wanted(),
                        "back",
                        Pages.cameFrom(ctx, typed)));
    }

    /** What the form begins with: a usual kind, or a gauge of the shop that is to be changed. */
    private Map<String, String> first(Context ctx) {
        String kind = ctx.queryParam("kind");
        String change = ctx.queryParam("change");
        Optional<Map<String, String>> preset = GaugeKinds.find(kind == null ? "" : kind)
                .map(p -> fields(free(p.mark()), p.name(), p.step(), p.errorLimit(), p.retrace(), p.range(), ""));
        return preset.or(() -> desk.shop().inUse(change == null ? "" : change).map(GaugePages::fields))
                .orElse(Map.of());
    }

    private static Map<String, String> fields(Shop.Gauge gauge) {
        return fields(
                gauge.id(),
                gauge.name(),
                GaugeKinds.typed(gauge.step()),
                GaugeKinds.typed(gauge.errorLimit()),
                GaugeKinds.typed(gauge.retrace()),
                GaugeKinds.typed(gauge.range()),
                gauge.calibrated());
    }

    private static Map<String, String> fields(
            String mark, String name, String step, String limit, String retrace, String range, String calibrated) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("gauge", mark);
        fields.put("name", name);
        fields.put("step", step);
        fields.put("errorLimit", limit);
        fields.put("retrace", retrace);
        fields.put("range", range);
        fields.put("calibrated", calibrated);
        return fields;
    }

    /** A mark that no gauge of the shop has yet. */
    private String free(String mark) {
        Map<String, Shop.Gauge> there = desk.shop().gauges();
        String free = mark;
        for (int number = 2; there.containsKey(free); number++) {
            free = mark + number;
        }
        return free;
    }

    /** Gauges that the unit files on the shelf name for their clearances, by mark, where the shop has none of that mark. */
    private Map<String, String> wanted() {
        Map<String, String> wanted = new LinkedHashMap<>();
        desk.shelf()
                .types()
                .forEach(type -> type.clearances().forEach(clearance -> {
                    for (Phase phase : List.of(Phase.TRIAL, Phase.FINAL)) {
                        clearance.gauges(phase).stream()
                                .filter(mark ->
                                        !mark.isBlank() && !desk.shop().gauges().containsKey(mark))
                                .forEach(mark -> wanted.put(mark, type.tools().getOrDefault(mark, mark)));
                    }
                }));
        return wanted;
    }

    private void setUp(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Shop shop = desk.shop();
        Map<String, String> filled = new LinkedHashMap<>();
        shop.facts().forEach((fact, text) -> filled.put("fact-" + fact, text));
        filled.putAll(typed);
        Page page = door.page(ctx, "Set up the shop", "", null, faults, filled);
        long loose =
                shop.pieces().values().stream().filter(Shop.Piece::inDrawer).count();
        door.show(
                ctx,
                "setup",
                page,
                Map.of(
                        "gauges",
                        shop.gauges().size(),
                        "loose",
                        loose,
                        "facts",
                        shop.facts(),
                        "types",
                        desk.shelf().types().size(),
                        "faults",
                        desk.shelf().faults()));
    }
}
