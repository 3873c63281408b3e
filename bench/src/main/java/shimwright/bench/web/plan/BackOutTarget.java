package shimwright.bench.web.plan;

/**
 * Something one can want to get back to.
 *
 * @param to its address: item:ID, step:ID or clearance:ID
 * @param name what it is
 */
public record BackOutTarget(String to, String name) {}
