package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.openqa.selenium.WebElement;

/** The pages on a tablet and on a phone: nothing wider than the screen, targets large enough for a knuckle. */
class ScreensTest {
    private static final String OPEN = "document.querySelectorAll('details').forEach(d => d.open = true)";

    private static final List<String> PAGES = List.of(
            "/",
            "/drawer",
            "/setup",
            "/units",
            "/gauges",
            "/gauges?kind=feeler",
            "/devices",
            "/new",
            "/new/ambleholt-l5-74",
            "/job/job-v-0093/strip",
            "/job/job-v-0093/inspect?limit=C10",
            "/job/job-v-0093/orders",
            "/job/job-v-0093/sendout/other/seal_track",
            "/job/job-v-0093/money",
            "/job/job-v-0093/tags",
            "/job/job-v-0093/complaint",
            "/job/job-v-0093/sides",
            "/job/job-v-0093/differs",
            "/job/job-v-0093/build",
            "/job/job-v-0093/build?step=K02",
            "/job/job-v-0093/sheets",
            "/job/job-v-0093/sheet/interference?about=joint+head-cone&step=T01",
            "/job/job-v-0093/plan",
            "/job/job-v-0093/plan?begin=18:30&hours=2.5&spread=30&arrives=",
            "/job/job-v-0093/people",
            "/job/job-v-0093/back",
            "/job/job-v-0093/back?to=step:K02",
            "/job/job-v-0093/clearances",
            "/job/job-v-0093/together",
            "/job/job-v-0093/clearance/c",
            "/job/job-v-0093/clearance/a",
            "/job/job-v-0093/clearance/e",
            "/job/job-v-0093/proof",
            "/job/job-v-0093/record",
            "/job/job-v-0091/record",
            "/sheets",
            "/sheets?q=end+float",
            "/parts?stamp=M8",
            "/begin",
            "/units/type/ambleholt-l5-74?item=sP",
            "/units/type/ambleholt-l5-74/fasteners",
            "/units/type/ambleholt-l5-74/clearances/entry?id=c",
            "/units/type/ambleholt-l5-74/history",
            "/sheets/tightening",
            "/sheets/end-play?rounds=0.24/0.32&gauge.step=x",
            "/sheets/mesh-forces?" + SheetPagesTest.example("mesh-forces"),
            "/sheets/interference?" + SheetPagesTest.example("interference"));

    /** Looked at in pictures and by axe-core, and too many for each run. */
    private static final List<String> FURTHER = List.of(
            "/held",
            "/numbers",
            "/overjobs/ambleholt-l5-74",
            "/overjobs/ambleholt-l5-74/drawer",
            "/job/job-v-0093/learn",
            "/job/job-v-0093/learn/steps",
            "/job/job-v-0093/parts",
            "/job/job-v-0093/sendout",
            "/job/job-v-0093/part/item/gear_5",
            "/job/job-v-0091/guide",
            "/job/job-v-0093/benchsheet",
            "/units/type/ambleholt-l5-74",
            "/units/type/ambleholt-l5-74/steps",
            "/units/type/ambleholt-l5-74/bearings",
            "/units/type/ambleholt-l5-74/kits",
            "/units/type/ambleholt-l5-74/wear_limits",
            "/units/type/ambleholt-l5-74/bundle",
            "/tag");

    private static final List<String> LOOKED_INTO =
            List.of("/", "/job/job-v-0093/build", "/job/job-v-0093/clearance/c", "/job/job-v-0093/proof");

    private static DemoBench bench;
    private static Browser browser;

    static List<String> everyPage() {
        return Stream.concat(PAGES.stream(), FURTHER.stream()).toList();
    }

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

    static final String SMALL_TARGETS = """
            return Array.from(document.querySelectorAll('main button, main a.button, main a.sheetlink, main .choice, main summary, .tosheets, .way a, select, textarea, .views > label, input:not([type=hidden]):not(.sr):not(.views > input)'))
                .filter(e => e.offsetParent !== null)
                .filter(e => e.getBoundingClientRect().height < 55.5)
                .map(e => e.outerHTML.slice(0, 80))
            """;

    private static final String FIGURES = """
            const faces = ["18px Roboto", "bold 18px Roboto", "bold 18px 'Roboto Slab', Roboto"];
            return Promise.all(faces.map(face => document.fonts.load(face, "a7"))).then(loaded => faces.map((face, i) => {
                const pen = document.createElement("canvas").getContext("2d");
                pen.font = face;
                return loaded[i].length + " files, "
                    + new Set(Array.from("0123456789", figure => pen.measureText(figure).width)).size + " width";
            }))""";

