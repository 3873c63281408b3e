package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.openqa.selenium.WebElement;

/** The pages on a tablet and on a phone: nothing wider than the screen, targets large enough for a knuckle. */
class ScreensTest {
    private static final String OPEN = "document.querySelectorAll('details').forEach(d => d.open = true)";

    private static final List<String> LOOKED_INTO =
            List.of("/", "/job/job-v-0093/build", "/job/job-v-0093/clearance/c", "/job/job-v-0093/proof");

    private static DemoBench bench;
    private static Browser browser;

    private static @Nullable DemoBench empty;
    private static List<String> allPages = List.of();

    /** With {@code -Dshimwright.axe=true} every page, with {@code 2/5} the second of five slices of these, else a few. */
    private static final String WANTED = System.getProperty("shimwright.axe", "");

    /** Addresses of every page. */
    private static List<String> everyPage() throws IOException {
        if (allPages.isEmpty()) {
            DemoBench nothingKept = DemoBench.at(Files.createTempDirectory("shimwright-empty-"));
            empty = nothingKept;
            allPages = Stream.concat(
                            Stream.concat(EveryPage.ofTheDemo().stream(), EveryPage.kept(bench).stream())
                                    .map(bench::url),
                            EveryPage.OF_AN_EMPTY_SHOP.stream().map(nothingKept::url))
                    .toList();
        }
        return allPages;
    }

    /** A page within its shop, to be named by. */
    private static String path(String page) {
        return page.startsWith(bench.url("/"))
                ? page.substring(bench.url("").length())
                : page.replaceFirst("^[^/]*//[^/]*", "/empty");
    }

