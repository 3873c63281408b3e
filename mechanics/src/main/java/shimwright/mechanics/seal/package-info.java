/**
 * What keeps the oil in: sealant, lip seals and their seats, and the proof with air. The worksheets stand in {@link
 * shimwright.mechanics.seal.SealSheets}.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.seal;
