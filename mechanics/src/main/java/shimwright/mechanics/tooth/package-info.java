/**
 * Involute teeth: thickness and size over pins or over several teeth and back, spline rework and play, gear pairs,
 * backlash in every meaning, ratios, counts of turns, road speed. Lengths in metres and angles in radians inside.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.tooth;
