/**
 * Gaps from measured lengths, and how a play changes when case and shaft warm up. May touch what lies below the
 * topics, and no other room of axial.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.axial.stack;
