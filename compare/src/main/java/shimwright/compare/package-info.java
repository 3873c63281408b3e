/**
 * Plans and timetables side by side with general-purpose constraint solvers; ships nothing. It may touch plans, and nobody touches
 * it.
 */
@org.jspecify.annotations.NullMarked
package shimwright.compare;
