// size: one walk, told from the first word to the last paper, with what is typed on it
package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/**
 * From the owner's words to everything home, in the browser: readings as found, three worn pieces and one that cannot be read, the quote
 * and the consent, a kit with a wrong seal, a gear that was welded and cut anew and first comes back too tight; and the record tells
 * it as it was.
 */
class HomeWalkTest {
    private static final String JOB = "/job/job-v-0101";
    private static final String GEAR = "parts/wheel_5";

    /** The gear's spline goes out to be welded and cut to the shaft that was measured, 0 to 0.02 mm tight on its flanks as the unit file has it. */
    private static final String[] GEAR_SHEET = {
        "item", "wheel_5",
        "to", "the gear cutter",
        "due", inDays(9),
        "in-part", "hub",
        "in-pressureAngle", "30°",
        "in-overPins", "25.575",
        "in-betweenPins", "20.250",
        "in-hubPin", "1.8",
        "in-clearance", "-0.020",
        "in-tolerance", "0.020",
        "in-flanks", "case hardened",
        "in-hardnessPlan", "nitrided 0.3 deep",
        "more-length", "20",
        "more-hubOutside", "57",
        "more-shaftBore", "0",
        "more-spare", "0.01",
        "more-ceiling", "120 °C",
        "more-keepCool", "the teeth, under 150 °C",
        "more-cracks", "dye, before and after",
        "more-runOut", "0.03",
        "more-hardLeast", "55",
        "more-hardMost", "62"
    };

    /** The seat of the input rear cup: what goes into it was measured, H7 is 0 to 0.030 mm and a cup 0 to 0.013 mm under its size. */
    private static final String[] BORE_SHEET = {
        "item", "rear_cover",
        "to", "the borer",
        "due", inDays(8),
        "more-mate", "51.993 51.991 51.994",
        "more-mateU", "0.001",
        "more-fitLeast", "0.005",
        "more-fitMost", "0.035",
        "more-worn", "52.061 52.055",
        "more-length", "16",
        "more-round", "0.008",
        "more-runOut", "0.02",
        "more-datum", "the bore of the pinion rear bearing",
        "more-roughMost", "1.6",
        "more-keepCool", "the casting, under 150 °C",
        "more-cracks", "dye round the seat, before and after"
    };

    private static final String[] BORE_READ = {
        "values-size", "52.012 52.014 52.010 52.013",
        "gauges-size", "BG",
        "values-round", "0.004",
        "uncertainty-round", "0.001",
        "values-runOut", "0.01",
        "uncertainty-runOut", "0.002",
        "values-rough", "1.2 1.3 1.2",
        "uncertainty-rough", "0.1",
        "attest-cracks", "yes"
    };

