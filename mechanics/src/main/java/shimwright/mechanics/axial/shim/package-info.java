/**
 * Packs of shims for one clearance, and one drawer shared by several clearances. May touch what lies below the
 * topics, and no other room of axial.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.axial.shim;
