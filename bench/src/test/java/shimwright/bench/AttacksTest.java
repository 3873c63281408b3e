package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.outcome.Outcome;

/**
 * What was tried against a running program from outside, on loopback. Each is answered with a sentence, keeps nothing, and
 * holds up nobody.
 */
class AttacksTest {
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

    /** Everything the pages say of what is kept: a note that got in would stand here. */
    private static String kept() {
        return bench.get("/job/job-v-0093/record").body() + bench.get("/drawer").body();
    }

    private static void refused(RawRequests.Answer answer, int... statuses) {
        assertThat(IntStream.of(statuses).boxed().toList())
                .as("%s %s", answer.head(), answer.body())
                .contains(answer.status());
        assertThat(answer.body()).doesNotContain("Exception").containsPattern("[a-z]{3,} [a-z]{2,}");
        guarded(answer);
    }

    private static void guarded(RawRequests.Answer answer) {
        assertThat(answer.header("x-content-type-options")).isEqualTo("nosniff");
        assertThat(answer.header("content-security-policy")).contains("default-src 'self'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "application/x-www-form-urlencoded | Origin: https://evil.example",
                "text/plain | Origin: https://evil.example",
                "multipart/form-data; boundary=e | Origin: https://evil.example",
                "application/x-www-form-urlencoded | Sec-Fetch-Site: cross-site",
                "application/x-www-form-urlencoded | Sec-Fetch-Site: same-site",
                "application/x-www-form-urlencoded | Origin: null",
                "application/x-www-form-urlencoded | Origin: http://127.0.0.1:1",
                "application/x-www-form-urlencoded | Origin: https://127.0.0.1:{port}",
                "application/x-www-form-urlencoded | Referer: https://evil.example/127.0.0.1",
                "application/x-www-form-urlencoded | Origin: http://127.0.0.1:{port}.evil.example",
            })
    void aPageElsewhereKeepsNothing(String type, String header) {
        String before = kept();
        String text = "cross-" + Integer.toHexString((type + header).hashCode());
        String form = "step=E02&text=" + text + "&entry=test-" + text;
        String parts = "--e\r\nContent-Disposition: form-data; name=\"step\"\r\n\r\nE02\r\n--e\r\n"
                + "Content-Disposition: form-data; name=\"text\"\r\n\r\n" + text + "\r\n--e--\r\n";
        for (String path : List.of(NOTE, "/drawer/remove", "/job/job-v-0093/leftout", "/me")) {
            refused(
                    RawRequests.ask(
                            port,
                            "POST",
                            path,
                            "Content-Type: " + type + "\r\n" + header.replace("{port}", "" + port) + "\r\n",
                            type.startsWith("multi") ? parts : form),
                    403);
        }
        assertThat(kept()).doesNotContain(text).hasSameSizeAs(before);
    }

    @Test
    void theShopsOwnPageAndAProgramThatIsNoBrowserAreHeard() {
        assertThat(RawRequests.form(
                                port,
                                "/me",
                                "Origin: http://127.0.0.1:" + port + "\r\nSec-Fetch-Site: same-origin\r\n",
                                "units=metric")
                        .status())
                .isEqualTo(303);
        assertThat(RawRequests.form(port, "/me", "", "units=metric").status()).isEqualTo(303);
        assertThat(RawRequests.form(
                                port,
                                "/me",
                                "Host: localhost:" + port + "\r\nOrigin: http://localhost:" + port + "\r\n",
                                "units=metric")
                        .status())
                .isEqualTo(303);
    }

    @Test
    void anAddressThatNoHeaderHoldsLeadsHome() {
        RawRequests.Answer answer =
                RawRequests.form(port, "/me", "", "units=metric&back=" + "/job/shop/back".repeat(1_000));
        assertThat(answer.status()).isEqualTo(303);
        assertThat(answer.header("location")).endsWith("/").doesNotContain("back");
    }

