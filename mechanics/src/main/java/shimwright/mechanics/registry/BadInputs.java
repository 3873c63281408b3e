package shimwright.mechanics.registry;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.worksheet.Worksheet;

/**
 * What worksheets refuse, by example. Each topic keeps the file {@code refused.txt} beside its classes: a line holds the
 * worksheet, the changes to its worked example, and words that the refusal says.
 */
public final class BadInputs {
    private static final String FILE = "refused.txt";
    private static final String LEFT_OUT = "-";

    private BadInputs() {}

    /**
     * One bad input.
     *
     * @param changes what differs from the example, by key; "-" leaves an input out
     * @param given all inputs, by key
     * @param says words in the refusal
     */
    public record Bad(Map<String, String> changes, Map<String, String> given, String says) {
        /** The changes in words. */
        public String words() {
            List<String> words = new ArrayList<>();
            changes.forEach((key, value) -> words.add(value.equals(LEFT_OUT) ? "no " + key : key + "=" + value));
            return String.join(", ", words);
        }
    }

    /** The bad inputs of a worksheet; empty where its topic has no file or no line for it. */
    public static List<Bad> of(Worksheet<?, ?> sheet) {
        List<Bad> all = new ArrayList<>();
        for (String line : lines(sheet)) {
            String[] parts = line.split("\\s+::\\s+", -1);
            if (parts.length == 3 && parts[0].equals(sheet.name())) {
                all.add(bad(sheet, parts[1], parts[2].strip()));
            }
        }
        return all;
    }

    private static Bad bad(Worksheet<?, ?> sheet, String text, String says) {
        Map<String, String> changes = new LinkedHashMap<>();
        Map<String, String> given = new LinkedHashMap<>(sheet.example());
        for (String change : text.split("\\s*\\|\\s*", -1)) {
            int equals = change.indexOf('=');
            String key = change.substring(0, equals);
            String value = change.substring(equals + 1).strip();
            changes.put(key, value);
            if (value.equals(LEFT_OUT)) {
                given.remove(key);
            } else {
                given.put(key, value);
            }
        }
        return new Bad(changes, given, says);
    }

    private static List<String> lines(Worksheet<?, ?> sheet) {
        InputStream file = sheet.caseType().getResourceAsStream(FILE);
        if (file == null) {
            return List.of();
        }
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return reader.lines().filter(line -> !line.startsWith("#")).toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
