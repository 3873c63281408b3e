/**
 * Axial settings: readings that must have settled, end play, stacks measured by depth, growth when warm, and the pack of
 * shims that sets a clearance. Play is positive, preload a negative play.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.axial;
