/** What earlier jobs of a type teach the next one, at the place where it matters. May touch job and record; decides nothing. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.learn;
