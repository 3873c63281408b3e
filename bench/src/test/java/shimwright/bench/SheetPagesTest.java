package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Answer;
import shimwright.mechanics.worksheet.Worksheet;

/** Every worksheet as a form: filled, answered, refused, printed, and brought back by its address. */
class SheetPagesTest {
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    /** The worked example of a sheet as the part of an address behind the question mark. */
    static String example(String sheet) {
        return query(Registry.find(sheet).orElseThrow().example());
    }

    private static String query(Map<String, String> given) {
        return given.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + URLEncoder.encode(entry.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** From the step by one tap to its sheet, which asks the one fact that nobody knows; kept, seen at the step and in the record, struck. */
    @Test
    void aSheetIsOpenedFromItsStepKeptAndStruck() {
        String step = "/job/job-v-0093/build?step=T01";
        Element open = bench.page(step)
                .select("a[href*=sheet/interference?about=joint+head-cone]")
                .get(0);
        Document asks = bench.page(open.attr("href"));
        assertThat(asks.select(".slot.wrong textarea"))
                .singleElement()
                .satisfies(field -> assertThat(field.attr("name")).isEqualTo("diameter"));
        assertThat(asks.select(".known").text()).contains("From H02/PH_bore, read by", "From unit file");
        Element form = asks.select("form[data-on]").get(0);
        Map<String, String> typed = new java.util.LinkedHashMap<>();
        form.select("input[type=hidden], input[value], textarea, input[checked], option[selected]").stream()
                .filter(field -> !field.attr("type").equals("radio") || field.hasAttr("checked"))
                .forEach(field -> typed.put(
                        field.is("option")
                                ? Objects.requireNonNull(field.closest("select"))
                                        .attr("name")
                                : field.attr("name"),
                        field.is("textarea") ? field.text() : field.attr("value")));
        typed.values().removeIf(String::isBlank);
        typed.put("diameter", "40.008, 40.010");
        Document answered = bench.page(form.attr("action") + "?" + query(typed));
        assertThat(answered.select("#answer").text()).contains("stop and look at");
        Element keep = answered.select("form[action$=/sheet]").get(0);
        String[] fields = keep.select("input").stream()
                .flatMap(field -> java.util.stream.Stream.of(field.attr("name"), field.attr("value")))
                .toArray(String[]::new);
        HttpResponse<String> back = bench.post(keep.attr("action"), fields);
        assertThat(back.uri().toString()).contains("/build?step=T01");
        Document kept = Jsoup.parse(back.body());
        assertThat(kept.select("a[href*=sheet/interference?about=joint+head-cone]")
                        .text())
                .contains("✓");
        assertThat(kept.select(".joint").text())
                .contains("an interference fit", "in the air until it grabs", "stop and look");
        assertThat(bench.page("/job/job-v-0093/record").select(".appendix").text())
                .contains("what was worked out", "head cone on the pinion: interference")
                .contains("shaft diameter, all readings or the two limits 40.008, 40.010 mm typed");
        Document list = bench.page("/job/job-v-0093/sheets");
        Element strike = list.select(".sheetlines form[action$=/strike]").get(0);
        bench.post(
                strike.attr("action"),
                "entry",
                strike.select("[name=entry]").attr("value"),
                "struck",
                strike.select("[name=struck]").attr("value"),
                "page",
                "sheets",
                "reason",
                "read with the wrong micrometer");
        assertThat(bench.page(step)
                        .select("a[href*=sheet/interference?about=joint+head-cone]")
                        .text())
                .doesNotContain("✓");
    }

    @Test
    void everySheetHasAFormThatAnswersItsExample() {
        Document list = bench.page("/sheets");
        for (Worksheet<?, ?> sheet : Registry.all()) {
            String here = "/sheets/" + sheet.name();
            assertThat(list.select("a[href=" + here + "]").text()).contains(sheet.title(), sheet.doc());
            HttpResponse<String> empty = bench.get(here);
            assertThat(empty.statusCode()).as(here).isEqualTo(200);
            Document form = Jsoup.parse(empty.body());
            assertThat(form.select(".fault, .faults")).isEmpty();
            assertThat(form.select("input:not([type=hidden]), select, textarea"))
                    .as(here)
                    .isNotEmpty()
                    .allMatch(field -> labelled(form, field));
            assertThat(form.select("input[data-pad]"))
                    .allMatch(field -> field.attr("inputmode").equals("decimal"));
            Element fill = form.select("a:contains(Fill with the example)").get(0);
            HttpResponse<String> answered = bench.settled(fill.attr("href"));
            assertThat(answered.statusCode()).as(here).isEqualTo(200);
            Document page = Jsoup.parse(answered.body());
            Answer answer = sheet.answer(sheet.example(), UnitSystem.METRIC).orElseThrow();
            answer.shown().stream()
                    .filter(shown -> !shown.text().isEmpty())
                    .forEach(shown -> assertThat(page.select(".results").text()).contains(shown.text()));
            assertThat(page.select("table.working tr")).hasSize(answer.working().size());
            assertThat(page.select(".caution")).hasSize(answer.cautions().size());
            assertThat(page.text()).doesNotContain("NaN").doesNotContain("Infinity");
            sheet.example()
                    .forEach((key, value) ->
                            assertThat(typed(page, key)).as(here + " " + key).isTrue());
        }
    }

    private static boolean labelled(Document page, Element field) {
        return field.closest("label") != null
                || !page.select("label[for=" + field.id() + "]").isEmpty();
    }

    private static boolean typed(Document page, String key) {
        return page.select("[name=" + key + "], [name^=" + key + ".]").stream()
                .anyMatch(field -> !field.val().isBlank() || field.hasAttr("checked") || field.is("select"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "end float | end-play",
                "endfloat | end-play",
                "end play | end-play",
                "layshaft | mesh-forces",
                "countershaft | mesh-forces",
                "spanner | torque-tool",
                "wrench | torque-tool",
                "baulk ring | ring-reserve",
                "tyre | road-speed",
                "crown wheel | crown-shift",
                "stripped thread | thread-strip",
                "press fit | interference",
                "aluminium | housing-grip",
                "how much oil | oil-fill",
            })
    void aSheetIsFoundByTheWordsOfTheTradeOnBothShores(String asked, String sheet) {
        Document found = bench.page("/sheets?q=" + URLEncoder.encode(asked, StandardCharsets.UTF_8));
        assertThat(found.select("a.sheetlink").eachAttr("href")).as(asked).contains("/sheets/" + sheet);
        assertThat(found.select("a.sheetlink").size()).isLessThan(Registry.all().size());
    }

    @Test
    void nothingFoundIsSaid() {
        assertThat(bench.page("/sheets?q=flux+capacitor").text()).contains("Nothing by that name");
        assertThat(bench.get("/sheets/flux").statusCode()).isEqualTo(404);
    }

    @Test
    void refusalsStandAtTheirFieldsAndWhatWasTypedStays() {
        HttpResponse<String> answer = bench.get("/sheets/growth?caseRise=60+N&shaftRise=%3Cb%3E&legs=case:+200");
        assertThat(answer.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(answer.body());
        assertThat(fault(page, "caseRise")).contains("is a force; a temperature difference is needed here");
        assertThat(fault(page, "shaftRise")).contains("is not a number");
        assertThat(fault(page, "legs")).contains("not given");
        assertThat(page.select("[name=caseRise]").val()).isEqualTo("60 N");
        assertThat(page.select("[name=shaftRise]").val()).isEqualTo("<b>");
        assertThat(page.select("[name=legs]").val()).isEqualTo("case: 200");
        assertThat(page.select(".results")).isEmpty();
        Document unknown = bench.page("/sheets/growth?caseRize=1");
        assertThat(unknown.select(".faults li").text()).contains("Did you mean caseRise?");
    }

    private static String fault(Document page, String key) {
        return page.select(".slot.wrong:has([name=" + key + "]) .fault").text();
    }

    @Test
    void anAddressMeansTheSameUnderOtherUnits() {
        String here = "/sheets/crown-shift?backlash=0.25%C2%B10.01&slope=0.8&wanted=0.15";
        bench.post("/me", "units", "metric", "back", "/");
        String metric = bench.page(here + "&units=metric").select(".results").text();
        bench.post("/me", "units", "inch", "back", "/");
        Document inch = bench.page(here + "&units=metric");
        bench.post("/me", "units", "metric", "back", "/");
        assertThat(metric).contains("0.125 ± 0.013 mm");
        assertThat(inch.select("[name=backlash]").val()).isEqualTo("0.25±0.01 mm");
        assertThat(inch.select("input[name=units]").val()).isEqualTo("inch");
        assertThat(inch.select(".results").text()).contains("0.00492 ± 0.00050 in");
    }

    @Test
    void uncertaintyIsShownWithItsBudgetAsABarPicture() {
        Document page = bench.page("/sheets/crown-shift?backlash=0.25+%2B-+0.01&slope=0.8+%2B-+0.1&wanted=0.15");
        assertThat(page.select(".figure svg")).isNotEmpty();
        assertThat(page.select(".figure svg desc").text()).contains("backlash", "slope", "%");
    }

    @ParameterizedTest
    @CsvSource({
        "conformity, The value against its limits, within the limits",
        "shim-pack, What each pack would leave, d52-03",
        "limits-and-fits, Where the sizes may lie, shaft p6: 0.022 to 0.035 mm",
        "interference, Press force over the travel, stop and look: 51232 N",
        "heat-to-fit, How far the bore opens, ceiling: 121.0",
        "time-to-grab, Temperature in the air, it grabs: 771 s",
        "ratios, Ratio by gear, 1st: 0.0000 to 2.5588",
        "ratios, Shifting up, same engine speed",
        "road-speed, Road speed in this gear, 110.4 km/h",
        "over-pins, The pin between two flanks, touches here",
        "between-pins, The pin between two flanks, touches here",
        "bolt-order, Tighten in the order of the figures, ; 8.",
        "spring, Load over length, solid: 35.000 mm",
        "end-play, Where the uncertainty comes from, step",
        "end-play, Travel by round, end play",
        "readings, Rounds in the order taken, value",
        "mesh-forces, Radial load by gear: countershaft bearing A, 1st",
        "individuals-chart, One value a job, upper limit",
        "ewma-chart, Weighted mean, target",
        "cusum-chart, Cumulative sums, limit",
        "weibull, Share failed by life, share asked for",
        "drawer-stock, What the drawer should hold, mean wanted",
        "tolerance-loop, Who brings the spread, bearing",
        "gauge-study, What makes the readings differ, gauge in all",
        "tightening, Preload from this torque, proof load",
        "synchro-capacity, The ring blocks, cone torque",
    })
    void aSheetIsLookedAtOnScreenAndOnPaper(String sheet, String title, String about) {
        Document page = bench.page("/sheets/" + sheet + "?units=metric&" + example(sheet));
        assertThat(page.select(".figure svg").stream()
                        .filter(svg -> svg.select("title").text().startsWith(title))
                        .map(svg -> svg.select("desc").text()))
                .hasSize(1)
                .allMatch(text -> text.contains(about));
        assertThat(page.select(".figure").html()).doesNotContain("NaN", "Infinity");
    }

    /** The form draws where asked, keeps what was typed, and draws by itself where the simple rule fails. */
    @Test
    void aFormDrawsWhereAskedAndWhereTheSimpleRuleFails() {
        String doubted =
                "/sheets/wrench-extension?units=metric&torque=60+%C2%B1+1+N%C2%B7m&length=400+mm&extension=80+mm";
        assertThat(bench.page(doubted).text()).doesNotContain("Monte Carlo, ");
        Document drawn = bench.page(doubted + "&monte-carlo=20000&monte-carlo-seed=9");
        assertThat(drawn.select("#answer").text()).contains("Monte Carlo, 20000 draws, seed 9", "95 % between");
        assertThat(drawn.select("#draw-seed").val()).isEqualTo("9");
        assertThat(drawn.select("a:contains(Print)").attr("href")).contains("monte-carlo=20000", "monte-carlo-seed=9");
        // a cone angle in wide uncertainty bends the torque of the cone
        Document bent = bench.page("/sheets/cone-force?units=metric&"
                + example("cone-force").replaceFirst("(?i)halfAngle=[^&]*", "halfAngle=9+%C2%B1+6+%C2%B0+rectangular"));
        assertThat(bent.select("#answer").text()).contains("Monte Carlo, 20000 draws, seed 1", "clause 8");
        HttpResponse<String> few = bench.get(doubted + "&monte-carlo=10");
        assertThat(few.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(few.body()).select(".faults").text()).contains("10 draws asked for");
        assertThat(bench.page(doubted + "&monte-carlo=3000000").text()).contains("keep you waiting");
    }

    @Test
    void paperShowsWhatTheScreenShows() throws IOException {
        for (String name : List.of("growth", "mesh-forces", "interference", "bolt-order", "over-pins")) {
            Worksheet<?, ?> sheet = Registry.find(name).orElseThrow();
            byte[] pdf = bench.bytes("/sheets/" + name + ".pdf?units=metric&" + example(name));
            try (PDDocument document = Loader.loadPDF(pdf)) {
                String text = new PDFTextStripper().getText(document);
                assertThat(text).contains(sheet.title(), "Given", "Found", "Sources");
                assertThat(text).doesNotContain("NaN");
                boolean drawn = !sheet.answer(sheet.example(), UnitSystem.METRIC)
                        .orElseThrow()
                        .diagrams()
                        .isEmpty();
                assertThat(washed(document) > 50).as(name).isEqualTo(drawn);
            }
        }
        assertThat(bench.get("/sheets/growth.pdf?caseRise=x").statusCode()).isEqualTo(422);
    }

    /** How much of a paper has the blue wash that only pictures have, in pixels of 50 to the inch. */
    private static int washed(PDDocument document) throws IOException {
        int found = 0;
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            BufferedImage paper = new PDFRenderer(document).renderImageWithDPI(page, 50);
            for (int x = 0; x < paper.getWidth(); x++) {
                for (int y = 0; y < paper.getHeight(); y++) {
                    found += (paper.getRGB(x, y) & 0xffffff) == 0xd9e4f1 ? 1 : 0;
                }
            }
        }
        return found;
    }
}
