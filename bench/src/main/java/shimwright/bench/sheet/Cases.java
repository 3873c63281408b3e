package shimwright.bench.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.exc.JacksonIOException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads cases for a worksheet: a JSON object or list of objects, or CSV with one case a row. */
public final class Cases {
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final int LONGEST_HEADER = 100_000;
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Cases() {}

    /**
     * One case.
     *
     * @param number counted from 1
     * @param place source and line, or source and entry
     * @param given values by key
     */
    public record Case(int number, String place, Map<String, Object> given) {}

    /**
     * What a JSON text held.
     *
     * @param many true for a list
     * @param cases in order
     */
    public record Read(boolean many, List<Case> cases) {}

    /**
     * Reads JSON.
     *
     * @param reader text; an {@link IOException} of it is thrown on
     * @param name of the source, for places
     * @return the cases, or why it is not sound
     */
    public static Outcome<Read> json(Reader reader, String name) throws IOException {
        Object content;
        try {
            content = JSON.readValue(reader, Object.class);
        } catch (JacksonIOException broken) {
            throw broken.getCause();
        } catch (JacksonException broken) {
            int line = broken.getLocation() == null ? 1 : broken.getLocation().getLineNr();
            return Outcome.refused(Refusal.at(name + ":" + line, "is not sound JSON", broken.getOriginalMessage()));
        }
        boolean many = content instanceof List<?>;
        List<?> items = content instanceof List<?> list ? list : content == null ? List.of() : List.of(content);
        if (items.isEmpty()) {
            return Outcome.refused(Refusal.at(name, "holds no case", "Write {\"key\": value}"));
        }
        List<Case> cases = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            String place = name + ", case " + (i + 1);
            if (!(items.get(i) instanceof Map<?, ?> map)) {
                return Outcome.refused(Refusal.at(place, "is not an object", "Write {\"key\": value}"));
            }
            Map<String, Object> given = new LinkedHashMap<>();
            map.forEach((key, value) -> {
                if (value != null) {
                    given.put(String.valueOf(key), value);
                }
            });
            cases.add(new Case(i + 1, place, given));
        }
        return Outcome.ok(new Read(many, cases));
    }

    /**
     * Reads CSV row by row, never held as a whole. Commas or semicolons, keys in the first line.
     *
     * @param from text; an {@link IOException} of it is thrown on, bare or inside an {@link java.io.UncheckedIOException}
     * @param name of the source, for places
     * @param each takes each case before the next is read
     * @return why reading stopped; empty when all was read
     */
    public static List<Refusal> csv(Reader from, String name, Consumer<Case> each) throws IOException {
        BufferedReader reader = new BufferedReader(from);
        reader.mark(LONGEST_HEADER);
        if (reader.read() != BYTE_ORDER_MARK) {
            reader.reset();
        }
        reader.mark(LONGEST_HEADER);
        String header = reader.readLine();
        if (header == null || header.isBlank()) {
            return List.of(Refusal.at(name + ":1", "has no header line", "Write the keys in the first line"));
        }
        if (header.length() >= LONGEST_HEADER) {
            return List.of(Refusal.at(name + ":1", "the header line has no end", "Write one case a line"));
        }
        reader.reset();
        boolean semicolons = header.contains(";") && !header.contains(",");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(semicolons ? ';' : ',')
                .setHeader()
                .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
                .setSkipHeaderRecord(true)
                .setTrim(true)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser rows = format.parse(reader)) {
            return rows(rows, name, each);
        } catch (CSVException quote) {
            return List.of(notCsv(name));
        } catch (UncheckedIOException inside) {
            if (inside.getCause() instanceof CSVException) {
                return List.of(notCsv(name));
            }
            throw inside;
        } catch (IllegalArgumentException twice) {
            return List.of(
                    Refusal.at(name + ":1", "the header line has an empty or repeated key", "Name each column once"));
        }
    }

    private static Refusal notCsv(String name) {
        return Refusal.at(
                name, "a quote in it stands where none may, or is never closed", "Write a quote within a cell twice");
    }

    private static List<Refusal> rows(CSVParser rows, String name, Consumer<Case> each) {
        int number = 0;
        for (CSVRecord row : rows) {
            number++;
            String place = name + ":" + rows.getCurrentLineNumber();
            if (!row.isConsistent()) {
                return List.of(Refusal.at(
                        place,
                        row.size() + " cells under " + rows.getHeaderNames().size() + " keys",
                        "Quote cells with commas"));
            }
            each.accept(new Case(number, place, new LinkedHashMap<>(row.toMap())));
        }
        return number > 0
                ? List.of()
                : List.of(Refusal.at(name + ":1", "no case stands below the header", "Write one case a line"));
    }
}
