package shimwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.bench.command.Options;

/** The real program on a data folder, with a clock that the test sets, reached by HTTP alone. */
public final class ClockedBench implements AutoCloseable {
    private static final Options FREE_PORT = new Options(Map.of("port", "0"));

    private final Path folder;
    private final HttpClient client = HttpClient.newHttpClient();
    private final SetClock clock;
    private Serving.Running running;

    private static final class SetClock extends Clock {
        private volatile Instant now;

        private SetClock(Instant now) {
            this.now = now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    /** Status and body of an answer. */
    public record Answer(int status, String body) {}

    public ClockedBench(Path folder, Instant now) {
        this.folder = folder;
        this.clock = new SetClock(now);
        this.running = open();
    }

    private Serving.Running open() {
        return Serving.open(folder, FREE_PORT, false, clock).orElseThrow();
    }

    /** The program stops and is started again on the same folder. */
    public void restart() {
        running.close();
        running = open();
    }

    public Path folder() {
        return folder;
    }

    public Instant now() {
        return clock.now;
    }

    public void later(Duration by) {
        clock.now = clock.now.plus(by);
    }

    public Answer get(String path) {
        HttpResponse<String> answer = send(request(path).build(), BodyHandlers.ofString());
        return new Answer(answer.statusCode(), answer.body());
    }

    public byte[] bytes(String path) {
        return send(request(path).build(), BodyHandlers.ofByteArray()).body();
    }

    /** Posts JSON. */
    public Answer post(String path, String json) {
        return post(path, "application/json", BodyPublishers.ofString(json));
    }

    public Answer post(String path, byte[] content) {
        return post(path, "application/octet-stream", BodyPublishers.ofByteArray(content));
    }

    /** Posts a form of a page; one that is kept is answered with where to go on. */
    public Answer form(String path, Map<String, ?> fields) {
        String body = fields.entrySet().stream()
                .flatMap(field -> (field.getValue() instanceof List<?> many ? many : List.of(field.getValue()))
                        .stream()
                                .map(one -> field.getKey() + "="
                                        + URLEncoder.encode(one.toString(), StandardCharsets.UTF_8)))
                .collect(Collectors.joining("&"));
        return post(path, "application/x-www-form-urlencoded", BodyPublishers.ofString(body));
    }

    private Answer post(String path, String type, HttpRequest.BodyPublisher body) {
        HttpRequest request =
                request(path).header("Content-Type", type).POST(body).build();
        HttpResponse<String> answer = send(request, BodyHandlers.ofString());
        return new Answer(answer.statusCode(), answer.body());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(
                URI.create("http://127.0.0.1:" + running.server().port() + path));
    }

    private <T> HttpResponse<T> send(HttpRequest request, HttpResponse.BodyHandler<T> handler) {
        try {
            return client.send(request, handler);
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
