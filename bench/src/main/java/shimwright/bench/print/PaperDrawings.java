package shimwright.bench.print;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/** Hands the drawings of a page to paper; their fonts are the page's. */
final class PaperDrawings implements SVGDrawer {
    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        return new PaperDrawing(svg, dotsPerPixel, cssWidth, cssHeight);
    }

    @Override
    public void importFontFaceRules(List<FontFaceRule> fonts, SharedContext shared) {
        // the page's
    }

    @Override
    public void addFontFile(File font, String family, Integer weight, FontStyle style) {
        // the page's
    }

    @Override
    public void close() {
        // nothing is held
    }
}
