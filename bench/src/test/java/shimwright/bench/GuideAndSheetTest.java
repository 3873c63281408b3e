package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A guide made from a job teaches the unit and says nothing of its owner; a bench sheet is printed and typed back. */
class GuideAndSheetTest {
    private static final String JOB = "/job/job-v-0093";
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        note("Mr Winterbourne of Salt Quay brought it, van 7");
        note("the plate AB12 CDE stood on the tag");
        note("as with V-0091 the cup stood off");
        note("he says it grumbles in left bends");
        note("ask Brimble before the press is used");
        note("chamfer the sharp lip before the cup goes in");
        NewJob.open(bench, "W-77", "owner", "Winterbourne, Salt Quay");
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static void note(String text) {
        bench.keep(JOB + "/note", "about", "job", "text", text);
    }

    private static String guide() {
        return bench.page(JOB + "/guide").select("article.guide").text();
    }

    private static String printed(String path) throws Exception {
        try (PDDocument paper = Loader.loadPDF(bench.bytes(path))) {
            return new PDFTextStripper().getText(paper).replaceAll("\\s+", " ");
        }
    }

    @Test
    void itTeachesTheUnit() {
        assertThat(guide())
                .contains("How to rebuild", "Lay out", "Trap", "One way", "Read", "Set")
                .contains("chamfer the sharp lip before the cup goes in");
    }

    /** Whoever chooses to leave nothing out still sends nothing of an owner. */
    @Test
    void nothingOfAnOwnerIsInItWhateverIsTicked() throws Exception {
        String page = bench.post(JOB + "/guide", "nothing", "ticked").body();
        String all = Jsoup.parse(page).select("article.guide").text();
        for (String text : List.of(guide(), all, printed(JOB + "/guide.pdf"), printed("/job/job-v-0091/guide.pdf"))) {
            String low = text.toLowerCase(Locale.ROOT);
            assertThat(low)
                    .doesNotContain("winterbourne", "salt quay", "v-0091", "v-0093", "ab12 cde", "w-77")
                    .doesNotContain("island mail", "van 3", "142 000", "van 7", "187 000");
            assertThat(text).doesNotContain("grumbles in left");
        }
        assertThat(all).contains("ask Brimble");
    }

    @Test
    void aNoteThatMayHoldANameIsLeftOutUntilSomebodyTakesItIn() {
        assertThat(guide()).doesNotContain("Brimble");
        assertThat(bench.page(JOB + "/guide").select("form").text())
                .contains("it may hold a name", "Stays here", "may be a plate");
    }

    @Test
    void whatIsTickedIsLeftOut() {
        Element chamfer = bench.page(JOB + "/guide").select("label.choice").stream()
                .filter(label -> label.text().contains("chamfer the sharp lip"))
                .findFirst()
                .orElseThrow();
        String name = chamfer.select("input").attr("name");
        String page = bench.post(JOB + "/guide", name, "yes").body();
        assertThat(Jsoup.parse(page).select("article.guide").text()).doesNotContain("chamfer the sharp");
    }

    @Test
    void theSheetHasLinesAndItsPageTakesThemBack() throws Exception {
        assertThat(printed(JOB + "/benchsheet.pdf"))
                .contains("Bench sheet V-0093", "E02", "input shaft end play", "Pieces in", "if another:");
        Element first = bench.page(JOB + "/benchsheet").select("section.hold").get(0);
        assertThat(first.id()).isEqualTo("s-E02");
        assertThat(first.select("a.button").attr("href")).isEqualTo(JOB + "/clearance/c");
        assertThat(bench.page(JOB + "/benchsheet").select("form[action$=benchsheet/check]"))
                .isNotEmpty();
        assertThat(bench.keep(JOB + "/benchsheet/done", "step", "E02").statusCode())
                .isEqualTo(422);
    }
}
