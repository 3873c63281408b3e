/**
 * The order of steps: lawful, deterministic, laid again from whatever is really done; open windows and last calls. It may touch the
 * unit file's model, the job and its own rooms below, and keeps nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan;
