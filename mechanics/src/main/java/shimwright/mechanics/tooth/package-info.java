/**
 * Involute teeth: thickness and size over pins or over several teeth and back, spline rework and play, gear pairs,
 * backlash in every meaning, ratios, counts of turns, road speed; lengths in metres and angles in radians inside.
 * A topic: it may touch what lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.tooth;
