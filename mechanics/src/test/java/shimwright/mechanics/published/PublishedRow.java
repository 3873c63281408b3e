package shimwright.mechanics.published;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A published value: what was given, what must come out, how closely, and who says so.
 *
 * @param topic the file it stands in, such as {@code gears}
 * @param id unique in its file
 * @param quantity in words
 * @param inputs {@code name=value; name=value}, the first of two of one name counting; {@code ,} also parts them before a
 *     name; brackets hold remarks
 * @param expected as printed
 * @param unit of it
 * @param tolerance half-width in the unit; {@code abs:} may stand before it; {@code rel:} for a share of the expected; {@code
 *     exact} for a text
 * @param source standard, handbook or worked example
 */
public record PublishedRow(
        String topic,
        String id,
        String quantity,
        String inputs,
        String expected,
        String unit,
        String tolerance,
        String source,
        String origin) {
    /** A row of which nobody says whether its source was read. */
    PublishedRow(
            String topic,
            String id,
            String quantity,
            String inputs,
            String expected,
            String unit,
            String tolerance,
            String source) {
        this(topic, id, quantity, inputs, expected, unit, tolerance, source, "");
    }

    /** A number by itself, not one inside a name. */
    static final Pattern NUMBER = Pattern.compile("(?<![A-Za-z0-9_.])[-+]?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?");

    private static final Pattern PARTS = Pattern.compile(";\\s*|,\\s*(?=\\w+=)");
    private static final Pattern REMARK = Pattern.compile("\\s*\\(.*\\)|\\s(?:coarse|abs)\\b");
    private static final Pattern ORDER = Pattern.compile("\\d+(?:-\\d+)+");

    /** The rows of {@code published/checks/TOPIC.csv}. */
    static List<PublishedRow> of(String topic) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (Reader file =
                Files.newBufferedReader(PublishedFiles.file("checks/" + topic + ".csv"), StandardCharsets.UTF_8)) {
            return format.parse(file).getRecords().stream()
                    .map(line -> row(topic, line))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static PublishedRow row(String topic, CSVRecord line) {
        return new PublishedRow(
                topic,
                line.get("id"),
                line.get("quantity"),
                line.get("inputs"),
                line.get("expected"),
                line.get("unit"),
                line.get("tolerance"),
                line.get("source"),
                line.get("origin"));
    }

    /** The same row with other inputs. */
    PublishedRow with(String others) {
        return new PublishedRow(topic, id, quantity, others, expected, unit, tolerance, source, origin);
    }

    /** What the row prints as given; some rows print it in their quantity. */
    String printed() {
        return inputs + " " + quantity;
    }

    /** The inputs by name, without remarks; a list and an order have spaces between their numbers, a range a comma. */
    Map<String, String> named() {
        Map<String, String> named = new LinkedHashMap<>();
        for (String part : PARTS.split(inputs, -1)) {
            String[] sides = part.split("=", 2);
            if (sides.length == 2) {
                String value = REMARK.matcher(sides[1])
                        .replaceAll("")
                        .strip()
                        .replace('|', ' ')
                        .replace("..", ", ");
                named.putIfAbsent(sides[0].strip(), ORDER.matcher(value).matches() ? value.replace('-', ' ') : value);
            }
        }
        return named;
    }

    /** Whether an input is given. */
    public boolean has(String name) {
        return named().containsKey(name);
    }

    /** The text of an input. */
    public String text(String name) {
        String value = named().get(name);
        if (value == null) {
            throw new IllegalArgumentException(id + " has no input " + name + ", only " + named().keySet());
        }
        return value;
    }

    /** The leading number of an input, in its own unit. */
    public double number(String name) {
        return leading(text(name));
    }

    /** The numbers of an input with commas between. */
    public List<Double> numbers(String name) {
        return Arrays.stream(text(name).split(",", -1)).map(this::leading).toList();
    }

    /** Every number of the inputs in order, signs included. */
    public List<Double> all() {
        List<Double> all = new ArrayList<>();
        Matcher numbers = NUMBER.matcher(inputs);
        while (numbers.find()) {
            all.add(Double.valueOf(numbers.group()));
        }
        return all;
    }

    private double leading(String text) {
        Matcher number = NUMBER.matcher(text.strip());
        if (!number.lookingAt()) {
            throw new IllegalArgumentException(id + ": " + text + " begins with no number");
        }
        return Double.parseDouble(number.group());
    }

    /** Whether the answer must be the expected letter by letter. */
    boolean exact() {
        return tolerance.equals("exact");
    }

    /** How far a number may lie from the expected one, in the unit of the row. */
    double allowed() {
        String[] rule = tolerance.split(":", 2);
        double width = Double.parseDouble(rule[rule.length - 1]);
        return rule[0].equals("rel") ? width * Math.abs(Double.parseDouble(expected)) : width;
    }
}
