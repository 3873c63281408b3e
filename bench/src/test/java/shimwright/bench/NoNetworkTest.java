package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer.OrderAnnotation;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;

/**
 * The job in hand without its network: the wire cut, the program killed, the battery gone. One program, one browser on one
 * profile; the tests follow one another as an evening does.
 */
@TestMethodOrder(OrderAnnotation.class)
class NoNetworkTest {
    private static final String JOB = "/job/job-v-0093";

    /** How many pages of the job and which lie in the memory of the screen, as the browser keeps them. */
    private static final String KEPT = """
            window.kept = [];
            caches.open('shimwright.pages').then(c => c.keys())
                .then(all => { window.kept = all.map(r => new URL(r.url).pathname + new URL(r.url).search); });
            return 1""";

    @TempDir
    @SuppressWarnings("NullAway.Init") // JUnit sets it
    static Path folder;

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Path data;
    private static ProgramProcess program;
    private static Wire wire;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        data = DemoBench.copy();
        program = serve();
        wire = new Wire(program.port());
        browser = Browser.onProfile(folder.resolve("profile"));
        browser.phone();
    }

    @AfterAll
    static void stop() {
        browser.close();
        wire.close();
        program.close();
    }

    private static ProgramProcess serve() throws IOException {
        return ProgramProcess.serve(folder.resolve("work"), data, 0, List.of());
    }

    private static HttpResponse<String> ask(HttpRequest.Builder request) {
        try {
            return CLIENT.send(request.build(), BodyHandlers.ofString());
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + program.port() + path));
    }

    /** A page as the program makes it, past the wire. */
    private static Document page(String path) {
        return Jsoup.parse(ask(request(path)).body());
    }

    /** What another device posts meanwhile. */
    private static int other(String path, String... fields) {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return ask(request(path)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(BodyPublishers.ofString(String.join("&", pairs))))
                .statusCode();
    }

    /** Opens a page of the job and waits until the worker holds these. */
    private static void inMemory(String at, String... pages) {
        browser.open(wire.url(JOB + at));
        browser.wait("in memory: " + List.of(pages), () -> {
            browser.script(KEPT);
            List<?> kept = (List<?>) browser.script("return window.kept");
            return List.of(pages).stream().allMatch(page -> kept.contains(JOB + page)) ? Boolean.TRUE : null;
        });
    }

    private static String waiting() {
        return browser.one("#not-kept").getText();
    }

    private static void waits(String words) {
        browser.wait(words + " waits", () -> waiting().contains(words) ? Boolean.TRUE : null);
    }

    private static void nothingWaits() {
        browser.wait("all is sent", () -> browser.one("#not-kept").isDisplayed() ? null : Boolean.TRUE);
    }

    private static void fromMemory(String path) {
        browser.wait(
                path + " from memory",
                () -> (browser.has("main > .memory") && browser.path().equals(path)) ? Boolean.TRUE : null);
        assertThat(browser.one("main > .memory").getText())
                .contains("From the memory of this screen", "ago", "The bench server does not answer");
    }

    private static void fromTheServer() {
        browser.wait("the server's own page", () -> browser.has("main > .memory") ? null : Boolean.TRUE);
    }

    private static List<String> rounds() {
        return browser.all("table.rounds td.read").stream()
                .map(WebElement::getText)
                .map(text -> text.replaceAll(" (mm|outlier|not).*", ""))
                .toList();
    }

    private static void roundsAre(String... all) {
        browser.wait(
                "rounds " + List.of(all),
                () -> (rounds().size() == all.length && rounds().containsAll(List.of(all))) ? Boolean.TRUE : null);
    }

    /** What came off, the last first, as the program has it. */
    private static List<String> off() {
        return page(JOB + "/strip").select("ol.log li b").eachText();
    }

    private static String picture(String name, int shade) throws IOException {
        BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        image.setRGB(5, 5, shade);
        Path file = folder.resolve(name);
        ImageIO.write(image, "png", file.toFile());
        return file.toString();
    }

    /** A clearance is read, set and accepted on a phone held upright by a gauge that types, the network away for half of it. */
    @Test
    @Order(1)
    void aClearanceIsReadSetAndAcceptedWithTheNetworkAwayForHalfOfIt() {
        browser.open(wire.url(JOB + "/build"));
        assertThat(browser.one(".step .at").getText()).startsWith("E02");
        browser.typeUnfolded("form.row[action$='/clock'] input[name=clock]", "sealant skins");
        browser.typeUnfolded("form.row[action$='/clock'] input[name=minutes]", "90");
        browser.script("document.querySelector('form.row[action$=\"/clock\"] input[value=by]').checked = true");
        browser.changes(() -> browser.script("document.querySelector('form.row[action$=\"/clock\"]').requestSubmit()"));
        String main = browser.one(".hold a.button.main").getDomAttribute("href");
        browser.press(".hold a.button.main");
        String here = browser.path();
        assertThat(here).isEqualTo(main);
        browser.gauge("d52-10\n0.24\n0.32\n");
        roundsAre("0.240, 0.320");
        inMemory(here.substring(JOB.length()), "/build", here.substring(JOB.length()));

        wire.cut();
        browser.gauge("0.25\n0.31\n");
        waits("0.25");
        browser.gauge("0.24\n0.31\n");
        waits("2 entries wait");
        assertThat(browser.one(".timer").getText()).contains("sealant skins", "left");
        browser.picture("phone-no-network-rounds");
        browser.open(wire.url(here));
        fromMemory(here);
        assertThat(browser.one(".timer").getText()).contains("sealant skins", "left");
        waits("2 entries wait");
        assertThat(browser.barriers()).isEmpty();
        browser.picture("phone-from-memory");

        wire.mend(program.port());
        roundsAre("0.240, 0.320", "0.250, 0.310", "0.240, 0.310");
        nothingWaits();
        fromTheServer();
        browser.wait("the offers", () -> browser.has(".offer button") ? Boolean.TRUE : null);
        browser.changes(() -> browser.script("document.querySelector('.offer').requestSubmit()"));
        browser.changes(() -> browser.script("document.querySelector('.donerow').requestSubmit()"));
        assertThat(browser.one(".step .at").getText()).startsWith("E03");
        browser.press("a.button.main");
        assertThat(browser.path()).isEqualTo(here);
        inMemory(here.substring(JOB.length()), here.substring(JOB.length()));

        wire.cut();
        browser.gauge("0.03\n0.05\n0.04\n0.05\n0.04\n0.05\n");
        waits("3 entries wait");
        wire.mend(program.port());
        nothingWaits();
        browser.wait("the verdict", () -> browser.has("form[action$='/accept'] button") ? Boolean.TRUE : null);
        roundsAre("0.030, 0.050", "0.040, 0.050", "0.040, 0.050");
        browser.changes(() -> browser.script("document.querySelector('form[action$=\"/accept\"]').requestSubmit()"));

        assertThat(page(JOB + "/record").text())
                .containsOnlyOnce("0.240 mm, 0.320 mm, DI the bench")
                .containsOnlyOnce("0.250 mm, 0.310 mm, DI the bench")
                .containsOnlyOnce("0.240 mm, 0.310 mm, DI the bench")
                .containsOnlyOnce("0.030 mm, 0.050 mm, DI the bench")
                .contains("0.040 mm, 0.050 mm, DI the bench", "Accepted input shaft end play at 0.043 mm")
                .containsOnlyOnce("Clock started at step E02: sealant skins, 90 min at most");
    }

    /** The program is killed and the battery is empty: what was typed and photographed is there, is taken back or sent, once and in order. */
    @Test
    @Order(2)
    void theProgramKilledAndTheBatteryGone() throws Exception {
        browser.tablet();
        inMemory("/strip", "/strip", "/build", "/clearances", "/inspect");
        program.kill();
        browser.press("nav.way a[href$='/clearances']");
        fromMemory(JOB + "/clearances");
        browser.press("nav.way a[href$='/strip']");
        fromMemory(JOB + "/strip");
        browser.one("input[name=gone]").sendKeys("first plate\n");
        waits("first plate");
        browser.one(".pictureform input[type=file]").sendKeys(picture("first.png", 0xff0000));
        waits("picture first.png");
        browser.one("input[name=gone]").sendKeys("a slip of the pen\n");
        waits("a slip of the pen");
        browser.one(".pictureform input[type=file]").sendKeys(picture("second.png", 0x00ff00));
        waits("picture second.png");
        browser.one("input[name=gone]").sendKeys("second plate\n");
        waits("second plate");
        assertThat(waiting())
                .contains("Not kept yet", "5 entries wait", "also when this page is closed")
                .doesNotContain("Leave this page open");
        browser.one("#not-kept summary").click();
        browser.wait(
                "both pictures are shown", () -> browser.all("#not-kept img").size() == 2 ? Boolean.TRUE : null);
        browser.picture("tablet-no-network-strip");

        browser.batteryGone();
        browser = Browser.onProfile(folder.resolve("profile"));
        browser.phone();
        browser.open(wire.url(JOB + "/strip"));
        fromMemory(JOB + "/strip");
        waits("5 entries wait");
        assertThat(browser.barriers()).isEmpty();
        browser.picture("phone-battery-gone");
        browser.one("#not-kept summary").click();
        browser.wait("the list", () -> browser.all("#not-kept li").size() == 5 ? Boolean.TRUE : null);
        browser.script("Array.from(document.querySelectorAll('#not-kept li'))"
                + ".find(e => e.textContent.includes('slip')).querySelector('button').click()");
        browser.wait("it is taken back", () -> browser.all("#not-kept li").size() == 4 ? Boolean.TRUE : null);
        assertThat(browser.one("input[name=gone]").getDomProperty("value")).isEqualTo("a slip of the pen");
        browser.script("document.querySelector('input[name=gone]').value = ''");
        browser.open(wire.url("/drawer"));
        assertThat(browser.one("h1").getText()).isEqualTo("The bench server does not answer");
        assertThat(browser.all(".memories a")).hasSizeGreaterThan(4);
        assertThat(browser.barriers()).isEmpty();
        browser.picture("phone-not-in-memory");
        browser.press(".memories a[href$='/strip']");
        fromMemory(JOB + "/strip");

        program = serve();
        wire.leadsTo(program.port());
        fromTheServer();
        nothingWaits();
        Document strip = page(JOB + "/strip");
        assertThat(strip.select("ol.log li b").eachText())
                .startsWith("second plate", "first plate")
                .doesNotContain("a slip of the pen")
                .doesNotHaveDuplicates();
        assertThat(strip.select("ul.pictures img")).hasSize(2);
    }

    /** Two devices write apart: what contradicts stops there with its sentence, is dropped or put right, and the rest goes on behind it. */
    @Test
    @Order(3)
    void twoDevicesThatWroteApartAreBroughtTogetherByTheRules() {
        browser.phone();
        inMemory("/build", "/build", "/strip");
        String step = browser.one(".step .at b").getText();
        wire.cut();
        // what comes next is known from the memory: the page goes on to it
        browser.script("document.querySelector('.donerow button').click()");
        browser.wait(
                "the next step",
                () -> (browser.has("main > .memory")
                                && !browser.one(".step .at b").getText().equals(step))
                        ? Boolean.TRUE
                        : null);
        browser.press("nav.way a[href$='/strip']");
        fromMemory(JOB + "/strip");
        browser.typeUnfolded("input[name=note]", "brass in the sump");
        browser.script("document.querySelector('form.stripoff').requestSubmit()");
        waits("brass in the sump");
        browser.typeUnfolded("input[name=gone]", "sump plate");
        browser.script("document.querySelector('form.stripoff').requestSubmit()");
        waits("sump plate");
        assertThat(other(JOB + "/done", "step", step, "entry", "the-other-device"))
                .isEqualTo(303);
        wire.mend(program.port());
        waits("not kept");
        fromTheServer();
        assertThat(waiting()).contains("2 entries wait");
        assertThat(browser.one("#not-kept li").getText()).contains(step, "done", "Put it right", "Drop it");
        assertThat(page(JOB + "/strip").text()).doesNotContain("brass in the sump", "sump plate");
        assertThat(browser.barriers()).isEmpty();
        browser.picture("phone-refused-later");
        browser.one("#not-kept li button:last-of-type").click();
        // the next one is refused as well: nothing was said of what came off; it is put right in its own form
        waits("brass in the sump");
        browser.wait("it is refused", () -> waiting().contains("nothing typed") ? Boolean.TRUE : null);
        assertThat(page(JOB + "/strip").text()).doesNotContain("sump plate");
        browser.changes(() -> browser.one("#not-kept li button").click());
        assertThat(browser.one("main > .faults").getText()).contains("nothing typed");
        assertThat(browser.one("input[name=note]").getDomProperty("value")).isEqualTo("brass in the sump");
        browser.typeUnfolded("input[name=gone]", "drain plug");
        browser.script("document.querySelector('form.stripoff').requestSubmit()");
        nothingWaits();
        browser.wait("the one behind it", () -> off().contains("sump plate") ? Boolean.TRUE : null);
        assertThat(off()).startsWith("sump plate", "drain plug").doesNotHaveDuplicates();
        assertThat(page(JOB + "/strip").text()).contains("brass in the sump");
    }

    /** However many jobs are opened, the last two stay. */
    @Test
    @Order(4)
    void theMemoryOfAScreenHoldsTwoJobs() {
        inMemory("/build", "/build");
        // a page on which no job is in hand, so that none of it is fetched meanwhile
        browser.open(wire.url("/drawer"));
        browser.script("""
                for (const job of ['one', 'two']) {
                    navigator.serviceWorker.controller.postMessage({html: '<body data-mark="m">', url: location.origin + '/job/' + job + '/build'});
                }
                return 1""");
        browser.wait("only those two are kept", () -> {
            browser.script(KEPT);
            List<?> kept = (List<?>) browser.script("return window.kept");
            return kept.equals(List.of("/job/one/build", "/job/two/build")) ? Boolean.TRUE : null;
        });
    }
}
