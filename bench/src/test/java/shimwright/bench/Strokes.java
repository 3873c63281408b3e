package shimwright.bench;

/**
 * A person's taps and characters in the browser, counted, with the seconds they take by the keystroke-level model: pointing, thinking and
 * tapping 1.10 + 1.35 + 0.20, a key 0.75 as for complex codes (S. K. Card, T. P. Moran, A. Newell, Communications of the ACM 23
 * (1980) 7; figures from memory). Where the page has put the keys into a field or on a button, nobody points at it; to go over from keys to pointing and back
 * takes 0.40 each (the same).
 */
final class Strokes {
    private static final double A_TAP = 2.65;
    private static final double A_KEY = 0.75;
    private static final double GOING_OVER = 0.40;

    private final Browser browser;
    private final DemoBench bench;
    private int taps;
    private int keys;
    private int over;
    private boolean atKeys;

    Strokes(Browser browser, DemoBench bench) {
        this.browser = browser;
        this.bench = bench;
    }

    private void tap() {
        taps++;
        atKeys = false;
    }

    double seconds() {
        return taps * A_TAP + keys * A_KEY + over * GOING_OVER;
    }

    /** Counts in words. */
    String said() {
        return taps + " taps, " + keys + " characters, " + over + " times over from one to the other";
    }

    void type(String css, String text) {
        browser.type(css, text);
        tap();
        keys += text.length();
    }

    /** Types a reading where the page has put the keys and sends it by Enter, as a gauge that types does; where it has not, by taps. */
    void send(String field, String text, String button) {
        if (keysAre(field)) {
            keys += text.length() + 1;
            browser.typeAndSend(text);
        } else {
            type(field, text);
            press(button);
        }
    }

    /** Types where the page has put the keys; where it has not, after a tap. */
    void typeWhereKeysAre(String field, String text) {
        if (keysAre(field)) {
            keys += text.length();
            browser.type(field, text);
        } else {
            type(field, text);
        }
    }

    /** Presses Enter where the page has put the keys on the button; where it has not, taps it. */
    void enter(String button) {
        if (keysAre(button)) {
            keys++;
            browser.enter();
        } else {
            press(button);
        }
    }

    private boolean keysAre(String css) {
        boolean there = browser.keysAre(css);
        over += there && !atKeys ? 2 : 0;
        atKeys = there;
        return there;
    }

    void open(String path) {
        browser.open(bench.url(path));
        tap();
    }

    void press(String css) {
        tap();
        browser.press(css);
    }

    /** Chooses one of several: a tap that sends nothing. */
    void choose(String css) {
        tap();
        browser.script("document.querySelector(\"" + css + "\").click()");
    }

    /** Chooses from a list that unfolds. */
    void select(String css, String value) {
        taps += 2;
        browser.script("document.querySelector(\"" + css + "\").value = '" + value + "'");
    }

    /** Opens everything that is folded. */
    void unfold() {
        tap();
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    /** Presses a button whose act is refused: the page says why and stays. */
    String refused(String css) {
        tap();
        browser.script("document.querySelectorAll('.faults').forEach(f => f.remove())");
        browser.shown(css).click();
        return browser.one(".faults").getText();
    }
}
