/**
 * A first unit file for a box that nobody has a file for, from what can be seen from outside and in the hand. It may touch the
 * room of the unit file, and knows no job, shop or screen.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit.begin;
