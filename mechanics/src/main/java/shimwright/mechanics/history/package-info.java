/** What past jobs teach: returns and lives, values of a model shrunk to those of all, what the drawer should hold. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.history;
