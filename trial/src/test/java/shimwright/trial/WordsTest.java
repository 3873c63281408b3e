package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The trade and the standards have words of their own: uncertainty (JCGM 200:2012 2.26), outlier (ISO 16269-4:2010), within the
 * limits, a possible order. Words of ours in their place stand on no page, in no sentence of the program and in no manual.
 */
class WordsTest {
    private static final Path ROOT = Path.of(System.getProperty("shimwright.root", ".."));
    private static final Pattern OURS = Pattern.compile(
            "\\b(doubts?|odd (one|place|reading|round)s?|odd(?=:)|(un)?lawful(ly)?)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|(?m)^\\s*//.*$", Pattern.DOTALL);
    private static final Pattern LITERAL = Pattern.compile("\"(?:[^\"\\\\\\n]|\\\\.)*\"");

    private static List<Path> files(String... ends) {
        List<Path> found = new ArrayList<>();
        for (String module : List.of("mechanics", "rebuild", "bench", "trial", "docs")) {
            Path from = module.equals("docs")
                    ? ROOT.resolve(module)
                    : ROOT.resolve(module).resolve("src/main");
            try (Stream<Path> all = Files.walk(from)) {
                all.filter(file -> Stream.of(ends).anyMatch(file.toString()::endsWith))
                        .forEach(found::add);
            } catch (IOException gone) {
                throw new UncheckedIOException(gone);
            }
        }
        return found;
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    private static void ours(Path file, String text, List<String> found) {
        Matcher matcher = OURS.matcher(text);
        while (matcher.find()) {
            int from = Math.max(0, matcher.start() - 30);
            found.add(ROOT.relativize(file) + ": …"
                    + text.substring(from, Math.min(text.length(), matcher.end() + 30))
                            .replace('\n', ' '));
        }
    }

    @Test
    void noPageAndNoSentenceHasAWordOfOursWhereTheTradeHasOne() {
        List<String> found = new ArrayList<>();
        List<Path> pages = files(".jte", ".js", ".yaml", ".txt", ".md", ".json");
        pages.add(ROOT.resolve("README.md"));
        assertThat(pages).hasSizeGreaterThan(100);
        pages.forEach(page -> ours(page, text(page), found));
        List<Path> sources = files(".java");
        assertThat(sources).hasSizeGreaterThan(500);
        for (Path source : sources) {
            Matcher literal = LITERAL.matcher(COMMENT.matcher(text(source)).replaceAll(" "));
            while (literal.find()) {
                ours(source, literal.group(), found);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void aWordOfOursIsFoundWhereItStands() {
        List<String> found = new ArrayList<>();
        ours(ROOT.resolve("x"), "its doubt is not known; the odd place; Unlawful; odd: read again", found);
        assertThat(found).hasSize(4);
        ours(ROOT.resolve("x"), "an odd number of teeth, undoubtedly", found);
        assertThat(found).hasSize(4);
    }
}
