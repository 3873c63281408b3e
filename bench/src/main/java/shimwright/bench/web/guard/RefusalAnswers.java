package shimwright.bench.web.guard;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import shimwright.bench.sheet.SheetJson;
import shimwright.bench.text.Characters;
import shimwright.mechanics.outcome.Refusal;

/** Sentences to who asked what is not answered, without a template: as a small page, or as JSON to a program. */
public final class RefusalAnswers {
    /** What a page of this shop may load and where it may send to; everything of its own. */
    public static final String POLICY =
            "default-src 'self'; img-src 'self' data: blob:; style-src 'self' 'unsafe-inline'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'; form-action 'self'";

    private RefusalAnswers() {}

    /** The headers that every answer carries. */
    static void headers(HttpFields.Mutable headers) {
        headers.put("Content-Security-Policy", POLICY);
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("Referrer-Policy", "same-origin");
        headers.put("Cross-Origin-Opener-Policy", "same-origin");
        headers.put("Cross-Origin-Resource-Policy", "same-origin");
        headers.put("Cache-Control", "no-store");
    }

    static void write(Response response, Callback callback, boolean json, int status, List<Refusal> refusals) {
        response.setStatus(status);
        headers(response.getHeaders());
        byte[] body = body(json, refusals).getBytes(StandardCharsets.UTF_8);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, type(json));
        response.getHeaders().put(HttpHeader.CONTENT_LENGTH, body.length);
        response.write(true, java.nio.ByteBuffer.wrap(body), callback);
    }

    static String type(boolean json) {
        return json ? "application/json; charset=utf-8" : "text/html; charset=utf-8";
    }

    static String body(boolean json, List<Refusal> refusals) {
        return json ? SheetJson.line(SheetJson.refusals("", refusals, 0)) : page(refusals);
    }

    /** A whole page that says why. */
    public static String page(List<Refusal> refusals) {
        StringBuilder lines = new StringBuilder();
        refusals.forEach(refusal ->
                lines.append("<li>").append(escaped(refusal.sentence())).append("</li>\n"));
        return """
                <!DOCTYPE html>
                <html lang="en">
                <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
                <title>Not done · Shimwright</title><link rel="stylesheet" href="/static/bench.css"></head>
                <body><main>
                <h1>Not done</h1>
                <section class="faults" role="alert"><ul>
                %s</ul></section>
                <p>What you typed is still in its form: go back. Nothing that was kept is lost.</p>
                <p><a class="button" href="/">To the shop</a></p>
                </main></body></html>
                """.formatted(lines);
    }

    private static String escaped(String text) {
        return Characters.harmless(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }
}
