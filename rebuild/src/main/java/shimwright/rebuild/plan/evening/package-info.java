/** One evening at the bench: what of a plan fits into it, where to stop, and how likely its windows are kept. It reads plans and looks for none. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.evening;
