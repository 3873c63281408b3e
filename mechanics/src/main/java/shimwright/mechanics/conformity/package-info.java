/** Readings against limits: conformance probability, decision rule, three outcomes. */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.conformity;
