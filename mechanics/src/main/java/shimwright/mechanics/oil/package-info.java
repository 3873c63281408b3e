/**
 * Oil fill by volume and by level, with temperature and tilt. The worksheets stand in {@link
 * shimwright.mechanics.oil.OilSheets}.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.oil;
