/**
 * What keeps the oil in: sealant, lip seals and their seats, and the proof with air. A topic: it may touch what
 * lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.seal;
