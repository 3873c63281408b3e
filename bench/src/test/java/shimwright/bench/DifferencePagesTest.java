package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A second box of a known type: what it has otherwise is said, and each thing is decided by a tap. */
class DifferencePagesTest {
    private static final String TYPE = "hollinbridge-hb5";
    private static DemoBench bench;

    @BeforeAll
    static void start() throws IOException {
        bench = DemoBench.at(Files.createTempDirectory("shimwright-second-"));
        assertThat(bench.post("/units/shipped", "name", TYPE + ".yaml").statusCode())
                .isEqualTo(200);
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static String job(String number) {
        assertThat(bench.post(
                                "/new/" + TYPE,
                                "number",
                                number,
                                "owner",
                                "a mill",
                                "variant",
                                "S",
                                "because",
                                "the short tail")
                        .statusCode())
                .isEqualTo(200);
        return "/job/job-" + number;
    }

    private static void off(String job, String gone, String item, String... more) {
        String[] fields = new String[6 + more.length];
        System.arraycopy(new String[] {"gone", gone, "items1", item, "inTheWay", "last"}, 0, fields, 0, 6);
        System.arraycopy(more, 0, fields, 6, more.length);
        assertThat(bench.post(job + "/strip", fields).statusCode()).isEqualTo(200);
    }

    private static String difference(String job, String words) {
        return card(job, words).select("input[name=difference]").attr("value");
    }

    private static Element card(String job, String words) {
        Document page = bench.page(job + "/differs");
        return page.select("main li.card").stream()
                .filter(card -> card.text().contains(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + words + " in " + page.text()));
    }

    @Test
    void aBoxAsItsFileSaysHasNothingOtherwise() {
        String job = job("11");
        off(job, "bell housing", "bell", "fasteners", "6 x 7/16-14");
        off(job, "input retainer", "retainer", "fasteners", "4 × 5/16-18 grade 5", "note", "clean");
        assertThat(bench.page(job + "/differs").select("main h1").text()).isEqualTo("Otherwise in this box: 0");
        assertThat(bench.page(job + "/strip").select("a[href$=differs]")).isEmpty();
    }

    @Test
    void eachIsLeftChangedOrMadeAVariant() {
        String job = job("12");
        off(job, "bell housing", "bell", "fasteners", "8 x 7/16-14");
        off(job, "oil slinger", "", "note", "pressed sheet");
        off(job, "input bearing", "input_bearing", "note", "stamped 6307 C3");
        off(job, "3rd gear", "counter_3", "note", "27 teeth counted");
        assertThat(bench.page(job + "/strip").select("a[href$=differs]").text()).contains("Otherwise than in its file");
        assertThat(bench.page("/units/type/" + TYPE + "?job=job-12").select("a[href$=differs]"))
                .hasSize(1);
        assertThat(card(job, "8 × 7/16-14").text()).contains("6 × 7/16-14");
        // left to this box, and struck again
        String slinger = difference(job, "Oil slinger came off");
        assertThat(bench.post(job + "/differs/leave", "difference", slinger).statusCode())
                .isEqualTo(200);
        assertThat(card(job, "Oil slinger came off").text()).contains("Left to this box alone");
        // a variant with a tell-tale, to which the job moves
        assertThat(bench.post(job + "/differs/variant", "difference", difference(job, "8 × 7/16-14"))
                        .statusCode())
                .isEqualTo(200);
        String unit = bench.get("/units/shelf/" + TYPE + ".yaml").body();
        assertThat(unit).contains("bolts of bell housing to main case");
        assertThat(bench.page(job + "/differs").text()).doesNotContain("8 × 7/16-14");
        assertThat(bench.get("/api/jobs/job-12").body()).doesNotContain("\"variant\":\"S\"");
        // the next box asks for it
        assertThat(bench.page("/new/" + TYPE).text()).contains("bolts of bell housing to main case");
        // or is taken for it, where its bolts were counted only when it was open
        String third = job("14");
        off(third, "bell housing", "bell", "fasteners", "8 x 7/16-14");
        String known = card(third, "8 × 7/16-14")
                .select("form[action$=known] input[name=variant]")
                .attr("value");
        assertThat(bench.post(third + "/differs/known", "difference", difference(third, "8 ×"), "variant", known)
                        .statusCode())
                .isEqualTo(200);
        assertThat(bench.page(third + "/differs").select("main li.card")).isEmpty();
        // the file is wrong
        assertThat(bench.post(job + "/differs/change", "difference", difference(job, "6307"))
                        .statusCode())
                .isEqualTo(200);
        assertThat(bench.get("/units/shelf/" + TYPE + ".yaml").body()).contains("6307 C3");
        assertThat(bench.post(
                                job + "/differs/variant",
                                "difference",
                                difference(job, "27 teeth"),
                                "look",
                                "3rd gear on the countershaft",
                                "was",
                                "26",
                                "is",
                                "27")
                        .statusCode())
                .isEqualTo(200);
        assertThat(bench.page(job + "/differs").select("main li.card")).hasSize(1);
        // what was decided twice is told
        assertThat(bench.post(job + "/differs/change", "difference", "teeth-none")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void aPersonSeesIt() {
        String job = job("13");
        off(job, "bell housing", "bell", "fasteners", "8 x 7/16-14");
        off(job, "oil slinger", "", "note", "pressed sheet");
        off(
                job,
                "input retainer",
                "retainer",
                "fasteners",
                "4 × 5/16-18",
                "shims-sizes",
                "0.30",
                "shims-place",
                "under it");
        try (Browser browser = new Browser()) {
            browser.tablet();
            browser.open(bench.url(job + "/strip"));
            browser.picture("differs-strip");
            browser.press("a[href$=differs]");
            browser.picture("differs");
            browser.press("form[action$=variant] button");
            assertThat(browser.text()).contains("The job stands on the other file now");
            browser.picture("differs-variant");
            browser.phone();
            browser.open(bench.url(job + "/differs"));
            browser.picture("differs-phone");
        }
    }
}
