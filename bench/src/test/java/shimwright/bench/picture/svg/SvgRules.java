package shimwright.bench.picture.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.w3c.dom.Element;

/** What holds for every picture, whatever it shows. */
public final class SvgRules {
    private static final List<String> TAGS =
            List.of("svg", "title", "desc", "g", "path", "circle", "rect", "text", "clipPath");

    private SvgRules() {}

    /** Stands alone on a page and in print: presentation attributes only, own ids, a title, no text lost or covered. */
    public static DrawnSvg check(String svg, String prefix) {
        DrawnSvg drawn = DrawnSvg.of(svg);
        assertThat(drawn.all("*")).allSatisfy(e -> assertThat(e.getLocalName()).isIn(TAGS));
        for (String banned : List.of("class", "style", "href", "xlink:href", "onload", "onclick")) {
            assertThat(drawn.withAttribute(banned)).isEmpty();
        }
        assertThat(svg).doesNotContain("currentColor", "var(", "NaN", "Infinity", "null");
        Element root = drawn.root();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("viewBox"))
                .isEqualTo("0 0 " + root.getAttribute("width") + " " + root.getAttribute("height"));
        assertThat(drawn.all("title").get(0).getTextContent()).isNotBlank();
        assertThat(drawn.all("desc").get(0).getTextContent()).isNotBlank();
        List<String> ids = drawn.withAttribute("id").stream()
                .map(e -> e.getAttribute("id"))
                .toList();
        assertThat(ids).doesNotHaveDuplicates().allSatisfy(id -> assertThat(id).startsWith(prefix + "-"));
        assertThat(drawn.outside()).as("texts off the sheet").isEmpty();
        assertThat(drawn.overlaps()).as("texts that cover each other").isEmpty();
        assertThat(drawn.all("text"))
                .allSatisfy(t -> assertThat(Double.parseDouble(t.getAttribute("font-size")))
                        .isGreaterThanOrEqualTo(12));
        return drawn;
    }
}
