package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** In a real browser: a person who does steps out of order, leaves one out, adds one, and wants back to something. */
class OwnWayTest {
    private static final String JOB = "/job/job-v-0093";
    private static DemoBench bench;
    private static Browser browser;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        browser = new Browser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    private static void post(String step, String form, String field, String typed) {
        browser.open(bench.url(JOB + "/build?step=" + step));
        String in = "form[action$='/" + form + "']";
        browser.wait("the field " + field, () -> {
            browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
            return browser.one(in + " input[name='" + field + "']").isDisplayed() ? true : null;
        });
        browser.one(in + " input[name='" + field + "']").sendKeys(typed);
        browser.changes(() -> browser.one(in + " button").click());
    }

    @Test
    void thePlanFollowsWhatIsReallyDone() {
        // out of order: the spacer and the wheel before the end play is read
        browser.open(bench.url(JOB + "/build?step=Q01"));
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        browser.one("form[action$='/jumped'] button").click();
        assertThat(browser.one("section.faults").getText())
                .contains("Not kept.")
                .contains("Say how it came about");
        post("Q01", "jumped", "reason", "the oven was hot");
        assertThat(browser.text())
                .contains("Kept: done out of order")
                .contains("Q01 (Spacer S5")
                .contains(") was done before E04");
        // the plan begins where the bench really is
        browser.open(bench.url(JOB + "/plan"));
        assertThat(browser.one("ol.plan li").getText()).startsWith("E02");
        assertThat(browser.one("ol.plan").getText()).doesNotContain("Q01 ");
        assertThat(browser.one("ol.plan.done").getText()).contains("out of order: the oven was hot");
        // left out, and taken up again
        post("X07", "leftout", "reason", "the owner drives it himself");
        browser.open(bench.url(JOB + "/plan"));
        assertThat(browser.one("ol.plan").getText()).doesNotContain("X07");
        browser.changes(() -> browser.one("form[action$='/takenup'] button").click());
        assertThat(browser.one("ol.plan").getText()).contains("X07");
        // one of one's own, where it was put
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        browser.one("form[action$='/added'] input[name='todo']").sendKeys("Chase the drain thread.");
        browser.one("form[action$='/added'] input[name='after']").sendKeys("e03");
        browser.one("form[action$='/added'] input[name='before']").sendKeys("e04");
        browser.one("form[action$='/added'] input[name='reason']").sendKeys("burr");
        browser.changes(() -> browser.one("form[action$='/added'] button").click());
        String plan = browser.one("ol.plan").getText();
        assertThat(plan.indexOf("OWN1 Chase")).isBetween(plan.indexOf("E03 "), plan.indexOf("E04 "));
        // it all stands on the record
        browser.open(bench.url(JOB + "/record"));
        assertThat(browser.text())
                .contains("Step Q01 done before a step it waits for")
                .contains("Step OWN1 added by");
    }

    /** Every page that stood here, by what it said of the plan being made better. */
    private static final String PAGES = """
            window.stood = [];
            new MutationObserver(() => window.stood.push(document.querySelector('[data-again]')?.textContent ?? ''))
                .observe(document.documentElement, {childList: true, subtree: true});
            """;

    @Test
    void afterASurpriseNobodyWaitsAndTheBetterPlanComesByItself() {
        try (DemoBench own = DemoBench.fresh()) {
            browser.open(own.url(JOB + "/build?step=X07"));
            browser.wait("a page at rest", () -> browser.has("[data-again]") ? null : true);
            browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
            browser.script(PAGES);
            browser.one("form[action$='/leftout'] input[name='reason']").sendKeys("the owner does it");
            browser.changes(() -> browser.one("form[action$='/leftout'] button").click());
            browser.wait("the plan made better", () -> browser.has("[data-again]") ? null : true);
            assertThat(String.valueOf(browser.script("return window.stood.join('|')")))
                    .contains("is being improved and will change by itself")
                    .endsWith("|");
            assertThat(own.page(JOB + "/plan").text()).doesNotContain("being improved");
        }
    }

    @Test
    void theWayBackSaysWhatComesApartWhatItCostsAndWhatIsReadAgain() {
        browser.open(bench.url(JOB + "/back"));
        browser.typeAndSend("front cup");
        browser.changes(() -> browser.one("ul.aims a").click());
        assertThat(browser.text())
                .contains("No other way costs less")
                .contains("What it destroys")
                .contains("Undo, in this order")
                .contains("Then do again");
        // a bevel pair is run in together (common practice, no source)
        assertThat(bench.page(JOB + "/back?to=item:pinion&want=renew").text()).contains("A pair crown wheel");
        assertThat(bench.get(JOB + "/back?to=item:nothing").body()).contains("this unit has nothing of that name");
    }
}
