package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The demo job from its input end play to the printed record, in a real browser, by typing and Enter alone. The values are
 * those under {@code expected} in the source of the demo (an invented scenario, recomputed there): EP-2, EP-3, TH-1, TH-2.
 */
class WalkTest {
    private static final double TOLERANCE_MM = 0.0005;
    private static DemoBench bench;
    private static Browser browser;

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

    /** What a gauge says at each check that is still ahead, as in the demo job's history. */
    private static final Map<String, String> READINGS = readings();

    private static Map<String, String> readings() {
        Map<String, String> readings = new LinkedHashMap<>();
        readings.put("R06/float", "0.31");
        readings.put("Q06/float", "0.31");
        readings.put("Q06/offset", "0.2");
        readings.put("Q06/fork", "0.30");
        readings.put("D08/change", "0 0 0");
        readings.put("X03/turns_1", "75.6");
        readings.put("X03/turns_2", "44.4");
        readings.put("X03/turns_3", "27.9");
        readings.put("X03/turns_4", "19.8");
        readings.put("X03/turns_5", "15.4");
        readings.put("X03/turns_R", "66.6");
        readings.put("X03/detent", "48 50 46");
        readings.put("X03/gate", "70");
        readings.put("X04/torque", "0.9");
        readings.put("X05/loss", "0.006 bar");
        readings.put("R01/depth", "12.50 12.50 12.51");
        return readings;
    }

    @Test
    void fromTheClearanceToThePrintedRecordByEnterAlone() throws IOException {
        browser.open(bench.url("/job/job-v-0093/build"));
        assertThat(browser.one(".step .at").getText()).startsWith("E02");
        trial();
        browser.enter();
        assertThat(browser.one(".step .at").getText()).startsWith("E03");
        last();
        browser.enter();
        assertThat(browser.one(".step .at").getText()).startsWith("E04");
        again();
        walkOn();
        handBack();
        record();
    }

    private void trial() {
        browser.enter();
        browser.typeAndSend("d52-10");
        round("0.24", "0.32");
        assertThat(browser.text()).contains("2 more rounds");
        round("0.25", "0.31");
        assertThat(browser.has(".offer")).isFalse();
        round("0.24", "0.31");
        assertThat(browser.number("#measured")).isCloseTo(0.2783, within(TOLERANCE_MM));
        assertThat(browser.number("#wanted")).isCloseTo(1.0253, within(TOLERANCE_MM));
        assertThat(browser.text()).contains("tilt");
        String best = browser.one(".offer").getText();
        assertThat(best).contains("d52-03 + d52-09").contains("1.033 mm");
        assertThat(number(best, "leaves ")).isCloseTo(0.0423, within(TOLERANCE_MM));
        assertThat(number(best, "hot ")).isCloseTo(0.0423 + 0.1156, within(TOLERANCE_MM));
        browser.picture("clearance-choose-tablet");
        browser.enter();
    }

    private void round(String first, String second) {
        browser.typeAndEnter(first);
        browser.typeAndSend(second);
    }

    private void last() {
        browser.enter();
        assertThat(browser.number("#predicted")).isCloseTo(0.0423, within(TOLERANCE_MM));
        round("0.03", "0.05");
        round("0.04", "0.05");
        round("0.04", "0.05");
        assertThat(browser.number("#final")).isCloseTo(0.0433, within(TOLERANCE_MM));
        String verdict = browser.one(".verdict").getText();
        assertThat(verdict).contains("in");
        assertThat(number(verdict, "hot ")).isCloseTo(0.0433 + 0.1156, within(TOLERANCE_MM));
        browser.picture("clearance-accept-tablet");
        browser.enter();
    }

    private void again() {
        browser.enter();
        round("0.03", "0.05");
        round("0.04", "0.05");
        round("0.04", "0.05");
        browser.enter();
        browser.enter();
    }

    /** Every step that is left: what is asked for is typed, what can only be said yes to is said yes to. */
    private void walkOn() {
        for (int page = 0; page < 200 && browser.has("form[action$='/done']"); page++) {
            String step = browser.one(".step .at b").getText();
            if (step.equals("Q02") && browser.has(".hold.open")) {
                ring();
            } else if (browser.has(".hold.open input[name=values]")) {
                String check = browser.one(".hold.open form[action$='/check'] input[name=check]")
                        .getDomAttribute("value");
                String reading = READINGS.getOrDefault(step + "/" + check, "");
                assertThat(reading).as("reading for " + step + "/" + check).isNotEmpty();
                browser.typeAndSend(reading);
            } else if (!browser.has(".hold.open") && browser.has("form[action$='/done'] input[name=time]")) {
                // a cure is still running: the walk takes no evening, and says so
                browser.changes(() ->
                        browser.one("form[action$='/done'] input[name=time]").sendKeys("warm room, set hard\n"));
            } else {
                browser.enter();
            }
            assertThat(browser.has("main > .faults")).as(browser.text()).isFalse();
        }
        assertThat(browser.text()).contains("All steps are done");
    }

    private void ring() {
        browser.enter();
        browser.typeAndSend("r22-03");
        round("0.03", "0.04");
        round("0.03", "0.04");
        assertThat(browser.number("#final")).isCloseTo(0.034, within(0.0015));
        browser.enter();
    }

    private void handBack() {
        browser.enter();
        browser.one("input[name=warranty]").sendKeys("12 months or 40 000 km; hub 5 six months");
        browser.one("input[name=advice]").sendKeys("change the fluid at 2 000 km");
        browser.changes(() -> browser.one("input[name=remark]").sendKeys("quiet\n"));
        assertThat(browser.has("main > .faults")).as(browser.text()).isFalse();
        assertThat(browser.text()).contains("Handed back");
    }

    private void record() throws IOException {
        String pdf = text(bench.bytes("/job/job-v-0093/record.pdf"));
        String page = browser.script("return document.querySelector('article.record').textContent")
                .toString();
        for (String record : new String[] {pdf, page}) {
            String flat = record.replaceAll("\\s+", " ");
            String set = flat.substring(flat.indexOf("Appendix A"), flat.indexOf("Appendix B"));
            String c = set.substring(set.indexOf("input shaft end play"), set.indexOf("5th driven wheel under its"));
            assertThat(c).contains("0.352 mm (d52-03) + 0.681 mm (d52-09)").contains("0.240, 0.320 mm");
            assertThat(number(c, "predicted ")).isCloseTo(0.0423, within(TOLERANCE_MM));
            assertThat(number(c, "Set to ")).isCloseTo(0.0433, within(TOLERANCE_MM));
            assertThat(number(c, "At working heat ")).isCloseTo(0.0433 + 0.1156, within(TOLERANCE_MM));
            String a = set.substring(set.indexOf("pinion depth, nose"), set.indexOf("pinion bearing preload"));
            assertThat(number(a, "Set to ")).isCloseTo(52.083, within(TOLERANCE_MM));
            assertThat(flat).contains("19.8").contains("12 months or 40 000 km").contains("Handed back");
            assertThat(flat).containsPattern("Hash of the last: ?[0-9a-f ]{64}");
        }
    }

    private static double number(String text, String after) {
        Matcher matcher = Pattern.compile(Pattern.quote(after.strip()) + "\\s*(-?\\d+\\.\\d+)")
                .matcher(text);
        assertThat(matcher.find()).as(after + "in " + text).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }
}
