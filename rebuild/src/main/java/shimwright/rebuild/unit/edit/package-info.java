/**
 * Facts put into a unit file one by one, where they are met, and what a file still lacks. It may touch the room of the unit file
 * and the tables of standard parts, and knows no job, shop or screen.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.unit.edit;
