package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.ReadingAnew;
import shimwright.bench.web.api.ApiRoutes;

/** What is shown while a large shop is read from its log, as after a change of the program: how far it is, and the page when it is done. */
final class ReadingPage {
    private static final int WAIT = 503;
    private static final String SECONDS = "2";

    private ReadingPage() {}

    static void before(RoutesConfig routes, Desk desk) {
        routes.before(ctx -> {
            Optional<ReadingAnew> reading = desk.readingAnew();
            if (reading.isPresent() && !ctx.path().startsWith("/static/")) {
                answer(ctx, reading.get());
                ctx.skipRemainingHandlers();
            }
        });
    }

    private static void answer(Context ctx, ReadingAnew reading) {
        ctx.header("Retry-After", SECONDS);
        String far = reading.read() + " of " + reading.of() + " jobs are read";
        if (ctx.path().startsWith(ApiRoutes.ROOT + "/")) {
            ApiRoutes.refuse(ctx, WAIT, "", "the shop is being read: " + far, "Ask again in a moment");
            return;
        }
        ctx.status(WAIT);
        ctx.contentType("text/html; charset=utf-8");
        // a form that was sent is not sent again by itself: its page is gone back to
        boolean looks = ctx.method().name().equals("GET");
        ctx.result("""
                <!DOCTYPE html>
                <html lang="en">
                <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">%s
                <title>One moment · Shimwright</title><link rel="stylesheet" href="/static/bench.css"></head>
                <body><main>
                <h1>One moment</h1>
                <p>The whole log of the shop is read once, as after a change of the program: %s. Nothing is lost, and nothing is kept meanwhile.</p>
                <p><progress value="%d" max="%d"></progress></p>
                <p>%s</p>
                </main></body></html>
                """.formatted(
                        looks ? "<meta http-equiv=\"refresh\" content=\"" + SECONDS + "\">" : "",
                        far,
                        reading.read(),
                        Math.max(1, reading.of()),
                        looks
                                ? "This page comes by itself when it is done."
                                : "What you typed is still in its form: go back and send it again."));
    }
}
