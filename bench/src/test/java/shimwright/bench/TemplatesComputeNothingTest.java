package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Templates place what the views hand them: no sums, no lists picked over, no text taken apart. */
class TemplatesComputeNothingTest {
    private static final Pattern BEGINS = Pattern.compile("[$!]\\{|@(?:if|elseif|for)\\(");
    private static final Pattern LITERAL = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"|'(?:\\\\.|[^'\\\\])*'");
    private static final Pattern COMPUTES = Pattern.compile(
            "\\.split\\(|\\.stream\\(\\)|\\.substring\\(|\\.indexOf\\(|\\.replace\\(|Math\\.| [*/%-] |\\+ \\d|\\d[eE]-?\\d");

    @Test
    void noTemplateComputes() throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/jte"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".jte")).toList()) {
                computing(Files.readString(file)).forEach(code -> found.add(file.getFileName() + ": " + code));
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void whatComputesIsSeen() {
        assertThat(computing("<p>${show.span(way.minutes() * 60)}</p>")).hasSize(1);
        assertThat(computing("@if(piece.spread() > limit + 1e-9)")).hasSize(1);
        assertThat(computing("@for(int i = done.size() - 1; i >= 0; i--)")).hasSize(1);
        assertThat(computing("${all.stream().map(p -> p.id()).toList()}")).hasSize(1);
        assertThat(computing("!{var typed = page.typed(\"values\").split(\"\\n\", -1);}"))
                .hasSize(1);
        assertThat(computing("<p>3 - 2 of \"a - b\" ${\"in - \" + id}</p> @if(a.isEmpty())"))
                .isEmpty();
    }

    /** The pieces of code in a template that compute. */
    private static List<String> computing(String template) {
        List<String> computing = new ArrayList<>();
        Matcher begins = BEGINS.matcher(template);
        while (begins.find()) {
            String code = code(template, begins.end(), template.charAt(begins.end() - 1));
            if (COMPUTES.matcher(LITERAL.matcher(code).replaceAll("''")).find()) {
                computing.add(code);
            }
        }
        return computing;
    }

    /** From an opening bracket to the one that closes it, brackets in literals left out of account. */
    private static String code(String template, int from, char opens) {
        char closes = opens == '{' ? '}' : ')';
        Matcher literal = LITERAL.matcher(template);
        int depth = 1;
        int at = from;
        while (depth > 0 && at < template.length()) {
            char c = template.charAt(at);
            if (c == '"' && literal.find(at) && literal.start() == at) {
                at = literal.end();
                continue;
            }
            depth += c == opens ? 1 : c == closes ? -1 : 0;
            at++;
        }
        return template.substring(from, at - 1);
    }
}
