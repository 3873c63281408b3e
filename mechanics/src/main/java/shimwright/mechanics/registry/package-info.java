/** The list of all worksheets: the one place that knows every topic. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.registry;
