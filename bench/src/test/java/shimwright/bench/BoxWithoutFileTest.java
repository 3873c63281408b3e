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

/** A box that nobody has a file for, in a shop with nothing in it: begun, opened, stripped, built step by step, printed. */
class BoxWithoutFileTest {
    private static final String[] BOX = {
        "maker", "Old Works", "model", "4-speed", "layout", "IN_LINE", "housing-TAIL", "yes", "gears", "4", "straight", "4",
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
                "/begin", with("maker", "", "layout", "", "gears", "five", "shift", "", "straight", "9", "cones1", "x"));
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
                "strip", "inspect", "orders", "build", "plan", "people", "back", "clearances", "proof", "record", "learn")) {
            assertThat(bench.get(job + "/" + page).statusCode()).as(page).isEqualTo(200);
        }
        assertThat(bench.page(job + "/build").text()).containsIgnoringCase("not to scale");
        String[] off = {"gone", "tail housing", "items1", "tail", "note", "four bolts"};
        assertThat(bench.post(job + "/strip", off).statusCode()).isEqualTo(200);
        assertThat(bench.page(job + "/strip").select("input[value=tail]")).isEmpty();
        assertThat(bench.page(job + "/record").text()).contains("four bolts", "not known yet");
        assertThat(bench.bytes(job + "/record.pdf")).startsWith('%', 'P', 'D', 'F');
    }

    @Test
    void whatIsOnlyUsualSaysSo() {
        bench.post("/begin", with("model", "other"));
        bench.post("/new/old-works-other", "number", "W-2", "owner", "a farm");
        assertThat(bench.page("/job/job-w-2/plan").text()).contains("Usual for such a box; not seen on this one yet.");
    }
}
