/**
 * From readings to a value with its doubt: statistics of short series, standard uncertainties and their combination
 * (JCGM 100:2008), tests for trend and odd readings.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.measure;
