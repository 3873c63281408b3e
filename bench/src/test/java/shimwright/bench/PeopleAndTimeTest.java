package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What a second person is worth, where one is needed, and when it will be done. */
class PeopleAndTimeTest {
    private static final String JOB = "/job/job-v-0093";

    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    @Test
    void thePlanLeadsToWhatASecondPersonIsWorth() {
        Document plan = bench.page(JOB + "/plan");
        assertThat(plan.select("a[href=" + JOB + "/people]")).hasSize(1);
        assertThat(plan.text()).contains("A second pair of hands is needed for").contains("2 persons");
        Document page = bench.page(JOB + "/people");
        // all that is left goes on on the case, which takes one step at a time
        assertThat(page.select("p.order").text()).contains("a second person does not make it shorter");
        assertThat(page.text()).contains("Alone, help is still needed for").contains("this is proven");
        assertThat(page.select(".lanes .onwide svg")).isNotEmpty();
        assertThat(page.select(".lanes .onnarrow svg")).isNotEmpty();
        int ahead = plan.select("ol.plan:not(.done) > li").size();
        assertThat(page.select("ol.plan a").size()).isEqualTo(ahead);
        assertThat(bench.page("/job/job-v-0091/people").text())
                .contains("All steps are done; there is nothing to share.");
    }

    /** A step's mark alone where a sentence of the program names it. */
    private static final Pattern BARE = Pattern.compile(
            "(?:needed for|until before|right after|with|[Ss]tep|hold points) [A-Z]{1,2}\\d{2}\\b(?! \\(|, \\p{L})");

    @Test
    void aSentenceThatNamesAStepSaysWhatIsDoneAtIt() {
        for (String page : List.of(
                JOB + "/people",
                JOB + "/plan",
                JOB + "/back?to=step:K02",
                JOB + "/clearance/a",
                "/job/job-v-0091/clearance/c")) {
            assertThat(BARE.matcher(bench.page(page).select("main").text())
                            .results()
                            .map(MatchResult::group))
                    .as(page)
                    .isEmpty();
        }
        assertThat(bench.page(JOB + "/people").text()).contains("help is still needed for D08 (Right cover with");
        assertThat(bench.page("/").select("a.job .unit").eachText())
                .isNotEmpty()
                .allMatch(name -> !name.contains("ambleholt-l5"));
    }

    @Test
    void whichSidesAreCheapestIsSaidWithWhereTheDifferenceLies() {
        assertThat(bench.page(JOB + "/plan").select("a[href=" + JOB + "/sides]"))
                .hasSize(1);
        Document page = bench.page(JOB + "/sides");
        assertThat(page.text()).contains("open choices can be planned");
        assertThat(page.select("section.card")).isNotEmpty();
        for (Element way : page.select("section.card")) {
            assertThat(way.text()).matches("(Saves|Costs) .* In it: .* (more|less)\\. .*Take: .*");
            assertThat(way.select("button[name=side]")).isNotEmpty();
        }
        assertThat(bench.page("/job/job-v-0091/sides").text())
                .contains("All steps are done; there is nothing to choose.");
    }

    @Test
    void atTheBeginningASecondPersonSavesHours() {
        bench.post(
                "/new/ambleholt-l5-74",
                "entry",
                "test-new-people",
                "number",
                "V-0100",
                "owner",
                "a farm",
                "tale-I3",
                "25",
                "tale-I5",
                "19.8",
                "tale-I7",
                "B");
        Document page = bench.page("/job/job-v-0100/people");
        assertThat(page.select("p.order").text())
                .matches("Alone \\d+ h.*, with a second person \\d+ h.*: \\d h .* sooner, \\d+ %\\.");
        assertThat(page.text())
                .containsPattern("With two it (cannot be done sooner|could be done \\d+ min sooner at most)");
        assertThat(page.select(".lanes .onwide figure").size()).isGreaterThan(1);
    }

    @Test
    void aStepForTwoSaysSoAndNamesTheNextOnes() {
        String build = JOB + "/build?step=";
        assertThat(bench.page(build + "D08").text())
                .contains("Second pair of hands is needed for this step; next such steps:")
                .contains("of work");
        assertThat(bench.page(build + "X07").text()).doesNotContain("Second pair of hands");
    }

    @Test
    void whenItWillBeDoneKnowsWhenAnEveningBeginsAndRemembersIt() {
        String when = JOB + "/plan?hours=2&spread=30&arrives=&begin=";
        Document first = bench.page(JOB + "/plan");
        assertThat(first.select("input[name=begin]").val()).isEqualTo("18:30");
        assertThat(first.text()).doesNotContain("Half of the draws");
        Document found = bench.page(when + "19.30");
        assertThat(found.text()).contains("Half of the draws are done by").contains("as the plan has them");
        assertThat(bench.page(JOB + "/plan").select("input[name=begin]").val()).isEqualTo("19.30");
        assertThat(bench.page(when + "23").text()).contains("Give a number from 0 to 1.0");
        assertThat(bench.page(when + "25:00").text()).contains("\"25:00\" is not a time of day. Write it as 18:00");
        assertThat(bench.page(when + "").text()).contains("when an evening begins: nothing typed");
        assertThat(bench.page(JOB + "/plan?begin=18&spread=30&arrives=&hours=1,2")
                        .text())
                .contains("2 numbers. Give one for every day, or seven");
        // what was refused is not remembered
        assertThat(bench.page(JOB + "/plan").select("input[name=begin]").val()).isEqualTo("19.30");
    }
}
