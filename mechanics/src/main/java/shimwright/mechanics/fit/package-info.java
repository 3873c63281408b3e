/**
 * Fits: ISO 286 limits, interference and what it holds, heat and cold for assembly and the time they leave, grip
 * of a race in a light-alloy housing, bearing clearance after fitting; interference and loss are diametral
 * everywhere, interference positive, clearance negative, unless a name says otherwise. A topic: it may touch what
 * lies below the topics, and no other topic.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.fit;
