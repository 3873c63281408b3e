/** The hand-back record as data, from the fold alone: nothing is computed again for paper. */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.record;
