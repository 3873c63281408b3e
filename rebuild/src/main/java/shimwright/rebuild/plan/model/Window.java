package shimwright.rebuild.plan.model;

/**
 * A time window: from the end of the task that opens it to the end of the task that closes it no more than so long. It is
 * not opened while something that leads to its closing still has to wait for what began before it.
 *
 * @param id unique within the problem
 * @param words what it is
 * @param opens task that opens it; empty where it is open at the start
 * @param closes task that closes it
 * @param seconds longest time, above 0
 * @param alone true where nothing is begun while it is open that does not lead to its closing
 */
public record Window(String id, String words, String opens, String closes, double seconds, boolean alone) {}
