package shimwright.bench.web.kit;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActInput;

/**
 * What was typed, as an act: each input under its name; lists also as {@code name1}, {@code name2}…, maps as
 * {@code name-key}. Pages and the HTTP door read acts here alone, and all faults come back at once.
 */
public final class ActReader {
    private ActReader() {}

    /**
     * The act of a form.
     *
     * @param form as typed; its faults say what is missing or cannot be read, and the act is then not to be used
     */
    public static <A extends Act> A read(Class<A> type, Form form) {
        RecordComponent[] inputs = type.getRecordComponents();
        Object[] values = Arrays.stream(inputs).map(input -> value(input, form)).toArray();
        Class<?>[] types = Arrays.stream(inputs).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException
                | InstantiationException
                | IllegalAccessException
                | NoSuchMethodException e) {
            throw new IllegalStateException("no act can be made of " + type, e);
        }
    }

    private static Object value(RecordComponent input, Form form) {
        ActInput given = input.getAnnotation(ActInput.class);
        String name = input.getName();
        Class<?> type = input.getType();
        if (type == List.class) {
            return list(name, given, form);
        }
        if (type == Map.class) {
            return map(name, given, form);
        }
        String text = form.text(name, name, given.value(), given.longest());
        if (form.raw(name).isEmpty() && !given.missing().isEmpty()) {
            form.fault(name, given.value(), "nothing typed", given.missing());
        }
        if (type == String.class) {
            return text;
        }
        if (type == double.class) {
            return text.isEmpty()
                    ? 0.0
                    : form.quantity(name, given.kind(), given.value(), new Range(given.least(), given.most()));
        }
        if (type == int.class) {
            return whole(name, text, given, form);
        }
        if (type == LocalDate.class) {
            return day(name, text, given, form);
        }
        return constant(name, type, text, given, form);
    }

    private static int whole(String name, String text, ActInput given, Form form) {
        try {
            int number = text.isEmpty() ? 0 : Integer.parseInt(text);
            if (number >= given.least() && number <= given.most()) {
                return number;
            }
            form.fault(
                    name,
                    given.value(),
                    number + " is out of range",
                    "Give a whole number from " + Math.round(given.least()) + " to " + Math.round(given.most()));
        } catch (NumberFormatException letters) {
            form.fault(
                    name, given.value(), "\"" + text + "\" is not a whole number", "Give a number, or leave it empty");
        }
        return 0;
    }

    private static LocalDate day(String name, String text, ActInput given, Form form) {
        try {
            return text.isEmpty() ? LocalDate.EPOCH : LocalDate.parse(text);
        } catch (DateTimeParseException none) {
            form.fault(name, given.value(), "\"" + text + "\" is no day", given.missing());
            return LocalDate.EPOCH;
        }
    }

    private static Object constant(String name, Class<?> type, String text, ActInput given, Form form) {
        Object[] constants = type.getEnumConstants();
        for (Object constant : constants) {
            if (((Enum<?>) constant).name().equals(text.toUpperCase(Locale.ROOT))) {
                return constant;
            }
        }
        if (!text.isEmpty()) {
            form.fault(name, given.value(), "\"" + text + "\" is none of the choices", given.missing());
        }
        return constants[0];
    }

    private static List<String> list(String name, ActInput given, Form form) {
        List<String> values = new ArrayList<>();
        for (int i = 1; form.has(name + i); i++) {
            String text = form.text(name + i, name + "[" + (i - 1) + "]", given.value(), given.longest());
            if (!text.isEmpty() || !form.raw(name + (i + 1)).isEmpty()) {
                values.add(text);
            }
        }
        if (values.isEmpty()) {
            Arrays.stream(form.text(name, name, given.value(), given.longest()).split("[;\\n]+"))
                    .map(String::strip)
                    .filter(text -> !text.isEmpty())
                    .forEach(values::add);
        }
        boolean typed = form.names().stream()
                .anyMatch(field ->
                        field.matches(name + "\\d*") && !form.raw(field).isEmpty());
        if (!given.missing().isEmpty() && !typed) {
            form.fault(name, given.value(), "nothing typed", given.missing());
        }
        return List.copyOf(values);
    }

    private static Map<String, String> map(String name, ActInput given, Form form) {
        Map<String, String> values = new LinkedHashMap<>();
        form.names().stream().filter(field -> field.startsWith(name + "-")).forEach(field -> {
            String entry = field.substring(name.length() + 1);
            values.put(entry, form.text(field, name + "." + entry, given.value(), given.longest()));
        });
        boolean typed = values.keySet().stream()
                .anyMatch(entry -> !form.raw(name + "-" + entry).isEmpty());
        if (!given.missing().isEmpty() && !typed) {
            form.fault(name, given.value(), "nothing typed", given.missing());
        }
        return values;
    }
}
