/**
 * Is it within the limits, and how sure are we? Conformance probability (JCGM 106:2012), the rule that decides stored
 * beside the decision (ISO 14253-1), three outcomes.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.conformity;
