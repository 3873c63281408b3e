/**
 * The clearance session: what to do next, is it seated, is it enough, which pack, is the last reading what was
 * predicted. It may touch the unit file's model, the job, the shop, the order of steps and the mechanics, and keeps
 * nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.clearance;