    @Test
    void figuresOfTheTypefaceThatIsShippedAreEquallyWide() {
        browser.tablet();
        browser.open(bench.url("/job/job-v-0093/clearances"));
        assertThat(browser.script(FIGURES))
                .isEqualTo(List.of("1 files, 1 width", "1 files, 1 width", "2 files, 1 width"));
    }

    /** Letters of drawings below 12 px, and what is tapped below 44 px, a main act below 56; a link within a sentence is part of its text. */
    private static final String TOO_SMALL = """
            const found = [];
            document.querySelectorAll('svg text').forEach(text => {
                const matrix = text.getScreenCTM();
                if (!text.textContent.trim() || !matrix || text.getBoundingClientRect().width === 0) {
                    return;
                }
                const px = parseFloat(getComputedStyle(text).fontSize)
                    * Math.min(Math.hypot(matrix.a, matrix.c), Math.hypot(matrix.b, matrix.d));
                if (px < 11.95) {
                    found.push(px.toFixed(1) + ' px: ' + text.textContent.slice(0, 30));
                }
            });
            document.querySelectorAll('a[href], button, summary, select, textarea, input:not([type=hidden])').forEach(e => {
                const style = getComputedStyle(e);
                const of = e.matches('[type=checkbox], [type=radio]') && e.closest('label') || e;
                const box = of.getBoundingClientRect();
                const sentence = e.matches('a') && style.display === 'inline' && !e.closest('svg');
                if (box.width < 2 || style.visibility === 'hidden' || sentence || e.matches('.sr, .views > input, .beside > input')) {
                    return;
                }
                const least = e.matches('button.main, a.button.main') ? 55.5 : 43.5;
                if (box.height < least || box.width < 43.5) {
                    found.push(Math.round(box.width) + 'x' + Math.round(box.height) + ': ' + e.outerHTML.slice(0, 80));
                }
            });
            return found.slice(0, 6);
            """;

    /** A few pages in each run, all with {@code -Dshimwright.axe=true}. */
    @Test
    void lettersAndTargetsAreLargeEnoughHoweverItIsHeld() {
        List<String> found = new ArrayList<>();
        List<String> pages = Boolean.getBoolean("shimwright.axe") ? everyPage() : LOOKED_INTO;
        List<Runnable> sizes = List.of(browser::tablet, browser::phone, browser::phoneOnItsSide);
        for (int size = 0; size < sizes.size(); size++) {
            sizes.get(size).run();
            for (String page : pages) {
                browser.open(bench.url(page));
                String at = List.of("tablet ", "phone ", "phone on its side ").get(size) + page + ": ";
                ((List<?>) browser.script(TOO_SMALL)).forEach(one -> found.add(at + one));
            }
        }
        browser.tablet();
        assertThat(found).isEmpty();
    }

    @Test
    void everyPageFitsATabletAndAPhone() {
        for (boolean phone : new boolean[] {false, true}) {
            if (phone) {
                browser.phone();
            } else {
                browser.tablet();
            }
            for (String page : PAGES) {
                browser.open(bench.url(page));
                Object width = browser.script("return document.documentElement.scrollWidth - window.innerWidth");
                assertThat(((Number) width).intValue())
                        .as(page + (phone ? " on a phone" : ""))
                        .isLessThanOrEqualTo(0);
                assertThat((List<?>) browser.script(SMALL_TARGETS)).as(page).isEmpty();
                String name = (phone ? "phone" : "tablet") + page.replaceAll("[^a-z0-9]+", "-");
                browser.picture(name.substring(0, Math.min(name.length(), 120)));
            }
        }
        browser.tablet();
    }

    /** A few pages in each run, all with {@code -Dshimwright.axe=true}: axe-core looks at every element for some seconds. */
    @Test
    void axeFindsNothingOnAnyPageAtEitherSize() {
        List<String> found = new ArrayList<>();
        List<String> pages = Boolean.getBoolean("shimwright.axe") ? everyPage() : LOOKED_INTO;
        for (boolean phone : new boolean[] {false, true}) {
            if (phone) {
                browser.phone();
            } else {
                browser.tablet();
            }
            for (String page : pages) {
                browser.open(bench.url(page));
                browser.barriers()
                        .forEach(barrier -> found.add((phone ? "phone " : "tablet ") + page + ": " + barrier));
            }
        }
        browser.tablet();
        assertThat(found).isEmpty();
    }

