package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.bench.picture.svg.DrawnSvg;

/** Standard parts on their page and by the JSON door; 6205 is 25 × 52 × 15 mm (ISO 15:2017, from memory). */
class PartPagesTest {
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static Document parts(String field, String typed) {
        return bench.page("/parts?" + field + "=" + URLEncoder.encode(typed, StandardCharsets.UTF_8));
    }

    @Test
    void theSheetsAndTheShopLeadToIt() {
        assertThat(bench.page("/sheets").select("a[href=/parts]")).hasSize(1);
        assertThat(bench.page("/").select("a[href=/parts]")).hasSize(1);
        Document empty = bench.page("/parts");
        assertThat(empty.select("section.part")).isEmpty();
        assertThat(empty.select(".faults")).isEmpty();
    }

    @Test
    void aStampBringsSizesStandardAndHowFarTheTablesAgree() {
        Document one = parts("stamp", "6206-2rs c3");
        assertThat(one.select("section.part")).hasSize(1);
        assertThat(one.text())
                .contains("6206: what the stamp says.", "62 mm", "ISO 15", "agree", "sealed on both sides");
        assertThat(one.select("input[name=stamp]").val()).isEqualTo("6206-2rs c3");
    }

    @ParameterizedTest
    @CsvSource({
        "25 52 15",
        "25x52x15",
        "'25,0 × 52,1 × 14,9 mm'",
        "25 mm 52 mm 15 mm",
        "15; 25; 52",
        "0.984 2.047 0.591 in"
    })
    void measuredSizesNameThePart(String typed) {
        assertThat(parts("sizes", typed).select("section.part h2").text()).contains("6205");
    }

    @Test
    void eachPartThatIsOfferedIsDrawn() {
        Document several = parts("sizes", "25 52 15");
        assertThat(several.select("section.part"))
                .hasSizeGreaterThan(1)
                .allSatisfy(
                        part -> assertThat(part.select(".partpicture svg path")).isNotEmpty());
        List<String> ids = several.select("[id]").eachAttr("id");
        assertThat(ids).doesNotHaveDuplicates();
    }

    @Test
    void aStepShowsEachOfItsPartsAloneOneTapFromTheSection() {
        Document step = bench.page("/job/job-v-0093/build?step=S03");
        assertThat(step.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
        assertThat(step.select(".onwide .views > label").eachText())
                .containsExactly("Section", "Fork 3/4", "Fork 1/2", "Rail 1/2", "Spring pin 5x26 of fork 1/2");
        assertThat(step.select(".onwide .views > input[checked]").eachAttr("id"))
                .containsExactly("shown-wide-1");
        for (String address : step.select(".onnarrow .partpicture").eachAttr("src")) {
            HttpResponse<String> drawn = bench.get(address);
            assertThat(drawn.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
            assertThat(DrawnSvg.of(drawn.body()).all("path")).isNotEmpty();
        }
        assertThat(bench.get("/job/job-v-0093/part/item/none").statusCode()).isEqualTo(404);
    }

    @Test
    void theSectionIsSeenFirstWhereItDrawsAPartOfTheStep() {
        Document step = bench.page("/job/job-v-0093/build?step=G03");
        assertThat(step.select(".onwide .views > input[checked]").eachAttr("id"))
                .containsExactly("shown-wide-0");
        assertThat(step.select(".onwide .views > label").eachText()).contains("Keys and springs of hub 3/4");
    }

    @Test
    void severalAreOfferedAndNothingIsChosen() {
        Document several = parts("stamp", "spline 30x2");
        assertThat(several.text()).contains("standard parts may be meant", "Count the teeth");
        assertThat(several.select("section.part").size()).isGreaterThan(1);
    }

    @Test
    void whatIsNotFoundIsSaidAndStaysTyped() {
        Document nothing = parts("stamp", "<b>zzzzzz</b>");
        assertThat(nothing.select(".faults").text()).contains("nothing in the tables", "question mark");
        assertThat(nothing.select("input[name=stamp]").val()).isEqualTo("<b>zzzzzz</b>");
        assertThat(parts("sizes", "twenty").select(".faults").text()).contains("twenty");
    }

    @Test
    void theDoorSaysTheSame() {
        assertThat(bench.get("/api/parts?stamp=6206").body())
                .contains("\"designation\":\"6206\"", "\"count\":1", "\"value\":0.062", "\"unit\":\"m\"");
        assertThat(bench.get("/api/parts?sizes=25x52x15").body()).contains("\"6205\"");
        assertThat(bench.get("/api/parts").statusCode()).isEqualTo(400);
        assertThat(bench.get("/api/parts?stamp=zzzzzzz").statusCode()).isEqualTo(422);
        assertThat(bench.get("/api/openapi.json").body()).contains("\"/api/parts\"");
    }
}
