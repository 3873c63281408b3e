/**
 * Identification of the variant, and readings against limits: their size, their uncertainty and what they prove. It knows the
 * unit file's model and what a job and the shop have kept; it keeps nothing itself and knows no page and no rule.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.inspect;
