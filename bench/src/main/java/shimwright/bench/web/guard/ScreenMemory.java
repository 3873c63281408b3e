package shimwright.bench.web.guard;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import org.eclipse.jetty.http.HttpFields;

/**
 * What a screen may keep of the shop, so that the job in hand goes on without the bench: the worker of the pages may serve the
 * whole site, and a device that is let in no more is told to forget.
 */
public final class ScreenMemory {
    private static final String WORKER = "/static/worker.js";

    /** Heard by the worker. */
    private static final String HEADER = "Shop-Memory";

    private static final String FORGET = "forget";

    /** Heard by the browser itself (Clear Site Data, W3C, section 3.1), where it came by TLS. */
    private static final String CLEAR = "Clear-Site-Data";

    private static final String READ = "\"cache\"";
    private static final String ALL = "\"cache\", \"storage\"";

    private ScreenMemory() {}

    /** Lets the worker, which lies among the static files, serve pages as well (Service Workers, W3C, section 4.4). */
    static void on(JavalinConfig config) {
        config.routes.before(WORKER, ctx -> ctx.header("Service-Worker-Allowed", "/"));
    }

    /**
     * Says to a device that is not let in what it must forget: what it has read of the shop, and, where it was let out, also
     * what was typed on it and never sent. A device whose time is over may be paired again and send that.
     */
    static void forget(HttpFields.Mutable headers, boolean letOut) {
        headers.put(HEADER, FORGET);
        headers.put(CLEAR, letOut ? ALL : READ);
    }

    /** The same to a device that leaves. */
    public static void forget(Context ctx) {
        ctx.header(HEADER, FORGET);
        ctx.header(CLEAR, ALL);
    }
}
