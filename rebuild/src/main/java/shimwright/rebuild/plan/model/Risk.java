package shimwright.rebuild.plan.model;

/**
 * The price of a late find: expected seconds lost where a task is done before a hold point that could condemn it, the
 * chance that the hold point fails times the time to undo the task and do it again.
 *
 * @param early task that would have to come apart
 * @param hold task at which the find is made
 * @param seconds expected loss, 0 or more
 */
public record Risk(String early, String hold, double seconds) {}
