/** Laws of the sheets for finding out and sizing parts: geometry, statics and counting, no table needed. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.parts;
