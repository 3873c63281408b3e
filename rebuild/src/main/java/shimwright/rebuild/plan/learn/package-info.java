/**
 * A strip-down as recorded becomes a first plan: turned round, relaxed by drawing, answers and other jobs, written as steps. It may
 * touch what a job has kept, and keeps nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.learn;
