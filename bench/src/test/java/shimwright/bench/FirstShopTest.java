package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A shop of one's own, in a real browser: an empty folder, a unit file taken from the shelf page, gauges under marks that no unit file
 * knows, a drawer typed as a list, to the first accepted clearance. Wrong taps on the way have their way back.
 */
class FirstShopTest {
    private static final String UNIT = "hollinbridge-hb5";

    /** What each open check is answered with, by its name; the others can only be said yes to. Lengths are in the unit's own limits. */
    private static final Map<String, String> READINGS = Map.ofEntries(
            Map.entry("input_seat", "72.010 72.012 72.011"),
            Map.entry("counter_seat", "51.97 51.97 51.97"),
            Map.entry("plate_seat", "90.01 90.01 90.01"),
            Map.entry("flat", "0.002"),
            Map.entry("CF_width", "16.2"),
            Map.entry("CR_width", "16.2"),
            Map.entry("depth", "13.00 13.01 13.00"),
            Map.entry("gap_1", "0.050 0.051 0.050"),
            Map.entry("gap_2", "0.050 0.051 0.050"),
            Map.entry("gap_3", "0.050 0.051 0.050"),
            Map.entry("gap_4", "0.050 0.051 0.050"),
            Map.entry("gap_5", "0.050 0.051 0.050"),
            Map.entry("float_1", "0.010"),
            Map.entry("float_2", "0.010"),
            Map.entry("float_3", "0.010"));

    private static DemoBench bench;
    private static Browser browser;
    private static Strokes hand;

