package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Through the pages: each piece with its own verdict, what stands beside it, its mate, and a spline that goes out and comes back. */
class InspectedTest {
    private static final String JOB = "/job/job-v-0093";
    private static final String ORDERS = JOB + "/orders";
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static String[] with(String[] fields, String... more) {
        String[] all = Arrays.copyOf(fields, fields.length + more.length);
        System.arraycopy(more, 0, all, fields.length, more.length);
        return all;
    }

    /** The form with another text in one of its fields. */
    private static String[] instead(String[] fields, String field, String text) {
        String[] all = fields.clone();
        all[Arrays.asList(all).indexOf(field) + 1] = text;
        return all;
    }

    private static String inDays(int days) {
        return LocalDate.now(ZoneId.systemDefault()).plusDays(days).toString();
    }

    private static List<String> lines() {
        return bench.page(ORDERS).select(".orderline b").eachText();
    }

    private static Element awaited() {
        return bench.page(ORDERS).select(".awaited").stream()
                .filter(one -> one.text().contains("spline built up and cut"))
                .findFirst()
                .orElseThrow();
    }

    private static Element row(String limit) {
        return Objects.requireNonNull(bench.page(JOB + "/inspect").getElementById(limit));
    }

    private static List<String> pieces(String limit) {
        return row(limit).select(".piecename small").eachText();
    }

    private static String recordPaper() throws IOException {
        try (PDDocument paper = Loader.loadPDF(bench.bytes(JOB + "/record.pdf"))) {
            return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        }
    }

    @Test
    void threeRailsHaveThreeVerdictsAndOneIsOrdered() throws IOException {
        String pieces = JOB + "/inspect/pieces";
        assertThat(bench.keep(pieces, "limit", "C15").body()).contains("Read a piece, or say why it cannot be read");
        HttpResponse<String> both = bench.keep(
                pieces, "limit", "C15", "values-rail_12", "0.03", "unread-rail_12", "in the way", "values-rail_9", "1");
        assertThat(both.body()).contains("it was read and cannot be read", "it judges no piece rail_9");
        assertThat(bench.keep(
                                pieces,
                                "limit",
                                "C15",
                                "values-rail_34",
                                "0.02",
                                "values-rail_12",
                                "0.14",
                                "words-rail_12",
                                "bent at the notch",
                                "unread-rail_5R",
                                "still in the cover")
                        .statusCode())
                .isEqualTo(200);
        assertThat(pieces("C15")).containsExactly("good", "to be decided", "to be decided");
        assertThat(row("C15").select(".state").text()).isEqualTo("✓ 1 good · ? 2 to be decided");
        assertThat(lines()).noneMatch(text -> text.contains("rail"));
        weighed();
        decided();
    }

    private static void weighed() {
        // beside the verdict stands what it costs to be wrong, as far as somebody knows it
        assertThat(bench.page(JOB + "/inspect?limit=C15")
                        .select("#C15 .weighing")
                        .text())
                .contains("What coming back costs is not known", "out of the vehicle");
        assertThat(bench.keep(JOB + "/stakes", "distance", "60000", "scatter", "30 or so", "vehicle", "240")
                        .body())
                .contains("is no such number");
        bench.keep("/setup", "fact-rate", "60 EUR");
        bench.keep(JOB + "/stakes", "distance", "60000", "scatter", "30", "vehicle", "240", "words", "one year");
        bench.keep(
                JOB + "/weigh",
                "limit",
                "C15",
                "piece",
                "rail_12",
                "numbers-chance.reuse",
                "60",
                "numbers-price.replace",
                "35",
                "numbers-days.replace",
                "0",
                "numbers-minutes.replace",
                "5",
                "numbers-chance.replace",
                "1");
        assertThat(bench.keep(JOB + "/weigh", "limit", "C15", "piece", "rail_12", "numbers-chance.reuse", "120")
                        .statusCode())
                .isEqualTo(422);
        String weighed = bench.page(JOB + "/inspect?limit=C15")
                .select("#C15 .weighing")
                .get(0)
                .text();
        assertThat(weighed).contains("Coming back costs", "replace costs least");
    }

