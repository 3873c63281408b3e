/**
 * The writer of SVG with the house's colours, letter sizes, text widths and section lines. It knows shapes and words alone:
 * nothing of gearboxes, and no other room of the pictures.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.picture.svg;
