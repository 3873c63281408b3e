package shimwright.bench.print;

import java.awt.geom.GeneralPath;
import java.util.List;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.util.BoundingBox;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Answers the library for paper that this machine has no fonts: paper brings its own. Left to itself the library reads every
 * font of the machine at the first page and keeps a list of them in the home of whoever runs the program.
 */
final class NoSystemFonts implements FontMapper {
    @Override
    public @Nullable FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor font) {
        return null;
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor font) {
        return new FontMapping<>(new Blank(name), false);
    }

    @Override
    public @Nullable CIDFontMapping getCIDFont(String name, PDFontDescriptor font, PDCIDSystemInfo info) {
        return null;
    }

    /** A font by its name, without a letter in it. */
    private record Blank(String name) implements FontBoxFont {
        @Override
        public String getName() {
            return name;
        }

        @Override
        public BoundingBox getFontBBox() {
            return new BoundingBox();
        }

        @Override
        public List<Number> getFontMatrix() {
            return List.of(0.001, 0, 0, 0.001, 0, 0);
        }

        @Override
        public GeneralPath getPath(String letter) {
            return new GeneralPath();
        }

        @Override
        public float getWidth(String letter) {
            return 0;
        }

        @Override
        public boolean hasGlyph(String letter) {
            return false;
        }
    }
}
