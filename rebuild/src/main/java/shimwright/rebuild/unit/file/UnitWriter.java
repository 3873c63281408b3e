package shimwright.rebuild.unit.file;

import java.lang.reflect.ParameterizedType;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Records to the text of a unit file: what is as it would be when absent is left out, short records stand on one line,
 * and reading the text gives the same records again.
 */
final class UnitWriter {
    private static final int LINE = 150;
    private static final String SIGNS = "_./+()=<>-";
    /** Breaks of a line to YAML, which would be read as a blank. */
    private static final char NEXT_LINE = 0x85;

    private static final char LINE_SEPARATOR = 0x2028;
    private static final char PARAGRAPH_SEPARATOR = 0x2029;
    private static final MathContext DUST = new MathContext(13);

    /** Most numbers of a file stand in every text of it; beyond so many all are forgotten. */
    private static final int MOST_PRINTED = 4096;

    private static final Map<Printed, String> PRINTED = new ConcurrentHashMap<>();

    private record Printed(double si, Kind kind, String symbol) {}

    private final StringBuilder out = new StringBuilder();

    private UnitWriter() {}

    static String text(UnitType type) {
        UnitWriter writer = new UnitWriter();
        writer.block(type, "");
        return writer.out.toString();
    }

    private void block(Record record, String indent) {
        String lead = "";
        List<Component> components = Component.of(record.getClass());
        List<Object> absent = AbsentValues.of(record.getClass());
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            Object value = held(component.in(record));
            if (component.required() || !value.equals(absent.get(i))) {
                out.append(lead).append(component.key()).append(':');
                entry(value, component, indent);
                lead = indent;
            }
        }
    }

    /** What follows the colon: on the same line where it is short, else indented below. */
    private void entry(Object value, Component component, String indent) {
        boolean records = value instanceof Collection<?> list && list.stream().anyMatch(Record.class::isInstance);
        Optional<String> flow = records
                ? Optional.empty()
                : flow(value, component).filter(text -> text.length() + indent.length() <= LINE);
        if (flow.isPresent()) {
            out.append(' ').append(flow.get()).append('\n');
        } else if (value instanceof Collection<?> list) {
            out.append('\n');
            list.forEach(element -> element(element, component, indent + "  "));
        } else if (value instanceof Map<?, ?> map) {
            out.append('\n');
            map.forEach((key, held) -> {
                out.append(indent).append("  ").append(quoted(key.toString())).append(':');
                entry(held, component, indent + "  ");
            });
        } else if (value instanceof Record record) {
            out.append('\n').append(indent).append("  ");
            block(record, indent + "  ");
        } else {
            out.append(' ').append(scalar(value, component)).append('\n');
        }
    }

    private void element(Object element, Component component, String indent) {
        out.append(indent).append("- ");
        Optional<String> flow = flow(element, component).filter(text -> text.length() + indent.length() <= LINE);
        if (flow.isPresent()) {
            out.append(flow.get()).append('\n');
        } else if (element instanceof Record record) {
            block(record, indent + "  ");
        } else {
            out.append(scalar(element, component)).append('\n');
        }
    }

    /** The value on one line; empty where a record in it holds further records. */
    private Optional<String> flow(Object value, Component component) {
        if (value instanceof Record record) {
            return flowRecord(record);
        }
        if (isRow(value, component.kind())) {
            return Optional.of(row((List<?>) value, component.kind()));
        }
        if (value instanceof Collection<?> list) {
            return joined(list.stream().map(e -> flow(e, component)).toList()).map(text -> "[" + text + "]");
        }
        if (value instanceof Map<?, ?> map) {
            List<Optional<String>> entries = new ArrayList<>();
            map.forEach((key, held) ->
                    entries.add(flow(held, component).map(text -> quoted(key.toString()) + ": " + text)));
            return joined(entries).map(text -> "{" + text + "}");
        }
        return Optional.of(scalar(value, component));
    }

    /** What an optional key holds; the value itself of any other, and of an optional one that holds nothing. */
    static Object held(Object value) {
        return value instanceof Optional<?> optional && optional.isPresent() ? optional.get() : value;
    }

    private Optional<String> flowRecord(Record record) {
        List<Component> components = Component.of(record.getClass());
        List<Object> absent = AbsentValues.of(record.getClass());
        StringBuilder line = new StringBuilder("{");
        for (int i = 0; i < components.size(); i++) {
            Component component = components.get(i);
            Object value = held(component.in(record));
            boolean there = !value.equals(absent.get(i));
            boolean nested = there
                    && component.type() instanceof ParameterizedType type
                    && Component.held(type) instanceof Class<?> held
                    && held.isRecord();
            if (nested) {
                return Optional.empty();
            }
            if (component.required() || there) {
                Optional<String> text = flow(value, component);
                // longer than a line is none, whatever follows
                if (text.isEmpty() || line.length() + text.get().length() > LINE) {
                    return Optional.empty();
                }
                line.append(line.length() > 1 ? ", " : "")
                        .append(component.key())
                        .append(": ")
                        .append(text.get());
            }
        }
        return Optional.of(line.append('}').toString());
    }

    private static Optional<String> joined(List<Optional<String>> parts) {
        boolean all = parts.stream().allMatch(Optional::isPresent);
        return all
                ? Optional.of(String.join(
                        ", ", parts.stream().flatMap(Optional::stream).toList()))
                : Optional.empty();
    }

    private static String scalar(Object value, Component component) {
        String text = plain(value, component.kind());
        return value instanceof Quantity || value instanceof String ? quoted(text) : text;
    }

    /** A single value as it would be read: a text without its quotes. */
    static String plain(Object value, Kind kind) {
        if (value instanceof Double number) {
            return kind == Kind.NUMBER
                    ? new BigDecimal(number.toString()).stripTrailingZeros().toPlainString()
                    : row(List.of(number), kind);
        }
        if (value instanceof Enum<?>) {
            return AbsentValues.written(value);
        }
        return value instanceof Quantity stated ? stated.text() : value.toString();
    }

    /** True where a list is written as one text with the unit at its end. */
    static boolean isRow(Object value, Kind kind) {
        return value instanceof List<?> list
                && kind != Kind.NUMBER
                && list.stream().allMatch(Double.class::isInstance)
                && !list.isEmpty();
    }

    /** Quantities as one text with the unit at its end. */
    static String row(List<?> numbers, Kind kind) {
        MeasureUnit unit = unit(numbers, kind);
        List<String> digits =
                numbers.stream().map(n -> digits((Double) n, unit)).toList();
        return String.join(" ", digits) + " " + symbol(unit);
    }

    private static String symbol(MeasureUnit unit) {
        return unit.equals(Units.UM_PER_M_K)
                ? "um/m/K"
                : unit.symbol().replace("·", ".").replace("°", "deg");
    }

    private static MeasureUnit unit(List<?> numbers, Kind kind) {
        if (kind != Kind.TIME) {
            return Units.of(kind).get(0);
        }
        boolean minutes = numbers.stream().allMatch(n -> (Double) n % 60 == 0);
        boolean hours = numbers.stream().allMatch(n -> (Double) n % 3600 == 0 && (Double) n != 0);
        return hours ? Units.HOUR : minutes ? Units.MINUTE : Units.SECOND;
    }

    private static String digits(Double si, MeasureUnit unit) {
        Printed printed = new Printed(si, unit.kind(), unit.symbol());
        String known = PRINTED.get(printed);
        if (known == null) {
            known = digitsAnew(si, unit);
            if (PRINTED.size() >= MOST_PRINTED) {
                PRINTED.clear();
            }
            PRINTED.put(printed, known);
        }
        return known;
    }

    private static String digitsAnew(Double si, MeasureUnit unit) {
        BigDecimal number = new BigDecimal(si.toString()).divide(BigDecimal.valueOf(unit.factor()), DUST);
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private static String quoted(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder quoted = new StringBuilder(text.length() + 8).append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '\\' -> quoted.append("\\\\");
                case '"' -> quoted.append("\\\"");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                case NEXT_LINE -> quoted.append("\\N");
                case LINE_SEPARATOR -> quoted.append("\\L");
                case PARAGRAPH_SEPARATOR -> quoted.append("\\P");
                default -> quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }

    /** The line on which each step begins, by id; of steps with one id the first. */
    static Map<String, Integer> stepLines(String text, UnitType type) {
        Map<String, Integer> lines = new LinkedHashMap<>();
        Iterator<Step> steps = type.steps().iterator();
        boolean within = false;
        int number = 0;
        for (String line : text.split("\n", -1)) {
            number++;
            within = line.startsWith(" ") ? within : line.startsWith("steps:");
            if (within && line.startsWith("  - ") && steps.hasNext()) {
                lines.putIfAbsent(steps.next().id(), number);
            }
        }
        return lines;
    }

    /** Letters, digits and a few signs, with one blank between words; a letter or digit first. */
    private static boolean isPlain(String text) {
        boolean gap = true;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean word = Character.isLetter(c) || (c >= '0' && c <= '9');
            boolean blank = c == ' ' && !gap;
            if (!word && !blank && (i == 0 || SIGNS.indexOf(c) < 0)) {
                return false;
            }
            gap = c == ' ';
        }
        return !gap;
    }
}
