package shimwright.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;

/**
 * The typeface of the pages, out of its library, under addresses that name its version: a device asks for it once. The style
 * sheet and the frame of the pages name the same addresses.
 */
final class Typeface {
    /** Where its files are asked for. */
    static final String PATH = "/static/type/0.10.0/";

    /** Letters, their bold, and the bold of headings. */
    static final List<String> FILES = List.of("Roboto-Regular.woff2", "Roboto-Bold.woff2", "Roboto-Slab-Bold.woff2");

    private static final String LIBRARY = "/META-INF/resources/webjars/roboto-fontface/0.10.0/fonts/";

    private Typeface() {}

    /** Serves its files, to be kept for a year. */
    static void on(RoutesConfig routes) {
        FILES.forEach(file -> routes.get(PATH + file, ctx -> show(ctx, file)));
    }

    private static void show(Context ctx, String file) {
        String folder = file.startsWith("Roboto-Slab") ? "roboto-slab/" : "roboto/";
        InputStream bytes = Objects.requireNonNull(Typeface.class.getResourceAsStream(LIBRARY + folder + file), file);
        ctx.contentType("font/woff2");
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.result(bytes);
    }
}
