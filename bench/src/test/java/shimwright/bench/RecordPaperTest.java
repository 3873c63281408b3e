package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The record as paper: its first page for the owner, the evidence behind it, and what a reader of files finds in it. */
class RecordPaperTest {
    private static final String JOB = "/job/job-v-0091";
    private static DemoBench bench;
    private static byte[] bytes;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
        bytes = bench.bytes(JOB + "/record.pdf");
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static String text(PDDocument paper, int first, int last) throws Exception {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(first);
        stripper.setEndPage(last);
        return stripper.getText(paper).replaceAll("\\s+", " ");
    }

    private static List<String> titles(PDDocument paper) {
        List<String> titles = new ArrayList<>();
        for (PDOutlineItem item :
                paper.getDocumentCatalog().getDocumentOutline().children()) {
            titles.add(item.getTitle());
            item.children().forEach(child -> titles.add(child.getTitle()));
        }
        return titles;
    }

    @Test
    void theFirstPageSaysAllToTheOwnerAndTheEvidenceFollows() throws Exception {
        try (PDDocument paper = Loader.loadPDF(bytes)) {
            assertThat(text(paper, 1, 1))
                    .contains("What was wrong", "What was done", "What was set and proved", "What to watch")
                    .contains("the growl came from here", "51.970 mm", "12 months or 40 000 km", "Taken over by")
                    .doesNotContain("Appendix");
            String evidence = text(paper, 2, paper.getNumberOfPages());
            assertThat(evidence)
                    .contains("Parts fitted and their numbers", "head bearing cup (74-6001)", "as wrench setting")
                    .contains("under the head bearing cup: 1.171 mm (w80-02)")
                    .doesNotContain("sP=", "sP: ", "w80-02 (");
            assertThat(paper.getNumberOfPages()).isLessThan(14);
        }
    }

    /** Every entry is on the paper once with its number: in the log, with its hold point or under proof. */
    @Test
    void noEntryIsLeftOut() throws Exception {
        try (PDDocument paper = Loader.loadPDF(bytes)) {
            String evidence = text(paper, 2, paper.getNumberOfPages());
            for (int number = 1; number <= 286; number++) {
                assertThat(evidence).containsPattern("(^|[ ·])" + number + " ");
            }
        }
    }

    /** ISO 19005-2, 6.2.3 and 6.6.4, and ISO 14289-1, 7.1 and 7.2: what says that a file is one for the archive, tagged, in English. */
    @Test
    void itIsTaggedForTheArchiveWithBookmarks() throws Exception {
        try (PDDocument paper = Loader.loadPDF(bytes)) {
            var catalog = paper.getDocumentCatalog();
            assertThat(catalog.getMarkInfo().isMarked()).isTrue();
            assertThat(catalog.getStructureTreeRoot().getKids()).isNotEmpty();
            assertThat(catalog.getLanguage()).startsWith("en");
            assertThat(catalog.getOutputIntents()).hasSize(1);
            String xmp = new String(catalog.getMetadata().toByteArray(), StandardCharsets.UTF_8);
            assertThat(xmp)
                    .containsPattern("pdfaid:part[^0-9]*2")
                    .containsPattern("pdfaid:conformance[^A-Z]*A")
                    .containsPattern("pdfuaid:part[^0-9]*1");
            assertThat(titles(paper)).contains("For the owner", "Evidence", "Proof", "C: everything that was kept");
        }
        assertThat(new String(bytes, StandardCharsets.ISO_8859_1)).endsWith("%%EOF\n");
    }

    @Test
    void aCameraReadsTheHeadOffTheFirstPage() throws Exception {
        try (PDDocument paper = Loader.loadPDF(bytes)) {
            BufferedImage page = new PDFRenderer(paper).renderImageWithDPI(0, 300);
            int half = page.getHeight() / 2;
            int[] pixels = page.getRGB(0, half, page.getWidth(), half, null, 0, page.getWidth());
            RGBLuminanceSource light = new RGBLuminanceSource(page.getWidth(), half, pixels);
            String read = new QRCodeReader()
                    .decode(
                            new BinaryBitmap(new HybridBinarizer(light)),
                            Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE))
                    .getText();
            assertThat(read).contains("count=286", "hash=");
        }
    }

    @Test
    void aJobBarelyBegunHasASensibleFirstPage() throws Exception {
        NewJob.open(bench, "B-1");
        String job = "/job/job-b-1";
        Document page = bench.page(job + "/record");
        assertThat(page.select(".front").text())
                .contains("nothing was done yet", "Nothing was looked at yet.", "Nothing yet.", "Not handed back yet");
        try (PDDocument paper = Loader.loadPDF(bench.bytes(job + "/record.pdf"))) {
            assertThat(text(paper, 1, 1)).contains("Record of rebuild", "nothing was done yet");
        }
    }
}
