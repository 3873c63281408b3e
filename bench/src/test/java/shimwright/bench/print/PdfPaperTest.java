package shimwright.bench.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.svg.Svg;

/** Drawings and letters on paper; how a whole record looks is asked where records are made. */
class PdfPaperTest {
    private static String page(String body) {
        return "<html><head><style>body { font-family: \"DejaVu Sans\" }</style></head><body>" + body
                + "</body></html>";
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void theTextsOfADrawingAreTexts() throws IOException {
        String drawing = new Svg()
                .root("t", 100, 50, "title", "not shown")
                .text(50, 20, "0.05 mm", Svg.Letter.middle(12).strong())
                .text(50, 40, "offset fitting", Svg.Letter.end(12))
                .done();
        String text = text(PdfPaper.pdf(page("<p>before the office</p>" + drawing + "<p>after</p>")));
        assertThat(text)
                .contains("before the office", "0.05 mm", "offset fitting", "after")
                .doesNotContain("not shown");
    }

    @Test
    void whatPaperDoesNotKnowIsNotLeftOutInSilence() {
        String head = "<svg viewBox=\"0 0 9 9\" font-family=\"DejaVu Sans\">";
        assertThatThrownBy(() -> PdfPaper.pdf(page(head + "<ellipse rx=\"2\" ry=\"3\"/></svg>")))
                .hasStackTraceContaining("paper cannot draw ellipse");
        assertThatThrownBy(() -> PdfPaper.pdf(page(head + "<path d=\"M1 1A2 2 0 0 1 3 3\" fill=\"#000000\"/></svg>")))
                .hasStackTraceContaining("paper cannot draw the path step A");
        assertThatThrownBy(() -> PdfPaper.pdf(page(head + "<g clip-path=\"url(#none)\"></g></svg>")))
                .hasStackTraceContaining("the drawing has no clip");
    }

    @Test
    void everyLetterIsEmbeddedAndTheMachinesFontsAreNotAskedFor() throws IOException {
        try (PDDocument document = Loader.loadPDF(PdfPaper.pdf(page("<p>μ ± <b>Ω</b></p>")))) {
            var fonts = document.getPage(0).getResources();
            assertThat(fonts.getFontNames()).isNotEmpty().allSatisfy(name -> {
                PDFont font = fonts.getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).contains("DejaVuSans");
            });
        }
        assertThat(FontMappers.instance()).isInstanceOf(NoSystemFonts.class);
    }

    /** ISO 32000-1:2008, 14.8.2.2.2: a background needs its box, layout does not. */
    @Test
    void framesAndGroundsAreDescribedOnceForAllPages() throws IOException {
        String rows = "<tr><td style=\"border: 1pt solid #000000; background: #eeeeee\">one</td></tr>".repeat(200);
        try (PDDocument document = Loader.loadPDF(PdfPaper.pdf(page("<table>" + rows + "</table>")))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            List<COSDictionary> layouts = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                COSDictionary named = page.getResources().getCOSObject().getCOSDictionary(COSName.PROPERTIES);
                assertThat(named.keySet())
                        .allSatisfy(
                                name -> assertThat(named.getCOSDictionary(name).getNameAsString(COSName.TYPE))
                                        .isIn("Layout", "Pagination"));
                layouts.add(named.getCOSDictionary(COSName.getPDFName("Layout")));
            }
            assertThat(layouts)
                    .doesNotContainNull()
                    .allSatisfy(one -> assertThat(one).isSameAs(layouts.get(0)));
        }
    }

    @Test
    void theSmallPageThatMakesReadyCanBeSet() {
        PdfPaper.makeReady();
    }

    /** What the drawings' own writer writes is read as it was. */
    @Property(tries = 100)
    void aPathIsReadAsItWasWritten(
            @ForAll @Size(min = 6, max = 6) double @DoubleRange(min = -500, max = 500) [] p,
            @ForAll @DoubleRange(min = 0, max = 90) double far) {
        Path2D.Double path = new Path2D.Double();
        path.moveTo(p[0], p[1]);
        path.lineTo(p[2], p[3]);
        path.quadTo(p[4], p[5], far, -far);
        path.curveTo(p[1], p[0], p[3], p[2], p[5], p[4]);
        path.closePath();
        assertSame(PathData.path(Svg.data(path)).getBounds2D(), path.getBounds2D());
    }

    @Test
    void stepsAlongAndDownAreReadFromWhereThePathStands() {
        assertSame(PathData.path("M10 20V25h16v-5H5").getBounds2D(), new Rectangle2D.Double(5, 20, 21, 5));
    }

    private static void assertSame(Rectangle2D read, Rectangle2D written) {
        assertThat(read.getMinX()).isCloseTo(written.getMinX(), within(0.006));
        assertThat(read.getMaxX()).isCloseTo(written.getMaxX(), within(0.006));
        assertThat(read.getMinY()).isCloseTo(written.getMinY(), within(0.006));
        assertThat(read.getMaxY()).isCloseTo(written.getMaxY(), within(0.006));
    }
}
