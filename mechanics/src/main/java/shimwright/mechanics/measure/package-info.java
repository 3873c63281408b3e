/**
 * From readings to a value with its uncertainty: statistics of short series, standard uncertainties and their
 * combination (JCGM 100:2008), draws (JCGM 101:2008), tests for trend and outliers. May touch quantities and
 * outcomes.
 */
@org.jspecify.annotations.NullMarked
package shimwright.mechanics.measure;
