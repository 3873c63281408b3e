package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page's script: alive after a refusal, no key and no entry lost, a pad beside the field and not on it. */
class ScriptTest {
    private static final String JOB = "/job/job-v-0093";

    private static Browser browser;
    private DemoBench bench;

    @BeforeAll
    static void start() {
        browser = new Browser();
    }

    @AfterAll
    static void stop() {
        browser.close();
    }

    @BeforeEach
    void ownBench() {
        bench = DemoBench.fresh();
        browser.tablet();
    }

    @AfterEach
    void closeBench() {
        browser.offline(false);
        bench.close();
    }

    /** Fields that are covered by the pad, or off the screen, once they have the focus; from the page's top each. */
    private static final String COVERED = """
            return Array.from(document.querySelectorAll('input[data-pad]'))
                .filter(e => !e.closest('details:not([open])'))
                .filter(e => {
                    document.activeElement.blur();
                    scrollTo(0, 0);
                    e.focus();
                    const at = e.getBoundingClientRect();
                    const pad = document.querySelector('.pad').getBoundingClientRect();
                    return pad.height < 100 || at.top < 0 || at.bottom > pad.top;
                })
                .map(e => e.outerHTML.slice(0, 120))
            """;

    private static final String SUBMIT = "document.querySelector('form.card[action=\"/drawer\"]').requestSubmit()";

    private static String padTop() {
        return "document.querySelector('.pad').getBoundingClientRect().top";
    }

    private static double measure(String script) {
        return ((Number) browser.script("return " + script)).doubleValue();
    }

    private static List<String> rounds() {
        return browser.all("table.rounds td.read").stream()
                .map(WebElement::getText)
                .map(text -> text.replaceAll(" (mm|outlier|not).*", ""))
                .toList();
    }

    @Test
    void afterARefusalTheScriptGoesOn() {
        browser.phone();
        browser.open(bench.url("/drawer"));
        browser.one("input[name=piece]").sendKeys("d52-99");
        browser.one("input[name=t1]").sendKeys("1.2x");
        browser.changes(() -> browser.script(SUBMIT));
        assertThat(browser.has("main > .faults")).isTrue();
        assertThat(browser.one("input[name=t1]").getDomProperty("value")).isEqualTo("1.2x");
        browser.script("document.querySelector('input[name=t2]').focus()");
        assertThat(browser.one(".pad").isDisplayed()).isTrue();
        browser.changes(() -> browser.script(SUBMIT));
        browser.script("document.querySelector('input[name=t2]').focus()");
        assertThat(browser.one(".pad").isDisplayed()).isTrue();
    }

    @Test
    void whatWasRefusedIsStillInItsFormWhereverThatIs() {
        browser.open(bench.url(JOB + "/inspect"));
        browser.script("document.querySelectorAll('.wear details').forEach(d => d.open = true)");
        String form = "form[action$='/judge']:has(input[name=limit][value='C14'])";
        browser.script("document.querySelector(\"" + form + " input[name=decision]\").checked = true");
        browser.typeUnfolded(form + " input[name=consent]", "the owner, by telephone");
        browser.changes(() -> browser.one(form + " button").click());
        assertThat(browser.has("main > .faults")).isTrue();
        WebElement consent = browser.one(form + " input[name=consent]");
        assertThat(consent.getDomProperty("value")).isEqualTo("the owner, by telephone");
        assertThat(consent.isDisplayed()).isTrue();
        assertThat(browser.script("return document.querySelector(\"" + form + " input[name=decision]\").checked"))
                .isEqualTo(true);
        assertThat(browser.all("form[action$='/judge'] input[name=consent]"))
                .filteredOn(
                        other -> !String.valueOf(other.getDomProperty("value")).isEmpty())
                .hasSize(1);
    }

    @Test
    void aGaugeThatTypesGoesFromPieceToPieceAndOnToTheNextLimitWithoutJumpingToTheTop() {
        browser.open(bench.url(JOB + "/inspect?limit=C05"));
        String focused = "return document.activeElement.name";
        assertThat(browser.script(focused)).isEqualTo("values-wheel_1");
        browser.gauge("0.01\n0.01\n0.00\n0.01\n");
        assertThat(browser.script(focused)).isEqualTo("values-gear_5");
        browser.changes(() -> browser.gauge("0.02\n"));
        assertThat(String.valueOf(browser.script("return location.search"))).contains("limit=C06");
        assertThat(browser.script(focused)).isEqualTo("values-hub_34+slider_34");
        assertThat(measure("scrollY")).isPositive();
        assertThat(measure("document.activeElement.getBoundingClientRect().top"))
                .isBetween(0.0, measure("innerHeight"));
        assertThat(browser.one("#C05 .state").getText()).isEqualTo("good");
        assertThat(browser.one(".kept").getText()).contains("Kept: 5 pieces");
        // an inch gauge at the second of three: asked about, and what was typed stays
        browser.open(bench.url(JOB + "/inspect?limit=C20"));
        browser.gauge("0.30\n0.012\n0.31\n0.29\n");
        browser.changes(() -> browser.gauge("0.30\n"));
        assertThat(browser.one("main > .faults").getText()).contains("Did the gauge read inches?", "2nd wheel");
        assertThat(browser.one("#C20 input[name='values-wheel_2']").getDomProperty("value"))
                .isEqualTo("0.012");
        assertThat(browser.one("#C20 input[name='values-wheel_3']").getDomProperty("value"))
                .isEqualTo("0.31");
    }

