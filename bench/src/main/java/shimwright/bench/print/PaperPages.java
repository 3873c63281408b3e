package shimwright.bench.print;

import com.openhtmltopdf.pdfboxout.PageSupplier;
import java.util.Objects;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.jspecify.annotations.Nullable;

/**
 * Pages on which all frames and grounds are described at once, as layout that is no content (ISO 32000-1:2008, 14.8.2.2.2). Left
 * to itself the library describes each as a background with a box of its own and looks through all before it for the same one:
 * of a record seven objects in ten and two fifths of the time.
 */
final class PaperPages implements PageSupplier {
    private static final COSName BACKGROUND = COSName.getPDFName("Background");
    private static final COSName LAYOUT = COSName.getPDFName("Layout");

    private final COSDictionary layout = new COSDictionary();

    PaperPages() {
        layout.setItem(COSName.TYPE, LAYOUT);
    }

    @Override
    public PDPage requestPage(PDDocument paper, float width, float height, int number, int shadow) {
        COSDictionary resources = new COSDictionary();
        resources.setItem(COSName.PROPERTIES, new Described(layout));
        PDPage page = new PDPage(new PDRectangle(width, height));
        page.setResources(new PDResources(resources));
        paper.addPage(page);
        return page;
    }

    /** What the pieces of a page are, by name; every background by the one name of the layout. */
    private static final class Described extends COSDictionary {
        Described(COSDictionary layout) {
            setItem(LAYOUT, layout);
        }

        @Override
        public boolean containsValue(@Nullable Object piece) {
            return isBackground(piece) || super.containsValue(piece);
        }

        @Override
        public @Nullable COSName getKeyForValue(@Nullable Object piece) {
            return isBackground(piece) ? LAYOUT : super.getKeyForValue(piece);
        }

        private static boolean isBackground(@Nullable Object piece) {
            return piece instanceof COSDictionary one && Objects.equals(BACKGROUND, one.getCOSName(COSName.TYPE));
        }
    }
}
