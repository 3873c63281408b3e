/** Charts of one value a job, in the order of the jobs: has anything changed? */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.chart;
