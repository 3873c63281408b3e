package shimwright.bench.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import shimwright.bench.text.Characters;

/** Turns a well-formed XHTML page with inline SVG into a PDF with its fonts embedded. */
public final class PdfPaper {
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";

    static {
        XRLog.setLoggingEnabled(false);
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
        try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            font(builder, "DejaVuSans.ttf", "DejaVu Sans", 400, FontStyle.NORMAL);
            font(builder, "DejaVuSans-Bold.ttf", "DejaVu Sans", 700, FontStyle.NORMAL);
            font(builder, "DejaVuSerif.ttf", "DejaVu Serif", 400, FontStyle.NORMAL);
            font(builder, "DejaVuSerif-Bold.ttf", "DejaVu Serif", 700, FontStyle.NORMAL);
            builder.useSVGDrawer(svg);
            builder.withProducer("Shimwright");
            builder.withHtmlContent(Characters.harmless(xhtml), null);
            builder.toStream(out);
            builder.run();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return out.toByteArray();
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight, FontStyle style) {
        builder.useFont(() -> open(file), family, weight, style, true);
    }

    private static InputStream open(String file) {
        return Objects.requireNonNull(PdfPaper.class.getResourceAsStream(FONTS + file), file);
    }
}
