package shimwright.bench.print;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * A font of a document, read when a letter of it is first set; only the letters used are embedded. Joined letters are left apart:
 * looking for them took a third of a record's time.
 */
final class PaperFont extends PDFontSupplier {
    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    private final PDDocument document;
    private final String file;

    PaperFont(PDDocument document, String file) {
        super(null);
        this.document = document;
        this.file = file;
    }

    @Override
    public PDFont supply() {
        try (InputStream bytes = Objects.requireNonNull(PaperFont.class.getResourceAsStream(FOLDER + file), file)) {
            TrueTypeFont font = new TTFParser().parse(RandomAccessReadBuffer.createBufferFromStream(bytes));
            font.setEnableGsub(false);
            return PDType0Font.load(document, font, true);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
