/**
 * Charts of one value a job, in the order of the jobs: has anything changed? A topic: it may touch what lies below
 * the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.chart;
