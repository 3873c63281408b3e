/** What earlier jobs of a type teach the next one, at the place where it matters. May touch job, record and unit files; decides nothing. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.learn;
