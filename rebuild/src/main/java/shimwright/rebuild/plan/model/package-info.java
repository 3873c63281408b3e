/** What must be put in order: tasks, what they wait for, windows, waits, set-ups and risks, as plain data. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.model;
