/**
 * The best order: a beam for a first answer, then an exact search with proven bounds. It may touch the problem as data, and never
 * a unit file, a job or the check of its answers.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.search;