    /** The pedal's key is learnt by pressing it; it does the large button and nothing while something is typed. A clock follows to every page. */
    @Test
    void aPedalPressesTheMainButtonAndAClockFollowsToEveryPage() {
        browser.open(bench.url("/held"));
        browser.one("input[name=pedal]").sendKeys(Keys.F8);
        assertThat(browser.one("input[name=pedal]").getDomProperty("value")).isEqualTo("F8");
        browser.script("document.querySelector('input[value=dark]').checked = true");
        browser.changes(() -> browser.one("form.held button").click());
        assertThat(browser.script("return getComputedStyle(document.body).backgroundColor"))
                .isEqualTo("rgb(28, 25, 22)");
        browser.open(bench.url(JOB + "/build"));
        String main = browser.one("a.button.main").getDomAttribute("href");
        browser.changes(() -> browser.gauge(Keys.F8.toString()));
        assertThat(browser.script("return location.pathname")).isEqualTo(main);
        browser.open(bench.url(JOB + "/build"));
        browser.typeUnfolded("form[action$='/clock'] input[name=clock]", "hub cools");
        browser.typeUnfolded("form[action$='/clock'] input[name=minutes]", "0.05");
        browser.changes(() -> browser.script("document.querySelector('form.row[action$=\"/clock\"]').requestSubmit()"));
        browser.open(bench.url(JOB + "/record"));
        browser.wait("the clock's end", () -> browser.one(".timer").getText().contains("ended") ? Boolean.TRUE : null);
        assertThat(browser.one(".timer").getText()).contains("hub cools");
        browser.one("[data-heard]").click();
        assertThat(browser.one("[data-heard]").isDisplayed()).isFalse();
    }

    @Test
    void wordsTypedForOnePartDoNotTurnUpAtAnother() {
        browser.open(bench.url(JOB + "/inspect"));
        browser.script("document.querySelectorAll('.wear details').forEach(d => d.open = true)");
        browser.typeUnfolded(".wear input[name^=words]", "scored");
        browser.open(bench.url(JOB + "/inspect"));
        List<WebElement> again = browser.all(".wear input[name^=words]");
        assertThat(again.get(0).getDomProperty("value")).isEqualTo("scored");
        assertThat(again.stream().skip(1).map(w -> w.getDomProperty("value"))).containsOnly("");
    }

    @Test
    void thePadNeverCoversTheFieldItTypesInto() {
        for (boolean phone : new boolean[] {true, false}) {
            if (phone) {
                browser.phone();
            } else {
                browser.touchTablet();
            }
            for (String page : List.of("/drawer", "/sheets/interference", JOB + "/build", JOB + "/clearance/d")) {
                browser.open(bench.url(page));
                assertThat((List<?>) browser.script(COVERED)).as(page).isEmpty();
            }
        }
    }

    @Test
    void aTouchBesideThePadDoesWhatItTouches() {
        browser.touchTablet();
        browser.open(bench.url("/drawer"));
        browser.script("document.querySelector('input[name=piece]').value = 'd52-99'");
        browser.script("document.querySelector('input[name=t1]').focus()");
        // the pad stays while the finger is down: the page must not move away under it
        browser.script("document.body.dispatchEvent(new PointerEvent('pointerdown', {bubbles: true}));"
                + " document.activeElement.blur()");
        assertThat(browser.one(".pad").isDisplayed()).isTrue();
        browser.script("document.body.click()");
        browser.wait("the pad closes", () -> browser.one(".pad").isDisplayed() ? null : true);
        browser.script("document.querySelector('input[name=t1]').focus()");
        String send = "document.querySelector('form.card[action=\"/drawer\"] button').getBoundingClientRect()";
        browser.script("scrollBy(0, Math.max(0, " + send + ".bottom + 8 - " + padTop() + "))");
        assertThat(measure(send + ".bottom")).isLessThan(measure(padTop()));
        double x = measure(send + ".left + " + send + ".width / 2");
        double y = measure(send + ".top + 10");
        browser.changes(() -> browser.touch(x, y));
        assertThat(browser.has("main > .faults")).isTrue();
    }

    @Test
    void thePadTypesWhereTheCaretIs() {
        browser.phone();
        browser.open(bench.url("/drawer"));
        browser.script(
                "const t = document.querySelector('input[name=t1]'); t.value = '125'; t.focus(); t.setSelectionRange(1, 1)");
        browser.script(
                "Array.from(document.querySelectorAll('.pad button')).find(b => b.textContent === '.').dispatchEvent(new PointerEvent('pointerdown', {bubbles: true, cancelable: true}))");
        assertThat(browser.one("input[name=t1]").getDomProperty("value")).isEqualTo("1.25");
    }

