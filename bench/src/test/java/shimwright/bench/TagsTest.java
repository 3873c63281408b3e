package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Labels on a sheet and on a roll, read back from the printed picture, and the page that each code opens. */
class TagsTest {
    private static final String TAGS = "/job/job-v-0093/tags";
    private static final int DPI = 200;
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    private static List<String> keys() {
        return bench.page(TAGS).select("input[name=tag][checked]").eachAttr("value");
    }

    private static String query(List<String> keys) {
        return keys.stream().map(key -> "&tag=" + key).collect(Collectors.joining());
    }

    private static List<String> codes(BufferedImage page) throws Exception {
        int[] pixels = page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
        RGBLuminanceSource light = new RGBLuminanceSource(page.getWidth(), page.getHeight(), pixels);
        Result[] read = new QRCodeMultiReader()
                .decodeMultiple(
                        new BinaryBitmap(new HybridBinarizer(light)), Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE));
        return Arrays.stream(read).map(Result::getText).toList();
    }

    private static BufferedImage picture(PDDocument paper, int page, String name) throws IOException {
        BufferedImage image = new PDFRenderer(paper).renderImageWithDPI(page, DPI);
        Path folder = Files.createDirectories(Path.of("target", "pictures"));
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
        return image;
    }

    @Test
    void aSheetIsReadBackAndEachCodeOpensItsPage() throws Exception {
        List<String> keys = keys().subList(0, 5);
        try (PDDocument paper = Loader.loadPDF(bench.bytes(TAGS + ".pdf?paper=sheet&used=2" + query(keys)))) {
            assertThat(paper.getNumberOfPages()).isEqualTo(1);
            String text = new PDFTextStripper().getText(paper);
            assertThat(text.replaceAll("\\s+", " ")).contains("fluid", "V-0093 · came off as no. 1");
            List<String> codes = codes(picture(paper, 0, "tags-sheet"));
            assertThat(codes).hasSameSizeAs(keys).allMatch(code -> code.startsWith(bench.url("/tag/job-v-0093/off-")));
            for (String code : codes) {
                String path = URI.create(code).getPath();
                assertThat(bench.get(path).statusCode()).as(code).isEqualTo(200);
                assertThat(bench.page("/tag?code=" + code).select("h1").text())
                        .isEqualTo(bench.page(path).select("h1").text());
            }
        }
    }

    @Test
    void aRollHasOneLabelAPageAndAnItemLeadsToItsStepAndItsLimits() throws Exception {
        try (PDDocument paper =
                Loader.loadPDF(bench.bytes(TAGS + ".pdf?paper=roll&tag=item-fork_5&tag=item-input_seal"))) {
            assertThat(paper.getNumberOfPages()).isEqualTo(2);
            assertThat(codes(picture(paper, 0, "tags-roll"))).containsExactly(bench.url("/tag/job-v-0093/item-fork_5"));
        }
        assertThat(bench.page("/tag/job-v-0093/item-fork_5").text())
                .contains("fork 5", "74-5055", "fork pad thickness", "Goes in with", "under 6.55");
    }

    @Test
    void whatCannotBePrintedOrOpenedSaysWhy() {
        assertThat(bench.get(TAGS + ".pdf?paper=sheet&used=99&tag=item-fork_5").body())
                .contains("is no number of labels");
        assertThat(bench.get(TAGS + ".pdf?paper=sheet").body()).contains("Choose what gets a label");
        assertThat(bench.get("/tag/job-v-0093/item-none").statusCode()).isEqualTo(404);
        assertThat(bench.page("/tag?code=4006381333931").text()).contains("This is no label of this shop");
    }
}
