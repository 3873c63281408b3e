package shimwright.rebuild.complaint;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Something that can be wrong with a manual gearbox or beside it.
 *
 * @param id short
 * @param name in words
 * @param look what is looked at to know
 * @param minutes what the look takes once it can be had
 * @param after opening from which it can be had, by id
 * @param sees chance that the look shows it where it is there, 0 to 1
 * @param share how often it is met against the others
 * @param words matches names of parts and of a unit file's own causes that speak of it
 * @param tells weight of each answer where this is the cause, by question and answer; {@link #REST} for those not named; a question
 *     that is not there tells nothing
 */
public record Cause(
        String id,
        String name,
        String look,
        double minutes,
        String after,
        double sees,
        double share,
        Pattern words,
        Map<String, Map<String, Double>> tells) {
    /** Stands for the answers that a cause does not name; their weight is 1 where it is not there. */
    public static final String REST = "*";

    public Cause {
        tells = Map.copyOf(tells);
    }

    /**
     * Chance of an answer to a question where this is the cause: its weight over the sum of all weights of the question's answers.
     *
     * @param answer must be one of the question's
     */
    public double chance(CheckQuestion question, String answer) {
        Map<String, Double> weights = tells.getOrDefault(question.id(), Map.of());
        double rest = weights.getOrDefault(REST, 1.0);
        double sum = question.answers().keySet().stream()
                .mapToDouble(one -> weights.getOrDefault(one, rest))
                .sum();
        return weights.getOrDefault(answer, rest) / sum;
    }
}
