package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    private static void choose(String css) {
        browser.script("document.querySelector(\"" + css + "\").click()");
    }

    /** Taps what is refused: the page says why and keeps what was typed. */
    private static String refused(String css) {
        browser.shown(css).click();
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
        browser.press("a[href='/begin']");
        browser.type("input[name=model]", name);
        assertThat(refused("form[action='/begin'] button.main")).contains("maker", "how the shafts lie");
        assertThat(browser.one("input[name=model]").getDomProperty("value")).isEqualTo(name);
        browser.type("input[name=maker]", "Old Works");
        choose("input[name=layout][value=ACROSS]");
        choose("input[name=housing-BELL]");
        choose("input[name=reverse][value=SLIDING]");
        choose("input[name=shift][value=RAILS]");
        browser.picture("begin-" + name);
        browser.press("form[action='/begin'] button.main");
        assertThat(browser.text()).contains("parts stand there to begin with");
        browser.type("input[name=number]", phone ? "P-1" : "T-1");
        browser.type("input[name=owner]", "a farm");
        browser.press("form button.main");
        browser.press(".tap button");
        browser.press(".tap button");
        assertThat(browser.all("ol.log > li")).hasSize(2);
        browser.picture("strip-" + name);
        browser.press("a[href*='/units/type/']");
        assertThat(refused("form[action$='/weigh'] button")).contains("what it weighs");
        browser.type("form[action$='/weigh'] input[name=mass]", "380");
        browser.press("form[action$='/weigh'] button");
        assertThat(browser.text())
                .contains("The job stands on the changed file")
                .doesNotContain("Nobody has said what it weighs");
        // typed wrong: typed again
        browser.type("form[action$='/weigh'] input[name=mass]", "38");
        browser.press("form[action$='/weigh'] button");
        browser.picture("unit-" + name);
        browser.press("a.partlink");
        browser.press("form[action$='/remove'] button");
        assertThat(browser.text()).contains("a part that it does not have");
        int parts = browser.all("a.partlink").size();
        browser.press("form[action$='/back'] button");
        assertThat(browser.text()).contains("taken back", "The job stands on the changed file");
        assertThat(browser.all("a.partlink")).hasSize(parts + 1);
        browser.open(bench.url("/parts"));
        browser.type("input[name=stamp]", "zzzzzzz");
        browser.press("form[action='/parts'] button");
        assertThat(browser.one(".faults").getText()).contains("nothing in the tables");
        browser.type("input[name=stamp]", "6206 2rs");
        browser.press("form[action='/parts'] button");
        assertThat(browser.text()).contains("6206: what the stamp says");
    }
}
