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
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * From the owner's words to everything home, in the browser: readings as found, three worn pieces and one that cannot be read, the quote
 * and the consent, a kit with a wrong seal, a gear that was welded and cut anew and first comes back too tight; and the record tells
 * it as it was.
 */
class HomeWalkTest {
    private static final String JOB = "/job/job-v-0101";
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
    void fromTheOwnersWordsToEverythingHome() throws IOException {
        cameIn();
        asFoundAndApart();
        inspected();
        agreed();
        String gear = orderedAndSentOut();
        cameHome(gear);
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
        decide("C45", "rework", "welded and cut anew");
        browser.picture("home-3-inspect-tablet");
    }

    private static void agreed() {
        go("/money");
        send(form("form[action$='/money/rate']"), "button", "fact-rate", "60 EUR");
        send(
                form("form[action$='/money/quote']"),
                "button",
                "prices-rework-C42",
                "140",
                "prices-rework-C45",
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

    /** All that the list has, from each supplier in turn, and the stub to the welder. */
    private static String orderedAndSentOut() {
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
        send(
                form("form[action$='/orders'].fields"),
                "button",
                "what",
                "flange stub, welded and cut anew: over pins 27.57 to 27.59",
                "to",
                "the gear cutter",
                "due",
                inDays(9));
        browser.picture("home-5-orders-tablet");
        browser.phone();
        go("/orders");
        browser.picture("home-5-orders-phone");
        browser.tablet();
        go("/plan");
        assertThat(browser.all(".heldup")).isEmpty();
        return "flange stub, welded";
    }

    private static void arrives(String what, String measured, String good) {
        go("/orders");
        send(within(".awaited", what, "form[action$='/orders/back']"), "button", "measured", measured, "good", good);
    }

    private static void cameHome(String gear) {
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
        arrives(gear, "over pins 27.61: goes on by no force of hand, too tight", "no");
        go("/orders");
        send(
                within(".awaited", gear, "form[action$='/orders/return']"),
                "button",
                "reason",
                "0.02 over the upper limit over pins",
                "due",
                inDays(12));
        arrives(gear, "over pins 27.58, slides on by hand, no crack with dye", "yes");
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
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(kit, "png", out);
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        return out.toByteArray();
    }

    private static void theRecordTellsIt() throws IOException {
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
                        "over pins 27.61: goes on by no force of hand, too tight",
                        "over pins 27.58, slides on by hand, no crack with dye",
                        "1 kept with the job");
        browser.picture("home-8-record-tablet");
        browser.phone();
        go("/record");
        browser.picture("home-8-record-phone");
        browser.tablet();
        for (String paper : List.of("record", "quote", "orders")) {
            try (PDDocument pdf = Loader.loadPDF(bench.bytes(JOB + "/" + paper + ".pdf"))) {
                assertThat(new PDFTextStripper().getText(pdf)).contains("V-0101");
                ImageIO.write(
                        new PDFRenderer(pdf).renderImageWithDPI(0, 80),
                        "png",
                        Files.createDirectories(Path.of("target", "pictures"))
                                .resolve("home-9-" + paper + ".png")
                                .toFile());
            }
        }
    }
}
