package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A strip-down in an empty shop: what was in the way, one tap a thing; put right, put into the unit, struck. */
class StripDownInHandTest {
    private static DemoBench bench;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        bench = DemoBench.at(Files.createTempDirectory("shimwright-strip-"));
        browser = new Browser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    private static String job(String name) {
        String[] box = {
            "maker",
            "Old Works",
            "model",
            name,
            "layout",
            "ACROSS",
            "housing-BELL",
            "yes",
            "gears",
            "5",
            "straight",
            "0",
            "reverse",
            "SLIDING",
            "shift",
            "RAILS",
            "cones1",
            "1",
            "cones2",
            "1",
            "cones3",
            "1",
            "cones4",
            "1",
            "cones5",
            "1"
        };
        assertThat(bench.post("/begin", box).statusCode()).isEqualTo(200);
        bench.post("/new/old-works-" + name, "number", name, "owner", "a farm");
        return "/job/job-" + name;
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void oneTapAThingAndOneMoreForWhatWasInTheWay(boolean phone) {
        if (phone) {
            browser.phone();
        } else {
            browser.tablet();
        }
        String name = phone ? "small" : "large";
        String job = job(name);
        browser.open(bench.url(job + "/strip"));
        browser.picture("strip-first-" + name);
        browser.press("button[value=bell]");
        assertThat(browser.text()).contains("Kept: bell housing");
        // nothing tapped but the part: the last thing was in its way
        browser.press("button[value=input_seal]");
        assertThat(browser.one("ol.log > li").getText()).contains("in its way: bell housing");
        // one tap more: the bell again, not the seal
        browser.shown(".way-of .choice");
        browser.script("document.querySelectorAll('.way-of .choice input')[1].click()");
        browser.picture("strip-choose-" + name);
        browser.press("button[value=left_seal]");
        assertThat(browser.one("ol.log > li").getText())
                .contains("in its way: bell housing")
                .doesNotContain("input seal,");
        browser.script("document.querySelector('.way-of input[value=nothing]').click()");
        browser.press("button[value=right_seal]");
        assertThat(browser.one("ol.log > li").getText()).contains("nothing in its way");
        // typed: a part that the file does not have
        browser.one("input[name=gone]").sendKeys("oil baffle");
        browser.script("document.querySelectorAll('details.more').forEach(d => d.open = true)");
        browser.one("input[name=fasteners]").sendKeys("3 × M6x1 8.8");
        browser.one("input[name=sideUp]").sendKeys("tongue to the gears");
        browser.press("form.stripoff button.main");
        assertThat(browser.one("ol.log > li").getText())
                .contains("oil baffle", "held by 3 × M6x1 8.8", "side up: tongue to the gears");
        browser.picture("strip-five-" + name);
        // a wrong answer and its way back
        browser.press("ol.log > li a[href*='right=']");
        browser.script("document.querySelector('.way-of input[value=nothing]').click()");
        browser.one("input[name=reason]").sendKeys("tapped too soon");
        browser.picture("strip-right-" + name);
        browser.press("form[action$='/right'] button.main");
        assertThat(browser.one("ol.log > li").getText()).contains("nothing else");
        browser.press("a[href$='/strip/order']");
        assertThat(browser.text())
                .contains(
                        "New part: oil baffle",
                        "input seal need not wait",
                        "3 × M6x1",
                        "computed",
                        "Need not wait any more");
        browser.picture("strip-order-" + name);
        nothingGoesUntilItIsTapped();
        browser.press("form[action$='/strip/order'] button.main");
        assertThat(browser.text()).contains("The order of the strip-down stands in the unit");
        browser.open(bench.url(job + "/strip/order"));
        assertThat(browser.text()).contains("The unit says all of it already");
        browser.open(bench.url(job + "/plan"));
        assertThat(browser.text()).contains("oil baffle");
    }

    @Test
    void aWrongTapPutRightByNameIsTheOtherPart() {
        String job = job("named");
        bench.post(job + "/strip", "entry", "strip-named-1", "tap", "magnet", "inTheWay", "last");
        Document right = bench.page(job + "/strip?right=strip-named-1");
        assertThat(right.select("datalist option[value=input seal]")).hasSize(1);
        bench.post(
                job + "/strip/right",
                "entry",
                "strip-named-2",
                "takenOff",
                "strip-named-1",
                "items",
                "magnet",
                "gone",
                "Input seal",
                "inTheWay",
                "nothing",
                "reason",
                "wrong tap");
        Document strip = bench.page(job + "/strip");
        assertThat(strip.select("button[value=magnet]")).hasSize(1);
        assertThat(strip.select("button[value=input_seal]")).isEmpty();
    }

    /** Parts that never came off are no wrong answer of the first minutes: none is ticked, and all are with one tap. */
    private static void nothingGoesUntilItIsTapped() {
        String ticked = "return document.querySelectorAll('input[name=gone]:checked').length";
        assertThat(browser.script(ticked)).isEqualTo(0L);
        browser.script("document.querySelector('details.more').open = true");
        browser.press("form[action$='/strip/without'] button");
        assertThat(browser.text()).contains("nothing chosen");
        browser.script("document.querySelector('details.more').open = true");
        browser.script("document.querySelector('[data-tick-all]').click()");
        assertThat(browser.script(ticked + " === document.querySelectorAll('input[name=gone]').length"))
                .isEqualTo(true);
        browser.script("document.querySelector('[data-tick-all]').click()");
        assertThat(browser.one("a[href*='/history?job=']").getText()).contains("the way back");
    }

    @Test
    void whatIsStruckChangesWhatStoodOnIt() {
        String job = job("struck");
        bench.post(job + "/strip", "entry", "strip-bell-1", "tap", "bell", "inTheWay", "last");
        bench.post(job + "/strip", "entry", "strip-seal-1", "tap", "input_seal", "inTheWay", "last");
        assertThat(bench.post(job + "/strip/order", "entry", "strip-order-1").body())
                .contains("stands in the unit");
        assertThat(bench.post(job + "/strip", "entry", "strip-wrong-1", "tap", "magnet", "inTheWay", "no-such-entry")
                        .body())
                .contains("it names something that did not come off before it");
        bench.post(
                job + "/strike",
                "entry",
                "strip-strike-1",
                "struck",
                "strip-bell-1",
                "reason",
                "it is on",
                "page",
                "strip");
        Document log = bench.page(job + "/strip");
        assertThat(log.select("ol.log").text()).doesNotContain("in its way");
        assertThat(bench.page(job + "/strip/order").text()).contains("bell housing after input seal (habit)");
    }

    @Test
    void whatIsOffCannotComeOffAgain() {
        String job = job("twice");
        assertThat(bench.post(job + "/strip", "entry", "twice-1", "tap", "bell", "inTheWay", "last")
                        .statusCode())
                .isEqualTo(200);
        var again = bench.post(job + "/strip", "entry", "twice-2", "tap", "bell", "inTheWay", "last");
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("bell housing is off already");
    }

    @Test
    void whatIsTakenApartIsReadBefore() {
        String job = job("read");
        Document page = bench.page(job + "/strip");
        assertThat(page.select(".readfirst").text()).contains("end play of the input shaft", "backlash", "drag");
        assertThat(page.select("button[value=bell]").text()).contains("read first: end play of the input shaft");
        String found = bench.post(
                        job + "/strip/found",
                        "entry",
                        "strip-found-1",
                        "what",
                        "end play of the input shaft",
                        "play",
                        "0.12")
                .body();
        assertThat(Jsoup.parse(found).select(".readfirst").text()).doesNotContain("end play of the input shaft");
        assertThat(bench.page(job + "/record").text()).contains("as found: end play of the input shaft");
        // what could not be read is a remark, and no reading of nothing
        bench.post(job + "/strip/found", "entry", "strip-found-3", "what", "backlash", "words", "the gauge slips");
        assertThat(bench.page(job + "/record").text())
                .contains("the gauge slips")
                .doesNotContain("0.000");
        assertThat(bench.post(job + "/strip/found", "entry", "strip-found-2", "what", "drag", "play", "")
                        .statusCode())
                .isEqualTo(422);
    }

    /** The form of a clearance from shims, filled in but for what the page says. */
    private static String[] clearance(Document page) {
        return new String[] {
            "entry",
            "shims-keep-1",
            "of",
            "shims-bell-2",
            "name",
            "input end play",
            "sense",
            "END_PLAY",
            "lower",
            "0.05",
            "upper",
            "0.15",
            "origin",
            page.select("input[name=origin]").val(),
            "gauge",
            "dial indicator 0.01 mm",
            "where",
            "behind the input bearing",
            "acts",
            "closes",
            "inner",
            "44",
            "outer",
            "52",
            "thinnest",
            "0.15",
            "thickest",
            "0.40",
            "after",
            page.select("select[name=after] option[selected]").val()
        };
    }

    @Test
    void shimsThatWereFoundBecomeAClearanceWhoseGuessIsNeverProven() {
        String job = job("shims");
        bench.post(
                job + "/strip/found", "entry", "shims-found-1", "what", "end play of the input shaft", "play", "0.22");
        assertThat(bench.post(
                                job + "/strip",
                                "entry",
                                "shims-bell-1",
                                "tap",
                                "bell",
                                "inTheWay",
                                "last",
                                "shims-sizes",
                                "0.40; x")
                        .statusCode())
                .isEqualTo(422);
        String[] bell = {
            "entry",
            "shims-bell-2",
            "tap",
            "bell",
            "inTheWay",
            "last",
            "shims-sizes",
            "0.40; 0.15",
            "shims-place",
            "behind the input bearing",
            "shims-acts",
            "closes"
        };
        assertThat(bench.post(job + "/strip", bell).body()).contains("a clearance from these shims");
        Document page = bench.page(job + "/strip/clearance?of=shims-bell-2");
        // 0.55 found, play 0.22, wanted 0.10: 0.12 more closes it
        assertThat(page.text()).contains("0.55 mm together", "0.22 mm", "with 0.67 mm", "common practice");
        assertThat(page.select("input[name=origin]").val()).startsWith("guess");
        String[] keep = clearance(page);
        assertThat(bench.post(job + "/strip/clearance", keep).body())
                .contains("It can be set by travel: input end play");
        assertThat(bench.page(job + "/clearance/a").text()).contains("Nobody stands behind these limits");
    }

    @Test
    void fewQuestionsAfterwardsLoosenTheOrder() {
        String job = job("asked");
        bench.post(job + "/strip", "entry", "asked-off-bell", "tap", "bell", "inTheWay", "last");
        bench.post(job + "/strip", "entry", "asked-off-input", "tap", "input_seal", "inTheWay", "nothing");
        // the seal before it was in the way, and of the bell nobody spoke
        bench.post(job + "/strip", "entry", "asked-off-left", "tap", "left_seal", "inTheWay", "last");
        Document page = bench.page(job + "/strip/questions");
        int many = page.select("form[action$=/questions]").size();
        assertThat(many).isBetween(1, 10);
        String asked = page.select("form[action$=/questions] input[name=takenOff]")
                .get(0)
                .val();
        String after = bench.post(job + "/strip/questions", "entry", "asked-answer-1", "takenOff", asked)
                .body();
        assertThat(Jsoup.parse(after).select("form[action$=/questions]")).hasSize(many - 1);
        assertThat(bench.page(job + "/strip").select("ol.log").text()).contains("nothing else");
    }
}
