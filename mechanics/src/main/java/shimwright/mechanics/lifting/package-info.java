/** How much of a gearbox may be lifted by hand. The worksheets stand in {@link shimwright.mechanics.lifting.Lifting}. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.lifting;
