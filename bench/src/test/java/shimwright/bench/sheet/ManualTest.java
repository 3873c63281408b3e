package shimwright.bench.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.command.CalcCommand;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Worksheet;

/** The manual in the tree is the one the worksheets make now, its commands run, and its sources stand in the list. */
class ManualTest {
    private static final Path FOLDER = Path.of(System.getProperty("shimwright.root", ".."), "docs", "manual");
    private static final Pattern ARGUMENT = Pattern.compile("(\\S+)='([^']*)'");
    private static final Pattern STANDARD =
            Pattern.compile("(?:ISO/IEC Guide|ISO/TR|ISO|DIN|JCGM|ASME|ANSI|AGMA|ASTM|SAE|VDI)(?: [A-Z]?\\d[\\d.-]*)");

    @Test
    void theKeptPagesAreThoseTheSheetsMake() throws IOException {
        Map<String, String> pages = Manual.pages();
        for (Map.Entry<String, String> page : pages.entrySet()) {
            assertThat(FOLDER.resolve(page.getKey()))
                    .as("stale manual: run ./shimwright calc --manual docs/manual")
                    .content(StandardCharsets.UTF_8)
                    .isEqualTo(page.getValue());
        }
        try (Stream<Path> kept = Files.list(FOLDER)) {
            assertThat(kept.map(file -> file.getFileName().toString()))
                    .allMatch(name -> pages.containsKey(name) || name.equals("bibliography.md"));
        }
    }

    @Test
    void theCommandOfEveryPageGivesTheAnswerOfThePage() {
        Map<String, String> pages = Manual.pages();
        for (Worksheet<?, ?> sheet : Registry.all()) {
            String command = Manual.command(sheet);
            List<String> args = new ArrayList<>(List.of(sheet.name()));
            Matcher matcher = ARGUMENT.matcher(command);
            while (matcher.find()) {
                args.add(matcher.group(1) + "=" + matcher.group(2));
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
            assertThat(CalcCommand.run(args, stream, stream)).as(command).isZero();
            String page = pages.getOrDefault(sheet.name() + ".md", "");
            assertThat(page)
                    .contains(command, out.toString(StandardCharsets.UTF_8).strip());
            assertThat(page).contains("## Inputs", "## Results", "## Cautions", "## Sources", "## What it refuses");
        }
    }

    @Test
    void everyStandardThatASheetNamesStandsInTheBibliography() throws IOException {
        String list = Files.readString(FOLDER.resolve("bibliography.md"));
        for (Worksheet<?, ?> sheet : Registry.all()) {
            for (String source : sheet.sources()) {
                Matcher matcher = STANDARD.matcher(source);
                while (matcher.find()) {
                    assertThat(list).as(sheet.name() + ": " + source).contains(matcher.group());
                }
            }
        }
    }

    @Test
    void theManualIsWrittenWhereAsked(@TempDir Path folder) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        Path to = folder.resolve("new").resolve("manual");
        assertThat(CalcCommand.run(List.of("--manual", to.toString()), stream, stream))
                .isZero();
        try (Stream<Path> files = Files.list(to)) {
            assertThat(files).hasSize(Registry.all().size() + 1);
        }
        assertThat(CalcCommand.run(List.of("--manual"), stream, stream)).isEqualTo(2);
        Files.writeString(folder.resolve("file"), "");
        assertThat(CalcCommand.run(
                        List.of("--manual", folder.resolve("file").resolve("x").toString()), stream, stream))
                .isEqualTo(2);
    }
}