    private static List<String> lookedInto() throws IOException {
        if (WANTED.isEmpty()) {
            return LOOKED_INTO.stream().map(bench::url).toList();
        }
        String[] slice = WANTED.equals("true") ? new String[] {"1", "1"} : WANTED.split("/", -1);
        int first = Integer.parseInt(slice[0]) - 1;
        int slices = Integer.parseInt(slice[1]);
        List<String> pages = everyPage();
        return IntStream.range(0, pages.size())
                .filter(i -> i % slices == first)
                .mapToObj(pages::get)
                .toList();
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
        if (empty != null) {
            empty.close();
        }
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

    /** A page as it stands when everything on it has come and everything folded is open. */
    private static void unfolded(String page) {
        browser.open(page);
        browser.wait("all of " + page, () -> browser.has("[data-again]") ? null : true);
        browser.script(OPEN);
    }

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
            const drawn = Array.from(document.querySelectorAll('img[src*="/part/"]')).filter(e => e.getBoundingClientRect().width > 2);
            return Promise.all(drawn.map(async e => {
                const svg = new DOMParser().parseFromString(await (await fetch(e.src)).text(), 'image/svg+xml');
                const of = e.getBoundingClientRect().width / svg.documentElement.viewBox.baseVal.width;
                svg.querySelectorAll('text').forEach(text => {
                    const size = parseFloat(text.closest('[font-size]')?.getAttribute('font-size') ?? 16);
                    if (size * of < 11.95) {
                        found.push((size * of).toFixed(1) + ' px in ' + e.getAttribute('src') + ': ' + text.textContent.slice(0, 30));
                    }
                });
            })).then(() => found.slice(0, 6));
            """;

    @Test
    void lettersAndTargetsAreLargeEnoughHoweverItIsHeld() throws IOException {
        List<String> found = new ArrayList<>();
        List<String> pages = lookedInto();
        List<Runnable> sizes = List.of(browser::tablet, browser::phone, browser::phoneOnItsSide);
        for (int size = 0; size < sizes.size(); size++) {
            sizes.get(size).run();
            for (String page : pages) {
                unfolded(page);
                String at = List.of("tablet ", "phone ", "phone on its side ").get(size) + path(page) + ": ";
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
            for (String page : EveryPage.PAGES) {
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

    /** axe-core looks at every element for some seconds. */
    @Test
    void axeFindsNothingOnAnyPageAtEitherSize() throws IOException {
        List<String> found = new ArrayList<>();
        List<String> pages = lookedInto();
        for (boolean phone : new boolean[] {false, true}) {
            if (phone) {
                browser.phone();
            } else {
                browser.tablet();
            }
            for (String page : pages) {
                unfolded(page);
                browser.barriers()
                        .forEach(barrier -> found.add((phone ? "phone " : "tablet ") + path(page) + ": " + barrier));
            }
        }
        browser.tablet();
        assertThat(found).isEmpty();
    }

    /**
     * What of a step lies outside the screen or under something as the page comes: what is to be done, the act itself, and the button that
     * keeps what is typed.
     */
    private static final String OFF_SCREEN = """
            const act = document.querySelector('main .naming > button.main') ?? document.querySelector('main [autofocus]');
            const keep = act?.matches('input') && act.form.querySelector('button:not([type=button])');
            return [document.querySelector('h1.order'), act, keep].filter(e => e).filter(e => {
                const box = e.getBoundingClientRect();
                const there = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
                return box.top < 0 || box.bottom > innerHeight || box.left < 0 || box.right > innerWidth || !e.contains(there);
            }).map(e => Math.round(e.getBoundingClientRect().bottom) + ' of ' + innerHeight + ' px: ' + e.outerHTML.slice(0, 60));
            """;

    /** Of each kind: something must be new, a yes or no, readings to be typed, a clearance, much to be tightened, rounds, one that is set. */
    private static final List<String> KINDS_OF_STEP = List.of(
            "build?step=B02",
            "build?step=D02",
            "build?step=D08",
            "build?step=E04",
            "build?step=Q07",
            "build?step=X05",
            "clearance/f",
            "clearance/e");

    /** The handful in each run, with {@code -Dshimwright.axe} every step of the plan and every clearance. */
    @Test
    void aStepIsDoneWithoutScrolling() {
        bench.keep("/job/job-v-0093/clearance/f/trial", "phase", "final", "in-ring", "r22-03");
        List<String> pages = WANTED.isEmpty()
                ? KINDS_OF_STEP.stream().map(step -> "/job/job-v-0093/" + step).toList()
                : Stream.concat(
                                bench
                                        .page("/job/job-v-0093/plan")
                                        .select("ol.plan:not(.done) a[href*='build?step=']")
                                        .eachAttr("href")
                                        .stream(),
                                bench
                                        .page("/job/job-v-0093/clearances")
                                        .select("a[href*='/clearance/']")
                                        .eachAttr("href")
                                        .stream())
                        .distinct()
                        .toList();
        assertThat(pages).hasSizeGreaterThanOrEqualTo(KINDS_OF_STEP.size());
        List<String> found = new ArrayList<>();
        for (boolean phone : new boolean[] {false, true}) {
            if (phone) {
                browser.phoneOnItsSide();
            } else {
                browser.touchTablet();
            }
            for (String page : pages) {
                browser.open(bench.url(page));
                List<?> off = (List<?>) browser.script(OFF_SCREEN);
                if (!off.isEmpty()) {
                    browser.picture("off-screen" + page.replaceAll("[^A-Za-z0-9]+", "-"));
                }
                off.forEach(one -> found.add((phone ? "phone on its side " : "tablet ") + page + ": " + one));
            }
        }
        browser.tablet();
        assertThat(found).isEmpty();
    }

    /** The upper one and a half or two screens of each page at three sizes, small enough to be kept, into {@code docs/pictures}: {@code docs/pictures/make}. */
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
                browser.open(page);
                String name = path(page).replaceAll("[^a-z0-9]+", " ").trim().replace(' ', '-');
                name = name.isEmpty() ? "first" : name.substring(0, Math.min(name.length(), 60));
                Files.write(
                        folder.resolve(name + ".webp"),
                        size.getKey().equals("phone") ? browser.whole(2, 0.7) : browser.whole(1.5, 0.6));
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
