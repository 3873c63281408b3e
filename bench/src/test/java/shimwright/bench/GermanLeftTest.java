package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import shimwright.mechanics.registry.Registry;

/**
 * Lists what pages in German still say in English, the most frequent first, into {@code target/german-left.txt}: texts with a word
 * that German has not and that stand in no unit's file as they are. Names of parts within a longer text and what the demo's people
 * typed are among them, so that the list is read and its length means no more than better or worse.
 */
@EnabledIfSystemProperty(named = "shimwright.figures", matches = "true")
class GermanLeftTest {
    private static final Pattern ENGLISH = Pattern.compile(
            "\\b(?:the|of|is|are|and|to|not|with|from|by|for|it|its|this|that|which|be|has|have|no|on|or|as|at|each|than|one"
                    + "|what|where|when|here|after|before|between|until|other|only|none|first|read|set|out)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final List<String> HEARD = List.of("placeholder", "aria-label", "title", "alt");

    /** So many were left on 1 December 2026, and a few more, for times of day are among them. */
    private static final int LEFT = 2170;

    @Test
    void noMoreIsLeftThanWasCounted() throws IOException {
        Map<String, Integer> left = new TreeMap<>();
        try (DemoBench bench = DemoBench.fresh()) {
            Stream<String> sheets = Registry.all().stream()
                    .map(sheet -> "/sheets/" + sheet.name() + "?" + SheetPagesTest.example(sheet.name()));
            read(bench, Stream.concat(EveryPage.ofTheDemo().stream(), sheets).toList(), left);
            read(bench, EveryPage.kept(bench), left);
        }
        try (DemoBench empty = DemoBench.at(Files.createTempDirectory("shimwright-german-"))) {
            read(empty, EveryPage.OF_AN_EMPTY_SHOP, left);
        }
        String units = ofTheUnits();
        left.keySet().removeIf(units::contains);
        Files.writeString(
                Path.of("target/german-left.txt"),
                left.entrySet().stream()
                        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                        .map(text -> text.getValue() + "\t" + text.getKey() + "\n")
                        .collect(Collectors.joining()));
        assertThat(left).hasSizeLessThanOrEqualTo(LEFT);
    }

    private static String ofTheUnits() throws IOException {
        StringBuilder said = new StringBuilder();
        try (Stream<Path> units = Files.list(Path.of("../rebuild/src/main/resources/units"))) {
            for (Path unit : units.toList()) {
                said.append(key(Files.readString(unit))).append('\n');
            }
        }
        return said.toString();
    }

    private static void read(DemoBench bench, List<String> paths, Map<String, Integer> into) {
        bench.post("/held", "speech", "de");
        for (String path : paths) {
            for (Element element : bench.page(path).select("body *")) {
                if (element.closest("[lang=en], textarea, script, style") == null) {
                    texts(element).stream()
                            .filter(text -> ENGLISH.matcher(text).find())
                            .forEach(text -> into.merge(text, 1, Integer::sum));
                }
            }
        }
    }

    private static List<String> texts(Element element) {
        List<String> texts = new ArrayList<>();
        for (TextNode text : element.textNodes()) {
            texts.add(key(text.text()));
        }
        HEARD.forEach(name -> texts.add(key(element.attr(name))));
        return texts;
    }

    private static String key(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }
}
