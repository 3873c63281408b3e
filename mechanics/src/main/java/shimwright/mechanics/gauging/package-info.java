/**
 * What is found with dials, rollers, balls and a hardness tester: alignment of a housing, tapers outside and inside, and
 * hardness in another scale. A topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.gauging;