    @Test
    void aGaugeThatTypesFasterThanPagesComeLosesNothing() {
        browser.open(bench.url(JOB + "/build"));
        assertThat(browser.one(".step .at").getText()).startsWith("E02");
        browser.gauge("\nd52-10\n0.24\n0.32\n0.25\n0.31\n0.24\n0.31\n");
        browser.wait("three rounds", () -> rounds().size() == 3 ? true : null);
        assertThat(rounds()).containsExactlyInAnyOrder("0.240, 0.320", "0.250, 0.310", "0.240, 0.310");
        assertThat(browser.has(".offer")).isTrue();
    }

    @Test
    void aReadingNeverPressesAButton() {
        browser.open(bench.url(JOB + "/build"));
        browser.gauge("\nd52-10\n0.24\n0.32\n0.25\n0.31\n0.24\n0.31\n");
        browser.wait("the offers", () -> (browser.has(".offer button") && rounds().size() == 3) ? true : null);
        browser.gauge("0.25\n0.31\n");
        browser.wait("four rounds", () -> rounds().size() == 4 ? true : null);
        assertThat(browser.text()).doesNotContain("Pack at");
        browser.open(bench.url(JOB + "/strip"));
        browser.script("document.querySelector('.links a').focus()");
        browser.gauge("0.31\n");
        assertThat(browser.one("#not-kept").getText()).contains("0.31");
        assertThat(browser.path()).endsWith("/strip");
    }

    @Test
    void aSecondEnterSignsNothingThatNobodyHasSeen() {
        browser.open(bench.url(JOB + "/build?step=E02"));
        browser.script("document.querySelector('details.more').open = true");
        browser.one("form[action$='/note'] input[name=text]").sendKeys("seal lip dry");
        browser.gauge("\n\n\n\n");
        browser.wait("the note", () -> browser.text().contains("seal lip dry") ? true : null);
        assertThat(browser.all(".found").stream().filter(f -> f.getText().contains("seal lip dry")))
                .hasSize(1);
        assertThat(browser.one(".step .at").getText()).startsWith("E02");
    }

    @Test
    void whatIsTypedWithoutANetworkIsSentInItsOrderAlsoWhenThePageWasClosed() {
        browser.open(bench.url(JOB + "/strip"));
        browser.offline(true);
        for (String gone : List.of("first plate", "second plate", "third plate")) {
            browser.typeAndEnter(gone);
            browser.wait(gone, () -> browser.one("#not-kept").getText().contains(gone) ? true : null);
        }
        assertThat(browser.one("#not-kept").getText()).contains("Not kept yet");
        browser.open("about:blank");
        browser.offline(false);
        browser.open(bench.url("/drawer"));
        browser.wait(
                "all sent",
                () -> bench.page(JOB + "/strip")
                                .select("ol.log li b")
                                .eachText()
                                .contains("third plate")
                        ? true
                        : null);
        assertThat(bench.page(JOB + "/strip").select("ol.log li b").eachText())
                .startsWith("third plate", "second plate", "first plate")
                .doesNotHaveDuplicates();
    }

    @Test
    void whatIsRefusedLaterIsToldAndNotLost() {
        browser.open(bench.url(JOB + "/strip"));
        browser.offline(true);
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        browser.one("input[name=note]").sendKeys("brass in the sump\n");
        browser.wait("it waits", () -> browser.one("#not-kept").getText().contains("brass") ? true : null);
        browser.one("input[name=gone]").sendKeys("sump plate\n");
        browser.wait("both wait", () -> browser.one("#not-kept").getText().contains("sump plate") ? true : null);
        browser.offline(false);
        browser.wait("told", () -> browser.one("#not-kept").getText().contains("not kept") ? true : null);
        browser.open(bench.url("/drawer"));
        browser.wait("told here too", () -> browser.one("#not-kept").getText().contains("brass") ? true : null);
        assertThat(browser.one("#not-kept").getText()).contains("nothing typed", "One entry waits", "sump plate");
        assertThat(bench.page(JOB + "/strip").text()).doesNotContain("sump plate");
        browser.one("#not-kept li button:last-of-type").click();
        browser.wait("all is sent", () -> browser.one("#not-kept").isDisplayed() ? null : true);
        assertThat(bench.page(JOB + "/strip").select("ol.log").text()).contains("sump plate");
    }

    @Test
    void backLeadsToThePageBefore() {
        browser.open(bench.url(JOB + "/strip"));
        browser.changes(() -> browser.one("nav.way a[href$='/orders']").click());
        assertThat(browser.path()).endsWith("/orders");
        browser.changes(() -> browser.script("history.back()"));
        assertThat(browser.path()).endsWith("/strip");
        assertThat(browser.one("h1").getText()).isEqualTo("Strip-down");
    }
}
