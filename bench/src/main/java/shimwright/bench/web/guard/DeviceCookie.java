package shimwright.bench.web.guard;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.server.Request;

/**
 * The cookie in which a device keeps its key: no script reads it, no other site has it sent, and over TLS its name binds
 * it to this host (RFC 6265bis, section 4.1.3.2).
 */
public final class DeviceCookie {
    private static final String SECURE = "__Host-device";
    private static final String PLAIN = "device";
    private static final int HALF_A_YEAR = 180 * 24 * 3600;

    private DeviceCookie() {}

    private static String name(boolean secure) {
        return secure ? SECURE : PLAIN;
    }

    /** The key that a request shows; empty for none. */
    static String of(Request request) {
        String name = name(request.isSecure());
        return Request.getCookies(request).stream()
                .filter(cookie -> cookie.getName().equals(name))
                .map(HttpCookie::getValue)
                .filter(value -> value != null && value.length() <= RequestLimits.COOKIE)
                .findFirst()
                .orElse("");
    }

    /** Gives a device its key. */
    public static void give(Context ctx, String key) {
        boolean secure = ctx.req().isSecure();
        ctx.cookie(new Cookie(name(secure), key, "/", HALF_A_YEAR, secure, true, null, SameSite.STRICT));
    }

    /** Takes it away. */
    public static void take(Context ctx) {
        boolean secure = ctx.req().isSecure();
        ctx.cookie(new Cookie(name(secure), "", "/", 0, secure, true, null, SameSite.STRICT));
    }
}
