package shimwright.bench;

/**
 * A person's taps and characters in the browser, counted, with the seconds they take by the keystroke-level model: pointing, thinking and
 * tapping 1.10 + 1.35 + 0.20, a key 0.75 as for complex codes (S. K. Card, T. P. Moran, A. Newell, Communications of the ACM 23
 * (1980) 7; figures from memory).
 */
final class Strokes {
    private static final double A_TAP = 2.65;
    private static final double A_KEY = 0.75;

    private final Browser browser;
    private final DemoBench bench;
    private int taps;
    private int keys;

    Strokes(Browser browser, DemoBench bench) {
        this.browser = browser;
        this.bench = bench;
    }

    double seconds() {
        return taps * A_TAP + keys * A_KEY;
    }

    /** Counts in words. */
    String said() {
        return taps + " taps, " + keys + " characters";
    }

    void type(String css, String text) {
        browser.type(css, text);
        taps++;
        keys += text.length();
    }

    void open(String path) {
        browser.open(bench.url(path));
        taps++;
    }

    void press(String css) {
        taps++;
        browser.press(css);
    }

    /** Chooses one of several: a tap that sends nothing. */
    void choose(String css) {
        taps++;
        browser.script("document.querySelector(\"" + css + "\").click()");
    }

    /** Chooses from a list that unfolds. */
    void select(String css, String value) {
        taps += 2;
        browser.script("document.querySelector(\"" + css + "\").value = '" + value + "'");
    }

    /** Opens everything that is folded. */
    void unfold() {
        taps++;
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    /** Presses a button whose act is refused: the page says why and stays. */
    String refused(String css) {
        taps++;
        browser.script("document.querySelectorAll('.faults').forEach(f => f.remove())");
        browser.shown(css).click();
        return browser.one(".faults").getText();
    }
}
