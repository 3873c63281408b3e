package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** From a verdict to the order, to the wrong part that comes, back and anew, and to what lies here already. */
class NeededTest {
    private static final String JOB = "/job/job-v-0093";
    private static final String ORDERS = JOB + "/orders";
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        // in the demo everything lies here; here it does not
        for (Element strike : bench.page(ORDERS).select("h2:contains(Lay here) ~ .strike input[name=struck]")) {
            bench.keep(
                    JOB + "/strike",
                    "struck",
                    strike.val(),
                    "page",
                    "orders",
                    "reason",
                    "it is another box that it came for");
        }
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static String inDays(int days) {
        return LocalDate.now(ZoneId.systemDefault()).plusDays(days).toString();
    }

    private static List<String> lines() {
        return bench.page(ORDERS).select(".orderline b").eachText();
    }

    private static String line(String text) {
        return bench.page(ORDERS).select(".orderline").stream()
                .filter(one -> one.text().contains(text))
                .map(one -> one.select("input").val())
                .findFirst()
                .orElseThrow();
    }

    private static Element awaited(String text) {
        return bench.page(ORDERS).select(".awaited").stream()
                .filter(one -> one.text().contains(text))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWornForkIsOrderedComesWrongGoesBackAndComesAgain() throws java.io.IOException {
        assertThat(lines()).anyMatch(text -> text.contains("74-5055"));
        // the verdict is thought over, and the line goes and comes with it
        String limit = bench.page(JOB + "/inspect").select("li[id]").stream()
                .filter(one ->
                        one.select("form[action$=judge] input[name=what]").val().equals("fork pad thickness"))
                .map(Element::id)
                .findFirst()
                .orElseThrow();
        assertThat(bench.keep(JOB + "/judge", "limit", limit, "what", "fork 5", "decision", "rework", "reason", "weld")
                        .statusCode())
                .isEqualTo(200);
        assertThat(lines()).noneMatch(text -> text.contains("74-5055"));
        bench.keep(JOB + "/judge", "limit", limit, "what", "fork 5", "decision", "replace", "reason", "pads gone");
        assertThat(bench.page(ORDERS).text()).contains("74-5055 fork 5", "pads gone");
        // wrong taps: nothing chosen, no day
        HttpResponse<String> nothing = bench.keep(ORDERS + "/needed", "to", "the agent", "due", "");
        assertThat(nothing.statusCode()).isEqualTo(422);
        assertThat(nothing.body()).contains("Choose what to order", "Choose the day");
        String key = line("74-5055");
        HttpResponse<String> gone =
                bench.keep(ORDERS + "/needed", "lines", "no-such-part", "to", "the agent", "due", inDays(3));
        assertThat(gone.body()).contains("is not needed any more");
        // two lines at once, each checked for itself
        bench.keep(ORDERS + "/needed", "lines", key + "\n" + line("input seal"), "to", "the agent", "due", inDays(3));
        assertThat(lines()).noneMatch(text -> text.contains("74-5055") || text.contains("input seal"));
        Element seal = awaited("input seal");
        assertThat(seal.text()).contains("Look: 25x40x7; lip to the rear (oil), by eye");
        String sent = seal.select("input[name=sent]").get(0).val();
        assertThat(bench.keep(ORDERS + "/return", "sent", sent, "reason", "wrong")
                        .body())
                .contains("it has not come yet");
        bench.keep(ORDERS + "/due", "sent", sent, "due", inDays(9), "late", "2", "reason", "they said so");
        assertThat(awaited("input seal").text()).contains(inDays(9), "may be 2 days late");
        bench.keep(ORDERS + "/back", "sent", sent, "measured", "26 x 40 x 7", "good", "no");
        assertThat(awaited("input seal").text()).contains("Came and was not right 26 x 40 x 7");
        assertThat(bench.keep(ORDERS + "/return", "sent", sent, "reason", "bore 26", "due", "some day")
                        .statusCode())
                .isEqualTo(422);
        bench.keep(ORDERS + "/return", "sent", sent, "reason", "bore 26 for a shaft of 25", "due", inDays(14));
        Element again = awaited("input seal");
        assertThat(again.text()).contains(inDays(14)).doesNotContain("Came and was not right");
        assertThat(bench.page(ORDERS).text()).contains("Went back", "bore 26 for a shaft of 25");
        String back = bench.page(ORDERS)
                .select(".found:contains(bore 26) + .strike input[name=struck]")
                .val();
        assertThat(bench.keep(JOB + "/strike", "struck", back, "page", "orders", "reason", "it was right")
                        .body())
                .contains("was ordered anew");
        String anew = again.select("input[name=sent]").get(0).val();
        bench.keep(ORDERS + "/back", "sent", anew, "measured", "25 x 40 x 7, lip to the oil", "good", "yes");
        assertThat(bench.page(ORDERS).select(".awaited").text()).doesNotContain("input seal");
        assertThat(lines()).noneMatch(text -> text.contains("input seal"));
        assertThat(bench.get(JOB + "/record").body()).contains("Went back", "bore 26 for a shaft of 25");
        try (PDDocument paper = Loader.loadPDF(bench.bytes(ORDERS + ".pdf"))) {
            assertThat(new PDFTextStripper().getText(paper)).contains("To order for V-0093", "At the least cost");
        }
        assertThat(bench.get(ORDERS + ".csv").body())
                .startsWith("from,what,price,why,check\n")
                .contains("\"S1\"");
    }

    @Test
    void whatLiesHereIsCheckedAndCanBeTakenBack() {
        String key = line("needle cage of 5th");
        assertThat(bench.keep(ORDERS + "/here", "lines", key, "measured", "").body())
                .contains("a shelf can hold the wrong one");
        bench.keep(ORDERS + "/here", "lines", key, "measured", "K32x37x27, count 2");
        assertThat(lines()).noneMatch(text -> text.contains("needle cage of 5th"));
        String id =
                bench.page(ORDERS).select(".strike input[name=struck]").get(0).val();
        bench.keep(JOB + "/strike", "struck", id, "page", "orders", "reason", "it was the one of 4th");
        assertThat(lines()).anyMatch(text -> text.contains("needle cage of 5th"));
    }

    @Test
    void aStepWithoutItsNewPartIsHeldUpUntilThePartIsOrderedOrHere() {
        assertThat(bench.page(JOB + "/plan").select(".heldup").text())
                .contains("neither ordered nor here", "speed driven gear");
        String held = "D09A";
        Element step = bench.page(JOB + "/build?step=" + held);
        assertThat(step.select(".missing").text()).contains("Must be new", "speed driven gear", "this step is held up");
        assertThat(bench.keep(JOB + "/done", "step", held).body()).contains("is neither ordered nor here");
        assertThat(bench.page(JOB + "/plan?begin=18:30&hours=2.5&spread=30&arrives=")
                        .text())
                .contains("Not before", held);
        String[] lines =
                step.select(".missing input[name=lines]").eachAttr("value").toArray(String[]::new);
        assertThat(bench.keep(JOB + "/here", "step", held, "lines", String.join("\n", lines), "measured", "")
                        .body())
                .contains("a shelf can hold the wrong one");
        bench.keep(JOB + "/here", "step", held, "lines", String.join("\n", lines), "measured", "19 teeth, bore 10.02");
        assertThat(bench.page(JOB + "/build?step=" + held).select(".missing")).isEmpty();
        String id = bench.page(ORDERS)
                .select(".found:contains(19 teeth, bore 10.02) + .strike input[name=struck]")
                .val();
        bench.keep(JOB + "/strike", "struck", id, "page", "orders", "reason", "it was the other seal");
        assertThat(bench.page(JOB + "/build?step=" + held).select(".missing")).isNotEmpty();
    }

    private static Element row(String limit) {
        return Objects.requireNonNull(bench.page(JOB + "/inspect").getElementById(limit));
    }

    @Test
    void whatCannotBeReadSaysWhyAndAsksForAVerdictBeforeHandBack() {
        String inspect = JOB + "/inspect";
        String open = bench.page(inspect).select("ul.wear > li").stream()
                .filter(one -> one.select(".state").text().isEmpty())
                // rings are replaced already, whatever else is found on them
                .filter(one -> !one.text().contains("blocker ring"))
                .map(Element::id)
                .findFirst()
                .orElseThrow();
        assertThat(bench.keep(JOB + "/unread", "limit", open, "why", "").body()).contains("Say why it cannot be read");
        assertThat(bench.keep(JOB + "/unread", "limit", open, "why", "the track is rusted away")
                        .statusCode())
                .isEqualTo(200);
        Element row = row(open);
        assertThat(row.text()).contains("the track is rusted away", "Could not be read");
        assertThat(row.select(".state").text()).isEqualTo("to be decided");
        assertThat(bench.keep(JOB + "/handback", "warranty", "none", "advice", "", "remark", "")
                        .body())
                .contains("not proven within its limit");
        String id = row.select(".strike input[name=struck]").val();
        bench.keep(JOB + "/strike", "struck", id, "page", "inspect", "reason", "read it after cleaning");
        assertThat(row(open).select(".state").text()).isEmpty();
        assertThat(bench.page(inspect).select("#damage option")).hasSizeGreaterThan(20);
    }
}
