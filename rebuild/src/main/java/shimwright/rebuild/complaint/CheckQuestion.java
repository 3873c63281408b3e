package shimwright.rebuild.complaint;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * One question of a short road or bench check.
 *
 * @param id short
 * @param asks in words
 * @param answers what can be answered, words by short id, in order
 * @param means what an answer tells, by its id, where somebody has to be told
 */
public record CheckQuestion(String id, String asks, Map<String, String> answers, Map<String, String> means) {
    public CheckQuestion {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        means = Map.copyOf(means);
    }
}
