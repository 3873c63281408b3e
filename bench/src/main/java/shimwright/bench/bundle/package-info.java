/**
 * A unit file with its pictures as one file that another shop takes in: made here, and looked through here before anything of it
 * is kept. It may touch the desk and the pictures' own rooms; it knows no page and no store.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.bundle;
