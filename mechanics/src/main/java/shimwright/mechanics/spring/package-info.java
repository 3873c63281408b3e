/**
 * Coil springs: what one gives by its wire and coils, and whether a used one has set. A topic: it may touch what
 * lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.spring;
