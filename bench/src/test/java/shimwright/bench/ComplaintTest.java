package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** From the owner's words to the first look, with wrong taps and their way back, on a phone; and what a third box of the type gains. */
class ComplaintTest {
    private static final String JOB = "/job/job-v-0093";
    private static DemoBench bench;
    private static Browser browser;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        browser = new Browser();
        browser.phone();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    private static void tap(String name, String value) {
        browser.script("document.querySelector(\"input[name='" + name + "'][value='" + value + "']\").click()");
    }

    private static void keep() {
        browser.changes(
                () -> browser.one("form[action$='/complaint'] button.main").click());
    }

    private static String firstLook() {
        return browser.one(".looks li").getText();
    }

    @Test
    void whatItDoesLeadsToTheFirstLookAndALookToTheNext() {
        browser.open(bench.url(JOB + "/complaint"));
        // the owner's words stand ticked and count for nothing yet; what was said besides is named
        assertThat(browser.text())
                .contains("Ticked from the owner's words, and not kept yet: whines or hums; on the overrun")
                .contains("Besides, the box growls or rumbles; jumps out of gear; loses oil")
                .doesNotContain("Look in this order");
        assertThat(browser.has("input[name='answers-kind'][value='whine']:checked"))
                .isTrue();
        assertThat(browser.has("label.choice svg.debris")).isTrue();
        browser.picture("complaint-owner-phone");
        browser.script("document.querySelectorAll(\"main input[type=radio][value='']\").forEach(r => r.click());"
                + "document.querySelectorAll('main input[type=checkbox]:checked').forEach(c => c.click())");
        browser.one("form[action$='/complaint'] button.main").click();
        assertThat(browser.one("section.faults").getText()).contains("nothing is answered", "tap a symptom");
        tap("answers-kind", "growl");
        keep();
        String wrong = firstLook();
        // the wrong answer is put right by saying it again
        tap("answers-kind", "whine");
        tap("symptoms", "Y1");
        tap("answers-load", "overrun");
        tap("apart", "bench");
        keep();
        assertThat(firstLook()).isNotEqualTo(wrong).contains("pinion preload lost", "covers off");
        assertThat(browser.text()).contains("Only the vehicle can show: tires or wheel bearing", "whines or hums");
        browser.picture("complaint-phone");
        // in order, so the next comes up; struck again, it is back
        browser.changes(() -> browser.one(".looks li button[value='IN_ORDER']").click());
        assertThat(firstLook()).doesNotContain("pinion preload lost");
        assertThat(browser.one("#looks ~ section, main").getText()).contains("a look found it in order");
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        browser.one(".strike input[name='reason']").sendKeys("gauge stood on the wrong shaft");
        browser.changes(() -> browser.one(".strike button").click());
        assertThat(firstLook()).contains("pinion preload lost");
        // found, and it stands on the record
        browser.changes(() -> browser.one(".looks li button[value='FOUND']").click());
        assertThat(browser.text()).contains("pinion preload lost: found", "it was found");
        assertThat(bench.get(JOB + "/record").body())
                .contains("As checked: whine on the overrun only, whines or hums", "pinion preload lost: found");
        browser.tablet();
        browser.open(bench.url(JOB + "/complaint"));
        browser.picture("complaint-tablet");
    }

    @Test
    void aThirdBoxOfTheTypeIsToldWhatTheFirstTwoHad() {
        String type = "{\"type\":\"ambleholt-l5-74\",\"variant\":\"A\",\"because\":\"known\",";
        for (String number : new String[] {"one", "two", "three"}) {
            act("/api/shop/acts/open-job", type + "\"number\":\"" + number + "\",\"owner\":\"o\"}");
            act(
                    "/api/jobs/job-" + number + "/acts/say-complaint",
                    "{\"answers\":{\"kind\":\"jumps\",\"gear\":\"direct\"}}");
        }
        String page = "/job/job-three/complaint";
        assertThat(bench.get(page).body()).doesNotContain("earlier");
        for (String number : new String[] {"one", "two"}) {
            act(
                    "/api/jobs/job-" + number + "/acts/look-at",
                    "{\"suspect\":\"alignment\",\"name\":\"bell housing or dowels out of line\",\"seen\":\"found\"}");
        }
        String third = bench.get(page).body();
        assertThat(third).containsPattern("it was so in 2 of \\d cases before \\(two, one\\)");
        assertThat(bench.get("/job/job-one/complaint").body())
                .containsPattern("it was so in 1 of \\d cases? before \\(two\\)");
    }

    private static void act(String path, String json) {
        HttpResponse<String> answer = bench.postBody(path, "application/json", json);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    }

    @Test
    void whatAPhoneHearsIsHeldAgainstThePairs() {
        String page = JOB + "/complaint";
        assertThat(bench.page(page + "?turning=3000&in=g3&heard=341")
                        .select("table.suspects tr")
                        .eachText())
                .anyMatch(row -> row.contains("final drive") && row.contains("like what was heard"))
                .anyMatch(row -> row.contains("3rd") && row.contains("1250") && !row.contains("like what"));
        HttpResponse<String> wrong = bench.get(page + "?turning=fast&in=g3");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("speed of the input shaft", "value=\"fast\"");
        assertThat(bench.get(page + "?turning=3000&in=none&heard=-1").body())
                .contains("this unit has no none", "what was heard");
    }
}
