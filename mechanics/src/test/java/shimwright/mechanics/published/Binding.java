package shimwright.mechanics.published;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.worksheet.Answer;

/**
 * Who answers a published value.
 *
 * @param rows a quantity in {@code "}, or patterns of ids with spaces between
 * @param given what is typed for a row
 * @param answer to a row when this is typed: a number in the row's unit, or a text
 */
record Binding(
        String rows,
        Function<PublishedRow, Map<String, String>> given,
        BiFunction<PublishedRow, Map<String, String>, Object> answer) {
    private static final Pattern PLACE = Pattern.compile("\\{([^}]+?)(#?)}");
    private static final String EXAMPLE = "example;";

    /** Answered by a function of ours, in the row's unit. */
    static Binding code(String rows, ToDoubleFunction<PublishedRow> ours) {
        return new Binding(
                rows,
                row -> Map.of("inputs", row.inputs()),
                (row, given) -> ours.applyAsDouble(row.with(given.getOrDefault("inputs", ""))));
    }

    /**
     * Answered by a worksheet, from a line {@code rows | worksheet | key=value; key=value | result | unit}.
     *
     * <p>{@code example;} before the inputs takes the rest from the sheet's worked example. {@code {x}} is input x of the row,
     * {@code {x#}} its number alone; a sum such as {@code {d+2*t}} has the unit of its last input. The result is a path, with
     * {@code / number} behind it for an answer in parts of it, or {@code working NAME} for a line of the working. The unit is
     * needed where the row does not print one. The sheet {@code unit} reads a quantity at the door; its result is a kind.
     */
    static Binding line(String[] parts) {
        String sheet = parts[1];
        String result = parts[3].strip();
        if (sheet.equals("unit")) {
            return new Binding(
                    parts[0],
                    row -> Map.of("value", filled(row, parts[2])),
                    (row, given) -> read(row, given.getOrDefault("value", ""), Kind.valueOf(result)));
        }
        return new Binding(
                parts[0],
                row -> typed(row, sheet, parts[2]),
                (row, given) -> value(
                        SheetAnswers.ask(sheet, given).orElseThrow(),
                        result,
                        parts.length > 4 ? parts[4].strip() : row.unit()));
    }

    /** Whether it answers a row. */
    boolean answers(PublishedRow row) {
        return names().stream().anyMatch(name -> names(name, row));
    }

    /** Names of rows it means to answer that none of these has. */
    List<String> missing(List<PublishedRow> all) {
        return names().stream()
                .filter(name -> all.stream().noneMatch(row -> names(name, row)))
                .toList();
    }

    private List<String> names() {
        return rows.startsWith("\"") ? List.of(rows) : List.of(rows.split(" ", -1));
    }

    private static boolean names(String name, PublishedRow row) {
        return name.startsWith("\"")
                ? name.equals('"' + row.quantity() + '"')
                : row.id().matches(name);
    }

    private static double read(PublishedRow row, String text, Kind kind) {
        MeasureUnit usual = UnitSystem.METRIC.display(kind).unit();
        return unit(row.unit(), kind)
                .fromSi(Quantities.parse(text, kind, usual, row.id())
                        .orElseThrow()
                        .si());
    }

    private static Map<String, String> typed(PublishedRow row, String sheet, String inputs) {
        boolean onExample = inputs.startsWith(EXAMPLE);
        Map<String, String> typed = new LinkedHashMap<>(
                onExample ? Registry.find(sheet).orElseThrow().example() : Map.of());
        SheetAnswers.typed(filled(row, onExample ? inputs.substring(EXAMPLE.length()) : inputs))
                .forEach((key, value) -> {
                    typed.keySet().removeIf(old -> old.startsWith(key + "."));
                    typed.put(key, value);
                });
        return typed;
    }

    private static String filled(PublishedRow row, String inputs) {
        return PLACE.matcher(inputs)
                .replaceAll(place -> Matcher.quoteReplacement(
                        place(row, place.group(1), !place.group(2).isEmpty())));
    }

    private static String place(PublishedRow row, String name, boolean number) {
        if (row.has(name) || !name.matches(".*[+*].*")) {
            String text = row.text(name);
            return number ? text.replaceFirst("\\s.*", "") : text;
        }
        double sum = 0;
        String unit = "";
        for (String term : name.split("\\+", -1)) {
            double product = 1;
            for (String factor : term.split("\\*", -1)) {
                boolean given = row.has(factor);
                product *= given ? row.number(factor) : Double.parseDouble(factor);
                unit = given ? row.text(factor).replaceFirst("\\S+", "") : unit;
            }
            sum += product;
        }
        return sum + (number ? "" : unit);
    }

    private static Object value(Answer answer, String result, String unit) {
        if (result.startsWith("working ")) {
            Line line = answer.working().stream()
                    .filter(l -> l.symbol().equals(result.substring("working ".length())))
                    .findFirst()
                    .orElseThrow();
            return unit(unit, line.kind()).fromSi(line.value());
        }
        List<String> steps = Arrays.asList(result.split("\\s*/\\s*", -1));
        Map<?, ?> found = (Map<?, ?>) SheetAnswers.at(answer, steps.get(0));
        if (!(found.get("value") instanceof Number si)) {
            return String.valueOf(found.get("text"));
        }
        if (steps.size() > 1) {
            return steps.stream().skip(1).mapToDouble(Double::parseDouble).reduce(si.doubleValue(), (a, b) -> a / b);
        }
        return si instanceof Double ? unit(unit, kind(found)).fromSi(si.doubleValue()) : (Object) si.doubleValue();
    }

    private static Kind kind(Map<?, ?> found) {
        return Arrays.stream(Kind.values())
                .filter(kind -> kind.siSymbol().equals(requireNonNull(found.get("unit"))))
                .findFirst()
                .orElseThrow();
    }

    /** A plain number may stand under rad and any word that is no unit; everything else has a unit of its kind. */
    private static MeasureUnit unit(String written, Kind kind) {
        return Units.find(written.equals("kpsi") ? "ksi" : written, kind).orElseGet(() -> {
            if (kind == Kind.NUMBER
                    && Units.findAny(written).orElse(Units.RADIAN).equals(Units.RADIAN)) {
                return Units.ONE;
            }
            throw new IllegalArgumentException(written + " is not a unit of " + kind);
        });
    }
}
