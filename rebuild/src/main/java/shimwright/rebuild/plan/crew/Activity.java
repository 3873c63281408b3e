package shimwright.rebuild.plan.crew;

import java.util.Map;

/**
 * Something to do without a break.
 *
 * @param id unique within the project, not empty
 * @param words what to do, as refusals name it
 * @param duration whole units of time, 0 or more
 * @param needs how much of a resource it holds from its start to its end, by resource, 1 or more
 */
public record Activity(String id, String words, int duration, Map<String, Integer> needs) {
    public Activity {
        if (id.isEmpty() || duration < 0 || needs.values().stream().anyMatch(need -> need < 1)) {
            throw new IllegalArgumentException("activity \"" + id + "\" of " + duration + " needs " + needs);
        }
        needs = Map.copyOf(needs);
    }
}