    private static void decided() throws IOException {
        bench.keep(
                JOB + "/judge",
                "limit",
                "C15",
                "what",
                "rail straightness",
                "decision",
                "reuse",
                "reason",
                "the owner will have it",
                "pieces",
                "rail_12");
        bench.keep(
                JOB + "/judge",
                "limit",
                "C15",
                "what",
                "rail straightness",
                "decision",
                "replace",
                "reason",
                "not seen",
                "pieces",
                "rail_5R");
        assertThat(pieces("C15")).containsExactly("good", "reuse", "replace");
        assertThat(lines())
                .filteredOn(text -> text.contains("rail"))
                .singleElement()
                .asString()
                .contains("5/R");
        String paper = recordPaper();
        assertThat(paper)
                .contains("rail 1/2: rail straightness", "bent at the notch", "rail 5/R: rail straightness")
                .contains("although replace costs least by the numbers: the owner will have it");
        // what is taken back takes its line away
        String verdict = row("C15").select("form.judge").get(0).previousElementSiblings().stream()
                .filter(one -> one.hasClass("strike"))
                .findFirst()
                .orElseThrow()
                .select("input[name=struck]")
                .val();
        bench.keep(JOB + "/strike", "struck", verdict, "page", "inspect", "reason", "it was found after all");
        assertThat(pieces("C15")).containsExactly("good", "reuse", "to be decided");
        assertThat(lines()).noneMatch(text -> text.contains("5/R"));
    }

    @Test
    void aPartIsLookedAtAsTheTradeDoesAndItsMateIsAskedFor() throws IOException {
        String part = JOB + "/parts/slider_12";
        assertThat(bench.page(JOB + "/parts").select("h2").eachText()).contains("Forks", "Rails", "Hubs");
        assertThat(bench.page(part).text())
                .contains("It runs with hub 1/2", "pointed tooth ends", "common practice, no source");
        assertThat(bench.keep(JOB + "/parts", "piece", "slider_12").body()).contains("nothing said");
        assertThat(bench.keep(JOB + "/parts", "piece", "slider_12", "words-sleeve-ends", "chipped")
                        .body())
                .contains("Say whether it is as it should be");
        bench.keep(
                JOB + "/parts",
                "piece",
                "slider_12",
                "attest-sleeve-ends",
                "bad",
                "words-sleeve-ends",
                "chipping of the tooth end",
                "attest-sleeve-groove",
                "good",
                "unread-sleeve-slides",
                "hub not here");
        assertThat(bench.page(part).select(".piecerow .mark").eachText()).containsExactly("?", "○", "✓", "?");
        bench.keep(
                JOB + "/parts/judge",
                "piece",
                "slider_12",
                "what",
                "sliding sleeve 1/2",
                "decision",
                "replace",
                "reason",
                "chipped");
        assertThat(bench.page(JOB + "/inspect").select(".trap").text())
                .contains("hub 1/2 runs with sliding sleeve 1/2 with the reverse teeth, which is to be replaced");
        assertThat(lines()).anyMatch(text -> text.contains("sliding sleeve 1/2"));
        assertThat(bench.keep(JOB + "/handback", "warranty", "none", "advice", "", "remark", "")
                        .body())
                .contains("Say under Inspect what becomes of it as well");
        bench.keep(
                JOB + "/parts/judge",
                "piece",
                "hub_12",
                "what",
                "hub 1/2",
                "decision",
                "reuse",
                "reason",
                "new sleeve tried on it");
        assertThat(bench.page(JOB + "/inspect").select(".trap").text()).doesNotContain("runs with");
        assertThat(recordPaper()).contains("chipping of the tooth end", "new sleeve tried on it");
        assertThat(bench.page(JOB + "/parts/no-such").text()).contains("no such part");
    }

    /** The pair as measured, all but what must not get hot. */
    static String[] asked() {
        return new String[] {
            "item",
            "side_gears",
            "to",
            "the gear shop",
            "due",
            inDays(10),
            "in-teeth",
            "21",
            "in-module",
            "1 mm",
            "in-pressureAngle",
            "30°",
            "in-part",
            "shaft",
            "in-overPins",
            "23.400 mm",
            "in-shaftPin",
            "1.800 mm",
            "in-betweenPins",
            "18.240 mm",
            "in-hubPin",
            "1.800 mm",
            "in-clearance",
            "0.020 mm",
            "in-tolerance",
            "0.020 mm",
            "in-flanks",
            "soft",
            "more-length",
            "30 mm",
            "more-hubOutside",
            "40 mm",
            "more-shaftBore",
            "0 mm",
            "more-spare",
            "0.01 mm",
            "more-ceiling",
            "150 °C",
            "more-runOut",
            "0.03 mm",
            "more-cracks",
            "dye, before and after"
        };
    }

