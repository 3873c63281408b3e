package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import shimwright.bench.store.SamplePictures;

/** A box that nobody has a file for, in a shop with nothing in it: begun, opened, stripped, built step by step, printed. */
class BoxWithoutFileTest {
    private static final String[] BOX = {
        "maker", "Old Works", "model", "4-speed", "layout", "IN_LINE", "housing-TAIL", "yes", "gears", "4", "straight",
                "4",
        "countershafts", "1", "reverse", "SLIDING", "shift", "RAILS", "cones1", "0", "cones2", "1", "cones3", "1",
        "cones4", "1"
    };

    private static DemoBench bench;

    @BeforeAll
    static void start() throws IOException {
        bench = DemoBench.at(Files.createTempDirectory("shimwright-begin-"));
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static String[] with(String... fields) {
        List<String> all = new ArrayList<>(List.of(fields));
        for (int i = 0; i < BOX.length; i += 2) {
            if (!List.of(fields).contains(BOX[i])) {
                all.addAll(List.of(BOX[i], BOX[i + 1]));
            }
        }
        return all.toArray(String[]::new);
    }

    @Test
    void aNewJobBeginsWithNoneOfThese() {
        assertThat(bench.page("/new").select("a[href=/begin]").text()).contains("without a file");
        Document form = bench.page("/begin");
        assertThat(form.select("input[name=layout]").size()).isEqualTo(3);
        assertThat(form.select("input[name=gears]").val()).isEqualTo("5");
    }

    @Test
    void whatCannotBeIsRefusedWithEveryReasonAndStaysTyped() {
        HttpResponse<String> wrong = bench.post(
                "/begin",
                with("maker", "", "layout", "", "gears", "five", "shift", "", "straight", "9", "cones1", "x"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(wrong.body());
        assertThat(page.select(".faults li").eachText())
                .anyMatch(line -> line.contains("maker"))
                .anyMatch(line -> line.contains("how the shafts lie"))
                .anyMatch(line -> line.contains("\"five\" cannot be"))
                .anyMatch(line -> line.contains("how the forks are moved"))
                .anyMatch(line -> line.contains("\"x\" cannot be"));
        assertThat(page.select("input[name=gears]").val()).isEqualTo("five");
        assertThat(page.select("input[name=model]").val()).isEqualTo("4-speed");
    }

    @Test
    void itIsOpenedStrippedBuiltAndPrinted() {
        HttpResponse<String> begun = bench.post("/begin", with());
        assertThat(begun.statusCode()).as(begun.body()).isEqualTo(200);
        assertThat(Jsoup.parse(begun.body()).text()).contains("Old Works 4-speed", "not written yet");
        assertThat(bench.post("/begin", with()).body()).contains("on the shelf already");
        String job = "/job/job-w-1";
        assertThat(bench.post("/new/old-works-4-speed", "number", "W-1", "owner", "a farm", "said", "jumps out of 2nd")
                        .body())
                .contains("W-1 is open");
        assertThat(bench.page(job + "/strip").text()).contains("tail housing", "wheel of 2nd", "fork of 1st and 2nd");
        for (String page : List.of(
                "strip",
                "inspect",
                "orders",
                "build",
                "plan",
                "people",
                "back",
                "clearances",
                "proof",
                "record",
                "learn")) {
            assertThat(bench.get(job + "/" + page).statusCode()).as(page).isEqualTo(200);
        }
        assertThat(bench.page(job + "/build").text()).containsIgnoringCase("not to scale");
        String[] off = {"gone", "tail housing", "items1", "tail", "note", "four bolts"};
        assertThat(bench.post(job + "/strip", off).statusCode()).isEqualTo(200);
        assertThat(bench.page(job + "/strip").select("button[value=tail]")).isEmpty();
        assertThat(bench.page(job + "/record").text()).contains("four bolts", "not known yet");
        assertThat(bench.bytes(job + "/record.pdf")).startsWith('%', 'P', 'D', 'F');
    }

    @Test
    void factsArePutInWhereTheyAreMetAndTheJobGoesWithThem() {
        bench.post("/begin", with("model", "third"));
        bench.post("/new/old-works-third", "number", "W-3", "owner", "a farm");
        String here = "/units/type/old-works-third";
        String job = "job-w-3";
        assertThat(bench.page("/job/" + job + "/strip").select("a[href^=" + here + "]"))
                .hasSize(1);
        Document lacking = bench.page(here + "?job=" + job);
        assertThat(lacking.select(".gaps").text())
                .contains("Nobody has said what it weighs", "No clearance", "No bolt");
        HttpResponse<String> wrong = bench.post(here + "/clearance", "job", job, "name", "end play", "lower", "0.05");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(wrong.body()).select(".faults li").size()).isGreaterThan(6);
        assertThat(Jsoup.parse(wrong.body()).select("input[name=lower]").val()).isEqualTo("0.05");
        assertThat(clearance(here, job, lacking)).contains("Kept: input end play. The job stands on the changed file");
        for (String[] fact : List.of(
                new String[] {"/weigh", "mass", "38"},
                new String[] {"/fill", "spec", "GL-4", "volume", "1.8", "level", "plug"},
                new String[] {"/item", "id", "input_front_bearing", "name", "input front bearing", "part", "6206-2RS"},
                new String[] {"/remove", "id", "magnet"})) {
            List<String> fields = new ArrayList<>(List.of("job", job, "entry", "fact-of" + fact[0].replace('/', '-')));
            fields.addAll(List.of(fact).subList(1, fact.length));
            assertThat(bench.post(here + fact[0], fields.toArray(String[]::new)).statusCode())
                    .as(fact[0])
                    .isEqualTo(200);
        }
        assertThat(bench.page(here + "?item=input_front_bearing").text()).contains("6206: what the stamp says.");
        assertThat(bench.page(here).select(".gaps").text()).doesNotContain("weighs", "No clearance", "which oil");
        assertThat(bench.page("/job/" + job + "/strip").select("button[value=magnet]"))
                .isEmpty();
        assertThat(bench.page("/job/" + job + "/clearances").text()).contains("input end play");
        assertThat(bench.page("/job/" + job + "/clearance/a").text())
                .contains("input end play", "Limits: a guess", "Nobody stands behind these limits");
        assertThat(bench.page("/job/" + job + "/record").text())
                .contains("at the bench it was found: input end play", "1.80 L GL-4", "a guess");
    }

    /** A clearance with limits that are a guess, read after the input shaft went in. */
    private static String clearance(String here, String job, Document page) {
        String after = page.select("select[name=after] option").stream()
                .filter(option -> option.text().contains("input shaft with its fixed gears, built up"))
                .findFirst()
                .orElseThrow()
                .val();
        String[] fields = ("job=" + job
                        + "&entry=fact-clearance-1&name=input end play&sense=END_PLAY&lower=0.05&upper=0.15"
                        + "&origin=guess&gauge=dial indicator 0.01 mm&where=under the retainer&acts=closes&inner=44&outer=52"
                        + "&thinnest=0.2&thickest=1&after=" + after)
                .split("[&=]");
        return bench.post(here + "/clearance", fields).body();
    }

    @Test
    void whatIsSentTwiceIsThereOnceAndAJobThatIsGoneIsSaid() {
        bench.post("/begin", with("model", "fourth"));
        String here = "/units/type/old-works-fourth";
        String[] part = {
            "entry", "fact-twice-1", "job", "job-none", "name", "oil baffle", "quantity", "1", "after", "C01"
        };
        assertThat(bench.post(here + "/add", part).body()).contains("The job stays on the file it had");
        assertThat(bench.post(here + "/add", part).statusCode()).isEqualTo(200);
        assertThat(bench.page(here).select("a.partlink b").eachText()).containsOnlyOnce("oil baffle");
        assertThat(bench.post(here + "/clearance", "name", "x", "sense", "PRELOAD", "dragLeast", "1")
                        .body())
                .contains("Say whether it closes or opens", "one of the two limits is missing");
    }

    @Test
    void anotherBoxBeginsAsACopyOfOneThatIsLikeIt() {
        bench.post("/begin", with("model", "first of two"));
        String here = "/units/type/old-works-first-of-two";
        assertThat(bench.post(here + "/copy", "maker", "", "model", "").statusCode())
                .isEqualTo(422);
        assertThat(bench.post(here + "/copy", "maker", "Old Works", "model", "first of two")
                        .statusCode())
                .isEqualTo(422);
        assertThat(bench.post(here + "/copy", "maker", "Old Works", "model", "second of two")
                        .body())
                .contains("It begins with everything that first of two has");
        bench.post("/units/type/old-works-second-of-two/weigh", "mass", "40");
        assertThat(bench.page("/units/type/old-works-second-of-two")
                        .select(".gaps")
                        .text())
                .doesNotContain("weighs");
        assertThat(bench.page(here).select(".gaps").text()).contains("weighs");
    }

    @Test
    void aPhotographOfAPartStandsBesideItsDrawing() throws IOException {
        bench.post("/begin", with("model", "fifth"));
        bench.post("/new/old-works-fifth", "number", "W-5", "owner", "a farm");
        String job = "/job/job-w-5";
        bench.post(job + "/strip", "gone", "tail housing", "items1", "tail");
        byte[] taken = SamplePictures.byLibrary("jpg", 40, 30);
        assertThat(bench.page(job + "/parts/tail").select(".beside")).isEmpty();
        assertThat(bench.upload(job + "/picture", "a.jpg", taken, "about", "strip", "page", "strip")
                        .body())
                .contains("Strip-down", "Picture kept");
        assertThat(bench.page(job + "/parts/tail").select(".beside > label").eachText())
                .containsExactly("Drawing", "Photograph job W-5, at the strip-down");
        Document plan = bench.page(job + "/plan");
        String step = plan.select("a[href*='build?step=']").stream()
                .filter(link -> link.text().contains("tail housing"))
                .findFirst()
                .orElseThrow()
                .attr("href");
        assertThat(bench.page(step).select(".onwide .view .beside img.small")).hasSize(1);
        assertThat(bench.upload(job + "/picture", "a.jpg", new byte[9], "about", "part tail", "page", "parts/tail")
                        .body())
                .contains("As the trade checks it", "class=\"faults\"");
        String struck = bench.page(job + "/strip")
                .select(".pictures .strike input[name=struck]")
                .val();
        bench.post(job + "/strike", "struck", struck, "page", "strip", "reason", "another box");
        assertThat(bench.page(job + "/parts/tail").select(".beside")).isEmpty();
        assertThat(bench.page(job + "/parts/tail").select(".partpicture")).hasSize(1);
    }

    @Test
    void whatIsOnlyUsualSaysSo() {
        bench.post("/begin", with("model", "other"));
        bench.post("/new/old-works-other", "number", "W-2", "owner", "a farm");
        assertThat(bench.page("/job/job-w-2/plan").text()).contains("Usual for such a box; not seen on this one yet.");
    }
}
