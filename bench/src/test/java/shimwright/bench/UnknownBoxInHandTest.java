package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A person with a box that is in no file, in an empty shop: begun, ten parts off, two bearings by what is stamped on them, one clearance
 * begun from the shims that were found and set: read with trial pieces, chosen, read again and accepted, with wrong taps and their way
 * back. What the reading waits for stands on the bench and is said in one tap.
 */
class UnknownBoxInHandTest {
    private static final double QUARTER_HOUR = 15 * 60;

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void fromNothingToAClearanceThatIsSet(boolean phone) throws IOException {
        try (DemoBench bench = DemoBench.at(Files.createTempDirectory("shimwright-unknown-"));
                Browser browser = new Browser()) {
            if (phone) {
                browser.phone();
            } else {
                browser.tablet();
            }
            Strokes hand = new Strokes(browser, bench);
            String size = phone ? "small" : "large";
            begin(hand, browser, size);
            tenOff(hand, browser, size);
            stamps(hand, browser, size);
            clearance(hand, browser, size);
            assertThat(hand.seconds()).as(hand.said()).isBetween(100.0, QUARTER_HOUR);
        }
    }

    private static void begin(Strokes hand, Browser browser, String size) {
        hand.open("/");
        hand.press("main a[href='/new']");
        hand.press("a[href='/begin']");
        hand.type("input[name=model]", "5-speed");
        assertThat(hand.refused("form[action='/begin'] button.main")).contains("maker", "how the shafts lie");
        hand.type("input[name=maker]", "not known");
        hand.choose("input[name=layout][value=ACROSS]");
        hand.choose("input[name=housing-BELL]");
        hand.choose("input[name=reverse][value=SLIDING]");
        hand.choose("input[name=shift][value=RAILS]");
        hand.press("form[action='/begin'] button.main");
        hand.type("input[name=number]", "7");
        hand.type("input[name=owner]", "a farm");
        hand.press("form button.main");
        browser.picture("unknown-1-begun-" + size);
    }

    private static void tenOff(Strokes hand, Browser browser, String size) {
        for (String part : List.of("bell", "input_seal", "left_seal", "right_seal", "drain_plug")) {
            hand.press("button[value=" + part + "]");
        }
        // the wrong one tapped, and struck again
        hand.press("button[value=filler_plug]");
        hand.unfold();
        hand.type("ol.log > li:first-child form[action$='/strike'] input[name=reason]", "still in");
        hand.press("ol.log > li:first-child form[action$='/strike'] button");
        assertThat(browser.all("ol.log > li")).hasSize(5);
        for (String part : List.of("breather", "reverse_switch", "filler_plug")) {
            hand.press("button[value=" + part + "]");
        }
        // what is offered first is tapped
        hand.press(".tap button");
        browser.picture("unknown-2-nine-off-" + size);
        hand.unfold();
        hand.type("form[action$='/strip/found'] input[name=play]", "0.22");
        hand.press("form[action$='/strip/found'] button");
        hand.unfold();
        hand.type("input[name=shims-sizes]", "0.40; 0.15");
        hand.type("input[name=shims-place]", "behind the input bearing");
        hand.select("select[name=shims-acts]", "closes");
        hand.press(".tap button");
        assertThat(browser.all("ol.log > li")).hasSize(10);
        browser.picture("unknown-3-ten-off-" + size);
    }

    private static void stamps(Strokes hand, Browser browser, String size) {
        hand.press("a[href*='/units/type/']");
        for (String[] bearing : new String[][] {{"input_front_bearing", "6206"}, {"input_rear_bearing", "6205"}}) {
            hand.press("a.partlink[href*='" + bearing[0] + "']");
            hand.type("form[action$='/item'] input[name=part]", bearing[1]);
            hand.press("form[action$='/item'] button");
            assertThat(browser.text()).contains(bearing[1]);
        }
        browser.picture("unknown-4-stamps-" + size);
        hand.press("a[href$='/strip']");
    }

    private static void clearance(Strokes hand, Browser browser, String size) {
        hand.press("a[href*='/strip/clearance']");
        hand.type("input[name=gauge]", "dial indicator");
        hand.type("input[name=inner]", "44");
        hand.type("input[name=outer]", "52");
        browser.picture("unknown-5-from-shims-" + size);
        hand.press("form[action$='/strip/clearance'] button.main");
        hand.open("/gauges");
        hand.press("main a[href^='/gauges?kind=dial-0.001#']");
        hand.type("input[name=gauge]", "clock");
        hand.press("form[action='/gauges'] button");
        hand.open("/job/job-7/clearance/a");
        hand.press("a[href^='/drawer']");
        browser.picture("unknown-6-drawer-" + size);
        String list = "textarea[name=list]";
        hand.type(list, "S1 F1");
        assertThat(hand.refused("form[action='/drawer/list'] button")).contains("no thickness");
        hand.type(list, "S1 F1 0.40\nS2 F1 0.15\nS3 F1 0.52\nS4 F1 0.20\nS5 F1 0.60");
        hand.press("form[action='/drawer/list'] button");
        hand.open("/job/job-7/clearance/a");
        hand.type("form[action$='/trial'] input[name^='in-']:not([type=checkbox])", "S1");
        hand.press("form[action$='/trial'] button");
        assertThat(browser.text()).contains("S1 (0.400 mm)", "This reading waits for step");
        browser.picture("unknown-7-trial-" + size);
        set(hand, browser, size);
    }

    /** What stands is said in one tap, too early at first; then it is read, chosen, read again and accepted. */
    private static void set(Strokes hand, Browser browser, String size) {
        String stood = "form[action$='/stood'] button";
        hand.press(stood);
        assertThat(browser.text()).doesNotContain("This reading waits for step");
        hand.unfold();
        hand.type("form[action$='/strike'] input[name=reason]", "the shaft lies on the bench");
        hand.press("form[action$='/strike'] button");
        assertThat(browser.text()).contains("This reading waits for step");
        hand.press(stood);
        browser.picture("unknown-8-stood-" + size);
        rounds(hand, List.of("0.371", "0.373", "0.372"));
        browser.picture("unknown-9-chosen-" + size);
        hand.press("form.offer button.main");
        hand.open("/job/job-7/clearance/a");
        hand.press(stood);
        rounds(hand, List.of("0.102", "0.101", "0.103"));
        hand.press("form[action$='/accept'] button");
        hand.open("/job/job-7/clearance/a");
        assertThat(browser.text()).contains("Set and accepted");
        browser.picture("unknown-10-set-" + size);
    }

    private static void rounds(Strokes hand, List<String> readings) {
        for (String read : readings) {
            hand.type("form[action$='/round'] input[name=v1]", read);
            hand.press("form[action$='/round'] button");
        }
    }
}
