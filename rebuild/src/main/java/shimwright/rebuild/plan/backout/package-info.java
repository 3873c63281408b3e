/** The way back: what must be undone to get to an item, a step or a clearance, and what the next step shuts in. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.backout;
