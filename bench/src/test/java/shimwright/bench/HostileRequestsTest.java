package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import shimwright.bench.print.PdfPaper;

/**
 * Requests that no honest client sends, at random over every route that the program has: methods, hosts, origins, types,
 * sizes, encodings, cookies and fields. No answer may be a fault of ours, every answer carries its headers, and the shop
 * opens as before. {@code -Dshimwright.hostile=100000} asks for as many; {@code -Dshimwright.hostile.seed} for other ones.
 */
class HostileRequestsTest {
    private static final int COUNT = Integer.getInteger("shimwright.hostile", 400);
    private static final long SEED = Long.getLong("shimwright.hostile.seed", 20261129L);
    private static final long SECOND = 1_000_000_000;
    private static final Logger LOG = LoggerFactory.getLogger(HostileRequestsTest.class);

    /** A trace, a name of ours or of a library in one, the words of a database or of another file of this machine. */
    private static final Pattern LEAK = Pattern.compile("\\tat [a-z]|\\bat (java|io|org|shimwright)\\.[a-z]"
            + "|\\b[A-Z][A-Za-z]+(Exception|Error)\\b|java\\.(lang|util|io)\\.|org\\.eclipse|SQLITE_|root:x:0");

    @SuppressWarnings("NullAway") // before all
    private static DemoBench bench;

    private static int port;
    private static List<String> routes = List.of();
    private static Map<String, Set<String>> fields = Map.of();
    private static List<String> ids = List.of();

    private final Random random = new Random(SEED);

    /** Every other request is well formed but for what it says, so that it gets as far as a page. */
    private boolean wellFormed;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        port = java.net.URI.create(bench.url("/")).getPort();
        routes = bench.routes();
        assertThat(routes).hasSizeGreaterThan(40).contains("/job/{job}/build", "/static/bench.js");
        learn();
        // as the program does some seconds after its start
        PdfPaper.makeReady();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    /** Reads from the pages which forms there are and what may stand in them, so that posts get past the first look. */
    private static void learn() {
        fields = new TreeMap<>();
        Set<String> seen = new LinkedHashSet<>(HostileTexts.TEXTS);
        List<String> pages = new ArrayList<>(List.of("/", "/drawer", "/new"));
        for (String tab : List.of(
                "strip", "inspect", "orders", "build", "clearances", "record", "plan", "clearance/c", "clearance/a")) {
            pages.add("/job/job-v-0093/" + tab);
        }
        for (String route : routes) {
            boolean page = !route.contains(".") && !route.contains("*");
            String path = route.replace("{job}", "job-v-0093");
            if (page && !path.contains("{") && !pages.contains(path)) {
                pages.add(path);
            }
        }
        for (String path : pages) {
            for (Element form : bench.page(path).select("form[method=post]")) {
                Set<String> names = fields.computeIfAbsent(form.attr("action"), action -> new LinkedHashSet<>());
                form.select("[name]").forEach(field -> {
                    names.add(field.attr("name"));
                    seen.add(field.val());
                });
                form.select("option").forEach(option -> seen.add(option.val()));
            }
        }
        seen.addAll(List.of("job-v-0091", "involute", "backlash", "a", "b", "c", "d"));
        ids = List.copyOf(seen);
        assertThat(fields).hasSizeGreaterThan(8);
    }

    /** Pages, record and PDF come as ever, also after a restart. */
    private static void stillWell() {
        assertThat(bench.get("/").statusCode()).isEqualTo(200);
        assertThat(bench.get("/job/job-v-0093/record").statusCode()).isEqualTo(200);
        assertThat(new String(bench.bytes("/job/job-v-0093/record.pdf"), 0, 5, StandardCharsets.ISO_8859_1))
                .isEqualTo("%PDF-");
        bench.restart();
        assertThat(bench.get("/").statusCode()).isEqualTo(200);
    }

