package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.bench.web.words.Words;

/** Pages in other words: what is sent, linked and drawn is the same, and what somebody typed stays as it was typed. */
class GermanPagesTest {
    private static final Set<String> READ = Set.of("placeholder", "aria-label", "title", "alt", "lang");

    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static Document page(String words, String path) {
        bench.post("/held", "speech", words);
        return bench.page(path);
    }

    /** Every mark with what is not read of it; ids that each page makes anew are left out. */
    private static List<String> bones(Document page) {
        List<String> bones = new ArrayList<>();
        for (Element element : page.select("body, body *")) {
            StringBuilder bone = new StringBuilder(element.tagName());
            for (Attribute attribute : element.attributes()) {
                boolean words = attribute.getKey().equals("checked")
                        && element.attr("name").equals("speech");
                if (!READ.contains(attribute.getKey()) && !element.attr("name").equals("entry") && !words) {
                    bone.append(' ').append(attribute);
                }
            }
            bones.add(bone.toString());
        }
        return bones;
    }

    /** Routes whose answer is no page: papers and tables, files, pictures, and what scripts and other programs ask for. */
    private static final Pattern NO_PAGE = Pattern.compile(
            ".*\\.[a-z0-9]+|/api/.*|.*/picture/.*|/mark|.*/card|/units/(?:shelf|shipped|part)/.*|.*/part/.*|/job/\\{job}"
                    + "|.*/learn/steps|.*\\*.*");

    /** Pages that stand only once somebody sent work out, found shims or changed a file; their templates are whole (GermanTest). */
    private static final Set<String> LATER = Set.of(
            "/job/{job}/sendout/{number}", "/job/{job}/strip/clearance", "/units/type/{type}/history/{hash}", "/pair");

    /** One page of each kind in each run, all with {@code -Dshimwright.figures=true}. */
    private static List<String> pages() {
        return Boolean.getBoolean("shimwright.figures")
                ? Stream.of(SOME, EveryPage.ofTheDemo(), BESIDE)
                        .flatMap(List::stream)
                        .distinct()
                        .filter(path -> !path.matches(".*/part/.*|.*/learn/steps"))
                        .toList()
                : SOME;
    }

    /** Pages of which the tests of screens show none. */
    private static final List<String> BESIDE = List.of(
            "/tag/job-v-0093/item-fork_5",
            "/units/bundle",
            "/job/job-v-0093/strip/order",
            "/job/job-v-0093/strip/questions",
            "/job/job-v-0093/parts/gear_5");

    private static final List<String> SOME = List.of(
            "/",
            "/setup",
            "/new/ambleholt-l5-74",
            "/drawer",
            "/parts?stamp=M8",
            "/sheets/tightening",
            "/units/type/ambleholt-l5-74",
            "/units/type/ambleholt-l5-74/steps/entry?id=K02",
            "/job/job-v-0093/build?step=K02",
            "/job/job-v-0093/clearance/c",
            "/job/job-v-0093/complaint",
            "/job/job-v-0093/money",
            "/job/job-v-0093/orders",
            "/job/job-v-0093/plan",
            "/job/job-v-0093/strip",
            "/job/job-v-0093/record");

    @ParameterizedTest
    @MethodSource("pages")
    void aPageInGermanIsTheSamePage(String path) {
        Document german = page("de", path);
        Document english = page("en", path);
        assertThat(german.select("html").attr("lang")).isEqualTo("de");
        assertThat(english.select("html").attr("lang")).isEqualTo("en");
        assertThat(german.select("span[lang=en]").eachText())
                .as("left in English")
                .isEmpty();
        assertThat(bones(german)).isEqualTo(bones(english));
        assertThat(german.body().text()).isNotEqualTo(english.body().text());
    }

    @Test
    void everyPageRouteIsAmongThem() {
        List<String> listed = Stream.of(SOME, EveryPage.ofTheDemo(), BESIDE)
                .flatMap(List::stream)
                .map(path -> path.replaceFirst("\\?.*", ""))
                .toList();
        List<String> alone = bench.running().server().unsafe.internalRouter.allHttpHandlers().stream()
                .filter(route -> route.endpoint.method.name().equals("GET"))
                .map(route -> route.endpoint.path)
                .filter(route -> !LATER.contains(route))
                .filter(route -> !NO_PAGE.matcher(route).matches())
                .filter(route ->
                        listed.stream().noneMatch(path -> path.matches(route.replaceAll("\\{[a-z]+}", "[^/]+"))))
                .distinct()
                .toList();
        assertThat(alone).isEmpty();
    }

    /** What may be typed is said in German below each field of a worksheet; an example and a choice by name are what is typed. */
    @ParameterizedTest
    @ValueSource(strings = {"/sheets/tightening", "/sheets/end-play", "/sheets/mesh-forces", "/sheets/interference"})
    void whatAFieldOfAWorksheetTakesIsSaidInGerman(String path) {
        assertThat(page("de", path).select("small[id$=-hint]").eachText())
                .isNotEmpty()
                .noneMatch(hint ->
                        hint.matches(".*\\b(?:a number|to|such as|at least|at most|one a line|one round)\\b.*"));
    }

