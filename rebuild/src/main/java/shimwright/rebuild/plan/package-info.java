/** The order of steps: lawful, deterministic, laid again from whatever is really done; open windows and last calls. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan;
