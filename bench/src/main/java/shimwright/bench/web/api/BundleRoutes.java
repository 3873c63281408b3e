package shimwright.bench.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.bundle.BundleExport;
import shimwright.bench.bundle.BundleFile;
import shimwright.bench.bundle.BundleImport;
import shimwright.bench.bundle.PictureChoice;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.UnitActs;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.workbench.PinnedUnit;

/** The door for programs to bundles: a unit with its pictures out, and one from another shop in, with the checks of the pages. */
public final class BundleRoutes {
    private final Desk desk;
    private final Door door;

    public BundleRoutes(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of this door. */
    public void routes(RoutesConfig routes) {
        routes.get(ApiRoutes.ROOT + "/units/{type}/bundle", this::give);
        routes.post(ApiRoutes.ROOT + "/units/bundle", this::take);
    }

    private static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
    }

    private static boolean is(Context ctx, String name) {
        return query(ctx, name).equals("true");
    }

    private void give(Context ctx) {
        Optional<UnitShelf.ReadFile> unit = desk.shelf().file(ctx.pathParam("type"));
        if (unit.isEmpty()) {
            ApiRoutes.refuse(ctx, 404, "unit type", "there is none of that name here", "GET /api/units lists them");
            return;
        }
        Outcome<byte[]> bundle = new BundleExport(
                        shows(
                                query(ctx, "pictures"),
                                PictureChoice.of(desk, unit.get().type())),
                        is(ctx, "captions"),
                        is(ctx, "history"),
                        is(ctx, "named"))
                .of(desk, unit.get());
        if (bundle instanceof Outcome.Ok<byte[]> ok) {
            ctx.contentType("application/zip");
            ctx.result(ok.value());
        } else {
            ApiRoutes.refuse(ctx, 422, "", bundle.refusals());
        }
    }

    private static Map<String, String> shows(String asked, List<PictureChoice> choices) {
        Map<String, String> shows = new LinkedHashMap<>();
        List<String> hashes = List.of(asked.split(","));
        choices.stream()
                .filter(one -> asked.equals("all")
                        || (asked.equals("proposed") && one.proposed())
                        || hashes.contains(one.picture().picture()))
                .forEach(one -> shows.put(one.picture().picture(), one.picture().about()));
        if (!asked.equals("all") && !asked.equals("proposed")) {
            // one that is none of this unit's is refused where the bundle is made
            Arrays.stream(asked.split(","))
                    .map(String::strip)
                    .filter(hash -> !hash.isEmpty())
                    .forEach(hash -> shows.putIfAbsent(hash, UnitPicture.UNIT));
        }
        return shows;
    }

    private void take(Context ctx) {
        BundleImport.Clash clash = switch (query(ctx, "clash")) {
            case "over" -> BundleImport.Clash.OVER;
            case "other" -> BundleImport.Clash.OTHER;
            default -> BundleImport.Clash.ASK;
        };
        BundleImport how = new BundleImport(clash, query(ctx, "maker"), query(ctx, "model"), query(ctx, "why"));
        Outcome<UnitActs.ImportUnit> act =
                BundleFile.read(ctx.bodyAsBytes(), desk.pictures()).flatMap(read -> how.act(desk, read));
        Desk.Signed signed = door.signed(ctx, new Form(ctx.queryParamMap(), UnitSystem.METRIC));
        Outcome<Desk.Done> done = act.flatMap(one -> desk.act(one, signed));
        if (!done.isOk()) {
            ApiRoutes.refuse(ctx, 422, "", done.refusals());
            return;
        }
        String type = act.orElseThrow().type();
        Map<String, Object> kept = new LinkedHashMap<>();
        kept.put("type", type);
        kept.put(
                "file",
                Optional.ofNullable(desk.shelf().units().get(type))
                        .map(PinnedUnit::hash)
                        .orElse(""));
        kept.put("pictures", desk.shop().unitPictures(type).size());
        ctx.status(201);
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(SheetJson.line(kept));
    }
}
