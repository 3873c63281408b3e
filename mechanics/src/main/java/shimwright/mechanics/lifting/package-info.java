/**
 * How much of a gearbox may be lifted by hand. A topic: it may touch what lies below the topics, and no other
 * topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.lifting;
