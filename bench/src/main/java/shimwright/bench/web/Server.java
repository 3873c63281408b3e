package shimwright.bench.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.staticfiles.Location;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import shimwright.bench.desk.Desk;
import shimwright.bench.web.api.ActRoutes;
import shimwright.bench.web.api.ApiRoutes;
import shimwright.bench.web.api.BundleRoutes;
import shimwright.bench.web.api.UnitRoutes;
import shimwright.bench.web.clearance.ClearancePages;
import shimwright.bench.web.clearance.SharedShimsPages;
import shimwright.bench.web.guard.Entrance;
import shimwright.bench.web.guard.Guard;
import shimwright.bench.web.guard.Memory;
import shimwright.bench.web.guard.RequestDenied;
import shimwright.bench.web.job.BuildPages;
import shimwright.bench.web.job.DifferencePages;
import shimwright.bench.web.job.FirstUnitPages;
import shimwright.bench.web.job.InspectPages;
import shimwright.bench.web.job.IntakePages;
import shimwright.bench.web.job.OrderPages;
import shimwright.bench.web.job.PartDrawings;
import shimwright.bench.web.job.TagPages;
import shimwright.bench.web.kit.Behind;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.Page;
import shimwright.bench.web.kit.Pages;
import shimwright.bench.web.kit.Paper;
import shimwright.bench.web.kit.SheetWork;
import shimwright.bench.web.money.MoneyPages;
import shimwright.bench.web.plan.LearnPages;
import shimwright.bench.web.plan.PeoplePages;
import shimwright.bench.web.plan.PlanPages;
import shimwright.bench.web.plan.SidesPages;
import shimwright.bench.web.record.BenchSheetPages;
import shimwright.bench.web.record.GuidePages;
import shimwright.bench.web.record.RecordPages;
import shimwright.bench.web.sheet.JobSheetPages;
import shimwright.bench.web.sheet.PartPages;
import shimwright.bench.web.sheet.SheetPages;
import shimwright.bench.web.shop.BundlePages;
import shimwright.bench.web.shop.DevicePages;
import shimwright.bench.web.shop.EntryPages;
import shimwright.bench.web.shop.GaugePages;
import shimwright.bench.web.shop.ShelfPages;
import shimwright.bench.web.shop.ShopPages;
import shimwright.bench.web.shop.UnitHistoryPages;
import shimwright.bench.web.shop.UnitPages;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.job.StoreFailure;

/** The web server: routes, headers, and what is said when something breaks. */
public final class Server {
    private static final Logger LOG = LoggerFactory.getLogger(Server.class);

    /** What shows nothing of the log, or is no page. */
    private static final Pattern STILL = Pattern.compile("/(static|api|sheets?|picture|pair|devices|mark|me)(/|$)");

    private Server() {}

    /**
     * A server that is ready to be started.
     *
     * @param desk jobs, shop and pictures
     * @param paper makes PDFs
     * @param ids makes ids for entries where the browser did not
     * @param zone the shop's time zone
     * @param entrance where it listens, and who may come in
     */
    // size: one line for each room of pages
    public static Javalin of(Desk desk, Paper paper, Supplier<String> ids, ZoneId zone, Entrance entrance) {
        Door door = new Door(ids, zone, desk::facts);
        return Javalin.create(config -> {
            Guard.on(config, entrance);
            Typeface.on(config.routes);
            ReadingPage.before(config.routes, desk);
            marks(config, desk);
            SheetWork sheets = new SheetWork();
            Behind<SharedShims.Asked, SharedShims> shims = new Behind<>("looks through a drawer");
            new ShopPages(desk, door).routes(config.routes);
            new GaugePages(desk, door).routes(config.routes);
            new ShelfPages(desk, door).routes(config.routes);
            new BundlePages(desk, door).routes(config.routes);
            new UnitPages(desk, door).routes(config.routes);
            new UnitHistoryPages(desk, door).routes(config.routes);
            new EntryPages(desk, door).routes(config.routes);
            new IntakePages(desk, door).routes(config.routes);
            new FirstUnitPages(desk, door).routes(config.routes);
            InspectPages inspect = new InspectPages(desk, door);
            inspect.routes(config.routes);
            new DifferencePages(desk, door).routes(config.routes);
            new OrderPages(desk, door, paper).routes(config.routes);
            new TagPages(desk, door, paper, entrance).routes(config.routes);
            new MoneyPages(desk, door, paper).routes(config.routes);
            new BuildPages(desk, door, inspect).routes(config.routes);
            new PartDrawings(desk, door).routes(config.routes);
            new PlanPages(desk, door).routes(config.routes);
            new PeoplePages(desk, door).routes(config.routes);
            new SidesPages(desk, door).routes(config.routes);
            new LearnPages(desk, door).routes(config.routes);
            new ClearancePages(desk, door).routes(config.routes);
            new SharedShimsPages(desk, door, shims).routes(config.routes);
            new RecordPages(desk, door, paper).routes(config.routes);
            new BenchSheetPages(desk, door, paper).routes(config.routes);
            new GuidePages(desk, door, paper).routes(config.routes);
            new SheetPages(door, paper, sheets).routes(config.routes);
            new JobSheetPages(desk, door, sheets).routes(config.routes);
            new PartPages(door).routes(config.routes);
            new ApiRoutes(sheets).routes(config.routes);
            new ActRoutes(desk, door, shims).routes(config.routes);
            new UnitRoutes(desk, door).routes(config.routes);
            new BundleRoutes(desk, door).routes(config.routes);
            new DevicePages(entrance, door, desk::now).routes(config.routes);
            config.routes.get(
                    "/job/{job}", ctx -> door.on(ctx, "/job/" + Pages.encoded(ctx.pathParam("job")) + "/build", ""));
            config.routes.error(404, ctx -> {
                if (lostProgram(ctx)) {
                    ApiRoutes.refuse(ctx, 404, "", "there is nothing at " + ctx.path(), "See /api/openapi.json");
                } else if (ctx.result() == null
                        || ctx.result().isBlank()
                        || ctx.result().startsWith("Endpoint")) {
                    Pages.lost(ctx, door, "There is no such page here.");
                }
            });
            faults(config, door);
            // last, for it waits for what is made ready beside it
            files(config);
        });
    }

