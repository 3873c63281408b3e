/**
 * When a job will be done: a range of days from step times, waiting, deliveries and evenings at the bench. It may touch plans as
 * they are laid, and searches for none.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.estimate;
