/**
 * Is it within the limits, and how sure are we: conformance probability (JCGM 106:2012), the rule that decides
 * stored beside the decision (ISO 14253-1), three outcomes. May touch measuring, quantities and outcomes.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.conformity;