    /** What a worksheet warns of, what stands in its working and where that is from. */
    @ParameterizedTest
    @ValueSource(strings = {"end-play", "synchro-capacity", "thread-wires", "key"})
    void whatAWorksheetAnswersIsSaidInGerman(String sheet) {
        assertThat(page("de", "/sheets/" + sheet + "?" + SheetPagesTest.example(sheet))
                        .select("p.caution, table.working td")
                        .eachText())
                .hasSizeGreaterThan(5)
                .noneMatch(said -> said.matches(".*\\b(?:the|of|and|from|with)\\b.*"));
    }

    /** Why a step stands where it stands is said reason by reason; the names of steps are the unit's. */
    @Test
    void whyAStepStandsWhereItDoesIsSaidInGerman() {
        assertThat(page("de", "/job/job-v-0093/plan").select("details.why p").eachText())
                .isNotEmpty()
                .noneMatch(why -> why.contains("waiting for it") || why.contains("must be there first"))
                .noneMatch(why -> why.contains(".;") || why.contains(".."))
                .anyMatch(why -> why.contains("darauf wartet: "));
    }

    /** What a record shows is evidence: it reads alike on every screen, and the page around it says that it is English. */
    @Test
    void theEvidenceOfARecordReadsAlikeOnEveryScreen() {
        Document german = page("de", "/job/job-v-0091/record");
        assertThat(german.select("article.record").attr("lang")).isEqualTo("en");
        assertThat(german.select("article.record").text())
                .isEqualTo(page("en", "/job/job-v-0091/record")
                        .select("article.record")
                        .text());
        assertThat(german.select("main h2").eachText()).contains("Nach der Rückgabe");
    }

    @Test
    void whatIsRefusedIsSaidInGerman() {
        bench.post("/held", "speech", "de");
        Document refused = Jsoup.parse(bench.post(
                        "/job/job-v-0093/clearance/c/round",
                        "entry",
                        "german-round-1",
                        "phase",
                        "trial",
                        "v1",
                        "abc",
                        "v2",
                        "24")
                .body());
        assertThat(refused.select(".faults li").eachText())
                .contains(
                        "Messuhr 1: \"abc\" ist keine Zahl. Geben Sie eine Länge ein, etwa 0.24 mm.",
                        "Messuhr 2: \"24\" liegt über 10 mm. Das ist der größte Wert, der hier genommen wird.");
    }

    @Test
    void whatSomebodyTypedStaysAsItWasTyped() {
        bench.post("/held", "speech", "de");
        bench.post("/job/job-v-0093/note", "entry", "german-note-001", "step", "E02", "text", "Done");
        bench.post(
                "/job/job-v-0093/note",
                "entry",
                "german-note-002",
                "step",
                "E02",
                "text",
                "grey colour <b>of</b> the tyre");
        assertThat(page("de", "/job/job-v-0093/build?step=E02").select(".found").eachText())
                .anyMatch(note -> note.startsWith("Done "))
                .anyMatch(note -> note.startsWith("grey colour <b>of</b> the tyre "));
        assertThat(page("en-US", "/job/job-v-0093/build?step=E02")
                        .select(".found")
                        .eachText())
                .anyMatch(note -> note.startsWith("grey colour <b>of</b> the tyre "));
    }

    @Test
    void aShopChoosesTheWordsAndEachScreenMayHaveItsOwn() {
        assertThat(page("", "/setup").select("h2").eachText()).contains("Millimetres or inches");
        assertThat(page("en-US", "/setup").select("h2").eachText()).contains("Millimeters or inches");
        bench.post("/held", "speech", "");
        bench.post("/setup", "entry", "words-of-shop-1", "fact-words", "en-US");
        assertThat(page("", "/setup").select("h2").eachText()).contains("Millimeters or inches");
        assertThat(page("de", "/setup").select("h2").eachText()).contains("Millimeter oder Zoll");
        assertThat(Jsoup.parse(bench.post("/setup", "entry", "words-of-shop-2", "fact-words", "xx")
                                .body())
                        .select(".faults li")
                        .eachText())
                .contains("Wörter des Fachs: \"xx\" ist keine Sprache, die es hier gibt."
                        + " Wählen Sie eine von en, en-GB, en-US und de.");
        bench.post("/setup", "entry", "words-of-shop-3", "fact-words", "en");
        assertThat(page("", "/setup").select("h2").eachText()).contains("Millimetres or inches");
    }

    /** The choices are written down where a fact is decided and where pages are said: both know the same. */
    @Test
    void aShopMayChooseAllThatIsOffered() {
        for (String code : List.of("en-GB", "en-US", "de", "en")) {
            assertThat(Words.codes()).hasSize(4).contains(code);
            bench.post("/setup", "entry", "words-offered-" + code, "fact-words", code);
            assertThat(page("", "/setup")
                            .select("select[name=fact-words] option[selected]")
                            .eachAttr("value"))
                    .containsExactly(code);
        }
    }
}
