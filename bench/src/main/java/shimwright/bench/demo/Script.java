package shimwright.bench.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A played job: lines by step. A line is a word and its parts, set apart by {@code |}; {@code [T04]} opens the lines that
 * are played at step T04, lines before the first bracket are played at intake.
 *
 * @param lines by step; intake under the empty name
 */
record Script(Map<String, List<Line>> lines) {
    /** One line: its first word and the parts after it. */
    record Line(String word, List<String> parts) {
        String part(int i) {
            return i < parts.size() ? parts.get(i) : "";
        }
    }

    /** Lines of a step; none for a step that the script does not speak of. */
    List<Line> at(String step) {
        return lines.getOrDefault(step, List.of());
    }

    static Script of(String resource) {
        Map<String, List<Line>> lines = new LinkedHashMap<>();
        String step = "";
        for (String raw : text(resource)) {
            if (raw.startsWith("[")) {
                step = raw.substring(1, raw.indexOf(']'));
            } else {
                List<String> parts =
                        Arrays.stream(raw.split("\\|")).map(String::strip).toList();
                lines.computeIfAbsent(step, s -> new ArrayList<>())
                        .add(new Line(parts.get(0), parts.subList(1, parts.size())));
            }
        }
        return new Script(lines);
    }

    /** The lines of a resource without blank ones and those that begin with #. */
    static List<String> text(String resource) {
        try (InputStream in = Objects.requireNonNull(Script.class.getResourceAsStream("/demo/" + resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
