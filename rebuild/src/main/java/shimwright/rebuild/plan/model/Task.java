package shimwright.rebuild.plan.model;

import java.util.Set;

/**
 * One thing to do.
 *
 * @param id unique within the problem
 * @param words what to do, as refusals name it
 * @param seconds working time, 0 or more, without set-ups
 * @param stand orientation of the case or place at the bench, named in {@link SetUps}; empty where it can be done anywhere
 * @param tools what must be laid out for it; empty where it leaves what is laid out as it is
 * @param after tasks that must all be done before
 * @param weight how many heavy things it brings into the case, less than 0 where it takes them out
 */
public record Task(
        String id, String words, double seconds, String stand, Set<String> tools, Set<String> after, int weight) {
    public Task {
        if (!(seconds >= 0) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("task " + id + " takes " + seconds + " s");
        }
        tools = Set.copyOf(tools);
        after = Set.copyOf(after);
    }

    /** A task that needs no tools and waits for the tasks named. */
    public static Task of(String id, double seconds, String stand, String... after) {
        return new Task(id, id, seconds, stand, Set.of(), Set.of(after), 0);
    }

    /** The same task with these tools. */
    public Task with(String... laidOut) {
        return new Task(id, words, seconds, stand, Set.of(laidOut), after, weight);
    }
}
