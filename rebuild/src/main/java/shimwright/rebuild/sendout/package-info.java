/**
 * Work that is done elsewhere, as an engineer writes it down: the size to come back with from the very mate, how it goes home, what must
 * not get hot, and the numbers by which it is accepted. May touch unit, job and findings; sends nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.sendout;
