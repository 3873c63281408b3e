package shimwright.planted.bench.web;

import io.javalin.http.Context;

/** Planted to break a rule of the house. */
final class LeadsAway {
    private LeadsAway() {}

    static void away(Context ctx) {
        ctx.redirect(ctx.path());
    }
}
