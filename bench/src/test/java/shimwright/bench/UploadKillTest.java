package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.LoggerFactory;
import shimwright.bench.store.SamplePictures;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.log.OpenLog;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.LogEntry;

/** The program is killed while pictures are on their way to it: what was answered is there, and no half of one is left. */
class UploadKillTest {
    /** Set by {@code -Dshimwright.uploadkills=100} for a long run. */
    private static final int KILLS = Integer.getInteger("shimwright.uploadkills", 3);

    private static final int BENCHES = 4;

    private final Random random = new Random(20261129);
    private final Set<String> answered = ConcurrentHashMap.newKeySet();
    private final Set<Integer> others = ConcurrentHashMap.newKeySet();

    @Test
    void whatWasAnsweredIsThereAndNothingIsLeftBehind(@TempDir Path work) throws IOException, InterruptedException {
        Path data = DemoBench.copy();
        for (int kill = 0; kill < KILLS; kill++) {
            try (ProgramProcess program = ProgramProcess.serve(work, data, 0, List.of("-Xmx200m"))) {
                assertThat(left(program.temporary())).as("before kill %d", kill).isEmpty();
                int before = answered.size();
                CountDownLatch begun = new CountDownLatch(BENCHES);
                List<Thread> benches = new ArrayList<>();
                for (int bench = 0; bench < BENCHES; bench++) {
                    String name = "kill-" + kill + "-" + bench;
                    Thread thread = new Thread(() -> work(program.port(), name, begun));
                    thread.start();
                    benches.add(thread);
                }
                assertThat(begun.await(120, TimeUnit.SECONDS))
                        .as(program.errors())
                        .isTrue();
                benches.get(0).join(20 + random.nextInt(400));
                program.kill();
                for (Thread thread : benches) {
                    thread.join();
                }
                assertThat(answered.size()).isGreaterThan(before);
            }
            assertThat(left(work.resolve("temporary")))
                    .as("after kill %d", kill)
                    .isEmpty();
        }
        assertThat(others).isEmpty();
        try (DemoBench bench = DemoBench.at(data)) {
            String entries = bench.get("/api/jobs/job-v-0093/entries").body();
            for (String id : answered) {
                assertThat(entries).contains("\"" + id + "\"");
            }
            assertThat(left(data.resolve("pictures").resolve("part"))).isEmpty();
        }
        picturesAreThere(data);
        LoggerFactory.getLogger(UploadKillTest.class)
                .warn("{} kills, {} uploads answered, all there", KILLS, answered.size());
    }

    private static void picturesAreThere(Path data) {
        try (ShopStore store =
                ShopStore.in(data, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            int pictures = 0;
            for (LogEntry kept : store.log().read("job-v-0093")) {
                if (kept.body() instanceof Entry.PictureAdded picture) {
                    assertThat(store.pictures().find(picture.picture()))
                            .as(kept.draft().id())
                            .isPresent();
                    pictures++;
                }
            }
            assertThat(pictures).isPositive();
        }
    }

    private static List<Path> left(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().contains("hsperfdata"))
                    .toList();
        }
    }

    private void work(int port, String bench, CountDownLatch begun) {
        Random pixels = new Random(bench.hashCode());
        for (int i = 0; true; i++) {
            String id = "upload-" + bench + "-" + i;
            try {
                int status = RawRequests.send(port, upload(port, id, SamplePictures.noise(pixels, 400, 300)))
                        .status();
                if (status == 303) {
                    answered.add(id);
                } else if (status != 0) {
                    others.add(status);
                }
            } catch (IOException | UncheckedIOException killed) {
                return;
            }
            if (i == 0) {
                begun.countDown();
            }
        }
    }

    private static byte[] upload(int port, String id, byte[] picture) throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (String field : List.of("entry=" + id, "about=job", "step=E02")) {
            String[] pair = field.split("=");
            body.write(("--e\r\nContent-Disposition: form-data; name=\"" + pair[0] + "\"\r\n\r\n" + pair[1] + "\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
        }
        body.write("--e\r\nContent-Disposition: form-data; name=\"picture\"; filename=\"a.png\"\r\n\r\n"
                .getBytes(StandardCharsets.US_ASCII));
        body.write(picture);
        body.write("\r\n--e--\r\n".getBytes(StandardCharsets.US_ASCII));
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.write(("POST /job/job-v-0093/picture HTTP/1.1\r\nHost: 127.0.0.1:" + port
                        + "\r\nContent-Type: multipart/form-data; boundary=e\r\nContent-Length: " + body.size()
                        + "\r\nConnection: close\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII));
        body.writeTo(all);
        return all.toByteArray();
    }
}
