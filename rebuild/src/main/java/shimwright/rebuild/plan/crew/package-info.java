/** Who does what when: the shortest timetable of work that shares people, places and tools, with least and longest waits. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.crew;
