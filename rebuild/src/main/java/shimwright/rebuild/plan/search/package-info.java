/** The best order: a beam for a first answer, then an exact search with proven bounds. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.plan.search;
