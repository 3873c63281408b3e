/**
 * Coil springs: what one gives by its wire and coils, and whether a used one has set. The worksheets stand in {@link
 * shimwright.mechanics.spring.SpringSheets}.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.spring;
