/**
 * Pinion depth, and backlash against a shift of the crown wheel. May touch what lies below the topics, and no
 * other room of axial.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.axial.bevel;
