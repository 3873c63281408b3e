/**
 * What must be put in order: tasks, what they wait for, windows, waits, set-ups and risks, as plain data. It may touch the JDK alone,
 * so that search and check can both read it without knowing each other.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.model;
