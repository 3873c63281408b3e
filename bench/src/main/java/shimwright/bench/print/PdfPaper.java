package shimwright.bench.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.zip.Deflater;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import shimwright.bench.text.Characters;

/**
 * Turns a well-formed XHTML page with inline SVG into a PDF that can be read as long as there is a reader: tagged for those who
 * hear it, with its fonts and its colour space in it (ISO 19005-2, level A).
 */
public final class PdfPaper {
    /** How often the pages are set: what is called often enough is compiled before anybody waits. */
    private static final int READY = 4;

    /** Rows of their table: so many that it goes on on another page, as a record's do. */
    private static final int READY_ROWS = 60;

    static {
        XRLog.setLoggingEnabled(false);
        FontMappers.set(new NoSystemFonts());
        // packing a record as small as can be took a fifth of its time and made it a tenth smaller
        System.setProperty(Filter.SYSPROP_DEFLATELEVEL, String.valueOf(Deflater.BEST_SPEED));
    }

    private PdfPaper() {}

    /** The colour space in which the pages' colours are meant, read once. */
    private static final class Screen {
        static final byte[] RGB = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
    }

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
            builder.usePageSupplier(new PaperPages());
            builder.useSVGDrawer(drawings);
            builder.withProducer("Shimwright");
            builder.usePdfAConformance(PdfAConformance.PDFA_2_A);
            builder.usePdfUaAccessibility(true);
            builder.useColorProfile(Screen.RGB);
            builder.withW3cDocument(document(Characters.harmless(xhtml)), null);
            builder.useUnicodeLineBreaker(new LineBreaks());
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
                // packing the many small objects of a tagged paper took a seventh of its time
                paper.save(out, CompressParameters.NO_COMPRESSION);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return out.toByteArray();
    }

    /**
     * Sets two pages and throws them away, so that the first that somebody waits for is set by code that was loaded and
     * compiled before. Paper needs none of it to be right.
     */
    public static void makeReady() {
        try (InputStream page = Objects.requireNonNull(PdfPaper.class.getResourceAsStream("ready.xhtml"))) {
            String text = new String(page.readAllBytes(), StandardCharsets.UTF_8);
            int row = text.lastIndexOf("<tr>");
            int end = text.indexOf("</tbody>", row);
            String rows = text.substring(row, end).repeat(READY_ROWS);
            for (int i = 0; i < READY; i++) {
                pdf(text.substring(0, end) + rows + text.substring(end));
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
            Document page = factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
            name(page.getElementsByTagName("svg"));
            return page;
        } catch (ParserConfigurationException | SAXException broken) {
            throw new IllegalStateException("a page that is not well formed", broken);
        }
    }

    /** A drawing is heard by its label or its title, as on a page. */
    private static void name(NodeList drawings) {
        for (int i = 0; i < drawings.getLength(); i++) {
            Element drawing = (Element) drawings.item(i);
            String label = drawing.getAttribute("aria-label");
            drawing.setAttribute("alt", label.isEmpty() ? title(drawing) : label);
        }
    }

    private static String title(Element drawing) {
        Node child = drawing.getFirstChild();
        while (child != null && !child.getNodeName().equals("title")) {
            child = child.getNextSibling();
        }
        return child == null ? "Drawing" : child.getTextContent();
    }

    private static void font(PdfRendererBuilder builder, PDDocument paper, String file, String family, int weight) {
        PDFontSupplier font = new PaperFont(paper, file);
        builder.useFont(font, family, weight, FontStyle.NORMAL, true);
    }
}
