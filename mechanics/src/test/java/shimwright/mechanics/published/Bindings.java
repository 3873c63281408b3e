package shimwright.mechanics.published;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The bindings of a topic, from the lines of a text and from code. A line {@code id | listed | reason} names a row that nothing
 * of ours answers, {@code id | circular | reason} one whose answer was typed.
 */
public final class Bindings {
    final List<Binding> all = new ArrayList<>();
    final Map<String, String> listed = new LinkedHashMap<>();
    final Map<String, String> circular = new LinkedHashMap<>();

    /** Lines with {@code |} between their parts; {@code #} begins a remark. */
    Bindings(List<String> lines) {
        for (String line : lines) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] parts = line.strip().split("\\s*\\|\\s*", -1);
            switch (parts[1]) {
                case "listed" -> name(listed, parts);
                case "circular" -> name(circular, parts);
                default -> all.add(Binding.line(parts));
            }
        }
    }

    /** Those of {@code TOPIC.txt} beside this class. */
    static Bindings of(String topic) {
        try (InputStream text = requireNonNull(Bindings.class.getResourceAsStream(topic + ".txt"), topic)) {
            return new Bindings(new String(text.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void name(Map<String, String> names, String[] parts) {
        if (parts.length != 3 || parts[2].isBlank() || names.put(parts[0], parts[2]) != null) {
            throw new IllegalArgumentException("one reason for " + parts[0]);
        }
    }

    /** Binds rows by patterns of their ids to a function that answers in the unit of the row. */
    public Bindings bind(String ids, ToDoubleFunction<PublishedRow> ours) {
        all.add(Binding.code(ids, ours));
        return this;
    }

    /** Binds the rows of a quantity likewise. */
    public void quantity(String words, ToDoubleFunction<PublishedRow> ours) {
        all.add(Binding.code('"' + words + '"', ours));
    }
}