    /** Loads what every server needs and throws it away, so that the first is there sooner; without it nothing is missing. */
    public static void makeReady() {
        Javalin.create(Server::files);
    }

    private static void files(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.staticFiles.add(files -> {
            files.hostedPath = "/static";
            files.directory = "/static";
            files.location = Location.CLASSPATH;
        });
    }

    /** A page carries the mark of what it shows, taken before it is made; asked for it again, it learns that others kept more. */
    private static void marks(JavalinConfig config, Desk desk) {
        config.routes.before(ctx -> {
            if (!STILL.matcher(ctx.path()).lookingAt()) {
                ctx.attribute(Door.MARK, desk.mark(ctx.path()));
            }
        });
        config.routes.get("/mark", ctx -> {
            String of = ctx.queryParam("of");
            ctx.contentType("text/plain; charset=utf-8");
            ctx.result(desk.mark(of == null ? "" : of));
        });
    }

    /** What is said where a request is refused, the disk fails or the program has a fault: a sentence, never a trace. */
    private static void faults(JavalinConfig config, Door door) {
        config.routes.exception(RequestDenied.class, (denied, ctx) -> {
            if (ctx.path().startsWith(ApiRoutes.ROOT + "/")) {
                ApiRoutes.refuse(ctx, denied.status(), "", denied.refusals());
                return;
            }
            Page page = door.page(ctx, "Not kept", "", null, denied.refusals(), Map.of());
            door.show(ctx, "lost", page, Map.of("sentence", "What you typed is still in its form: go back."));
            ctx.status(denied.status());
        });
        config.routes.exception(StoreFailure.class, (failure, ctx) -> {
            LOG.error("{} {}", ctx.method(), ctx.path(), failure);
            if (ctx.path().startsWith(ApiRoutes.ROOT + "/")) {
                ApiRoutes.refuse(ctx, 503, "", List.of(failure.refusal()));
                return;
            }
            Page page = door.page(ctx, "The disk", "", null, List.of(failure.refusal()), Map.of());
            door.show(ctx, "lost", page, Map.of("sentence", "What you typed is still in its form: go back."));
            ctx.status(503);
        });
        config.routes.exception(Exception.class, (broken, ctx) -> {
            if (Memory.ranOut(broken)) {
                LOG.error("{} {}: out of memory", ctx.method(), ctx.path());
                ctx.status(Memory.STATUS);
                ctx.html(Memory.page());
                return;
            }
            LOG.error("{} {}", ctx.method(), ctx.path(), broken);
            if (ctx.path().startsWith(ApiRoutes.ROOT + "/")) {
                ApiRoutes.refuse(ctx, 500, "", "the program has a fault here", "Tell who looks after it");
                return;
            }
            ctx.status(500);
            ctx.html(
                    door.render(
                            "lost",
                            Map.of(
                                    "page",
                                    door.page(ctx, "A fault of ours", "", null),
                                    "sentence",
                                    "The program has a fault here. What you typed is still in this form: go back. Nothing that was kept is lost.")));
        });
    }

    private static boolean lostProgram(Context ctx) {
        return ctx.path().startsWith(ApiRoutes.ROOT + "/")
                && !String.valueOf(ctx.res().getContentType()).startsWith("application/json");
    }
}
