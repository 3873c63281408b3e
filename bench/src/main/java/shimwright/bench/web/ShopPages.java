package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Kept;
import shimwright.rebuild.job.Shop;

/** The shop: jobs on the bench, the drawer, gauges, who signs and in which units. */
final class ShopPages {
    /** A shim or spacer is thinner than this; more is a slip of the point. */
    private static final Range THICKNESS = new Range(0.00001, 0.1);

    private final Desk desk;
    private final Overviews overviews;
    private final Door door;

    ShopPages(Desk desk, Overviews overviews, Door door) {
        this.desk = desk;
        this.overviews = overviews;
        this.door = door;
    }

    void routes(RoutesConfig routes) {
        routes.get("/", ctx -> shop(ctx, List.of(), Map.of()));
        routes.get("/drawer", ctx -> drawer(ctx, List.of(), Map.of()));
        routes.post("/drawer", this::addShim);
        routes.post("/drawer/remove", this::removeShim);
        routes.post("/me", this::me);
    }

    private void shop(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        Page page = door.page(ctx, "The shop", "", null, faults, typed);
        door.show(ctx, "shop", page, Map.of("shop", overviews.now()));
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
        Page page = door.page(ctx, "The drawer", "", null, faults, typed);
        door.show(ctx, "drawer", page, Map.of("families", families, "spreads", spreads));
    }

    private void addShim(Context ctx) {
        Form form = door.form(ctx);
        String piece = form.needed("piece", "tag", "Give the piece a tag, such as d80-23");
        String family = form.needed("family", "family", "Say which shims it goes with");
        List<Double> readings = new ArrayList<>();
        for (int place = 1; place <= 3; place++) {
            readings.add(form.quantity("t" + place, Kind.LENGTH, "micrometer, place " + place, THICKNESS));
        }
        String stamp = form.text("stamp", "stamp");
        if (!form.sound()) {
            drawer(ctx, form.faults(), form.typed());
            return;
        }
        Entry.ShimAdded added = new Entry.ShimAdded(piece, family, stamp, readings, 0.000002);
        Outcome<Kept> kept = desk.keepInShop(door.entryId(form), door.who(ctx), added);
        if (kept.isOk()) {
            door.on(ctx, "/drawer", piece + " is in the drawer");
        } else {
            drawer(ctx, kept.refusals(), form.typed());
        }
    }

    private void removeShim(Context ctx) {
        Form form = door.form(ctx);
        String piece = form.needed("piece", "tag", "Say which piece");
        String reason = form.needed("reason", "reason", "Say why it leaves the drawer");
        if (!form.sound()) {
            drawer(ctx, form.faults(), form.typed());
            return;
        }
        Outcome<Kept> kept = desk.keepInShop(door.entryId(form), door.who(ctx), new Entry.ShimRemoved(piece, reason));
        if (kept.isOk()) {
            door.on(ctx, "/drawer", piece + " is out of the drawer");
        } else {
            drawer(ctx, kept.refusals(), form.typed());
        }
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
        door.on(ctx, back.startsWith("/") && !back.startsWith("//") ? back : "/", "");
    }
}
