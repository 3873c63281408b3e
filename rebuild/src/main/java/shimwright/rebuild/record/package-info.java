/**
 * The hand-back record as data, from the fold alone: nothing is computed again for paper. It may touch the job and the unit it stands
 * on, and knows neither pages nor print.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.record;
