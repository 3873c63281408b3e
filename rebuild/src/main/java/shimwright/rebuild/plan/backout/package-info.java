/**
 * The way back: what must be undone to get to an item, a step or a clearance, and what the next step shuts in. It may touch the
 * unit file's model and the plan's plain values, and never the log.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.backout;
