package shimwright.rebuild.plan.model;

/**
 * A time window: from the end of the task that opens it to the end of the task that closes it no more than so long. What leads to
 * its closing is the task that closes it, all that such a task waits for, and the closing of each window that such a task opens.
 * The task that opens it is not begun while one of these that is still to be done has to wait for what ended before, or for
 * what is on its way.
 *
 * @param id unique within the problem
 * @param words what it is
 * @param opens task that opens it, one that the closing waits for, by way of others too; empty where it is open at the start
 * @param closes task that closes it
 * @param seconds longest time, above 0
 * @param alone true where nothing is begun while it is open but what leads to its closing, or to that of another that is open
 *     then and served alone as well
 */
public record Window(String id, String words, String opens, String closes, double seconds, boolean alone) {}
