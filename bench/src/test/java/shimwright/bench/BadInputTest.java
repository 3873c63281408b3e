package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.rebuild.job.Entry;

/** Bad input is answered with a sentence, nothing typed is lost, and nothing is kept. */
class BadInputTest {
    private static final String CLEARANCE = "/job/job-v-0093/clearance/c";
    private static DemoBench bench;
    private static int posts;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        post(CLEARANCE + "/trial", "phase", "trial", "in-sI", "d52-10");
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static HttpResponse<String> post(String path, String... fields) {
        String[] all = new String[fields.length + 2];
        System.arraycopy(fields, 0, all, 0, fields.length);
        all[fields.length] = "entry";
        all[fields.length + 1] = "test-entry-" + ++posts;
        return bench.post(path, all);
    }

    private int before;

    @BeforeEach
    void count() {
        before = rounds();
    }

    private static int rounds() {
        return bench.page(CLEARANCE).select("table.rounds tbody tr").size();
    }

    private static List<String> faults(HttpResponse<String> answer) {
        return Jsoup.parse(answer.body()).select("main > .faults li").eachText();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | nothing typed",
                "abc | is not a number",
                "0.24 N.m | is a torque; a length is needed here",
                "-0.24 | is below 0 mm",
                "1e9 | is above 10 mm",
                "11 | is above 10 mm",
                "0.2.4 | has more than one decimal sign",
                "0.24 furlong | has an unknown unit",
                "1,234 | can be read in two ways",
                "NaN | is not a number",
                "<script>alert(1)</script> | is not a number",
            })
    void aReadingThatCannotBeIsAnsweredWithASentenceAndStaysTyped(String typed, String sentence) {
        HttpResponse<String> answer = post(CLEARANCE + "/round", "phase", "trial", "v1", typed, "v2", "0.31");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(faults(answer))
                .hasSize(1)
                .allMatch(line -> line.startsWith("indicator 1: ") && line.contains(sentence));
        Document page = Jsoup.parse(answer.body());
        assertThat(page.select("input[name=v1]").val()).isEqualTo(typed);
        assertThat(page.select("input[name=v2]").val()).isEqualTo("0.31");
        assertThat(page.select("script").eachAttr("src")).containsExactly("/static/bench.js");
        assertThat(rounds()).isEqualTo(before);
    }

    @Test
    void allFaultsComeAtOnce() {
        HttpResponse<String> answer = post(CLEARANCE + "/round", "phase", "trial", "v1", "abc", "v2", "");
        assertThat(faults(answer)).hasSize(2);
    }

    @Test
    void aDecimalCommaAndInchesAreUnderstood() {
        assertThat(post(CLEARANCE + "/round", "phase", "trial", "v1", "0,24", "v2", "12.6 thou")
                        .statusCode())
                .isEqualTo(200);
        List<String> read =
                bench.page(CLEARANCE).select("table.rounds tbody tr").eachText();
        assertThat(read).last().asString().contains("0.240, 0.320 mm");
        assertThat(rounds()).isEqualTo(before + 1);
    }

    @Test
    void aPostRepeatedIsOneEntryAndTheSameIdForSomethingElseIsRefused() {
        String[] fields = {"phase", "trial", "v1", "0.25", "v2", "0.31", "entry", "test-repeated-1"};
        assertThat(bench.post(CLEARANCE + "/round", fields).statusCode()).isEqualTo(200);
        assertThat(bench.post(CLEARANCE + "/round", fields).statusCode()).isEqualTo(200);
        assertThat(rounds()).isEqualTo(before + 1);
        HttpResponse<String> other = bench.post(
                CLEARANCE + "/round", "phase", "trial", "v1", "0.26", "v2", "0.31", "entry", "test-repeated-1");
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(faults(other)).singleElement().asString().contains("already kept and says something else");
        assertThat(rounds()).isEqualTo(before + 1);
    }

    @Test
    void nothingIsLostWhenTheServerStopsBetweenTwoPosts() {
        String[] fields = {"phase", "trial", "v1", "0.24", "v2", "0.31", "entry", "test-stopped-1"};
        assertThat(bench.post(CLEARANCE + "/round", fields).statusCode()).isEqualTo(200);
        bench.restart();
        assertThat(bench.post(CLEARANCE + "/round", fields).statusCode()).isEqualTo(200);
        assertThat(rounds()).isEqualTo(before + 1);
    }

    @Test
    void aPictureThatIsNoneIsRefusedWithWhatItIs() {
        String[] fields = {"about", "step E02", "step", "E02", "entry", "test-picture-1"};
        HttpResponse<String> text =
                bench.upload("/job/job-v-0093/picture", "me.jpg", "hello".getBytes(StandardCharsets.UTF_8), fields);
        assertThat(text.statusCode()).isEqualTo(422);
        assertThat(faults(text)).singleElement().asString().contains("me.jpg");
        HttpResponse<String> none = bench.upload("/job/job-v-0093/picture", "", new byte[0], fields);
        assertThat(faults(none)).singleElement().asString().contains("no picture");
        byte[] big = new byte[13 * 1024 * 1024];
        assertThat(bench.upload("/job/job-v-0093/picture", "big.png", big, fields)
                        .statusCode())
                .isIn(413, 422);
    }

    @Test
    void aRealPictureIsKeptAndShown() throws java.io.IOException {
        java.awt.image.BufferedImage image =
                new java.awt.image.BufferedImage(400, 300, java.awt.image.BufferedImage.TYPE_INT_RGB);
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        javax.imageio.ImageIO.write(image, "png", out);
        HttpResponse<String> kept = bench.upload(
                "/job/job-v-0093/picture",
                "seat.png",
                out.toByteArray(),
                "about",
                "step E02",
                "step",
                "E02",
                "entry",
                "test-picture-2");
        assertThat(kept.statusCode()).isEqualTo(200);
        String address = Jsoup.parse(kept.body()).select(".pictures a").attr("href");
        assertThat(bench.bytes(address)).isEqualTo(out.toByteArray());
        String small = Jsoup.parse(kept.body()).select(".pictures img").attr("src");
        java.awt.image.BufferedImage seen =
                javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(bench.bytes(small)));
        assertThat(seen.getWidth()).isEqualTo(240);
        assertThat(seen.getHeight()).isEqualTo(180);
        assertThat(bench.get("/picture/" + "0".repeat(64) + "/small").statusCode())
                .isEqualTo(404);
    }

    @Test
    void aPictureWhosePixelsCannotBeReadIsShownAsItIs() throws java.io.IOException {
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        javax.imageio.ImageIO.write(
                new java.awt.image.BufferedImage(40, 30, java.awt.image.BufferedImage.TYPE_INT_RGB), "jpg", out);
        byte[] jpeg = out.toByteArray();
        int frame = 0;
        while (jpeg[frame] != (byte) 0xff || jpeg[frame + 1] != (byte) 0xc0) {
            frame++;
        }
        // twelve bits a sample: allowed by ITU-T T.81, B.2.2, and not read by the JDK
        jpeg[frame + 4] = 12;
        HttpResponse<String> kept = bench.upload(
                "/job/job-v-0093/picture",
                "seat.jpg",
                jpeg,
                "about",
                "step E02",
                "step",
                "E02",
                "entry",
                "test-picture-3");
        List<String> sources = Jsoup.parse(kept.body()).select(".pictures img").eachAttr("src");
        assertThat(sources).anySatisfy(source -> assertThat(bench.bytes(source)).isEqualTo(jpeg));
    }

    @Test
    void aStepOutOfOrderIsRefusedByName() {
        HttpResponse<String> answer = post("/job/job-v-0093/done", "step", "X06");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(faults(answer)).anyMatch(line -> line.contains("waits for X04") && line.contains("X05"));
    }

    @Test
    void aHoldPointStopsTheStepUntilItIsReadOrPassedWithAReason() {
        HttpResponse<String> answer = post("/job/job-v-0093/done", "step", "E02");
        assertThat(answer.statusCode()).isEqualTo(422);
        HttpResponse<String> noReason = post("/job/job-v-0093/overrule", "step", "E02", "hold", "H30", "reason", "");
        assertThat(faults(noReason)).singleElement().asString().contains("Say why");
    }

    @Test
    void anUnknownAddressIsAPlainPage() {
        for (String path : List.of(
                "/nowhere",
                "/job/none/build",
                "/job/job-v-0093/clearance/zz",
                "/new/none",
                "/picture/" + "0".repeat(64))) {
            HttpResponse<String> answer = bench.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(404);
            assertThat(answer.body()).as(path).contains("To the shop").doesNotContain("Exception");
        }
    }

    @Test
    void aLongTextIsRefusedNotCut() {
        String longText = String.join(
                "", IntStream.range(0, 500).mapToObj(i -> "too long ").toList());
        HttpResponse<String> answer = post("/job/job-v-0093/note", "step", "E02", "text", longText);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(faults(answer)).anyMatch(line -> line.contains("characters"));
    }

    @Test
    void aPieceThatIsNotThereOrTakenIsRefused() {
        HttpResponse<String> none = post(CLEARANCE + "/trial", "phase", "trial", "in-sI", "d99-99");
        assertThat(faults(none)).anyMatch(line -> line.contains("no such piece"));
        HttpResponse<String> taken = post(CLEARANCE + "/trial", "phase", "trial", "in-sI", "w52-02");
        assertThat(faults(taken)).anyMatch(line -> line.contains("V-0091"));
    }

    @Test
    void aShimWithBadReadingsStaysTyped() {
        HttpResponse<String> answer = post(
                "/drawer", "piece", "d52-11", "family", "SH52", "stamp", "0.70", "t1", "0.7", "t2", "x", "t3", "700");
        assertThat(faults(answer)).hasSize(2);
        assertThat(Jsoup.parse(answer.body()).select("input[name=t1]").val()).isEqualTo("0.7");
        assertThat(post("/drawer", "piece", "d52-10", "family", "SH52", "t1", "0.7", "t2", "0.7", "t3", "0.7")
                        .statusCode())
                .isEqualTo(422);
    }

    /** Such an entry once made the learnt steps answer with a fault of ours for ever. */
    @Test
    void aPartOffNamesItemsOfTheUnitAndAnOldOneThatDoesNotHarmsNothing() {
        assertThat(faults(post("/job/job-v-0093/strip", "gone", "a lid", "items", "job-v-0093")))
                .containsExactly(
                        "items of the unit: this unit has no item job-v-0093. Take one of those that it has, or none.");
        assertThat(bench.get("/job/job-v-0093/learn/steps").statusCode()).isEqualTo(200);
        Path folder = DemoBench.copy();
        OldNotes.keep(folder, "job-v-0093", new Entry.TakenOff("an old lid", List.of("no such item"), ""));
        try (DemoBench old = DemoBench.at(folder)) {
            assertThat(old.get("/job/job-v-0093/learn/steps").body())
                    .contains("Fit: an old lid")
                    .doesNotContain("no such item");
            assertThat(old.get("/job/job-v-0093/strip").statusCode()).isEqualTo(200);
        }
    }
}
