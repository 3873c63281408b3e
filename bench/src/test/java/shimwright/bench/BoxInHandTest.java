package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.WebElement;

/** A box without a file in a real browser and an empty shop, with a wrong tap on each page and its way back. */
class BoxInHandTest {
    private static DemoBench bench;
    private static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        bench = DemoBench.at(Files.createTempDirectory("shimwright-in-hand-"));
        browser = new Browser();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    private static void type(String css, String text) {
        WebElement field = browser.one(css);
        field.clear();
        field.sendKeys(text);
    }

    private static WebElement shown(String css) {
        browser.script("document.querySelector(\"" + css + "\").scrollIntoView({block: 'center'})");
        return browser.one(css);
    }

    private static void tap(String css) {
        browser.changes(() -> shown(css).click());
    }

    private static void choose(String css) {
        browser.script("document.querySelector(\"" + css + "\").click()");
    }

    /** Taps what is refused: the page says why and keeps what was typed. */
    private static String refused(String css) {
        shown(css).click();
        return browser.one("main > .faults").getText();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void itIsBegunOpenedStrippedAndGivenAFact(boolean phone) {
        if (phone) {
            browser.phone();
        } else {
            browser.tablet();
        }
        String name = phone ? "small" : "large";
        browser.open(bench.url("/new"));
        tap("a[href='/begin']");
        type("input[name=model]", name);
        assertThat(refused("form[action='/begin'] button.main")).contains("maker", "how the shafts lie");
        assertThat(browser.one("input[name=model]").getDomProperty("value")).isEqualTo(name);
        type("input[name=maker]", "Old Works");
        choose("input[name=layout][value=ACROSS]");
        choose("input[name=housing-BELL]");
        choose("input[name=reverse][value=SLIDING]");
        choose("input[name=shift][value=RAILS]");
        browser.picture("begin-" + name);
        tap("form[action='/begin'] button.main");
        assertThat(browser.text()).contains("parts stand there to begin with");
        type("input[name=number]", phone ? "P-1" : "T-1");
        type("input[name=owner]", "a farm");
        tap("form button.main");
        tap(".tap button");
        tap(".tap button");
        assertThat(browser.all("ol.log > li")).hasSize(2);
        browser.picture("strip-" + name);
        tap("a[href*='/units/type/']");
        assertThat(refused("form[action$='/weigh'] button")).contains("what it weighs");
        type("form[action$='/weigh'] input[name=mass]", "380");
        tap("form[action$='/weigh'] button");
        assertThat(browser.text())
                .contains("The job stands on the changed file")
                .doesNotContain("Nobody has said what it weighs");
        // typed wrong: typed again
        type("form[action$='/weigh'] input[name=mass]", "38");
        tap("form[action$='/weigh'] button");
        browser.picture("unit-" + name);
        tap("a.partlink");
        tap("form[action$='/remove'] button");
        assertThat(browser.text()).contains("a part that it does not have");
        int parts = browser.all("a.partlink").size();
        tap("form[action$='/back'] button");
        assertThat(browser.text()).contains("taken back", "The job stands on the changed file");
        assertThat(browser.all("a.partlink")).hasSize(parts + 1);
        browser.open(bench.url("/parts"));
        type("input[name=stamp]", "zzzzzzz");
        tap("form[action='/parts'] button");
        assertThat(browser.one(".faults").getText()).contains("nothing in the tables");
        type("input[name=stamp]", "6206 2rs");
        tap("form[action='/parts'] button");
        assertThat(browser.text()).contains("6206: what the stamp says");
    }
}
