/**
 * The job log: sealed entries, the fold that makes a job of them, and the interfaces that a store fills. It may touch the unit file's
 * model, the plan's plain values and the mechanics, and never what decides or prints.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.job;
