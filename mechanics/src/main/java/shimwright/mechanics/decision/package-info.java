/**
 * Measured values and what they prove: conformity with limits, the risk of a decision, statistics of a series. A
 * topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.decision;
