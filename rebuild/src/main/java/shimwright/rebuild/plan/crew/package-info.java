/**
 * Who does what when: the shortest timetable of work that shares people, places and tools, with least and longest waits. It may touch
 * outcomes and its own plain data, and never a unit file or a job.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.crew;
