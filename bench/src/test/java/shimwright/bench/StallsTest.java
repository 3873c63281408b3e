package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Uploads without end, bodies that stall and connections that say nothing: nobody else waits, and nothing is left behind. */
class StallsTest {
    private static final String NOTE = "/job/job-v-0093/note";
    private static DemoBench bench;
    private static int port;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        port = java.net.URI.create(bench.url("/")).getPort();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static void tooLarge(RawRequests.Answer answer) {
        assertThat(answer.status()).as(answer.head()).isEqualTo(413);
        assertThat(answer.body()).contains("larger than 13 MB");
    }

    private static Set<Path> temporary() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(path -> path.getFileName().toString().startsWith("MultiPart")
                            || path.getFileName().toString().contains("multipart")
                            || path.getFileName().toString().contains("javalin"))
                    .collect(Collectors.toSet());
        }
    }

    @Test
    void anUploadBeyondTheLimitIsNeverLaidDown() throws IOException {
        Set<Path> before = temporary();
        String head = String.join(
                "\r\n",
                "POST /job/job-v-0093/picture HTTP/1.1",
                "Host: 127.0.0.1",
                "Connection: close",
                "Content-Type: multipart/form-data; boundary=e",
                "");
        tooLarge(RawRequests.send(port, head + "Content-Length: 210000000\r\n\r\n", new byte[100_000]));
        byte[] chunk = ("100000\r\n" + "x".repeat(1 << 20) + "\r\n").getBytes(StandardCharsets.US_ASCII);
        try (Socket socket = RawRequests.connect(port)) {
            socket.getOutputStream()
                    .write((head + "Transfer-Encoding: chunked\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
            int sent = 0;
            try {
                for (; sent < 20; sent++) {
                    socket.getOutputStream().write(chunk);
                }
            } catch (IOException hungUp) {
                // it said so before
            }
            tooLarge(RawRequests.send(socket, "0\r\n\r\n".getBytes(StandardCharsets.US_ASCII)));
        }
        try (Socket socket = RawRequests.connect(port)) {
            socket.getOutputStream()
                    .write((head + "Content-Length: 9000000\r\n\r\n--e\r\n"
                                    + "Content-Disposition: form-data; name=\"picture\"; filename=\"a.png\"\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().write(new byte[5_000_000]);
            assertThat(bench.get("/").statusCode()).isEqualTo(200);
            assertThat(temporary()).isEqualTo(before);
        }
        assertThat(temporary()).isEqualTo(before);
    }

    @Test
    void threeHundredBodiesThatStallHoldUpNobody() throws IOException {
        List<Socket> stalled = new ArrayList<>();
        try {
            for (int i = 0; i < 300; i++) {
                Socket socket = RawRequests.connect(port);
                socket.getOutputStream()
                        .write(("POST " + NOTE
                                        + " HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                                        + "Content-Length: 500\r\n\r\nstep=")
                                .getBytes(StandardCharsets.US_ASCII));
                stalled.add(socket);
            }
            // where they hold the server's threads, nobody is answered before the first of them runs out
            assertThat(RawRequests.soon(port, "/", 15_000).status()).isEqualTo(200);
            assertThat(RawRequests.form(port, "/me", "", "units=metric").status())
                    .isEqualTo(303);
            assertThat(busy()).as("threads that wait for a body").isLessThan(20);
        } finally {
            for (Socket socket : stalled) {
                socket.close();
            }
        }
    }

    private static long busy() {
        return Thread.getAllStackTraces().values().stream()
                .filter(trace ->
                        Stream.of(trace).anyMatch(frame -> frame.getClassName().startsWith("io.javalin.")))
                .count();
    }

    @Test
    void moreConnectionsThanThereMayBeAreLetGoWhenTheySayNothing() throws IOException {
        List<Socket> idle = new ArrayList<>();
        try {
            for (int i = 0; i < 600; i++) {
                idle.add(RawRequests.connect(port));
            }
            assertThat(RawRequests.get(port, "/", "").status()).isEqualTo(200);
        } finally {
            for (Socket socket : idle) {
                socket.close();
            }
        }
    }
}
