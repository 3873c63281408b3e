/**
 * What the rest of a build takes with one and with more people, and who does what. It may touch plans, the search for
 * orders and the timetable, and keeps nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.people;
