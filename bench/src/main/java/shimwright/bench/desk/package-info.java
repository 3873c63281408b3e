/**
 * The bench as a value: what the log, the unit files and the clock say, made once for each state of the log, and the
 * one way from an act to kept entries. It stands between the doors (web, demo) and the log and may touch the trade and
 * the interfaces that a store fills; it knows neither pages nor SQL.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.desk;
