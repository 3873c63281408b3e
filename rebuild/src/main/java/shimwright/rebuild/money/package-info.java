/**
 * What a job may cost, what its owner said to that, and what it came to: hours from the log, prices, chances. May touch unit, job, supply,
 * complaint and learn; knows no tax and takes no money.
 */
@org.jspecify.annotations.NullMarked
package shimwright.rebuild.money;