    private static DemoBench bench;
    private static Browser browser;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        browser = new Browser();
        browser.tablet();
    }

    @AfterAll
    static void stop() {
        browser.close();
        bench.close();
    }

    private static String inDays(int days) {
        return LocalDate.now(ZoneId.systemDefault()).plusDays(days).toString();
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }

    /** The form under a selector, within the first box of a kind that has the words in it. */
    private static String within(String box, String words, String form) {
        return "[...document.querySelectorAll(" + quoted(box) + ")].find(e => e.textContent.includes(" + quoted(words)
                + ")).querySelector(" + quoted(form) + ")";
    }

    private static String form(String css) {
        return "document.querySelector(" + quoted(css) + ")";
    }

    /** Fills a form as a person would, field by field, and presses a button of it; several values of one name go to the next boxes. */
    private static void send(String form, String button, String... fields) {
        StringBuilder script = new StringBuilder("document.querySelectorAll('details').forEach(d => d.open = true);"
                + "const f = " + form
                + "; const set = (n, v) => { const all = [...f.querySelectorAll('[name=\"' + n + '\"]')]"
                + ".filter(e => e.type !== 'hidden'); const tick = e => e.type === 'radio' || e.type === 'checkbox';"
                + "const one = all.find(e => tick(e) ? e.value === v : true);"
                + "if (!one) { throw 'no field ' + n + ' ' + v; }"
                + "if (tick(one)) { one.checked = true; } else { one.value = v; }"
                + "one.dispatchEvent(new Event('input', {bubbles: true})); };");
        for (int i = 0; i < fields.length; i += 2) {
            script.append("set(")
                    .append(quoted(fields[i]))
                    .append(',')
                    .append(quoted(fields[i + 1]))
                    .append(");");
        }
        script.append("f.querySelector(").append(quoted(button)).append(").click(); return 1");
        browser.changes(() -> browser.script(script.toString()));
        assertThat(browser.all("section.faults"))
                .as(() -> "refused: " + browser.text())
                .isEmpty();
    }

    private static void go(String page) {
        browser.open(bench.url(JOB + page));
    }

    @Test
    void fromTheOwnersWordsToEverythingHome() {
        cameIn();
        asFoundAndApart();
        inspected();
        drawnOn();
        agreed();
        orderedAndSentOut();
        cameHome();
        theBuildShowsWhatWasDrawn();
        theRecordTellsIt();
    }

    private static void cameIn() {
        browser.open(bench.url("/new/ambleholt-l5-74"));
        send(
                form("form[action^='/new/ambleholt']"),
                "button.main",
                "number",
                "V-0101",
                "owner",
                "the bakery, van 2",
                "tale-I2",
                "brass bush, square drive 2.8 mm",
                "tale-I3",
                "25",
                "tale-I4",
                "blind, cast skin",
                "tale-I5",
                "19.8",
                "tale-I6",
                "38/9",
                "said",
                "it whines when I lift off, and fifth jumps out");
        go("/complaint");
        send(
                form("form[action$='/complaint']"),
                "button.main",
                "answers-kind",
                "whine",
                "answers-load",
                "overrun",
                "apart",
                "bench");
        assertThat(browser.text()).contains("Look in this order");
        browser.picture("home-1-complaint-tablet");
    }

    private static void asFoundAndApart() {
        go("/strip");
        send(
                form("form[action$='/strip/found']"),
                "button",
                "words",
                "the indicator does not reach it with the bell housing on");
        for (String gone : List.of("fluid", "both drive flanges", "end cap")) {
            send(form("form.stripoff"), "button.main", "gone", gone);
        }
        assertThat(browser.text()).contains("Off so far: 3");
        browser.picture("home-2-strip-tablet");
        go("/tags");
        assertThat(browser.all("input[name=tag]:checked")).hasSize(3);
        browser.picture("home-2-tags-tablet");
    }

    /** Reads one piece of a limit, the first whose line has a word in it; without values it cannot be read, and says why. */
    private static void read(String limit, String piece, String values, String words) {
        go("/inspect?limit=" + limit);
        String form =
                "document.getElementById(" + quoted(limit) + ").querySelector(\"form[action$='/inspect/pieces']\")";
        String script = "document.querySelectorAll('details').forEach(d => d.open = true); const f = " + form
                + "; const row = [...f.querySelectorAll('.piecerow')].find(e => e.textContent.includes(" + quoted(piece)
                + ")); const values = " + quoted(values) + ".split(' ').filter(v => v);"
                + "const fields = [...row.querySelectorAll(\"[name^='values-']\")];"
                + "fields.forEach((e, i) => e.value = fields.length === 1 ? values.join(' ') : values[i] || '');"
                + "row.querySelector(values.length ? \"[name^='words-']\" : \"[name^='unread-']\").value = "
                + quoted(words)
                + "; f.querySelector('button').click(); return 1";
        browser.changes(() -> browser.script(script));
        assertThat(browser.all("section.faults"))
                .as(() -> "refused: " + browser.text())
                .isEmpty();
    }

    private static void decide(String limit, String decision, String reason) {
        go("/inspect?limit=" + limit);
        String row = "document.getElementById(" + quoted(limit) + ")";
        send(row + ".querySelector(\"form[action$='/judge']\")", "button", "decision", decision, "reason", reason);
    }

    private static void inspected() {
        read("C10", "fork 5", "6.50 6.52", "worn to the bronze");
        decide("C10", "replace", "pads of fork 5 are gone");
        read("C08", "sliding sleeve 5", "1.2", "rounded");
        decide("C08", "replace", "tips rounded, fifth jumps out of it");
        read("C42", "", "52.061", "beaten out");
        decide("C42", "rework", "bored and sleeved");
        read("C45", "", "", "the stub is scored too deep to set pins on");
        decide("C45", "replace", "a scored stub cuts the new lip");
        go("/parts/wheel_5");
        send(
                form("form[action$='/parts/judge']"),
                "button",
                "decision",
                "rework",
                "reason",
                "its spline rocks on the shaft: welded and cut anew");
        browser.picture("home-3-inspect-tablet");
    }

    /** A picture of the gear, with a ring by mouse, an arrow by finger, words and an arrow by keys; one go is struck again. */
    private static void drawnOn() {
        bench.upload(
                JOB + "/picture", "gear.png", gear(), "entry", "home-walk-gear", "about", "part wheel_5", "page", GEAR);
        draw(false, 0.1, 0.1, 0.2, 0.3);
        browser.changes(() -> browser.one("main form[action*='/picture/'] button:not([type=button])")
                .click());
        assertThat(browser.path()).isEqualTo(JOB + "/" + GEAR);
        browser.press(".pictures .quietlink");
        send(form("main form[action$='/strike']"), "button", "reason", "the wrong tooth");
        assertThat(browser.all("h2").stream().filter(h -> h.getText().equals("Drawn on it")))
                .isEmpty();
        draw(false, 0.38, 0.36, 0.62, 0.64);
        tool("arrow");
        browser.phone();
        assertThat((List<?>) browser.script(ScreensTest.SMALL_TARGETS)).isEmpty();
        assertThat(((Number) browser.script("return document.documentElement.scrollWidth - window.innerWidth"))
                        .intValue())
                .isLessThanOrEqualTo(0);
        browser.drag(".draw", true, 0.9, 0.15, 0.75, 0.25, 0.62, 0.36);
        browser.picture("home-3-marks-phone");
        browser.tablet();
        tool("text");
        browser.type("[data-marktext]", "step on the flank");
        browser.drag(".draw", false, 0.5, 0.12);
        tool("arrow");
        browser.script("document.querySelector('.draw').focus()");
        for (int i = 0; i < 4; i++) {
            browser.keys(Keys.ARROW_LEFT);
        }
        browser.keys(Keys.ENTER);
        for (int i = 0; i < 5; i++) {
            browser.keys(Keys.ARROW_DOWN);
        }
        browser.keys(Keys.ENTER);
        String lines = String.valueOf(browser.one("[data-lines]").getDomProperty("value"));
        assertThat(lines.lines().map(line -> line.split(" ")[0])).containsExactly("ring", "arrow", "text", "arrow");
        browser.picture("home-3-marks-tablet");
        browser.type("main input[name=words]", "half of the spline is gone");
        browser.changes(() -> browser.one("main form[action*='/picture/'] button:not([type=button])")
                .click());
        assertThat(browser.all(".pictures .marked svg")).hasSize(1);
        assertThat(browser.one(".pictures figcaption").getText()).contains("half of the spline is gone");
        browser.picture("home-3-part-tablet");
    }

    private static void tool(String name) {
        browser.script("document.querySelector('[name=tool][value=" + name + "]').click(); return 1");
    }

    /** On the page of the gear's picture, a ring. */
    private static void draw(boolean finger, double... path) {
        go("/" + GEAR);
        browser.press(".pictures .quietlink");
        tool("ring");
        browser.drag(".draw", finger, path);
    }

    private static void agreed() {
        go("/money");
        send(form("form[action$='/money/rate']"), "button", "fact-rate", "60 EUR");
        send(
                form("form[action$='/money/quote']"),
                "button",
                "prices-rework-C42",
                "140",
                "prices-rework-wheel_5",
                "210",
                "spread",
                "30");
        assertThat(browser.text()).contains("Told:", "rework: ", "Not in it");
        send(
                form("form[action$='/money/owner']"),
                "button",
                "says",
                "agreed",
                "by",
                "by_telephone",
                "who",
                "the baker",
                "words",
                "go on, but ring me before anything else");
        assertThat(browser.text()).contains("The owner agreed.");
        browser.picture("home-4-money-tablet");
        browser.phone();
        go("/money");
        browser.picture("home-4-money-phone");
        browser.tablet();
    }

    /** All that the list has, from each supplier in turn; the gear to the gear cutter and the bulkhead to the borer, each with its sheet. */
    private static void orderedAndSentOut() {
        go("/build");
        go("/plan");
        assertThat(browser.one(".heldup").getText()).contains("neither ordered nor here", "fork 5");
        browser.picture("home-5-held-up-tablet");
        go("/orders");
        while (browser.has("form[action$='/orders/needed']")) {
            send(
                    form("form[action$='/orders/needed']"),
                    "button:not([formaction])",
                    "to",
                    "the agent",
                    "due",
                    inDays(4),
                    "late",
                    "2");
        }
        assertThat(browser.text()).doesNotContain("Still to order");
        go("/sendout?spline=G23");
        browser.picture("home-5-sendout-form-tablet");
        send(form("form[action$='/sendout']"), "button.main", GEAR_SHEET);
        go("/sendout/other/sleeved_bore");
        send(form("form[action$='/sleeved_bore']"), "button.main", BORE_SHEET);
        browser.picture("home-5-orders-tablet");
        browser.phone();
        for (String page : List.of("/orders", "/sendout/other/sleeved_bore")) {
            go(page);
            assertThat(((Number) browser.script("return document.documentElement.scrollWidth - window.innerWidth"))
                            .intValue())
                    .as(page)
                    .isLessThanOrEqualTo(0);
            browser.picture("home-5" + page.replace('/', '-') + "-phone");
        }
        browser.tablet();
        go("/plan");
        assertThat(browser.all(".heldup")).isEmpty();
        sheet("5th driven wheel", "home-5-gear-sheet", "20.");
        sheet("rear cover", "home-5-bore-sheet", "52.");
    }

    /** Looks at the sheet that goes with an order, as page and as paper. */
    private static void sheet(String what, String name, String size) {
        go("/orders");
        browser.changes(() -> browser.script(within(".awaited", what, "a[href*='/sendout/']") + ".click(); return 1"));
        assertThat(browser.text()).contains("It is accepted by", "no cracks", "Measured mate", size);
        assertThat(browser.all(".figure svg")).hasSize(1);
        browser.picture(name + "-tablet");
        paper(browser.path() + "/sheet.pdf", name, "It is accepted by");
    }

    private static void paper(String path, String name, String says) {
        try (PDDocument pdf = Loader.loadPDF(bench.bytes(path))) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("V-0101", says);
            Path folder = Files.createDirectories(Path.of("target", "pictures"));
            Files.write(folder.resolve(name + ".pdf"), bench.bytes(path));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What is read of the gear when it comes: between its pins, and the rest as it should be. */
    private static String[] readings(String betweenPins) {
        return new String[] {
            "values-pins", betweenPins,
            "uncertainty-pins", "0.001",
            "values-runout", "0.01",
            "uncertainty-runout", "0.003",
            "values-hardness", "58 58 59",
            "uncertainty-hardness", "0.5",
            "attest-cracks", "yes"
        };
    }

    /** Reads what came by its sheet. */
    private static void reads(String what, String... fields) {
        go("/orders");
        send(within(".awaited", what, "form[action$='/orders/work']"), "button", fields);
    }

    private static void arrives(String what, String measured, String good) {
        go("/orders");
        send(within(".awaited", what, "form[action$='/orders/back']"), "button", "measured", measured, "good", good);
    }

    private static void cameHome() {
        arrives("input seal", "26 x 40 x 7, that of the other variant", "no");
        browser.picture("home-6-wrong-seal-tablet");
        go("/orders");
        send(
                within(".awaited", "input seal", "form[action$='/orders/return']"),
                "button",
                "reason",
                "bore 26 for a shaft of 25",
                "due",
                inDays(7));
        reads("5th driven wheel", readings("20.140 20.142 20.141"));
        go("/orders");
        assertThat(browser.text()).contains("Came and was not right", "is not within");
        browser.script(within(".awaited", "5th driven wheel", "h2") + ".scrollIntoView(); return 1");
        browser.picture("home-6-too-tight-tablet");
        send(
                within(".awaited", "5th driven wheel", "form[action$='/orders/return']"),
                "button",
                "reason",
                "too tight between pins, it would not go home at 120 °C",
                "due",
                inDays(12));
        reads("5th driven wheel", readings("20.178 20.180 20.176"));
        reads("rear cover", BORE_READ);
        arrives("input seal", "25 x 40 x 7, lip to the oil", "yes");
        while (browser.has(".awaited")) {
            send(
                    form(".awaited form[action$='/orders/back']"),
                    "button",
                    "measured",
                    "counted, as on the list",
                    "good",
                    "yes");
        }
        bench.upload(
                JOB + "/picture", "kit.png", picture(), "entry", "home-walk-kit", "about", "orders", "page", "orders");
        go("/orders");
        assertThat(browser.text()).contains("Nothing is awaited", "Went back");
        assertThat(browser.all("ul.pictures img")).hasSize(1);
        browser.picture("home-7-all-home-tablet");
    }

    private static byte[] picture() {
        BufferedImage kit = new BufferedImage(320, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = kit.createGraphics();
        pen.setColor(Color.LIGHT_GRAY);
        pen.fillRect(0, 0, 320, 200);
        pen.setColor(Color.DARK_GRAY);
        for (int i = 0; i < 12; i++) {
            pen.drawOval(20 + 50 * (i % 6), 30 + 80 * (i / 6), 36, 36);
        }
        pen.dispose();
        return png(kit);
    }

    /** A gear on a bench, as large as a telephone takes it. */
    private static byte[] gear() {
        BufferedImage gear = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = gear.createGraphics();
        pen.setColor(new Color(0x7a, 0x6f, 0x60));
        pen.fillRect(0, 0, 1600, 1200);
        pen.setColor(new Color(0xb8, 0xb8, 0xbc));
        for (int i = 0; i < 27; i++) {
            pen.fillOval(
                    (int) (800 + 430 * Math.cos(i * 2 * Math.PI / 27)) - 40,
                    (int) (600 + 430 * Math.sin(i * 2 * Math.PI / 27)) - 40,
                    80,
                    80);
        }
        pen.fillOval(380, 180, 840, 840);
        pen.setColor(new Color(0x30, 0x2c, 0x28));
        pen.fillOval(650, 450, 300, 300);
        pen.dispose();
        return png(gear);
    }

    private static byte[] png(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return out.toByteArray();
    }

    private static void theBuildShowsWhatWasDrawn() {
        go("/build?step=Q01");
        assertThat(browser.text()).contains("Drawn on its pictures", "half of the spline is gone");
        browser.shown(".pictures .marked");
        browser.picture("home-7-build-tablet");
    }

    private static void theRecordTellsIt() {
        go("/record");
        assertThat(browser.text())
                .contains(
                        "it whines when I lift off, and fifth jumps out",
                        "the indicator does not reach it",
                        "pads of fork 5 are gone",
                        "the stub is scored too deep to set pins on",
                        "the baker, by telephone",
                        "26 x 40 x 7, that of the other variant",
                        "bore 26 for a shaft of 25",
                        "is not within",
                        "too tight between pins, it would not go home at 120 °C",
                        "between two pins of 1.800 mm: within",
                        "diameter: within 52.001 mm to 52.024 mm",
                        "half of the spline is gone",
                        "2 kept with the job");
        assertThat(browser.all(".photo .marked svg")).hasSize(1);
        browser.picture("home-8-record-tablet");
        browser.shown(".verdicts");
        browser.picture("home-8-record-verdicts-tablet");
        browser.shown(".photos");
        browser.picture("home-8-record-pictures-tablet");
        browser.phone();
        go("/record");
        browser.picture("home-8-record-phone");
        browser.shown(".photos");
        browser.picture("home-8-record-pictures-phone");
        browser.tablet();
        for (String one : List.of("record", "quote", "orders")) {
            paper(JOB + "/" + one + ".pdf", "home-9-" + one, "V-0101");
        }
    }
}
