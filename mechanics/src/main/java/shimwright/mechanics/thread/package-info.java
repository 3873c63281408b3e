/**
 * Threaded joints: sizes and limits, tightening, stripping, wrenches and tightening order. A topic: it may touch
 * what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.thread;
