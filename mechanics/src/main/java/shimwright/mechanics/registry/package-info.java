/**
 * The list of all worksheets and their bad inputs. The one room that may touch every topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.registry;
