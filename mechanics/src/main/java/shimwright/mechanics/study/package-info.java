/**
 * Studies made before the work: how good a gauge is in the hands that use it, and what a loop of toleranced
 * lengths can come to. A topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.study;
