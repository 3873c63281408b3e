/** Synchronizers: wear reserve of a blocker ring, cone and index torque, locking, slip time, work and power. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.synchro;
