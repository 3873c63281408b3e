/**
 * Kinds of quantity, units with their exact factors, and the two doors: text to SI number and SI number to text. Inside the house every
 * number is a {@code double} in the SI unit of its {@link shimwright.mechanics.quantity.Kind}; it may touch outcomes alone.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.quantity;
