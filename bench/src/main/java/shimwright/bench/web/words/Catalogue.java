package shimwright.bench.web.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The sentences of the program with what they are in another language. The English sentence is the key; {0}, {1} stand for values.
 * A line that begins with a blank says the one above it in the other language; a second such line says it where the number among
 * the values is not one.
 */
final class Catalogue {
    /** A text with fewer words is no sentence: somebody may have typed it. */
    static final int FEWEST_WORDS = 3;

    private static final Pattern VALUE = Pattern.compile("\\{(\\d)}");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}'’-]*");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private final Map<String, List<String>> entries;
    private final Set<String> spoken;
    private final Map<String, List<Mould>> moulds = new HashMap<>();

    private Catalogue(Map<String, List<String>> entries, Set<String> spoken) {
        this.entries = entries;
        this.spoken = spoken;
        entries.keySet().stream()
                .filter(key -> key.contains("{"))
                .map(Mould::of)
                .forEach(mould -> moulds.computeIfAbsent(mould.first(), none -> new ArrayList<>())
                        .add(mould));
    }

    /** The catalogue of a language, out of the program's own files. */
    static Catalogue of(String language) {
        String file = "/words/" + language + ".txt";
        try (InputStream in = Objects.requireNonNull(Catalogue.class.getResourceAsStream(file), file)) {
            return read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A catalogue as a file has it. */
    static Catalogue read(String text) {
        Map<String, List<String>> entries = new LinkedHashMap<>();
        Set<String> spoken = new HashSet<>();
        boolean script = false;
        String key = "";
        for (String line : text.lines().toList()) {
            script |= line.equals("# scripts");
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            if (!line.startsWith(" ")) {
                key = line.strip();
                if (entries.put(key, new ArrayList<>()) != null) {
                    throw new IllegalStateException("twice in the catalogue: " + key);
                }
                if (script) {
                    spoken.add(key);
                }
            } else {
                Objects.requireNonNull(entries.get(key), line).add(line.strip());
            }
        }
        return new Catalogue(entries, spoken);
    }

    /** The sentences behind the line "# scripts" as JSON that no page takes for a mark. */
    String scripts() {
        StringBuilder json = new StringBuilder("{");
        entries.forEach((key, forms) -> {
            if (spoken.contains(key)) {
                json.append(json.length() > 1 ? "," : "").append(quoted(key)).append(":[");
                json.append(String.join(
                                ",", forms.stream().map(Catalogue::quoted).toList()))
                        .append(']');
            }
        });
        return json.append('}').toString();
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("<", "\\u003c") + '"';
    }

    /** All sentences with what they are in the other language. */
    Map<String, List<String>> entries() {
        return entries;
    }

    /** A text as a key: without the blanks around it, each run of blanks one. */
    static String key(String text) {
        return BLANKS.matcher(text.strip()).replaceAll(" ");
    }

    /** How many words a text has. */
    static int words(String text) {
        Matcher word = WORD.matcher(text);
        int words = 0;
        while (word.find()) {
            words++;
        }
        return words;
    }

    /** What a sentence is in the other language, with its values in their places; empty where it is not here. */
    Optional<String> said(String key, List<String> values, List<String> shown) {
        List<String> forms = entries.get(key);
        if (forms == null || forms.isEmpty()) {
            return Optional.empty();
        }
        String form = forms.get(forms.size() > 1 && !one(values) ? 1 : 0);
        return Optional.of(VALUE.matcher(form)
                .replaceAll(place -> Matcher.quoteReplacement(shown.get(Integer.parseInt(place.group(1))))));
    }

    private static boolean one(List<String> values) {
        return values.stream()
                .filter(value -> value.matches("\\d+"))
                .findFirst()
                .orElse("1")
                .equals("1");
    }

    /** The sentence, of so many words or more, of which a text is one with its values filled in. */
    Optional<Match> match(String text, int fewest) {
        int blank = text.indexOf(' ');
        String first = blank < 0 ? text : text.substring(0, blank);
        for (String group : List.of(first, "")) {
            for (Mould mould : moulds.getOrDefault(group, List.of())) {
                List<String> values = mould.words() < fewest ? null : mould.values(text);
                if (values != null) {
                    return Optional.of(new Match(mould.key(), values));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * A sentence with values.
     *
     * @param key the sentence with places for them
     * @param values in the order of their places
     */
    record Match(String key, List<String> values) {}

    /**
     * A sentence with places for values, to be held against a text.
     *
     * @param key the sentence
     * @param fixed what stands before, between and behind the values
     * @param words how many words of its own it has
     */
    private record Mould(String key, List<String> fixed, int words) {
        static Mould of(String key) {
            return new Mould(key, List.of(VALUE.split(key, -1)), Catalogue.words(key));
        }

        /** The word with which such a text begins; empty where a value stands there. */
        String first() {
            int blank = fixed.get(0).indexOf(' ');
            return blank < 0 ? "" : fixed.get(0).substring(0, blank);
        }

        @Nullable
        List<String> values(String text) {
            if (!text.startsWith(fixed.get(0))) {
                return null;
            }
            List<String> values = new ArrayList<>();
            int at = fixed.get(0).length();
            for (int i = 1; i < fixed.size(); i++) {
                String next = fixed.get(i);
                int to = i == fixed.size() - 1 ? text.length() - next.length() : text.indexOf(next, at + 1);
                // a value never reaches over the end of a sentence
                if (to <= at
                        || !text.startsWith(next, to)
                        || text.substring(at, to).contains(". ")) {
                    return null;
                }
                values.add(text.substring(at, to));
                at = to + next.length();
            }
            return values;
        }
    }
}
