package shimwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import shimwright.bench.command.Options;
import shimwright.bench.web.kit.Behind;
import shimwright.mechanics.outcome.Outcome;

/** The real program on a copy of the demo shop, on a free port. */
final class DemoBench implements AutoCloseable {
    private static final Options FREE_PORT = new Options(Map.of("port", "0"));

    /** The demo shop is played once in a run of the tests; every test gets its own copy. */
    private static final class Played {
        static final Path FOLDER = play();

        private static Path play() {
            try {
                Path folder = Files.createTempDirectory("shimwright-played-");
                open(folder, true, FREE_PORT).close();
                return folder;
            } catch (IOException full) {
                throw new UncheckedIOException(full);
            }
        }
    }

    private final Path folder;
    private final Options options;
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NORMAL)
            .build();
    private Serving.Running running;
    /** Entries that were given an id here. */
    private int kept;

    private DemoBench(Path folder, Options options) {
        this.folder = folder;
        this.options = options;
        this.running = open(folder, false, options);
    }

    static DemoBench fresh() {
        return new DemoBench(copy(), FREE_PORT);
    }

    /** The program on a folder of one's own, with no demo data. */
    static DemoBench at(Path folder) {
        return new DemoBench(folder, FREE_PORT);
    }

    /** The same with other options, name and value by turns. */
    static DemoBench with(String... options) {
        Map<String, String> all = new java.util.LinkedHashMap<>(FREE_PORT.values());
        for (int i = 0; i < options.length; i += 2) {
            all.put(options[i], options[i + 1]);
        }
        return new DemoBench(copy(), new Options(all));
    }

    /** A copy of the played shop's data. */
    static Path copy() {
        try {
            Path to = Files.createTempDirectory("shimwright-test-");
            try (Stream<Path> all = Files.walk(Played.FOLDER)) {
                for (Path from : (Iterable<Path>) all::iterator) {
                    Path target = to.resolve(Played.FOLDER.relativize(from).toString());
                    if (Files.isDirectory(from)) {
                        Files.createDirectories(target);
                    } else {
                        Files.copy(from, target);
                    }
                }
            }
            return to;
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    private static Serving.Running open(Path folder, boolean demo, Options options) {
        Outcome<Serving.Running> opened = Serving.open(folder, options, demo, Clock.systemUTC());
        return opened.orElseThrow();
    }

    /** Stops the program and starts it again on the same data. */
    void restart() {
        close();
        reopen();
    }

    /** Starts the program again on the same data after it was closed. */
    void reopen() {
        running = open(folder, false, options);
    }

    /** Every route of the program as it was declared, and what lies beside the routes. */
    List<String> routes() {
        List<String> routes = new ArrayList<>(running.server().unsafe.internalRouter.allHttpHandlers().stream()
                .filter(route -> List.of("GET", "POST").contains(route.endpoint.method.name()))
                .map(route -> route.endpoint.path)
                .distinct()
                .toList());
        routes.addAll(List.of("/static/bench.js", "/static/none", "/static/../bench.js", "/nowhere", "*"));
        return List.copyOf(routes);
    }

    Serving.Running running() {
        return running;
    }

    Path folder() {
        return folder;
    }

    String url(String path) {
        return "http://127.0.0.1:" + running.server().port() + path;
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(url(path))).GET().build());
    }

    /** The page as a person has it in the end: while something is worked out behind it, it asks again. */
    Document page(String path) {
        return Jsoup.parse(settled(path).body());
    }

    /** The same answer as a whole. */
    HttpResponse<String> settled(String path) {
        for (int asked = 0; asked < 200; asked++) {
            HttpResponse<String> answer = get(path);
            if (!answer.body().contains("data-again=\"" + Behind.AGAIN + "\"")) {
                return answer;
            }
        }
        throw new AssertionError(path + " is worked out for ever");
    }

    byte[] bytes(String path) {
        try {
            return client.send(HttpRequest.newBuilder(URI.create(url(path))).build(), BodyHandlers.ofByteArray())
                    .body();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    /** Posts a form given as name, value, name, value. */
    HttpResponse<String> post(String path, String... fields) {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return send(HttpRequest.newBuilder(URI.create(url(path)))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(String.join("&", pairs)))
                .build());
    }

    /** Posts a form that makes an entry, under an id of its own. */
    HttpResponse<String> keep(String path, String... fields) {
        String[] all = Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = "entry";
        all[fields.length + 1] = "kept-by-test-" + kept++;
        return post(path, all);
    }

    /** Posts a body of some type. */
    HttpResponse<String> delete(String path) {
        return send(HttpRequest.newBuilder(URI.create(url(path))).DELETE().build());
    }

    HttpResponse<String> postBody(String path, String type, String body) {
        return send(HttpRequest.newBuilder(URI.create(url(path)))
                .header("Content-Type", type)
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    /** Posts a picture beside text fields. */
    HttpResponse<String> upload(String path, String name, byte[] content, String... fields) {
        return uploadAs("picture", path, name, content, fields);
    }

    /** Posts bytes of some type. */
    HttpResponse<String> postBytes(String path, String type, byte[] body) {
        return send(HttpRequest.newBuilder(URI.create(url(path)))
                .header("Content-Type", type)
                .POST(BodyPublishers.ofByteArray(body))
                .build());
    }

    /** Posts a file in a field beside text fields. */
    HttpResponse<String> uploadAs(String field, String path, String name, byte[] content, String... fields) {
        String edge = "edge-of-this-form";
        StringBuilder head = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            head.append("--" + edge + "\r\nContent-Disposition: form-data; name=\"" + fields[i] + "\"\r\n\r\n"
                    + fields[i + 1] + "\r\n");
        }
        head.append("--" + edge + "\r\nContent-Disposition: form-data; name=\"" + field + "\"; filename=\"" + name
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n");
        return send(HttpRequest.newBuilder(URI.create(url(path)))
                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                .POST(BodyPublishers.concat(
                        BodyPublishers.ofString(head.toString()),
                        BodyPublishers.ofByteArray(content),
                        BodyPublishers.ofString("\r\n--" + edge + "--\r\n")))
                .build());
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    @Override
    public void close() {
        running.close();
    }
}
