package shimwright.bench.web.api;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.bench.sheet.DrawOptions;
import shimwright.bench.sheet.OpenApi;
import shimwright.bench.sheet.PartLookup;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.web.kit.Door;
import shimwright.bench.web.kit.SheetWork;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * The door for programs: every worksheet as JSON, one case or many. Refused inputs are 422, what cannot be read is 400;
 * each time with the sentences a person would get.
 */
public final class ApiRoutes {
    public static final String ROOT = "/api";

    private final SheetWork work;

    /**
     * Lays nothing yet.
     *
     * @param work where worksheets are answered
     */
    public ApiRoutes(SheetWork work) {
        this.work = work;
    }

    /** Lays the addresses of these pages. */
    public void routes(RoutesConfig routes) {
        routes.get(ROOT + "/worksheets", ctx -> json(ctx, 200, SheetJson.list()));
        routes.get(ROOT + "/openapi.json", ctx -> json(ctx, 200, OpenApi.description()));
        routes.get(ROOT + "/worksheets/{name}", this::describe);
        routes.post(ROOT + "/worksheets/{name}", this::worked);
        routes.get(ROOT + "/parts", ApiRoutes::parts);
    }

    static void json(Context ctx, int status, Object value) {
        ctx.status(status);
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(SheetJson.line(value));
    }

    /** Says in a sentence what is wrong, in the shape of a refusal. */
    public static void refuse(Context ctx, int status, String sheet, List<Refusal> refusals) {
        json(ctx, status, SheetJson.refusals(sheet, refusals, 0));
    }

    /** Answers with a refusal that has one fault. */
    public static void refuse(Context ctx, int status, String place, String fact, String hint) {
        refuse(ctx, status, "", List.of(Refusal.at(place, fact, hint)));
    }

    private static Optional<Worksheet<?, ?>> sheet(Context ctx) {
        String name = ctx.pathParam("name");
        Optional<Worksheet<?, ?>> found = Registry.find(name);
        if (found.isEmpty()) {
            refuse(ctx, 404, "", "there is no worksheet \"" + name + "\"", "GET " + ROOT + "/worksheets lists them");
        }
        return found;
    }

    private static @Nullable UnitSystem system(Context ctx) {
        String units = ctx.queryParam("units");
        if (units == null || units.equals("metric")) {
            return UnitSystem.METRIC;
        }
        if (units.equals("inch")) {
            return UnitSystem.INCH;
        }
        refuse(ctx, 400, "units", "\"" + units + "\" is not known", "Ask for units=inch or units=metric");
        return null;
    }

    private static void parts(Context ctx) {
        UnitSystem system = system(ctx);
        if (system == null) {
            return;
        }
        PartLookup asked = PartLookup.of(
                Optional.ofNullable(ctx.queryParam("stamp")).orElse(""),
                Optional.ofNullable(ctx.queryParam("sizes")).orElse(""),
                system);
        if (!asked.asked()) {
            refuse(ctx, 400, "stamp", "nothing asked", "Ask for stamp=6206 or sizes=25x52x15");
        } else if (asked.faults().isEmpty()) {
            json(ctx, 200, asked.json());
        } else {
            refuse(ctx, 422, "parts", asked.faults());
        }
    }

    private void describe(Context ctx) {
        UnitSystem system = system(ctx);
        if (system != null) {
            sheet(ctx).ifPresent(sheet -> json(ctx, 200, SheetJson.describe(sheet, system)));
        }
    }

    private void worked(Context ctx) throws IOException {
        UnitSystem system = system(ctx);
        Optional<Worksheet<?, ?>> sheet = system == null ? Optional.empty() : sheet(ctx);
        if (system == null || sheet.isEmpty()) {
            return;
        }
        List<Refusal> undrawn = new ArrayList<>();
        Optional<Sampling> draws = DrawOptions.ADDRESS.waited(sheet.get(), Door.draws(ctx), undrawn);
        if (!undrawn.isEmpty()) {
            refuse(ctx, 422, sheet.get().name(), undrawn);
            return;
        }
        new CaseRequest(ctx, sheet.get(), system, draws, work).answer();
    }
}