    private static String[] read(String sent, String pins, String mate) {
        return new String[] {
            "sent",
            sent,
            "values-pins",
            pins,
            "uncertainty-pins",
            "0.002 mm",
            "values-runout",
            "0.01",
            "uncertainty-runout",
            "0.002 mm",
            "attest-cracks",
            "yes",
            "attest-mate",
            mate
        };
    }

    @Test
    void aWeldedSplineComesTooTightGoesBackAndComesAgain() throws IOException {
        HttpResponse<String> refused = bench.keep(JOB + "/sendout", asked());
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("Say what must stay cool").contains("23.400 mm");
        // no day, a hub pin that is no number and nothing kept cool: said in one round
        assertThat(bench.keep(JOB + "/sendout", instead(instead(asked(), "due", ""), "in-hubPin", "thin"))
                        .body())
                .contains("Choose the day", "thin", "Say what must stay cool");
        HttpResponse<String> kept =
                bench.keep(JOB + "/sendout", with(asked(), "more-keepCool", "the seal land, under 120 °C"));
        assertThat(kept.statusCode())
                .as(Jsoup.parse(kept.body()).select(".faults").text())
                .isEqualTo(200);
        String sheet = awaited().select("a[href*=/sendout/]").attr("href");
        assertThat(bench.page(sheet).text())
                .contains("Measured mate", "Finished size", "the seal land, under 120 °C", "It goes home by hand");
        assertThat(bench.page(sheet).select(".figure svg")).hasSize(1);
        try (PDDocument paper = Loader.loadPDF(bench.bytes(sheet + "/sheet.pdf"))) {
            assertThat(new PDFTextStripper().getText(paper)).contains("It is accepted by", "over two pins");
        }
        String sent = awaited().select("input[name=sent]").get(0).val();
        assertThat(bench.keep(ORDERS + "/back", "sent", sent, "measured", "looks fine", "good", "yes")
                        .body())
                .contains("It is accepted by what its sheet asks for");
        double upper = upper(sheet);
        assertThat(bench.keep(ORDERS + "/work", "sent", sent, "values-pins", "" + upper)
                        .body())
                .contains("so its uncertainty is not known", "Look at it: dye, before and after");
        // in inches by mistake: asked about, and not sent back for it
        assertThat(bench.keep(ORDERS + "/work", read(sent, "" + upper / 25.4, "yes"))
                        .body())
                .contains("In inches it would fit", "Where a size is asked about");
        assertThat(bench.keep(ORDERS + "/work", read(sent, (upper + 0.030) + " " + (upper + 0.031), "no"))
                        .body())
                .contains("not as asked for");
        assertThat(awaited().text()).contains("Came and was not right", "is not within");
        bench.keep(ORDERS + "/return", "sent", sent, "reason", "0.03 too tight", "due", inDays(20));
        comesAgain(sent, upper);
    }

    /** So near the end that the doubt reaches beyond it: accepted by nobody but who says why. */
    private static void comesAgain(String before, double upper) throws IOException {
        String anew = awaited().select("input[name=sent]").get(0).val();
        assertThat(anew).isNotEqualTo(before);
        assertThat(bench.page(awaited().select("a[href*=/sendout/]").attr("href"))
                        .text())
                .contains("Finished size");
        String[] near = read(anew, (upper - 0.001) + " " + (upper - 0.010), "yes");
        assertThat(bench.keep(ORDERS + "/work", near).body()).contains("not as asked for");
        assertThat(bench.keep(ORDERS + "/work", with(near, "overruledBecause", "its mate goes on in every place"))
                        .body())
                .contains("it may go in");
        assertThat(recordPaper())
                .contains(
                        "spline built up and cut",
                        "Finished size",
                        "its mate goes on in every place",
                        "too near the end of");
    }

    private static double upper(String sheet) {
        String limits = bench.page(sheet).select(".accepts td").get(1).text();
        return Double.parseDouble(limits.replaceAll(".* to ", "").replace(" mm", ""));
    }
}