    @Test
    void noneIsAnsweredWithAFaultOfOurs() {
        Map<Integer, Integer> statuses = new TreeMap<>();
        long dearest = 0;
        int dear = 0;
        String dearRequest = "";
        List<String> faults = new ArrayList<>();
        List<String> leaks = new ArrayList<>();
        long handles = handles();
        for (int i = 0; i < COUNT; i++) {
            byte[] request = request(i);
            long begun = cpu();
            RawRequests.Answer answer = RawRequests.sendAll(port, request);
            long took = cpu() - begun;
            if (took > SECOND) {
                dear++;
                LOG.warn("{} ms of a core: {}", took / 1_000_000, start(request));
            }
            if (took > dearest) {
                dearest = took;
                dearRequest = start(request);
            }
            statuses.merge(answer.status(), 1, Integer::sum);
            if (answer.status() >= 500) {
                faults.add("request " + i + ": " + start(request));
                LOG.warn("answered {}: request {}: {}", answer.status(), i, start(request));
                assertThat(faults).hasSizeLessThan(20);
            }
            if (answer.status() > 0) {
                assertThat(answer.header("x-content-type-options"))
                        .as("request %d: %s%n%s", i, start(request), answer.head())
                        .isEqualTo("nosniff");
                assertThat(answer.header("x-evil")).isEmpty();
                if (LEAK.matcher(answer.exact()).find()
                        || LEAK.matcher(answer.body()).find()
                        || answer.body().contains(bench.folder().toString())) {
                    leaks.add("request " + i + ": " + start(request));
                }
            }
            if (i % 1_000 == 999) {
                LOG.warn("{} requests: {}, dearest {} ms", i + 1, statuses, dearest / 1_000_000);
            }
        }
        assertThat(leaks).as("what the program should keep to itself").isEmpty();
        assertThat(handles()).as("file handles").isLessThan(handles + 40);
        assertThat(faults).isEmpty();
        stillWell();
        // nearly all were understood well enough to be answered
        assertThat(statuses.getOrDefault(0, 0)).as("%s", statuses).isLessThan(COUNT / 10);
        // a few hundred requests by lot need not meet every refusal; each has its own test in AttacksTest
        assertThat(statuses.keySet()).contains(200, 303, 400, 404, 422);
        if (COUNT > 400) {
            LOG.warn(
                    "{} requests, seed {}: {}; {} over a second of a core, the dearest {} ms: {}",
                    COUNT,
                    SEED,
                    statuses,
                    dear,
                    dearest / 1_000_000,
                    dearRequest);
        }
    }

    /** What an address says may be sent on in an answer, and no header holds it. */
    @Test
    void noAddressIsTooLongToBeAnswered() {
        String longest = "a".repeat(20_000);
        for (String route : bench.routes()) {
            if (route.contains("{")) {
                String path = route.replaceFirst("\\{[^}]*}", longest).replaceAll("\\{[^}]*}", "job-v-0093");
                assertThat(RawRequests.get(port, path, "").status()).as(route).isBetween(200, 499);
            }
        }
    }

