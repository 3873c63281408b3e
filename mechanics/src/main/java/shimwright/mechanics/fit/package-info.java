/**
 * Fits: ISO 286 limits, interference and what it holds, heat and cold for assembly and the time they leave, grip of a
 * race in a light-alloy housing, bearing clearance after fitting. Interference and loss are diametral everywhere;
 * interference counts positive, clearance negative, unless a name says otherwise.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.fit;