    /** Three screens' height of each page at three sizes into {@code docs/pictures}: {@code docs/pictures/make}. */
    @Test
    @EnabledIfSystemProperty(named = "shimwright.pictures", matches = "true")
    void aPictureOfEveryPage() throws IOException {
        Map<String, Runnable> sizes = Map.of(
                "tablet", browser::tablet, "phone", browser::phone, "phone-on-its-side", browser::phoneOnItsSide);
        for (Map.Entry<String, Runnable> size : sizes.entrySet()) {
            Path folder = Path.of(System.getProperty("shimwright.root", ".."), "docs", "pictures", size.getKey());
            Files.createDirectories(folder);
            size.getValue().run();
            for (String page : everyPage()) {
                browser.open(bench.url(page));
                String name = page.replaceAll("[^a-z0-9]+", " ").trim().replace(' ', '-');
                name = name.isEmpty() ? "first" : name.substring(0, Math.min(name.length(), 60));
                Files.write(folder.resolve(name + ".webp"), browser.whole(3));
            }
        }
        browser.tablet();
    }

    @Test
    void aDroppedNetworkLosesNothingTyped() {
        browser.tablet();
        browser.open(bench.url("/job/job-v-0093/strip"));
        browser.one("input[name=gone]").sendKeys("speed driven gear, once more");
        browser.offline(true);
        browser.one("input[name=gone]").sendKeys("\n");
        browser.wait("the sentence", () -> browser.one("#not-kept").getText().contains("Not kept yet") ? true : null);
        browser.picture("network-dropped");
        browser.changes(() -> browser.offline(false));
        assertThat(browser.text()).contains("speed driven gear, once more");
        long times = browser.all("ol.log li").stream()
                .filter(li -> li.getText().contains("once more"))
                .count();
        assertThat(times).isEqualTo(1);
    }

    /** The note of the strip-down, on the page loaded anew; it lies behind a tap, and what comes into the page may fold it again. */
    private static WebElement note() {
        browser.open(bench.url("/job/job-v-0093/strip"));
        browser.wait("the note", () -> {
            browser.script(OPEN);
            return browser.one("input[name=note]").isDisplayed() ? true : null;
        });
        return browser.one("input[name=note]");
    }

    @Test
    void aDraftSurvivesAReload() {
        note().sendKeys("half a sent");
        assertThat(note().getDomProperty("value")).isEqualTo("half a sent");
        browser.one("input[name=note]").clear();
    }

    @Test
    void inchesAreShownAndTakenAllTheWay() {
        browser.tablet();
        browser.open(bench.url("/job/job-v-0093/clearance/c"));
        browser.changes(() -> browser.one("button[name=units]").click());
        assertThat(browser.text()).contains("0.0008 … 0.0031 in");
        browser.typeAndSend("d52-10");
        browser.typeAndEnter("0.0094");
        browser.typeAndSend("0.32 mm");
        assertThat(browser.one("table.rounds").getText()).contains("0.0094, 0.0126 in");
        browser.changes(() -> browser.one("button[name=units]").click());
        assertThat(browser.one("table.rounds").getText()).contains("0.239, 0.320 mm");
    }

    @Test
    void aWorksheetIsFilledAndAnsweredWithEnterAlone() {
        browser.tablet();
        browser.open(bench.url("/sheets/wrench-extension"));
        browser.typeAndEnter("135 N.m");
        browser.typeAndEnter("400");
        browser.typeAndSend("60 +- 1 mm");
        assertThat(browser.one(".results").getText()).contains("117.39 ± 0.26 N·m");
        assertThat(browser.url()).contains("torque=135", "extension=60").doesNotContain("angle=");
        browser.open(bench.url("/sheets/growth"));
        browser.typeAndEnter("between the cups: 200 mm: 21.8: 11.3");
        browser.typeAndEnter("");
        browser.typeAndEnter("60");
        browser.typeAndSend("60");
        // metrology.csv THX-11: 0.126 mm
        assertThat(browser.one(".results").getText()).contains("0.1260 mm");
    }

    @Test
    void aPhoneHasANumberPadForGreasyHands() {
        browser.phone();
        browser.open(bench.url("/job/job-v-0093/clearance/d"));
        browser.open(bench.url("/drawer"));
        browser.script("document.querySelector('input[name=t1]').focus()");
        assertThat(browser.all(".pad button").size()).isGreaterThan(12);
        assertThat(browser.one(".pad").isDisplayed()).isTrue();
        browser.script("document.activeElement.blur()");
        assertThat(browser.one(".pad").isDisplayed()).isFalse();
        browser.open(bench.url("/sheets/wrench-extension"));
        browser.one(".pad [data-unit]");
        assertThat(browser.all(".pad [data-unit]").stream().map(WebElement::getText))
                .containsExactly("N·m", "lbf·ft");
        browser.tablet();
    }
}
