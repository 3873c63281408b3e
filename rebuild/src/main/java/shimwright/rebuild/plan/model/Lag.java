package shimwright.rebuild.plan.model;

/**
 * A wait: cure, cooling.
 *
 * @param from task after whose end it runs, one that {@code to} waits for, by way of others too
 * @param to task that may not start before it has run
 * @param seconds least time between the two, 0 or more
 * @param words what is waited for
 */
public record Lag(String from, String to, double seconds, String words) {}
