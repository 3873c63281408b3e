package shimwright.bench.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import shimwright.bench.text.Characters;

/** Turns a well-formed XHTML page with inline SVG into a PDF with its fonts embedded. */
public final class PdfPaper {
    /** How often the small page is set: after the third the first record costs little more than the next. */
    private static final int READY = 3;

    static {
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new NoSystemFonts());
    }

    private PdfPaper() {}

    /**
     * The PDF of a page.
     *
     * @param xhtml well-formed, nothing fetched from outside; a character that no paper can show is printed as U+FFFD
     * @return the PDF
     */
    public static byte[] pdf(String xhtml) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PDDocument paper = new PDDocument();
                PaperDrawings drawings = new PaperDrawings()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.usePDDocument(paper);
            font(builder, paper, "DejaVuSans.ttf", "DejaVu Sans", 400);
            font(builder, paper, "DejaVuSans-Bold.ttf", "DejaVu Sans", 700);
            font(builder, paper, "DejaVuSerif.ttf", "DejaVu Serif", 400);
            font(builder, paper, "DejaVuSerif-Bold.ttf", "DejaVu Serif", 700);
            builder.useSVGDrawer(drawings);
            builder.withProducer("Shimwright");
            builder.withW3cDocument(document(Characters.harmless(xhtml)), null);
            builder.toStream(out);
            builder.run();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return out.toByteArray();
    }

    /**
     * Sets a small page and throws it away, so that the first that somebody waits for is set by code that was loaded and
     * compiled before. Paper needs none of it to be right.
     */
    public static void makeReady() {
        try (InputStream page = Objects.requireNonNull(PdfPaper.class.getResourceAsStream("ready.xhtml"))) {
            String small = new String(page.readAllBytes(), StandardCharsets.UTF_8);
            for (int i = 0; i < READY; i++) {
                pdf(small);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Read straight into a tree; the library's own way goes through a transformation. */
    private static Document document(String xhtml) throws IOException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
        } catch (ParserConfigurationException | SAXException broken) {
            throw new IllegalStateException("a page that is not well formed", broken);
        }
    }

    private static void font(PdfRendererBuilder builder, PDDocument paper, String file, String family, int weight) {
        PDFontSupplier font = new PaperFont(paper, file);
        builder.useFont(font, family, weight, FontStyle.NORMAL, true);
    }
}
