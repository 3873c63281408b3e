/**
 * Oil fill by volume and by level, with temperature and tilt. A topic: it may touch what lies below the topics,
 * and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.oil;
