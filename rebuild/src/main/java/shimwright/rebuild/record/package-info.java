/**
 * The hand-back record as data, from what the job has kept: no number is computed again for paper. It may touch the
 * job, the unit it stands on and what the maker etched on its parts, and knows neither pages nor print.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.record;
