package shimwright.mechanics.worksheet;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The text of one plain value as a person or a program gives it. */
final class ScalarText {
    private ScalarText() {}

    /**
     * One plain value as text; also {@code {value, unit, u}} as an answer gives it, with k, nu, n, shared, form.
     *
     * @param raw text, a number or a map
     * @return empty for a list or another map
     */
    static Optional<String> of(Object raw) {
        if (raw instanceof Map<?, ?> map && map.get("value") instanceof Number number) {
            Object unit = map.get("unit");
            String suffix = unit == null ? "" : " " + unit;
            String uncertainty = map.get("u") instanceof Number u ? " ± " + plain(u) : "";
            return Optional.of(plain(number) + uncertainty + suffix + (uncertainty.isEmpty() ? "" : words(map)));
        }
        if (raw instanceof Number number) {
            return Optional.of(plain(number));
        }
        return raw instanceof String text ? Optional.of(text) : Optional.empty();
    }

    private static String words(Map<?, ?> map) {
        StringBuilder words = new StringBuilder();
        for (String key : List.of("k", "nu", "n", "shared")) {
            Object value = map.get(key);
            if (value != null) {
                words.append(' ').append(key).append('=').append(value);
            }
        }
        Object form = map.get("form");
        return form == null ? words.toString() : words.append(' ').append(form).toString();
    }

    private static String plain(Number number) {
        return number instanceof BigDecimal decimal ? decimal.toString() : String.valueOf(number);
    }

    /** What was given, at most 40 letters of it, for a sentence. */
    static String shortened(Object raw) {
        String text = String.valueOf(raw);
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }
}
