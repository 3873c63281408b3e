package shimwright.mechanics.outcome;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * One plain sentence about an input that cannot be used: the place, the fact and what to do.
 *
 * @param key the input at fault as the caller named it ({@code bore}, {@code sleeve.outside}, {@code rounds[1][0]},
 *     counted from 0), for programs and never shown; empty where no single input is at fault
 * @param place the same in the words of the person ("round 2, indicator 1", "unit.yaml:14:9"); may be empty when there
 *     is only one place it could be
 * @param fact what was found, with the value as typed
 * @param hint what to do about it; may be empty when the fact says it
 */
public record Refusal(String key, String place, String fact, String hint) {
    private static final Pattern HUMP = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])");
    private static final Pattern ENTRY = Pattern.compile("\\[(\\d+)]");

    public Refusal {
        Objects.requireNonNull(key);
        Objects.requireNonNull(place);
        Objects.requireNonNull(fact);
        Objects.requireNonNull(hint);
        if (fact.isBlank()) {
            throw new IllegalArgumentException("a refusal without a fact");
        }
    }

    /** A refusal of one input whose place is its key in words. */
    public static Refusal of(String key, String fact, String hint) {
        return new Refusal(key, words(key), fact, hint);
    }

    /** A refusal for which no single input is at fault. */
    public static Refusal at(String place, String fact, String hint) {
        return new Refusal("", place, fact, hint);
    }

    /** A key in words: {@code frictionLow} as "friction low", {@code rounds[1].low} as "rounds entry 2, low". */
    public static String words(String key) {
        String apart = HUMP.matcher(key.replace(".", ", ")).replaceAll(" ");
        String small = apart.equals(key) ? key : apart.toLowerCase(Locale.ROOT);
        return ENTRY.matcher(small).replaceAll(entry -> " entry " + (Long.parseLong(entry.group(1)) + 1));
    }

    /** True where the fault stands at the input of that key or within it. */
    public boolean within(String input) {
        return !input.isEmpty()
                && key.startsWith(input)
                && (key.length() == input.length() || ".[".indexOf(key.charAt(input.length())) >= 0);
    }

    /** The same fault of an input by another key and in other words. */
    public Refusal placed(String otherKey, String otherPlace) {
        return new Refusal(otherKey, otherPlace, fact, hint);
    }

    /** The whole refusal as one line: {@code place: fact. Hint.} */
    public String sentence() {
        StringBuilder line = new StringBuilder();
        if (!place.isBlank()) {
            line.append(place).append(": ");
        }
        line.append(closed(fact));
        if (!hint.isBlank()) {
            line.append(' ').append(closed(hint));
        }
        return line.toString();
    }

    private static String closed(String text) {
        String trimmed = text.strip();
        return trimmed.endsWith(".") || trimmed.endsWith("?") || trimmed.endsWith("!") ? trimmed : trimmed + ".";
    }
}
