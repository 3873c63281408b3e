package shimwright.bench.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import shimwright.bench.picture.plot.Plots;
import shimwright.bench.picture.section.SampleUnits;
import shimwright.bench.picture.section.SectionDrawing;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.picture.section.SectionView;
import shimwright.bench.print.PdfPaper;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;

/** The pictures on paper, through the same path as the printed record. */
class PaperTest {
    private static final int DPI = 72;

    static byte[] pdf(String... pictures) {
        String page = "<html><head><style>@page { size: A4; margin: 12mm } svg { width: 186mm }</style></head><body>"
                + String.join("<p></p>", pictures)
                + "</body></html>";
        return PdfPaper.pdf(page);
    }

    @Test
    void section_and_plots_print_in_their_inks() throws IOException {
        SectionState state = SectionState.EMPTY
                .withFitted(SampleUnits.allItems(SampleUnits.A))
                .withInHand(Set.of("sI"))
                .withClearance("c");
        String section = SectionDrawing.svg(SampleUnits.A, state, "s", SectionView.FULL);
        String plot = Plots.conformity(
                new Plots.Conformity(
                        "End play",
                        Kind.LENGTH,
                        .05e-3,
                        5e-6,
                        9,
                        OptionalDouble.of(.02e-3),
                        OptionalDouble.of(.08e-3),
                        .99,
                        OptionalDouble.empty()),
                new Plots.Page("q", 600, UnitSystem.METRIC));
        try (PDDocument document = Loader.loadPDF(pdf(section, plot))) {
            assertThat(document.getNumberOfPages()).isBetween(1, 2);
            BufferedImage paper = new PDFRenderer(document).renderImageWithDPI(0, DPI);
            assertThat(share(paper, 0x1f4e8c)).as("blue ink").isGreaterThan(0.0005);
            assertThat(share(paper, 0x2b2622)).as("ink").isGreaterThan(0.005);
            assertThat(share(paper, 0xe9e1d0)).as("steel").isGreaterThan(0.02);
        }
    }

    /** The share of a page that has about this colour. */
    private static double share(BufferedImage paper, int colour) {
        int found = 0;
        for (int x = 0; x < paper.getWidth(); x++) {
            for (int y = 0; y < paper.getHeight(); y++) {
                int rgb = paper.getRGB(x, y);
                int apart = 0;
                for (int shift : new int[] {0, 8, 16}) {
                    apart = Math.max(apart, Math.abs((rgb >> shift & 255) - (colour >> shift & 255)));
                }
                found += apart < 48 ? 1 : 0;
            }
        }
        return found / (double) (paper.getWidth() * paper.getHeight());
    }
}
