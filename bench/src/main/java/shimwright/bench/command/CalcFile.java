package shimwright.bench.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import shimwright.mechanics.outcome.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads cases for {@code calc} from a file: a JSON object or list of objects, or CSV with one case a row. */
final class CalcFile {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int LONGEST_HEADER = 100_000;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    private CalcFile() {}

    /**
     * One case.
     *
     * @param number counted from 1
     * @param place file and line, or file and entry
     * @param given values by key
     */
    record Case(int number, String place, Map<String, Object> given) {}

    /**
     * Reads a file case by case; CSV is never held as a whole.
     *
     * @return why reading stopped; empty when all was read
     */
    static List<Refusal> read(Path file, Consumer<Case> each) {
        String name = file.toString();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            if (name.toLowerCase(Locale.ROOT).endsWith(".json")) {
                return json(reader, name, each);
            }
            if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) {
                return csv(new BufferedReader(reader), name, each);
            }
            return List.of(new Refusal(name, "is neither .json nor .csv", "Name it for what it is"));
        } catch (NoSuchFileException missing) {
            return List.of(new Refusal(name, "there is no such file", "Check the name and the folder"));
        } catch (IOException | UncheckedIOException | InvalidPathException unreadable) {
            return List.of(new Refusal(name, "cannot be read", "It must be a text file in UTF-8"));
        }
    }

    private static List<Refusal> json(Reader reader, String name, Consumer<Case> each) {
        Object content;
        try {
            content = JSON.readValue(reader, Object.class);
        } catch (JacksonException broken) {
            int line = broken.getLocation() == null ? 1 : broken.getLocation().getLineNr();
            return List.of(new Refusal(name + ":" + line, "is not sound JSON", broken.getOriginalMessage()));
        }
        List<?> cases = content instanceof List<?> list ? list : List.of(content);
        for (int i = 0; i < cases.size(); i++) {
            if (!(cases.get(i) instanceof Map<?, ?> map)) {
                return List.of(new Refusal(name + ", case " + (i + 1), "is not an object", "Write {\"key\": value}"));
            }
            Map<String, Object> given = new LinkedHashMap<>();
            map.forEach((key, value) -> {
                if (value != null) {
                    given.put(String.valueOf(key), value);
                }
            });
            each.accept(new Case(i + 1, name + ", case " + (i + 1), given));
        }
        return List.of();
    }

    private static List<Refusal> csv(BufferedReader reader, String name, Consumer<Case> each) throws IOException {
        reader.mark(LONGEST_HEADER);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        reader.mark(LONGEST_HEADER);
        String header = reader.readLine();
        if (header == null || header.isBlank()) {
            return List.of(new Refusal(name + ":1", "has no header line", "Write the keys in the first line"));
        }
        reader.reset();
        boolean semicolons = header.contains(";") && !header.contains(",");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(semicolons ? ';' : ',')
                .setHeader()
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser rows = format.parse(reader)) {
            int number = 0;
            for (CSVRecord row : rows) {
                number++;
                String place = name + ":" + rows.getCurrentLineNumber();
                if (!row.isConsistent()) {
                    return List.of(new Refusal(
                            place,
                            row.size() + " cells under " + rows.getHeaderNames().size() + " keys",
                            "Quote cells with commas"));
                }
                each.accept(new Case(number, place, new LinkedHashMap<>(row.toMap())));
            }
            return List.of();
        } catch (IllegalArgumentException twice) {
            return List.of(
                    new Refusal(name + ":1", "the header line has an empty or repeated key", "Name each column once"));
        }
    }
}