    @Test
    void aPageElsewhereCannotLoadWhatIsHereButMayLinkToIt() {
        String away = "Sec-Fetch-Site: cross-site\r\n";
        refused(
                RawRequests.get(
                        port, "/static/bench.js", away + "Sec-Fetch-Mode: no-cors\r\nSec-Fetch-Dest: script\r\n"),
                403);
        refused(RawRequests.get(port, "/", away + "Sec-Fetch-Mode: navigate\r\nSec-Fetch-Dest: iframe\r\n"), 403);
        assertThat(RawRequests.get(port, "/", away + "Sec-Fetch-Mode: navigate\r\nSec-Fetch-Dest: document\r\n")
                        .status())
                .isEqualTo(200);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "evil.example:{port}",
                "127.0.0.1.evil.example",
                "0.0.0.0:{port}",
                "[::2]:80",
                "localhost.evil.example"
            })
    void aNameMadeToLeadHereIsNotAnswered(String name) {
        String host = "Host: " + name.replace("{port}", "" + port) + "\r\n";
        refused(RawRequests.get(port, "/", host), 421, 400);
        refused(
                RawRequests.form(
                        port,
                        NOTE,
                        host + "Origin: http://" + name.replace("{port}", "" + port) + "\r\n",
                        "step=E02&text=rebound"),
                421,
                400);
        assertThat(kept()).doesNotContain("rebound");
    }

    @Test
    void anAddressThatNamesAnotherHostThanItsHeaderIsNotAnswered() {
        refused(RawRequests.get(port, "http://evil.example/", ""), 421, 400);
        refused(RawRequests.get(port, "http://127.0.0.1:" + port + "/", "Host: evil.example\r\n"), 421, 400);
        refused(RawRequests.get(port, "/", "Host: 127.0.0.1\r\nHost: evil.example\r\n"), 421, 400);
    }

    @ParameterizedTest
    @ValueSource(strings = {"%0B", "%1D", "%00", "%7F", "%C2%85", "%E2%80%AE", "%EF%BF%BE"})
    void aCharacterThatNoPaperCanShowIsRefusedAtTheForm(String typed) {
        RawRequests.Answer answer = RawRequests.form(
                port, NOTE, "", "step=E02&text=odd" + typed + "char&entry=test-odd-" + typed.hashCode());
        refused(answer, 422);
        assertThat(answer.body()).contains("U+");
        assertThat(kept()).doesNotContain("odd");
    }

    @Test
    void theDoorForProgramsAsksTheSame() {
        String json = "Content-Type: application/json\r\n";
        String note = "/api/jobs/job-v-0093/acts/make-note";
        for (String text :
                List.of("odd\\u000bchar", "odd\\u001dchar", "odd\\u202echar", "odd\\ud800char", "z".repeat(300_000))) {
            RawRequests.Answer answer =
                    RawRequests.ask(port, "POST", note, json, "{\"step\":\"E02\",\"text\":\"" + text + "\"}");
            refused(answer, 422, 400);
            assertThat(answer.header("content-type")).contains("json");
        }
        refused(
                RawRequests.ask(
                        port,
                        "POST",
                        note,
                        json + "Origin: https://evil.example\r\n",
                        "{\"step\":\"E02\",\"text\":\"odd\"}"),
                403);
        refused(
                RawRequests.ask(
                        port, "POST", note, "Content-Type: text/plain\r\nOrigin: null\r\n", "{\"text\":\"odd\"}"),
                403);
        refused(RawRequests.get(port, "/api/jobs", "Sec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: cors\r\n"), 403);
        refused(RawRequests.get(port, "/api/jobs", "Host: evil.example\r\n"), 421);
        assertThat(kept()).doesNotContain("odd");
    }

    @Test
    @SuppressWarnings("try") // closed and opened again on purpose
    void anOldLogThatHoldsSuchACharacterStillPrints() throws IOException {
        try (DemoBench old = DemoBench.fresh()) {
            old.close();
            OldNotes.keep(old.folder(), "job-v-0093", "before\u000Bafter \u001D scanned");
            old.reopen();
            byte[] pdf = old.bytes("/job/job-v-0093/record.pdf");
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(new PDFTextStripper().getText(document)).contains("before", "after");
            }
            assertThat(old.get("/job/job-v-0093/record").body()).contains("before\uFFFDafter");
        }
    }

    @Test
    void aFieldOrAFormBeyondItsLimitIsNotKept() {
        refused(RawRequests.form(port, "/job/job-v-0093/ownstep", "", "step=" + "x".repeat(15_900_000)), 413);
        refused(RawRequests.form(port, NOTE, "", "step=E02&text=" + "y".repeat(900_000)), 422);
        refused(RawRequests.form(port, NOTE, "", "step=" + "z".repeat(300_000) + "&text=long"), 422);
        refused(RawRequests.form(port, NOTE, "", many(1_200)), 422, 400);
        refused(RawRequests.form(port, NOTE, "", "n".repeat(5_000) + "=1&step=E02&text=x"), 422);
        assertThat(RawRequests.get(port, "/", "").status()).isEqualTo(200);
    }

    private static String many(int fields) {
        return IntStream.range(0, fields).mapToObj(i -> "f" + i + "=1").collect(Collectors.joining("&"));
    }

    private static String parts(int count) {
        String parts = IntStream.range(0, count)
                .mapToObj(i -> "--e\r\nContent-Disposition: form-data; name=\"f" + i + "\"\r\n\r\n1\r\n")
                .collect(Collectors.joining());
        return parts + "--e--\r\n";
    }

    @Test
    void partsBeyondTheirNumberAndPartsThatAreNoneAreSaidToBeSo() {
        String type = "Content-Type: multipart/form-data; boundary=e\r\n";
        refused(RawRequests.ask(port, "POST", NOTE, type, parts(1_001)), 422, 400);
        refused(RawRequests.ask(port, "POST", NOTE, type, "--e\r\nContent-Disposition: form-data; na"), 400);
        refused(RawRequests.ask(port, "POST", NOTE, type, "no parts at all"), 400);
        refused(RawRequests.ask(port, "POST", NOTE, "Content-Type: multipart/form-data\r\n", parts(1)), 400);
        refused(
                RawRequests.ask(
                        port, "POST", NOTE, type, "--e\r\n" + "X-A: b\r\n".repeat(5_000) + "\r\n1\r\n--e--\r\n"),
                400);
    }

    @Test
    void aNameCookieOfAnyLengthIsBorne() {
        for (String value : List.of(
                "a".repeat(3_000),
                "%41".repeat(1_000),
                "%".repeat(2_000),
                "%E2%80%AE",
                "%zz",
                "\u00e9",
                "\"a\\\"b\"")) {
            assertThat(RawRequests.get(port, "/", "Cookie: who=" + value + "\r\n")
                            .status())
                    .as(value.substring(0, Math.min(9, value.length())))
                    .isIn(200, 400);
            assertThat(RawRequests.get(port, "/", "Cookie: units=" + value + "\r\n")
                            .status())
                    .isIn(200, 400);
        }
        refused(RawRequests.get(port, "/", "Cookie: x=" + "b".repeat(100_000) + "\r\n"), 431);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/\\evil.example",
                "//evil.example",
                "https://evil.example",
                "/\t/evil.example",
                "/%5Cevil.example",
                "\\\\evil.example",
                "javascript:alert(1)",
                "/\r\nX: y",
                " //evil.example"
            })
    void nobodyIsLedAway(String back) {
        RawRequests.Answer answer = RawRequests.form(
                port, "/me", "", "units=metric&back=" + URLEncoder.encode(back, StandardCharsets.UTF_8));
        assertThat(answer.status()).isIn(303, 422);
        if (answer.status() == 303) {
            String to = answer.header("location").replaceFirst("^http://127\\.0\\.0\\.1(:\\d+)?", "");
            assertThat(to).matches("/([^/\\\\].*)?");
        }
        assertThat(answer.header("x")).isEmpty();
    }

    @Test
    void aNameThatNoCookieHoldsIsRefusedAndOneThatIsTakenIsReadAgain() {
        for (int length : new int[] {61, 700, 50_000}) {
            refused(RawRequests.form(port, "/me", "", "who=" + "x".repeat(length) + "&back=/"), 422);
        }
        refused(RawRequests.form(port, "/me", "", "who=" + "%F0%9F%94%A7".repeat(50) + "&back=/"), 422);
        assertThat(RawRequests.form(port, "/me", "", "who=" + "%D0%96".repeat(60) + "&back=/")
                        .status())
                .isEqualTo(303);
    }

    @Test
    void jobsWhoseNumbersDifferInAnotherAlphabetAreTwo() {
        try (DemoBench shop = DemoBench.fresh()) {
            List<String> addresses = new ArrayList<>();
            for (String number : List.of("Ж-12", "Я-12", "X-12", "十二")) {
                HttpResponse<String> answer = NewJob.open(shop, number);
                assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
                addresses.add(answer.uri().getPath());
            }
            assertThat(addresses).doesNotHaveDuplicates().contains("/job/job-x-12/strip");
        }
    }

    @Test
    void whatCannotBeReadIsSaidToBeSo() {
        String urlencoded = "Content-Type: application/x-www-form-urlencoded; charset=";
        for (String charset : List.of("utf-16", "nonsense", "x\"y", "")) {
            refused(RawRequests.ask(port, "POST", NOTE, urlencoded + charset + "\r\n", "step=E02&text=x"), 400, 415);
        }
        refused(RawRequests.form(port, NOTE, "Transfer-Encoding: chunked\r\n", "zz\r\nstep\r\n0\r\n\r\n"), 400);
        refused(
                RawRequests.ask(
                        port, "POST", "/api/worksheets/involute", "Content-Type: text/csv\r\n", "a,b\n\"1\"x,2\n"),
                400,
                422);
        refused(
                RawRequests.ask(port, "POST", "/api/worksheets/involute", "Content-Type: text/csv\r\n", "a,b\n1,\"2\n"),
                400,
                422);
        refused(RawRequests.form(port, NOTE, "", "step=E02&text=%zz%"), 400, 422);
        refused(RawRequests.get(port, "/?said=%zz", ""), 400);
        refused(RawRequests.get(port, "/?said=%FF%FE", ""), 400);
        refused(RawRequests.get(port, "/job/a%2F..%2Fb/build", ""), 400);
        refused(RawRequests.get(port, "/job/job-v-0093/build;x=y", ""), 400);
    }

    @Test
    void aMessageOfTwoLengthsIsNotAnswered() {
        String form = "Content-Type: application/x-www-form-urlencoded\r\n";
        String body = "5\r\nstep=\r\n0\r\n\r\n";
        refused(
                RawRequests.ask(port, "POST", NOTE, form + "Transfer-Encoding: chunked\r\nContent-Length: 4\r\n", body),
                400);
        refused(RawRequests.ask(port, "POST", NOTE, form + "Content-Length: 4\r\n", "step=E02"), 400);
        refused(
                RawRequests.ask(port, "POST", NOTE, form + "Transfer-Encoding: gzip, chunked, identity\r\n", body),
                400,
                501);
    }

    @Test
    void whatIsNotThereIsSaidToBeSo() {
        refused(RawRequests.get(port, "/job/shop/strip", ""), 404);
        refused(RawRequests.form(port, "/job/shop/strip", "", "gone=x"), 404, 422);
        refused(RawRequests.form(port, "/job/none/strip", "", "gone=x"), 404, 422);
        HttpResponse<String> odd = NewJob.open(bench, "Q-1", "variant", "no such variant", "because", "sure");
        assertThat(odd.statusCode()).isEqualTo(422);
        refused(RawRequests.ask(port, "DELETE", "/drawer", "", ""), 405);
        refused(RawRequests.ask(port, "BREW", "/drawer", "", ""), 405, 400);
        refused(RawRequests.ask(port, "TRACE", "/", "", ""), 405, 400);
        refused(RawRequests.send(port, "GARBAGE\r\n\r\n".getBytes(StandardCharsets.US_ASCII)), 400);
    }

    @Test
    void everyAnswerCarriesItsHeaders() {
        for (String path : List.of(
                "/",
                "/nowhere",
                "/static/bench.css",
                "/static/none",
                "/api/none",
                "/job/none/build",
                "/job/job-v-0093/record.pdf")) {
            RawRequests.Answer answer = RawRequests.get(port, path, "");
            guarded(answer);
            assertThat(answer.header("cache-control")).isNotEmpty();
            assertThat(answer.header("content-type"))
                    .matches("(text/html|application/json); ?charset=utf-8|text/(css|javascript).*|application/pdf");
            assertThat(answer.head()).doesNotContain("\nserver:", "jetty", "javalin");
        }
    }

    @Test
    void anAddressThatIsNotThisMachinesIsNamed() {
        Outcome<Addresses> far = Addresses.of("192.0.2.1"); // RFC 5737: documentation only
        assertThat(far.refusals()).singleElement().matches(r -> r.sentence().contains("no address of this machine"));
        assertThat(Addresses.of("no such name").isOk()).isFalse();
        assertThat(Addresses.of("0.0.0.0").orElseThrow().listen()).containsExactly("0.0.0.0");
    }
}
