package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What fits into tonight, on the plan page: each line says why it is there. */
class TonightTest {
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

    private static Element tonight(String asked) {
        Document page = bench.page(PLAN + asked);
        return Objects.requireNonNull(page.selectFirst("#tonight"));
    }

    private static List<String> steps(Element tonight) {
        return tonight.select("ol.steps a b").eachText();
    }

    @Test
    void whatFitsIsTheBeginningOfThePlanWithTimesOfDayAndAPlaceToStop() {
        Element tonight = tonight("?until=3+h&persons=2");
        List<String> plan = bench.page(PLAN).select("ol.plan:not(.done) a b").eachText();
        assertThat(steps(tonight)).isNotEmpty().isSubsetOf(plan);
        assertThat(tonight.select("ol.steps .num").eachText())
                .allMatch(time -> time.matches("\\d\\d:\\d\\d to \\d\\d:\\d\\d"));
        assertThat(tonight.select(".kept").text())
                .matches("Stop after " + steps(tonight).get(steps(tonight).size() - 1)
                        + ", at about \\d\\d:\\d\\d; .* left over\\. .+");
        assertThat(tonight.text()).contains("As you said: 3 h");
    }

    @Test
    void lessTimeFitsLessAndEachThatIsLeftSaysWhy() {
        List<String> three = steps(tonight("?until=3+h&persons=2"));
        Element one = tonight("?until=40+min&persons=2");
        assertThat(steps(one).size()).isLessThan(three.size());
        assertThat(one.select("ul.steps li small").eachText()).isNotEmpty().noneMatch(String::isBlank);
        assertThat(one.select("h3").eachText()).isNotEmpty();
        assertThat(one.text()).contains("more steps stand behind these");
        assertThat(steps(tonight("?until=0+min"))).isEmpty();
        assertThat(tonight("?until=0+min").text()).contains("Nothing is worth beginning tonight");
    }

    @Test
    void aloneWhatTakesTwoWaitsForTheSecondPairOfHands() {
        assertThat(tonight("?until=12+h&persons=1").select("h3").eachText()).contains("Needs a second pair of hands");
        assertThat(tonight("?until=12+h&persons=2").select("h3").eachText())
                .doesNotContain("Needs a second pair of hands");
    }

    @Test
    void whatWasTypedStaysUntilThatTimeAndNonsenseIsRefused() {
        tonight("?until=2+h&persons=2");
        assertThat(tonight("").text()).contains("As you said");
        assertThat(tonight("").select("option[selected]").text()).isEqualTo("Someone to help");
        Element refused = tonight("?until=late");
        assertThat(refused.select(".faults").text())
                .contains("\"late\" is no time")
                .contains("22:00");
    }

    /** Pictures to be looked at. */
    @Test
    void itFitsOnATabletAndAPhone() {
        try (Browser browser = new Browser()) {
            for (boolean phone : List.of(false, true)) {
                if (phone) {
                    browser.phone();
                } else {
                    browser.tablet();
                }
                browser.open(bench.url(PLAN + "?until=2.5+h&persons=1"));
                browser.script("document.getElementById('tonight').scrollIntoView()");
                assertThat(browser.script("return document.documentElement.scrollWidth <= innerWidth"))
                        .isEqualTo(true);
                browser.picture(phone ? "tonight-phone" : "tonight-tablet");
            }
        }
    }
}