    @BeforeAll
    static void start() throws IOException {
        bench = DemoBench.at(Files.createTempDirectory("shimwright-first-"));
        browser = new Browser();
        hand = new Strokes(browser, bench);
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    private static void type(String css, String text) {
        hand.type(css, text);
    }

    private static void open(String path) {
        hand.open(path);
    }

    private static void press(String css) {
        hand.press(css);
    }

    private static String refused(String css) {
        return hand.refused(css);
    }

    @Test
    void fromAnEmptyFolderToTheFirstAcceptedClearance() {
        browser.tablet();
        shelf();
        gauges();
        drawer();
        job();
        partsHere();
        build();
        clearance();
        // less than ten minutes of one person's taps and keys, the wrong ones and the look at the new parts among them
        assertThat(hand.seconds()).as(hand.said()).isBetween(120.0, 600.0);
        fits();
    }

    private void shelf() {
        open("/");
        press("main a[href='/new']");
        press("main a[href='/units']");
        type("textarea[name=text]", "unit: nothing of a unit");
        assertThat(refused("form[action='/units'][enctype] ~ form button")).contains("the pasted text:1:");
        press("form[action='/units/shipped'] button");
        assertThat(browser.text()).contains("HB-5 is on the shelf");
        press("main a[href='/setup']");
    }

    private void gauges() {
        press("main a[href='/gauges']");
        press("main a[href^='/gauges?kind=dial-0.01#']");
        type("input[name=gauge]", "clock");
        type("input[name=step]", "10");
        assertThat(refused("form[action='/gauges'] button")).contains("as large as all it reaches");
        assertThat(browser.one("input[name=gauge]").getDomProperty("value")).isEqualTo("clock");
        type("input[name=step]", "0.01");
        press("form[action='/gauges'] button");
        press("main a[href^='/gauges?kind=feeler']");
        type("input[name=gauge]", "leaves");
        press("form[action='/gauges'] button");
        assertThat(browser.text()).contains("clock").contains("leaves");
    }

    private void drawer() {
        open("/drawer");
        assertThat(browser.text()).contains("selective mid rings 46 x 37");
        String keep = "form[action='/drawer/list'] button";
        type("textarea[name=list]", "M1 2.39\nM2 MR46 2.42 2.42 2.42\nM2 MR46 2.45");
        assertThat(refused(keep)).contains("line 1: M1 says no family").contains("M2 stands twice");
        assertThat(browser.one("textarea[name=list]").getDomProperty("value")).startsWith("M1 2.39");
        type(
                "textarea[name=list]",
                "M1 MR46 2.39 2.39 2.39\nM2 MR46 2.42 2.42 2.42\nM3 MR46 2.45 2.45 2.45\nR1 RT71 0.40");
        press(keep);
        assertThat(browser.text()).contains("4 pieces are in the drawer");
    }

    private void job() {
        open("/new/" + UNIT);
        browser.one("input[name=number]").sendKeys("77");
        open("/");
        open("/new/" + UNIT);
        // what was typed before is back, says so, and the next key takes its place
        assertThat(browser.one(".restored").getText()).contains("is back");
        browser.gauge("1");
        assertThat(browser.one("input[name=number]").getDomProperty("value")).isEqualTo("1");
        type("input[name=owner]", "A. Miller");
        for (String choice : List.of("input[name=tale-I2][value^=open]", "input[name=tale-I3][value='26']")) {
            hand.choose(choice);
        }
        press("main form button.main");
        assertThat(browser.path()).isEqualTo("/job/job-1/strip");
        type("input[name=gone]", "tail housing");
        browser.enter();
        assertThat(browser.text()).contains("Off so far: 1");
    }

    /** What is always renewed lies on the bench: it is counted and looked at, and said with one tap. */
    private void partsHere() {
        open("/job/job-1/orders");
        press("main form.allhere button");
        assertThat(browser.text()).doesNotContain("Still to order");
    }

    private void build() {
        open("/job/job-1/build");
        String open = ".hold.open form[action$='/check']";
        for (int page = 0; page < 60 && !browser.has("main a[href*='/clearance/']"); page++) {
            if (!browser.has(open)) {
                hand.enter("form[action$='/done'] button");
            } else if (browser.has(open + " input[name=values]")) {
                String check = browser.one(open + " input[name=check]").getDomAttribute("value");
                hand.send(
                        open + " input[name=values]",
                        READINGS.getOrDefault(check, "nothing for " + check),
                        open + " button");
            } else {
                hand.enter(open + " button[value=yes]");
            }
            assertThat(browser.has("main > .faults")).as(browser.text()).isFalse();
        }
        press("main a[href*='/clearance/']");
    }

    private void clearance() {
        String tags = "form[action$='/trial'] input[name='in-MR']:not([type=checkbox])";
        type(tags, "R1");
        assertThat(refused("form[action$='/trial'] button")).contains("R1").contains("here goes MR46");
        type(tags, "M1");
        press("form[action$='/trial'] button");
        assertThat(browser.one("#in").getText()).contains("M1");
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        type(tags, "M2");
        press("form[action$='/trial'] button");
        assertThat(browser.one("#in").getText()).contains("M2").doesNotContain("M1");
        open("/drawer?back=/job/job-1/clearance/mid");
        type("form[action='/drawer'] input[name=piece]", "M4");
        type("form[action='/drawer'] input[name=family]", "MR46");
        type("form[action='/drawer'] input[name=t1]", "2.48");
        press("form[action='/drawer'] button");
        press("main a[href='/job/job-1/clearance/mid']");
        // feelers are read: the feelers of the shop stand first, whatever their mark
        assertThat(browser.one("select[name=gauge]").getDomProperty("value")).isEqualTo("leaves");
        round("0.04", "0.05");
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        type(".rounds input[name=reason]", "it slipped");
        press(".rounds form button");
        round("0.04", "0.05");
        round("0.04", "0.05");
        assertThat(browser.number(".value")).isEqualTo(0.045);
        press("form[action$='/accept'] button");
        open("/job/job-1/clearance/mid");
        assertThat(browser.text()).contains("Set and accepted");
    }

    private void round(String enters, String doesNot) {
        hand.typeWhereKeysAre("input[name=v1]", enters);
        type("input[name=v2]", doesNot);
        press("form[action$='/round'] button");
    }

    private void fits() {
        for (boolean phone : new boolean[] {false, true}) {
            if (phone) {
                browser.phone();
            }
            for (String page :
                    List.of("/", "/setup", "/gauges", "/drawer", "/job/job-1/clearance/mid", "/job/job-1/record")) {
                browser.open(bench.url(page));
                Object width = browser.script("return document.documentElement.scrollWidth - window.innerWidth");
                assertThat(((Number) width).intValue()).as(page).isLessThanOrEqualTo(0);
                assertThat((List<?>) browser.script(ScreensTest.SMALL_TARGETS))
                        .as(page)
                        .isEmpty();
            }
        }
        browser.tablet();
    }
}
