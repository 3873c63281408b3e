/**
 * All that a shop keeps, open: opens one of the two stores below, each in a room of its own. It may touch disks and databases
 * through these rooms and decides nothing of the trade.
 */
@org.jspecify.annotations.NullMarked
package shimwright.bench.store;
