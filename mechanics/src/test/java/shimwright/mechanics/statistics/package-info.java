@org.jspecify.annotations.NullMarked
package shimwright.mechanics.statistics;
