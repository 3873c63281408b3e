/** When a job will be done: a range of days from step times, waiting, deliveries and evenings at the bench. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.estimate;
