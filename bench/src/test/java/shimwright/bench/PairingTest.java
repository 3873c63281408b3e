package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetSocketAddress;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Clock;
import java.time.Duration;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.bench.store.backup.Backup;
import shimwright.bench.web.pair.Role;
import shimwright.bench.web.pair.ShopCertificate;

/** Other devices: who was not paired sees one page, who was does what its role may, and who was let out is out. */
class PairingTest {
    private static final String OTHER = "127.0.0.2"; // loopback as a whole is this machine's, RFC 1122, 3.2.1.3
    private DemoBench bench;
    private int port;
    private SSLContext trust;

    @BeforeEach
    void start() throws Exception {
        bench = DemoBench.with("host", OTHER);
        port = bench.running().server().port();
        trust = trusting(bench);
    }

    @AfterEach
    void stop() {
        bench.close();
    }

    /** Trusts the shop's own certificate and no other. */
    private static SSLContext trusting(DemoBench bench) throws Exception {
        char[] password = "p".toCharArray();
        Certificate own = java.util.Objects.requireNonNull(
                        bench.running().entrance().certificate())
                .keys(password)
                .getCertificate("shop");
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, password);
        store.setCertificateEntry("shop", own);
        TrustManagerFactory factory = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        factory.init(store);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, factory.getTrustManagers(), null);
        return context;
    }

    private RawRequests.Answer ask(String method, String path, String headers, String body) {
        return RawRequests.secure(
                trust,
                OTHER,
                port,
                method + " " + path + " HTTP/1.1\r\nHost: " + OTHER + ":" + port + "\r\n" + headers
                        + (method.equals("GET")
                                ? ""
                                : "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length()
                                        + "\r\n")
                        + "Connection: close\r\n\r\n" + body);
    }

    private RawRequests.Answer get(String path, String cookie) {
        return ask("GET", path, cookie, "");
    }

    private RawRequests.Answer post(String path, String cookie, String body) {
        return ask("POST", path, cookie, body);
    }

    private String code(Role role, String person) {
        return bench.running()
                .entrance()
                .devices()
                .code(role, person)
                .orElseThrow()
                .text();
    }

    /** Pairs as a browser does, and answers with the header that it sends from then on. */
    private String pair(Role role, String person, String name) {
        RawRequests.Answer answer = post(
                "/pair", "", "code=" + code(role, person) + "&name=" + URLEncoder.encode(name, StandardCharsets.UTF_8));
        assertThat(answer.status()).as(answer.body()).isEqualTo(303);
        return "Cookie: " + key(answer) + "\r\n";
    }

    private static String key(RawRequests.Answer answer) {
        Matcher set = Pattern.compile("set-cookie: ([^;]*)").matcher(answer.exact());
        assertThat(set.find()).isTrue();
        return set.group(1);
    }

    @Test
    void whoWasNotPairedSeesOnePageAndNoMore() {
        for (String path : List.of(
                "/",
                "/job/job-v-0093/build",
                "/drawer",
                "/devices",
                "/static/bench.js",
                "/sheets",
                "/pair/",
                "/pair/x",
                "/picture/" + "0".repeat(64))) {
            RawRequests.Answer answer = get(path, "");
            assertThat(answer.status()).as(path).isEqualTo(303);
            assertThat(answer.header("location")).endsWith("/pair");
            assertThat(answer.body()).isEmpty();
        }
        assertThat(get("/api/worksheets", "").status()).isEqualTo(403);
        for (String path : List.of(
                "/me",
                "/drawer/remove",
                "/job/job-v-0093/note",
                "/devices/code",
                "/pair/leave",
                "/api/worksheets/involute")) {
            assertThat(post(path, "", "a=b").status()).as(path).isEqualTo(403);
        }
        RawRequests.Answer page = get("/pair", "");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.body())
                .contains(java.util.Objects.requireNonNull(
                                bench.running().entrance().certificate())
                        .fingerprint())
                .doesNotContain("V-0093");
        assertThat(Jsoup.parse(page.body()).select("script,link,img")).isEmpty();
        assertThat(post("/pair", "", "code=" + "x".repeat(9_000)).status()).isEqualTo(413);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "__Host-device=",
                "__Host-device=d1.",
                "__Host-device=d1.AAAAAAAAAAAAAAAAAAAAAA",
                "device={key}",
                "__Host-device={key}x",
                "__Host-device=d2.{half}"
            })
    void aKeyThatIsNoneLetsNobodyIn(String cookie) {
        String key = pair(Role.OWNER, "", "one").replaceAll(".*device=|\\s", "");
        String shown = cookie.replace("{key}", key).replace("{half}", key.replaceFirst("^[^.]*[.]", ""));
        assertThat(get("/", "Cookie: " + shown + "\r\n").status()).isEqualTo(303);
        assertThat(get("/", "Cookie: __Host-device=" + key + "\r\n").status()).isEqualTo(200);
    }

    @Test
    void aCodeLetsOneDeviceInOnceAndItsKeyIsKeptHashed() throws IOException {
        String code = code(Role.BENCH, "");
        RawRequests.Answer answer = post(
                "/pair",
                "",
                "code=" + code.toLowerCase(java.util.Locale.ROOT).replace("-", " ") + "&name=press+tablet");
        assertThat(answer.status()).isEqualTo(303);
        String set = answer.exact()
                .lines()
                .filter(line -> line.startsWith("set-cookie"))
                .findFirst()
                .orElseThrow();
        assertThat(set)
                .startsWith("set-cookie: __Host-device=")
                .contains("Path=/", "Secure", "HttpOnly", "SameSite=Strict")
                .doesNotContain("Domain");
        String key = key(answer).replaceFirst("^[^.]*[.]", "");
        assertThat(Base64.getUrlDecoder().decode(key)).hasSize(16);
        Path file = bench.folder().resolve("network/devices");
        String kept = Files.readString(file);
        assertThat(kept)
                .contains("press tablet")
                .doesNotContain(key)
                .doesNotContain(code)
                .doesNotContain(code.replace("-", ""));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(
                        Files.getPosixFilePermissions(bench.folder().resolve("network/certificate.pem"))))
                .isEqualTo("rw-------");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file.getParent())))
                .isEqualTo("rwx------");
        assertThat(post("/pair", "", "code=" + code + "&name=again").status()).isEqualTo(422);
    }

    @Test
    void fiveWrongTriesSpendACode() {
        String code = code(Role.BENCH, "");
        for (int i = 0; i < 5; i++) {
            assertThat(post("/pair", "", "code=AAAA-AAA" + (i + 2) + "&name=x").status())
                    .isEqualTo(422);
        }
        assertThat(post("/pair", "", "code=" + code + "&name=x").status()).isEqualTo(422);
        assertThat(bench.running().entrance().devices().all().orElseThrow()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "ONLOOKER, 403, 403, 403, 303",
        "BENCH, 303, 403, 403, 303",
        "OWNER, 303, 422, 200, 303",
    })
    void eachDoesWhatItsRoleMay(Role role, int note, int handBack, int devices, int units) {
        String cookie = pair(role, "", "tablet");
        assertThat(get("/", cookie).status()).isEqualTo(200);
        assertThat(get("/job/job-v-0093/record.pdf", cookie).status()).isEqualTo(200);
        assertThat(post("/job/job-v-0093/note", cookie, "step=E02&text=looked&entry=role-note-" + role)
                        .status())
                .isEqualTo(note);
        assertThat(post("/job/job-v-0093/handback", cookie, "warranty=none").status())
                .isEqualTo(handBack);
        assertThat(post("/job/job-v-0093/handback/", cookie, "warranty=none").status())
                .isIn(handBack, 404);
        assertThat(post("/job/job-v-0093/%68andback", cookie, "warranty=none").status())
                .isIn(handBack, 404);
        for (String act : List.of("hand-back", "%68and-back", "hand%2Dback")) {
            assertThat(post("/api/jobs/job-v-0093/acts/" + act, cookie, "{}").status())
                    .as(act)
                    .isEqualTo(handBack);
        }
        assertThat(get("/devices", cookie).status()).isEqualTo(devices);
        assertThat(get("/devices/", cookie).status()).isIn(devices, 404);
        assertThat(post("/me", cookie, "units=metric").status()).isEqualTo(units);
    }

    @Test
    void anEntrySaysWhoOnWhichDevice() {
        String own = pair(Role.BENCH, "Anna", "press tablet");
        String shared = pair(Role.BENCH, "", "door phone");
        assertThat(post(
                                "/job/job-v-0093/note",
                                own.replace("\r\n", "; who=somebody+else\r\n"),
                                "step=E02&text=by+one&entry=signed-note-1")
                        .status())
                .isEqualTo(303);
        assertThat(post(
                                "/job/job-v-0093/note",
                                shared.replace("\r\n", "; who=Ben\r\n"),
                                "step=E02&text=by+two&entry=signed-note-2")
                        .status())
                .isEqualTo(303);
        String record = bench.get("/job/job-v-0093/record").body();
        assertThat(record).contains("Anna (press tablet)", "Ben (door phone)").doesNotContain("somebody else");
    }

    @Test
    void whoIsLetOutIsOutAtOnceAndStaysOut() {
        String first = pair(Role.BENCH, "", "first");
        String second = pair(Role.BENCH, "", "second");
        assertThat(bench.post("/devices/revoke", "device", "d1").statusCode()).isEqualTo(200);
        assertThat(get("/", first).status()).isEqualTo(303);
        assertThat(get("/", second).status()).isEqualTo(200);
        assertThat(run("devices", "--data", bench.folder().toString(), "--revoke", "d2"))
                .contains("second is let out");
        assertThat(get("/", second).status()).isEqualTo(303);
        assertThat(run("devices", "--data", bench.folder().toString())).contains("first", "second", "out since");
        String third = pair(Role.ONLOOKER, "", "third");
        bench.restart();
        port = bench.running().server().port();
        assertThat(get("/", third).status()).isEqualTo(200);
        assertThat(get("/", first).status()).isEqualTo(303);
        assertThat(post("/pair/leave", third, "").status()).isEqualTo(303);
        assertThat(get("/", third).status()).isEqualTo(303);
    }

    private static String run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream both = new PrintStream(out, true, StandardCharsets.UTF_8);
        Main.run(List.of(args), both, both);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aCodeOfTheCommandLineLetsInWhileTheShopIsOpen() {
        String said = run("devices", "--data", bench.folder().toString(), "--pair", "onlooker", "--person", "Carla");
        Matcher code = Pattern.compile("[2-9A-Z]{4}-[2-9A-Z]{4}").matcher(said);
        assertThat(code.find()).as(said).isTrue();
        assertThat(post("/pair", "", "code=" + code.group() + "&name=phone").status())
                .isEqualTo(303);
        assertThat(run("devices", "--data", bench.folder().toString(), "--pair", "king"))
                .contains("no role");
    }

    @Test
    void aFileThatCannotBeReadLetsNobodyInAndALineTornByAStopIsWrittenOver() throws IOException {
        String cookie = pair(Role.BENCH, "", "first");
        Path file = bench.folder().resolve("network/devices");
        Files.writeString(file, "{\"kind\":\"revo", StandardOpenOption.APPEND);
        assertThat(get("/", cookie).status()).isEqualTo(200);
        String second = pair(Role.BENCH, "", "second");
        assertThat(get("/", second).status()).isEqualTo(200);
        Files.writeString(file, "{\"kind\":\"revo\n", StandardOpenOption.APPEND);
        assertThat(get("/", cookie).status()).isEqualTo(303);
        assertThat(bench.get("/devices").body()).contains("cannot be read");
    }

    @Test
    void aBackupLaidBackLetsNobodyIn() throws IOException {
        String cookie = pair(Role.OWNER, "", "first");
        Path to = Files.createTempDirectory("shimwright-network-").resolve("backup");
        Backup.make(bench.folder(), to).orElseThrow();
        assertThat(to.resolve("network")).doesNotExist();
        assertThat(get("/", cookie).status()).isEqualTo(200);
    }

    @Test
    void plainTextIsSentToTlsAndNothingIsTakenInIt() throws IOException {
        try (java.net.Socket socket = new java.net.Socket()) {
            socket.connect(new InetSocketAddress(OTHER, port));
            RawRequests.Answer answer = RawRequests.send(
                    socket,
                    ("GET /pair HTTP/1.1\r\nHost: " + OTHER + ":" + port + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            assertThat(answer.status()).isEqualTo(308);
            assertThat(answer.header("location")).isEqualTo("https://" + OTHER + ":" + port + "/");
        }
        try (java.net.Socket socket = new java.net.Socket()) {
            socket.connect(new InetSocketAddress(OTHER, port));
            RawRequests.Answer answer = RawRequests.send(
                    socket,
                    ("POST /pair HTTP/1.1\r\nHost: " + OTHER + ":" + port
                                    + "\r\nContent-Length: 0\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            assertThat(answer.status()).isEqualTo(403);
        }
    }

    @Test
    void thisMachineIsAsItWasUnlessSomethingStandsBetween() {
        assertThat(RawRequests.get(port, "/", "").status()).isEqualTo(200);
        assertThat(RawRequests.get(port, "/devices", "").status()).isEqualTo(200);
        assertThat(RawRequests.get(port, "/", "X-Forwarded-For: 192.0.2.1\r\n").status())
                .isIn(303, 308);
        assertThat(RawRequests.get(port, "/", "Host: " + OTHER + ":" + port + "\r\n")
                        .status())
                .isEqualTo(200);
    }

    @Test
    void theCertificateIsTheShopsOwnAndTheOneThatIsShown() throws Exception {
        ShopCertificate own =
                java.util.Objects.requireNonNull(bench.running().entrance().certificate());
        try (SSLSocket socket = (SSLSocket) trust.getSocketFactory().createSocket(OTHER, port)) {
            javax.net.ssl.SSLParameters parameters = socket.getSSLParameters();
            parameters.setEndpointIdentificationAlgorithm("HTTPS"); // the JDK itself asks whether the name is in it
            socket.setSSLParameters(parameters);
            socket.startHandshake();
            X509Certificate shown = (X509Certificate) socket.getSession().getPeerCertificates()[0];
            shown.verify(shown.getPublicKey());
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(shown.getEncoded());
            assertThat(java.util.Objects.requireNonNull(own).fingerprint())
                    .isEqualTo(HexFormat.ofDelimiter(":").withUpperCase().formatHex(hash));
            assertThat(socket.getSession().getProtocol()).isEqualTo("TLSv1.3");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Network.say(bench.running().entrance(), port, new PrintStream(out, true, StandardCharsets.UTF_8));
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains(own.fingerprint(), "https://" + OTHER + ":" + port + "/")
                .doesNotContain("0.0.0.0");
        Path folder = bench.folder().resolve("network");
        assertThat(ShopCertificate.in(folder, List.of(OTHER), Clock.systemUTC())
                        .orElseThrow()
                        .fingerprint())
                .isEqualTo(own.fingerprint());
        Clock later = Clock.offset(Clock.systemUTC(), Duration.ofDays(800));
        assertThat(ShopCertificate.in(folder, List.of(OTHER), later)
                        .orElseThrow()
                        .fingerprint())
                .isNotEqualTo(own.fingerprint());
        assertThat(ShopCertificate.in(folder, List.of("bench.local"), Clock.systemUTC())
                        .orElseThrow()
                        .fingerprint())
                .isNotEqualTo(own.fingerprint());
    }
}
