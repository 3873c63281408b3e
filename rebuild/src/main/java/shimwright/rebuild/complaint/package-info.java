/**
 * From the owner's words to what is worth looking at: questions of a short road or bench check, causes with what makes them likelier,
 * their ranking and the order to look. May touch unit, job and the tables; decides nothing for the person.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.complaint;
