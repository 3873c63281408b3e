package shimwright.mechanics.outcome;

import java.util.Objects;

/**
 * One plain sentence about an input that cannot be used: the place, the fact and what to do.
 *
 * @param place where the fault stands, in the words of the person ("round 2, indicator 1", "unit.yaml:14:9"); may be
 *     empty when there is only one place it could be
 * @param fact what was found, with the value as typed
 * @param hint what to do about it; may be empty when the fact says it
 */
public record Refusal(String place, String fact, String hint) {
    public Refusal {
        Objects.requireNonNull(place);
        Objects.requireNonNull(fact);
        Objects.requireNonNull(hint);
        if (fact.isBlank()) {
            throw new IllegalArgumentException("a refusal without a fact");
        }
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
