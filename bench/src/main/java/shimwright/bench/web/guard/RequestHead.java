package shimwright.bench.web.guard;

import java.util.Locale;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.Request;
import org.jspecify.annotations.Nullable;

/**
 * What a request says of itself, before its body.
 *
 * @param method as sent
 * @param path decoded, without parameters; empty where the address is none
 * @param address path and query as sent
 * @param secure over TLS
 * @param authority host and port it asked for, lower case; empty where it named none
 * @param headers all
 */
record RequestHead(String method, String path, String address, boolean secure, String authority, HttpFields headers) {

    static RequestHead of(Request request) {
        String named = request.getHttpURI().getAuthority();
        String header = request.getHeaders().get("Host");
        String authority = named != null ? named : header == null ? "" : header;
        String path = request.getHttpURI().getDecodedPath();
        return new RequestHead(
                request.getMethod(),
                path == null ? "" : path,
                String.valueOf(request.getHttpURI().getPathQuery()),
                request.isSecure(),
                authority.toLowerCase(Locale.ROOT),
                request.getHeaders());
    }

    /** A header's value; empty where it is missing. */
    String header(String name) {
        String value = headers.get(name);
        return value == null ? "" : value.strip();
    }

    boolean has(String name) {
        return headers.contains(name);
    }

    /** True where nothing is to be changed. */
    boolean looks() {
        return method.equals("GET") || method.equals("HEAD");
    }

    /** True where a program asks, which is answered in JSON. */
    boolean byProgram() {
        return path.equals("/api") || path.startsWith("/api/");
    }

    /** The host without its port. */
    String host() {
        return hostOf(authority);
    }

    static String hostOf(@Nullable String authority) {
        if (authority == null) {
            return "";
        }
        int end = authority.startsWith("[") ? authority.indexOf(']') + 1 : authority.indexOf(':');
        return end <= 0 ? authority : authority.substring(0, end);
    }

    /** Scheme, host and port as a browser writes an origin. */
    String origin() {
        return (secure ? "https://" : "http://") + authority;
    }
}