    /** What this process has used of the cores, client and server together, ns. */
    private static long cpu() {
        return ((com.sun.management.OperatingSystemMXBean)
                        java.lang.management.ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static long handles() {
        return java.lang.management.ManagementFactory.getOperatingSystemMXBean()
                        instanceof com.sun.management.UnixOperatingSystemMXBean unix
                ? unix.getOpenFileDescriptorCount()
                : 0;
    }

    private static String start(byte[] request) {
        return new String(request, 0, Math.min(900, request.length), StandardCharsets.ISO_8859_1);
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private boolean rarely() {
        return random.nextInt(wellFormed ? 100 : 12) == 0;
    }

    private String text() {
        return switch (random.nextInt(30)) {
            case 0 -> one(ids).repeat(1 + random.nextInt(3_000));
            case 1 -> new String(noise(40), StandardCharsets.ISO_8859_1);
            default -> one(ids);
        };
    }

    private byte[] noise(int most) {
        byte[] bytes = new byte[random.nextInt(most)];
        random.nextBytes(bytes);
        return bytes;
    }

    private byte[] request(int number) {
        wellFormed = random.nextBoolean();
        if (!wellFormed && random.nextInt(60) == 0) {
            return noise(400);
        }
        String method = one(wellFormed ? List.of("GET", "POST", "POST") : HostileTexts.METHODS);
        boolean form = method.equals("POST") && random.nextInt(3) > 0;
        List<String> actions = List.copyOf(fields.keySet());
        String action = form ? one(actions) : one(routes);
        byte[] body = method.equals("GET") || (method.equals("HEAD") && !rarely()) ? new byte[0] : null;
        String type = form && !rarely()
                ? one(wellFormed ? HostileTexts.FORMS : HostileTexts.TYPES.subList(0, 6))
                : one(HostileTexts.TYPES);
        Set<String> names = fields.getOrDefault(action, Set.of("step", "text", "entry"));
        byte[] content = body != null ? body : rarely() ? noise(3_000) : body(type, names, number);
        StringBuilder head = new StringBuilder(method)
                .append(' ')
                .append(path(action))
                .append(rarely() ? " HTTP/1.0" : " HTTP/1.1")
                .append("\r\n");
        head.append(headers(type));
        byte[] sent = content;
        if (content.length > 0 && random.nextInt(6) == 0) {
            head.append("Transfer-Encoding: chunked\r\n");
            sent = chunked(content);
        } else if (content.length > 0 || rarely()) {
            int length = rarely() ? random.nextInt(content.length + 1) : content.length;
            head.append("Content-Length: ").append(length).append("\r\n");
        }
        head.append("Connection: close\r\n\r\n");
        byte[] start = head.toString().getBytes(rarely() ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
        byte[] all = new byte[start.length + sent.length];
        System.arraycopy(start, 0, all, 0, start.length);
        System.arraycopy(sent, 0, all, start.length, sent.length);
        return all;
    }

    private byte[] chunked(byte[] content) {
        String size =
                rarely() ? one(List.of("zz", "-1", "fffffffffff", "1;a=b", "")) : Integer.toHexString(content.length);
        String text = size + "\r\n" + new String(content, StandardCharsets.ISO_8859_1) + "\r\n"
                + (rarely() ? "0\r\nX: y\r\n\r\n" : "0\r\n\r\n");
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private String path(String pattern) {
        StringBuilder path = new StringBuilder();
        for (String part : pattern.split("(?=[{])|(?<=[}])")) {
            if (!part.startsWith("{")) {
                path.append(part);
            } else if (part.equals("{job}") && random.nextInt(4) > 0) {
                path.append(one(List.of("job-v-0093", "job-v-0091", "shop")));
            } else {
                String text = text();
                path.append(rarely() ? text.replace(" ", "") : encoded(text));
            }
        }
        if (rarely()) {
            path.append(one(List.of("/", "//", "/.", "/..", ";a=b", "%", "%2f", "%5c..", "?", "#", "/%2e%2e/", "\\")));
        }
        if (random.nextInt(5) == 0) {
            path.append('?').append(encoded(text())).append('=').append(rarely() ? text() : encoded(text()));
            path.append("&")
                    .append(one(List.of("said", "q", "limit", "units", "seed", "draws")))
                    .append('=')
                    .append(encoded(text()));
        }
        return path.toString().replace("\r", "%0D").replace("\n", "%0A");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    private String headers(String type) {
        StringBuilder headers = new StringBuilder();
        headers.append("Host: ")
                .append(
                        rarely()
                                ? one(List.of("evil.example", "", "127.0.0.1:1", "[::1]", "a b", "localhost"))
                                : "127.0.0.1:" + port)
                .append("\r\n");
        if (!type.isEmpty()) {
            headers.append("Content-Type: ").append(type).append("\r\n");
        }
        some(
                headers,
                "Origin",
                text -> one(List.of("http://127.0.0.1:" + port, "https://evil.example", "null", "", text)));
        some(headers, "Sec-Fetch-Site", text -> one(List.of("same-origin", "cross-site", "none", text)));
        some(
                headers,
                "Cookie",
                text -> one(List.of(
                        "who=" + text,
                        "units=" + text,
                        "units=inch",
                        "device=" + text,
                        "who=%zz",
                        "=;=;",
                        "who=\"" + text)));
        some(headers, "Accept", text -> one(List.of("application/json", "*/*", text)));
        some(headers, "Accept-Encoding", text -> one(List.of("gzip", "br", text)));
        some(headers, "Content-Encoding", text -> one(List.of("gzip", "identity", text)));
        some(headers, "Range", text -> one(List.of("bytes=0-1", "bytes=-1", "bytes=9-1", text)));
        some(headers, "If-Modified-Since", text -> text);
        some(headers, "Expect", text -> one(List.of("100-continue", text)));
        some(headers, "Upgrade", text -> one(List.of("websocket", "h2c")));
        some(headers, "X-Forwarded-For", text -> text);
        some(headers, "X-Odd-" + random.nextInt(9), text -> text);
        return headers.toString();
    }

    private void some(StringBuilder headers, String name, Function<String, String> value) {
        if (rarely()) {
            headers.append(name)
                    .append(": ")
                    .append(value.apply(text().replace("\r", "").replace("\n", "")))
                    .append("\r\n");
        }
    }

    private byte[] body(String type, Set<String> names, int number) {
        StringBuilder body = new StringBuilder();
        if (type.startsWith("multipart")) {
            for (String name : names) {
                body.append("--e\r\nContent-Disposition: form-data; name=\"")
                        .append(rarely() ? text() : name)
                        .append('"');
                body.append(name.equals("picture") || rarely() ? "; filename=\"" + text() + "\"" : "");
                body.append(rarely() ? "\r\nContent-Type: " + text() : "")
                        .append("\r\n\r\n")
                        .append(value(name, number))
                        .append("\r\n");
            }
            return body.append(rarely() ? "--e" : "--e--\r\n").toString().getBytes(StandardCharsets.UTF_8);
        }
        if (type.startsWith("application/json") || type.startsWith("text/csv")) {
            return one(List.of(
                            "{}",
                            "[]",
                            "{\"m\":1}",
                            "[{\"m\":\"1\"},{\"z\":2}]",
                            "m,z\n1,2\n",
                            "m;z\n1;\"2\n",
                            "\"\n",
                            "[[[[",
                            "{\"" + text() + "\":\"" + text() + "\"}"))
                    .getBytes(StandardCharsets.UTF_8);
        }
        for (String name : names) {
            body.append(body.isEmpty() ? "" : "&")
                    .append(encoded(rarely() ? text() : name))
                    .append('=')
                    .append(rarely() ? text() : encoded(value(name, number)));
        }
        return body.toString().getBytes(StandardCharsets.UTF_8);
    }

    private String value(String name, int number) {
        return name.equals("entry") && !rarely() ? "hostile-entry-" + number : text();
    }
}
