/**
 * Synchronizers: wear reserve of a blocker ring, cone and index torque, locking, slip time, work and power. A
 * topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.synchro;
