package shimwright.bench.web.shop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Form;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** The unit files on the shelf: which there are, one chosen, pasted or taken from those shipped, and each to be had as a file. */
public final class ShelfPages {
    private static final String PASTED = "the pasted text";

    private final Desk desk;
    private final Door door;

    public ShelfPages(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /**
     * A unit file of the shelf or of those shipped.
     *
     * @param type what it says
     * @param file where it is to be had
     * @param hash of its content; empty for one that is not on the shelf
     */
    public record Line(UnitType type, String file, String hash) {}

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get("/units", ctx -> shelf(ctx, List.of(), Map.of()));
        routes.post("/units", this::add);
        routes.post("/units/shipped", this::addShipped);
        routes.get("/units/shelf/{file}", this::shelved);
        routes.get("/units/shipped/{file}", this::shipped);
    }

    private void shelf(Context ctx, List<Refusal> faults, Map<String, String> typed) {
        List<Line> there = new ArrayList<>();
        desk.shelf().units().forEach((id, unit) -> there.add(line(id, unit)));
        List<Line> examples = new ArrayList<>();
        desk.shelf().shipped().forEach((name, content) -> {
            if (UnitFiles.read(name, content).outcome() instanceof Outcome.Ok<UnitType> ok
                    && desk.shelf().type(ok.value().id()).isEmpty()) {
                examples.add(new Line(ok.value(), name, ""));
            }
        });
        Page page = door.page(ctx, "Unit files", "", null, faults, typed);
        door.show(
                ctx,
                "units",
                page,
                Map.of(
                        "there",
                        there,
                        "examples",
                        examples,
                        "unsound",
                        desk.shelf().faults()));
    }

    private static Line line(String id, PinnedUnit unit) {
        return new Line(unit.type(), id + ".yaml", unit.hash());
    }

    private void add(Context ctx) {
        Form form = door.form(ctx);
        UploadedFile file = ctx.uploadedFile("file");
        if (file != null && file.size() > 0) {
            put(ctx, form, file.filename(), bytes(file));
        } else if (form.raw("text").isEmpty()) {
            form.fault("text", "unit file", "nothing was chosen or pasted", "Choose a file, or paste its text");
            shelf(ctx, form.faults(), form.typed());
        } else {
            String text = form.typed().getOrDefault("text", "");
            put(ctx, form, PASTED, text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
        }
    }

    private void addShipped(Context ctx) {
        Form form = door.form(ctx);
        byte[] content = desk.shelf().shipped().get(form.raw("name"));
        if (content == null) {
            Pages.lost(ctx, door, "There is no such file among those shipped.");
            return;
        }
        put(ctx, form, form.raw("name"), content);
    }

    private void put(Context ctx, Form form, String name, byte[] content) {
        Outcome<UnitType> added =
                desk.versions().add(name, content, door.signed(ctx, form), "put on the shelf: " + name);
        if (added instanceof Outcome.Ok<UnitType> ok) {
            door.on(ctx, "/units", ok.value().maker() + " " + ok.value().model() + " is on the shelf");
        } else {
            shelf(ctx, added.refusals(), form.typed());
        }
    }

    private static byte[] bytes(UploadedFile file) {
        try (InputStream in = file.content()) {
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void shelved(Context ctx) {
        String name = ctx.pathParam("file");
        String type = name.endsWith(".yaml") ? name.substring(0, name.length() - ".yaml".length()) : name;
        give(ctx, name, desk.shelf().file(type).map(file -> file.content()));
    }

    private void shipped(Context ctx) {
        String name = ctx.pathParam("file");
        give(
                ctx,
                name,
                name.equals("starter.yaml")
                        ? Optional.of(UnitFiles.starter().getBytes(StandardCharsets.UTF_8))
                        : Optional.ofNullable(desk.shelf().shipped().get(name)));
    }

    private void give(Context ctx, String name, Optional<byte[]> content) {
        if (content.isEmpty()) {
            Pages.lost(ctx, door, "There is no such unit file here.");
            return;
        }
        ctx.contentType("application/yaml; charset=utf-8");
        ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        ctx.result(content.get());
    }
}
