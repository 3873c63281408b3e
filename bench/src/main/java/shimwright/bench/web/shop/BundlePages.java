package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import shimwright.bench.bundle.BundleExport;
import shimwright.bench.bundle.BundleFile;
import shimwright.bench.bundle.BundleImport;
import shimwright.bench.bundle.PictureChoice;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.act.UnitActs;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** A unit with its pictures as one file for another shop, and one from another shop taken in. */
public final class BundlePages {
    private static final String HERE = "/units/type/{type}/bundle";
    private static final String SHOWS = "shows-";
    private static final String CHOSEN = "take-";

    private final Desk desk;
    private final Door door;

    /** The last bundle about which something was asked: it need not be chosen again. */
    private final AtomicReference<@Nullable Held> held = new AtomicReference<>();

    public BundlePages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    @SuppressWarnings("ArrayRecordComponent") // found by its hash
    private record Held(String hash, byte[] content) {}

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(HERE, ctx -> choose(ctx, List.of(), Map.of()));
        routes.post(HERE, this::give);
        routes.post(
                "/units/type/{type}/pictures",
                ctx -> Pages.act(
                        ctx,
                        desk,
                        door,
                        UnitActs.DropUnitPictures.class,
                        (again, faults, typed) ->
                                Pages.lost(again, door, faults.get(0).sentence()),
                        "/units/type/" + ctx.pathParam("type")));
        routes.get("/units/bundle", ctx -> ask(ctx, List.of(), Map.of(), Optional.empty()));
        routes.post("/units/bundle", this::take);
    }

    private Optional<UnitShelf.ReadFile> unit(Context ctx) {
        Optional<UnitShelf.ReadFile> unit = desk.shelf().file(ctx.pathParam("type"));
        if (unit.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit type on this shelf.");
        }
        return unit;
    }

    private void choose(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        unit(ctx).ifPresent(unit -> {
            Map<String, String> places = new LinkedHashMap<>();
            places.put(UnitPicture.UNIT, "the unit as a whole");
            unit.type().items().forEach(item -> places.put(UnitPicture.item(item.id()), item.name()));
            unit.type().steps().forEach(step -> places.put(UnitPicture.step(step.id()), step.id() + " " + step.todo()));
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("type", unit.type());
            all.put("choices", PictureChoice.of(desk, unit.type()));
            all.put("places", places);
            all.put("shop", desk.shop().facts().getOrDefault("name", ""));
            door.show(ctx, "bundle", door.page(ctx, "For another shop", "", null, faults, typed), all);
        });
    }

    private void give(Context ctx) {
        unit(ctx).ifPresent(unit -> {
            Form form = door.form(ctx);
            Map<String, String> shows = new LinkedHashMap<>();
            form.names().stream()
                    .filter(name -> name.startsWith(CHOSEN))
                    .map(name -> name.substring(CHOSEN.length()))
                    .forEach(hash -> shows.put(hash, shown(form, hash)));
            Outcome<byte[]> bundle = new BundleExport(
                            shows, form.has("captions"), form.has("history"), form.has("named"))
                    .of(desk, unit);
            if (bundle instanceof Outcome.Ok<byte[]> ok) {
                ctx.contentType("application/zip");
                ctx.header(
                        "Content-Disposition",
                        "attachment; filename=\"" + unit.type().id() + ".zip\"");
                ctx.result(ok.value());
            } else {
                choose(ctx, bundle.refusals(), form.typed());
            }
        });
    }

    private static String shown(Form form, String hash) {
        String shows = form.raw(SHOWS + hash);
        return shows.isEmpty() ? UnitPicture.UNIT : shows;
    }

    private void take(Context ctx) {
        Form form = door.form(ctx);
        Optional<byte[]> content = content(ctx, form);
        if (content.isEmpty()) {
            ask(ctx, form.faults(), form.typed(), Optional.empty());
            return;
        }
        Outcome<BundleFile.Read> read = BundleFile.read(content.get(), desk.pictures());
        if (!(read instanceof Outcome.Ok<BundleFile.Read> ok)) {
            ask(ctx, read.refusals(), form.typed(), Optional.empty());
            return;
        }
        BundleImport how = how(form);
        Outcome<UnitActs.ImportUnit> act = how.act(desk, ok.value());
        Outcome<Desk.Done> done = act.flatMap(one -> desk.act(one, door.signed(ctx, form)));
        if (done.isOk()) {
            held.set(null);
            String type = act.orElseThrow().type();
            UnitType unit = desk.shelf().type(type).orElseThrow();
            door.on(
                    ctx,
                    "/units/type/" + type,
                    unit.maker() + " " + unit.model() + " is on the shelf, with its pictures");
            return;
        }
        held.set(new Held(PinnedUnit.hash(content.get()), content.get()));
        ask(ctx, done.refusals(), form.typed(), Optional.of(ok.value()));
    }

    /** What was chosen now, or the bundle about which was asked. */
    private Optional<byte[]> content(Context ctx, Form form) {
        UploadedFile file = ctx.uploadedFile("file");
        if (file != null && file.size() > 0) {
            try (InputStream in = file.content()) {
                return Optional.of(in.readAllBytes());
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
        Optional<byte[]> there = Optional.ofNullable(held.get())
                .filter(one -> one.hash().equals(form.raw("held")))
                .map(Held::content);
        if (there.isEmpty()) {
            form.fault("file", "bundle", "no file was chosen", "Choose the file that the other shop saved");
        }
        return there;
    }

    private static BundleImport how(Form form) {
        BundleImport.Clash clash = switch (form.raw("clash")) {
            case "over" -> BundleImport.Clash.OVER;
            case "other" -> BundleImport.Clash.OTHER;
            default -> BundleImport.Clash.ASK;
        };
        return new BundleImport(clash, form.raw("maker"), form.raw("model"), form.raw("why"));
    }

    private void ask(Context ctx, List<Refusal> faults, Map<String, String> typed, Optional<BundleFile.Read> read) {
        Map<String, Object> all = new LinkedHashMap<>();
        read.ifPresent(one -> all.put("read", one.bundle()));
        all.put(
                "held",
                read.flatMap(one -> Optional.ofNullable(held.get()))
                        .map(Held::hash)
                        .orElse(""));
        Page page = door.page(ctx, "From another shop", "", null, faults, typed);
        door.show(ctx, "bundlein", page, all);
    }
}
