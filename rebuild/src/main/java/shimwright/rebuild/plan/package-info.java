/**
 * The order of steps: possible, deterministic, laid again from whatever is really done; open windows and last calls. It
 * may touch the unit file's model and, of its own rooms, model, search and verify; it never knows a job, and keeps
 * nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan;
