package shimwright.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.fit.FitBindings;

/**
 * Every published value against our worksheets and functions, each within its own tolerance. What was found stands in {@code
 * target/published.txt}, the sum in {@code target/checks.txt} and, by topic, in {@code docs/checks.md}, which {@code mvn -pl
 * mechanics test -Dtest=PublishedValuesTest -Dshimwright.write=true} writes anew.
 */
class PublishedValuesTest {
    private static final Path ROOT = Path.of(System.getProperty("shimwright.root", ".."));
    private static final List<RowVerdict> VERDICTS = new ArrayList<>();

    @BeforeAll
    static void askForEveryRow() {
        VERDICTS.clear();
        judge("metrology", bindings -> {
            MetrologyBindings.addTo(bindings);
            StatisticsBindings.addTo(bindings);
        });
        judge("fits", FitBindings::addTo);
        judge("gears", none -> {});
        judge("joints", none -> {});
        judge("parts", none -> {});
    }

    private static void judge(String topic, Consumer<Bindings> code) {
        Bindings bindings = Bindings.of(topic);
        code.accept(bindings);
        VERDICTS.addAll(RowVerdict.all(PublishedRow.of(topic), bindings));
    }

    @TestFactory
    Stream<DynamicTest> everyValueIsMetOrSaidWhyNot() {
        return VERDICTS.stream()
                .map(verdict -> DynamicTest.dynamicTest(
                        verdict.row().id() + " " + verdict.row().quantity(),
                        () -> assertThat(verdict.faults()).as(verdict.line()).isEmpty()));
    }

    /** Each sheet that has a topic of its own is held against at least five values. */
    @Test
    void everySheetOfItsOwnTopicHasFiveValues() {
        assertThat(ChecksPage.of(VERDICTS).bySheet())
                .hasSizeGreaterThanOrEqualTo(20)
                .allSatisfy((sheet, met) -> assertThat(met).as(sheet).hasSizeGreaterThanOrEqualTo(5));
    }

    @Test
    void theKeptTableIsTheCountedOne() throws IOException {
        Path target = Files.createDirectories(ROOT.resolve("mechanics/target"));
        Files.write(
                target.resolve("published.txt"),
                VERDICTS.stream().map(RowVerdict::line).toList());
        ChecksPage page = ChecksPage.of(VERDICTS);
        Files.writeString(target.resolve("checks.txt"), page.sum());
        Path kept = ROOT.resolve("docs/checks.md");
        if (Boolean.getBoolean("shimwright.write")) {
            Files.writeString(kept, page.text());
        }
        assertThat(kept)
                .as("stale: run mvn -pl mechanics test -Dtest=PublishedValuesTest -Dshimwright.write=true")
                .content(StandardCharsets.UTF_8)
                .isEqualTo(page.text());
    }
}
