package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.javalin.Javalin;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Semaphore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.command.Options;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.ReadingAnew;
import shimwright.bench.desk.UnitShelf;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.disk.DataFolder;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.SummaryFile;
import shimwright.bench.web.Server;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.StoreFailure;

/** After a change of the program a large shop is read once: pages say how far it is, and what was read is kept on the way. */
class ReadingAnewTest {
    private static final int NOTES = 42;
    private static final int KEPT_EVERY = 200;
    /** So many that nothing is left to be written once the last was read. */
    private static final int JOBS = 3 * KEPT_EVERY;

    private final HttpClient client = HttpClient.newHttpClient();
    private final Semaphore jobsToRead = new Semaphore(0);
    private boolean damaged;

    @Test
    void pagesSayHowFarItIsAndAStopOnTheWayLosesLittle(@TempDir Path folder) throws Exception {
        try (ShopStore store =
                ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            fill(store.log());
            try (SummaryFile file = SummaryFile.in(folder, "one")) {
                oneThatIsClosedMeanwhileReadsNoMore(store, file);
                oneThatCannotBeReadKeepsNoPageWaiting(store, file);
                Desk desk = desk(store, file);
                assertThat(desk.readingAnew()).contains(new ReadingAnew(0, JOBS));
                Javalin server = server(folder, store, desk);
                CompletableFuture<Void> read = CompletableFuture.runAsync(desk::lines);
                try {
                    jobsToRead.release(KEPT_EVERY + 10);
                    String far = "\\b2(0|1)\\d of " + JOBS + " jobs are read";
                    waitUntil(() -> desk.readingAnew().orElseThrow().read() >= KEPT_EVERY + 10);
                    HttpResponse<String> page = ask(server, "/");
                    assertThat(page.statusCode()).isEqualTo(503);
                    assertThat(page.headers().firstValue("Content-Security-Policy"))
                            .isPresent();
                    assertThat(page.body()).containsPattern(far).contains("http-equiv=\"refresh\"");
                    HttpResponse<String> program = ask(server, "/api/jobs");
                    assertThat(program.statusCode()).isEqualTo(503);
                    assertThat(program.body()).startsWith("{").containsPattern(far);
                    assertThat(ask(server, "/static/bench.css").statusCode()).isEqualTo(200);
                    HttpResponse<String> sent = post(server, "/drawer", "piece=a&family=SH80&t1=1.0");
                    assertThat(sent.statusCode()).isEqualTo(503);
                    assertThat(sent.body())
                            .contains("go back and send it again")
                            .doesNotContain("refresh");
                    assertThat(file.all()).hasSizeBetween(KEPT_EVERY, KEPT_EVERY + 10);
                } finally {
                    jobsToRead.release(JOBS);
                    read.join();
                }
                assertThat(desk.readingAnew()).isEmpty();
                assertThat(ask(server, "/").statusCode()).isEqualTo(200);
                assertThat(desk.lines()).hasSize(JOBS);
                server.stop();
            }
            try (SummaryFile file = SummaryFile.in(folder, "one")) {
                assertThat(desk(store, file).readingAnew()).isEmpty();
            }
        }
    }

    private void oneThatIsClosedMeanwhileReadsNoMore(ShopStore store, SummaryFile file) {
        Desk closed = desk(store, file);
        closed.stopReading();
        closed.lines();
        assertThat(closed.readingAnew()).contains(new ReadingAnew(0, JOBS));
    }

    private void oneThatCannotBeReadKeepsNoPageWaiting(ShopStore store, SummaryFile file) {
        damaged = true;
        Desk desk = desk(store, file);
        assertThatThrownBy(desk::lines).isInstanceOf(StoreFailure.class);
        assertThat(desk.readingAnew()).isEmpty();
        damaged = false;
    }

    private static void fill(JobLog log) {
        for (int job = 0; job < JOBS; job++) {
            String stream = "job-" + job;
            List<Draft> drafts = new ArrayList<>();
            drafts.add(draft(
                    stream,
                    "opened",
                    new Entry.JobOpened("V-" + job, "unit", "A", "owner", List.of(), Map.of(), "", "")));
            for (int note = 0; note < NOTES; note++) {
                drafts.add(draft(stream, "note-" + note, new Entry.NoteMade("job", "note " + note)));
            }
            log.append(drafts, Heads.ofLog(log.head())).orElseThrow();
        }
    }

    private static Draft draft(String stream, String id, Entry entry) {
        return new Draft(stream, stream + id, Instant.EPOCH, "the bench", entry);
    }

    private Desk desk(ShopStore store, SummaryFile file) {
        UnitShelf none = new UnitShelf(UnitFolder.in(Path.of("no such folder")), store.documents());
        return new Desk(gated(store.log()), store.pictures(), none, Clock.systemUTC(), Optional.of(file));
    }

    private static Javalin server(Path folder, ShopStore store, Desk desk) {
        Path network = new DataFolder(folder).network();
        return Server.of(
                        desk,
                        new SignedPaper(store.log().signing()),
                        () -> "id",
                        ZoneOffset.UTC,
                        Network.entrance(new Options(Map.of()), 0, network, Clock.systemUTC(), () -> {})
                                .orElseThrow())
                .start();
    }

    private HttpResponse<String> ask(Javalin server, String path) throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(address(server, path)).build());
    }

    private HttpResponse<String> post(Javalin server, String path, String body)
            throws IOException, InterruptedException {
        return send(HttpRequest.newBuilder(address(server, path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build());
    }

    private HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static URI address(Javalin server, String path) {
        return URI.create("http://127.0.0.1:" + server.port() + path);
    }

    private static void waitUntil(java.util.function.BooleanSupplier done) {
        while (!done.getAsBoolean()) {
            Thread.onSpinWait();
        }
    }

    /** The same log, which reads a job only when it may. */
    private JobLog gated(JobLog log) {
        return (JobLog) Proxy.newProxyInstance(
                JobLog.class.getClassLoader(), new Class<?>[] {JobLog.class}, (proxy, method, args) -> {
                    if (method.getName().equals("read") && !args[0].equals(JobLog.SHOP)) {
                        if (damaged) {
                            throw new StoreFailure(Refusal.of("log", "an entry is damaged", "Lay a backup back"));
                        }
                        jobsToRead.acquire();
                    }
                    try {
                        return method.invoke(log, args);
                    } catch (InvocationTargetException failed) {
                        throw Objects.requireNonNull(failed.getCause());
                    }
                });
    }
}
