package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page of both demo jobs answers, is named, and shows what it should. */
class PagesTest {
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/drawer",
                "/new/ambleholt-l5-74",
                "/job/job-v-0093/strip",
                "/job/job-v-0093/inspect",
                "/job/job-v-0093/orders",
                "/job/job-v-0093/build",
                "/job/job-v-0093/plan",
                "/job/job-v-0093/people",
                "/job/job-v-0093/sides",
                "/job/job-v-0091/people",
                "/job/job-v-0093/clearances",
                "/job/job-v-0093/together",
                "/job/job-v-0093/clearance/a",
                "/job/job-v-0093/clearance/b",
                "/job/job-v-0093/clearance/c",
                "/job/job-v-0093/clearance/d",
                "/job/job-v-0093/clearance/e",
                "/job/job-v-0093/clearance/f",
                "/job/job-v-0093/proof",
                "/job/job-v-0093/record",
                "/job/job-v-0091/record",
                "/job/job-v-0091/build?step=T06",
                "/job/job-v-0091/clearance/c"
            })
    void everyPageAnswersInBothUnits(String path) {
        for (String units : List.of("inch", "metric")) {
            bench.post("/me", "units", units, "back", "/");
            HttpResponse<String> answer = bench.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(200);
            assertThat(answer.headers().firstValue("Content-Security-Policy")).isPresent();
            Document page = Jsoup.parse(answer.body());
            assertThat(page.title()).endsWith("Shimwright");
            assertThat(page.select("h1")).isNotEmpty();
            assertThat(page.text()).doesNotContain("NaN").doesNotContain("null").doesNotContain("Infinity");
            assertThat(page.select("form[method=post][data-keep]"))
                    .allMatch(form -> !form.select("input[name=entry]").isEmpty());
            assertThat(page.select("input:not([type=hidden]), select, textarea"))
                    .as("every field has a name a screen reader can say")
                    .allMatch(field -> labelled(page, field));
        }
    }

    /** A job may move to another variant when it is half built, and stands done then on steps that the other has not. */
    @Test
    void aJobThatMovedToAnotherVariantShowsAllItsPages() {
        try (DemoBench own = DemoBench.fresh()) {
            String file =
                    own.get("/api/jobs/job-v-0093").body().replaceFirst("(?s).*\"unitFile\":\"([0-9a-f]{64}).*", "$1");
            HttpResponse<String> moved = own.postBody(
                    "/api/jobs/job-v-0093/acts/move-unit",
                    "application/json",
                    "{\"file\":\"" + file + "\",\"variant\":\"B\",\"reason\":\"the other one\"}");
            assertThat(moved.statusCode()).as(moved.body()).isEqualTo(201);
            for (String tab : List.of(
                    "complaint",
                    "strip",
                    "inspect",
                    "orders",
                    "money",
                    "build",
                    "plan",
                    "people",
                    "back",
                    "clearances",
                    "clearance/a",
                    "clearance/c",
                    "proof",
                    "record",
                    "sheets",
                    "tags",
                    "differs",
                    "guide",
                    "guide.pdf",
                    "benchsheet",
                    "benchsheet.pdf",
                    "record.pdf")) {
                assertThat(own.get("/job/job-v-0093/" + tab).statusCode())
                        .as(tab)
                        .isEqualTo(200);
            }
        }
    }

    private static boolean labelled(Document page, Element field) {
        return field.closest("label") != null
                || !page.select("label[for=" + field.id() + "]").isEmpty();
    }

    @Test
    void aVariantIsToldByItsTellTalesAndAContradictionIsShown() {
        String form = "/new/ambleholt-l5-74";
        String[] one = {"entry", "test-new-1", "number", "V-0100", "owner", "a farm", "tale-I3", "25", "tale-I7", "B"};
        HttpResponse<String> tooFew = bench.post(form, one);
        assertThat(tooFew.statusCode()).isEqualTo(422);
        assertThat(tooFew.body()).contains("Not settled: 1 strong tell-tale so far, two must agree");
        HttpResponse<String> against = bench.post(
                form,
                "entry",
                "test-new-2",
                "number",
                "V-0100",
                "owner",
                "a farm",
                "tale-I3",
                "25",
                "tale-I5",
                "19.8",
                "tale-I6",
                "37/8");
        assertThat(against.statusCode()).isEqualTo(422);
        assertThat(against.body()).contains("Contradiction").contains("37/8");
        HttpResponse<String> told = bench.post(
                form,
                "entry",
                "test-new-3",
                "number",
                "V-0100",
                "owner",
                "a farm",
                "tale-I3",
                "25",
                "tale-I5",
                "19,8",
                "tale-I7",
                "B",
                "said",
                "it whines\nin third");
        assertThat(told.statusCode()).isEqualTo(200);
        assertThat(told.uri().getPath()).isEqualTo("/job/job-v-0100/strip");
        assertThat(bench.page("/job/job-v-0100/record").text())
                .contains("it whines")
                .contains("2 strong tell-tales agree");
        assertThat(bench.post(
                                form,
                                "entry",
                                "test-new-4",
                                "number",
                                "V-0100",
                                "owner",
                                "x",
                                "tale-I3",
                                "25",
                                "tale-I5",
                                "19.8")
                        .body())
                .contains("already open");
    }

    @Test
    void stripAndInspectionAreKeptAndJudged() {
        String job = "/job/job-v-0093";
        assertThat(bench.post(job + "/strip", "entry", "test-off-1", "gone", "breather", "note", "blocked")
                        .body())
                .contains("breather");
        assertThat(bench.post(job + "/strip", "entry", "test-off-2", "gone", "").statusCode())
                .isEqualTo(422);
        HttpResponse<String> found =
                bench.post(job + "/inspect", "entry", "test-found-1", "limit", "C14", "values", "13.95 13.93 13.96");
        assertThat(found.body()).contains("is below the limit of 13.940 mm");
        assertThat(bench.post(job + "/inspect", "entry", "test-found-2", "limit", "C14", "values", "13.95 x")
                        .statusCode())
                .isEqualTo(422);
        assertThat(bench.post(job + "/inspect", "entry", "test-found-3", "limit", "C04", "attest", "good")
                        .body())
                .contains("As it should be");
        assertThat(bench.post(job + "/observe", "entry", "test-found-4", "what", "breather", "words", "blocked")
                        .statusCode())
                .isEqualTo(200);
        assertThat(bench.post(
                                job + "/judge",
                                "entry",
                                "test-judge-1",
                                "limit",
                                "C14",
                                "what",
                                "rails",
                                "decision",
                                "replace",
                                "reason",
                                "worn")
                        .body())
                .contains("replace");
        assertThat(bench.post(job + "/judge", "entry", "test-judge-2", "limit", "C14", "what", "rails")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void stepsCanBeUndoneOnlyFromTheEnd() {
        String job = "/job/job-v-0093";
        assertThat(bench.post(job + "/undo", "entry", "test-undo-1", "step", "R04", "reason", "leak")
                        .body())
                .contains("standing on it");
        assertThat(bench.post(job + "/undo", "entry", "test-undo-2", "step", "E01", "reason", "wrong shim")
                        .statusCode())
                .isEqualTo(200);
        assertThat(bench.page(job + "/build").select(".step .at b").text()).isEqualTo("E01");
        assertThat(bench.post(job + "/cannot", "entry", "test-cannot-1", "step", "E01", "reason", "no bolts")
                        .body())
                .contains("no bolts");
        assertThat(bench.post(job + "/done", "entry", "test-done-1", "step", "E01")
                        .statusCode())
                .isEqualTo(200);
        assertThat(bench.page(job + "/build").select(".step .at b").text()).isEqualTo("E02");
    }

    @Test
    void aStepOfOnesOwnPostedTwiceIsOneStep() {
        String job = "/job/job-v-0093";
        String step = bench.page(job + "/plan")
                .select("form[action$=/added] input[name=step]")
                .attr("value");
        for (int i = 0; i < 2; i++) {
            assertThat(bench.post(
                                    job + "/added",
                                    "entry",
                                    "test-own-1",
                                    "step",
                                    step,
                                    "todo",
                                    "Wipe the face.",
                                    "at",
                                    "BENCH",
                                    "duration",
                                    "5 min",
                                    "before",
                                    "x06",
                                    "reason",
                                    "oil on it")
                            .statusCode())
                    .isEqualTo(200);
        }
        assertThat(bench.page(job + "/plan").select("ol.plan:not(.done) li").eachText())
                .filteredOn(text -> text.contains("Wipe the face."))
                .hasSize(1);
        assertThat(bench.post(job + "/added", "entry", "test-own-2", "step", step, "todo", "", "duration", "fast")
                        .body())
                .contains("Say what is to be done")
                .contains("fast");
    }

    /** The maker's digits on the pinion move its limits: table, drawing and distribution must name the same ones. */
    @Test
    void theRecordDrawsTheLimitsThatItNames() {
        String record = bench.page("/job/job-v-0091/record").text();
        assertThat(record).contains("51.940").contains("pinion depth, nose to crown axis: 51.940 to 52.000 mm");
        assertThat(record).doesNotContain("51.970 to 52.030 mm");
    }

    /** A4 is 210 mm wide, the margins of the record take 32 mm: 178 mm are 672 px. What is wider is cut off by the printer. */
    @ParameterizedTest
    @ValueSource(strings = {"/job/job-v-0091/record", "/job/job-v-0093/record"})
    void everyPictureOfTheRecordFitsThePaper(String path) {
        List<String> widths = bench.page(path).select("svg[role=img]").eachAttr("width");
        assertThat(widths)
                .isNotEmpty()
                .allSatisfy(width -> assertThat(Double.parseDouble(width)).isLessThanOrEqualTo(672));
    }

    @Test
    void theDrawerTakesAPieceAndLetsItGo() {
        assertThat(bench.post(
                                "/drawer",
                                "entry",
                                "test-shim-1",
                                "piece",
                                "d80-23",
                                "family",
                                "SH80",
                                "stamp",
                                "1.15",
                                "t1",
                                "1.150",
                                "t2",
                                "1.151",
                                "t3",
                                "1.150")
                        .body())
                .contains("d80-23");
        assertThat(bench.post("/drawer/remove", "entry", "test-shim-2", "piece", "d80-23", "reason", "")
                        .statusCode())
                .isEqualTo(422);
        assertThat(bench.post("/drawer/remove", "entry", "test-shim-3", "piece", "d80-23", "reason", "bent")
                        .body())
                .contains("d80-23 is out of the drawer");
        org.jsoup.nodes.Document drawer = bench.page("/drawer");
        assertThat(drawer.select("table.drawer").text()).doesNotContain("d80-23");
        // what left stays named, where it can be put back
        assertThat(drawer.select("details li").text()).contains("d80-23 SH80").contains("bent");
    }

    @Test
    void aRecordWithoutAnInspectionSaysSo() {
        String none = "No inspection is on the record";
        NewJob.open(bench, "V-0777");
        assertThat(bench.page("/job/job-v-0777/record").text()).contains(none);
        assertThat(bench.page("/job/job-v-0091/record").text()).doesNotContain(none);
    }

    @Test
    void aRecordThatWasHandedBackIsClosed() {
        HttpResponse<String> late =
                bench.post("/job/job-v-0091/cannot", "entry", "test-late-1", "step", "X07", "reason", "x");
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(late.body()).contains("handed back");
        assertThat(bench.post("/job/job-v-0093/handback", "entry", "test-early-1", "warranty", "1 year")
                        .body())
                .contains("steps are not done");
    }
}
