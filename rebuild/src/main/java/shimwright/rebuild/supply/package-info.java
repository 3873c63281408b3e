/**
 * What a job needs and where it comes from: needs from verdicts and from what is always renewed, kits against them, the cheapest cover,
 * what tells a right part from its likely wrong one. May touch unit and job; orders nothing.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.supply;
