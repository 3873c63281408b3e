package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Predicate;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is ordered holds its steps up, on the page and in the plan, until it is here and was checked. */
class OrdersTest {
    private static final String ORDERS = "/job/job-v-0093/orders";
    private static final String PLAN = "/job/job-v-0093/plan";

    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static List<String> ahead() {
        return bench.page(PLAN).select("ol.plan:not(.done) a b").eachText();
    }

    /** The order once it is as wanted, or as it stands after a minute. */
    private static List<String> aheadOnce(Predicate<List<String>> wanted) {
        List<String> order = ahead();
        for (long end = System.nanoTime() + 60_000_000_000L; !wanted.test(order) && System.nanoTime() < end; ) {
            order = ahead();
        }
        return order;
    }

    /** The day by which half of the draws are done. */
    private static LocalDate finished() {
        return LocalDate.parse(bench.page(PLAN + "?begin=18:30&hours=3&spread=30")
                .select(".found:contains(Half of the draws) b")
                .get(0)
                .text());
    }

    @Test
    void whatIsOrderedIsWaitedForUntilItIsCheckedAndIn() {
        List<String> before = ahead();
        HttpResponse<String> wrong = bench.post(
                ORDERS, "entry", "order-test-0", "what", "", "items", "flange, gear 9", "due", "soon", "late", "x");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(wrong.body()).select(".faults li").eachText())
                .hasSize(3)
                .anyMatch(line -> line.contains("\"soon\" is no day"));
        assertThat(Jsoup.parse(wrong.body()).select("input[name=items]").val()).isEqualTo("flange, gear 9");

        String due = LocalDate.now(ZoneId.systemDefault()).plusDays(5).toString();
        String[] order = {
            "entry", "order-test-1", "what", "right drive flange", "items", "Flange", "to", "the machinist", "due", due
        };
        assertThat(bench.post(ORDERS, order).body()).contains("right drive flange", "due on", due);
        assertThat(bench.post(ORDERS, order).statusCode()).as("repeated").isEqualTo(200);
        assertThat(bench.page(ORDERS).select("section.awaited")).hasSize(1);
        assertThat(bench.page(ORDERS).select(".way a[aria-current=page]").text())
                .isEqualTo("Orders 1");
        // what is left of the old order is shown at once; the better one stands as soon as it is found
        List<String> waiting = aheadOnce(steps -> steps.indexOf("D10") > before.indexOf("D10"));
        assertThat(waiting).containsExactlyInAnyOrderElementsOf(before);
        assertThat(waiting.indexOf("D10")).isGreaterThan(before.indexOf("D10"));
        assertThat(bench.page("/job/job-v-0093/record").text()).contains("not here yet");
        assertThat(bench.page("/job/job-v-0093/build?step=D10").select(".trap").text())
                .contains("Awaited right drive flange, due on " + due);
        assertThat(bench.page(PLAN).text()).containsPattern("waiting [0-9]+ (days|h)");
        assertThat(bench.page(PLAN).select("textarea[name=arrives]").val()).isEqualTo("D10 " + due + " 0");

        String sent = bench.page(ORDERS).select("input[name=sent]").val();
        LocalDate done = finished();
        LocalDate late = LocalDate.now(ZoneId.systemDefault()).plusDays(60);
        bench.post(ORDERS + "/due", "entry", "order-test-late", "sent", sent, "due", late.toString(), "late", "0");
        assertThat(finished())
                .as("a late delivery moves the day it is done")
                .isAfter(done)
                .isAfterOrEqualTo(late);
        bench.post(ORDERS + "/due", "entry", "order-test-soon", "sent", sent, "due", due, "late", "0");
        HttpResponse<String> unchecked =
                bench.post(ORDERS + "/back", "entry", "order-test-2", "sent", sent, "measured", "");
        assertThat(unchecked.statusCode()).isEqualTo(422);
        assertThat(unchecked.body()).contains("Say whether it may go in", "what comes back is checked");
        assertThat(bench.post(
                                ORDERS + "/back",
                                "entry",
                                "order-test-3",
                                "sent",
                                sent,
                                "measured",
                                "seat 34.98, no mark",
                                "good",
                                "yes")
                        .body())
                .contains("Nothing is awaited", "seat 34.98, no mark");
        assertThat(aheadOnce(before::equals)).isEqualTo(before);
        assertThat(bench.page("/job/job-v-0093/record").text()).contains("seat 34.98, no mark. May go in");
    }
}
