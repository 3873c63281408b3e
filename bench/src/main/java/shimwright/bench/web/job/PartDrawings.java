package shimwright.bench.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.part.PartPicture;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Pages;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.PinnedUnit;

/** The drawing of one part of a unit, in a job or outside of any, fetched when it is looked at. */
public final class PartDrawings {
    private final Desk desk;
    private final Door door;

    public PartDrawings(Desk desk, Door door) {
        this.desk = desk;
        this.door = door;
    }

    /** Lays the addresses of the drawings. */
    public void routes(RoutesConfig routes) {
        routes.get("/job/{job}/part/item/{part}", this::item);
        routes.get("/job/{job}/part/fastener/{part}", this::fastener);
        routes.get("/units/part/{type}/{part}", this::ofType);
    }

    private void item(Context ctx) {
        Pages.bench(ctx, desk, door).map(JobOnBench::unit).ifPresent(unit -> {
            Optional<Item> item = unit.type().items().stream()
                    .filter(one -> one.id().equals(ctx.pathParam("part")))
                    .findFirst();
            answer(ctx, item.map(one -> PartPicture.of(unit, one, step(ctx, unit), "part", door.system(ctx))));
        });
    }

    /** Of a unit type outside of any job, in the first variant that has the part. */
    private void ofType(Context ctx) {
        PinnedUnit file = desk.shelf().units().get(ctx.pathParam("type"));
        Optional<String> drawn = file == null
                ? Optional.empty()
                : file.type().variants().keySet().stream()
                        .flatMap(variant -> file.unit(variant).stream())
                        .flatMap(unit -> unit.type().items().stream()
                                .filter(one -> one.id().equals(ctx.pathParam("part")))
                                .map(one -> PartPicture.of(unit, one, Optional.empty(), "part", door.system(ctx))))
                        .findFirst();
        answer(ctx, drawn);
    }

    private void fastener(Context ctx) {
        Pages.bench(ctx, desk, door).map(JobOnBench::unit).ifPresent(unit -> {
            Optional<Fastener> fastener = unit.type().fasteners().stream()
                    .filter(one -> one.id().equals(ctx.pathParam("part")))
                    .findFirst();
            answer(ctx, fastener.map(one -> PartPicture.of(unit, one, "part", door.system(ctx))));
        });
    }

    private static Optional<Step> step(Context ctx, Unit unit) {
        return Optional.ofNullable(ctx.queryParam("step")).flatMap(unit::findStep);
    }

    private void answer(Context ctx, Optional<String> svg) {
        if (svg.isEmpty()) {
            Pages.lost(ctx, door, "There is no such part in this unit.");
            return;
        }
        ctx.contentType("image/svg+xml");
        ctx.header("Cache-Control", "private, no-cache");
        ctx.result(svg.get());
    }
}
