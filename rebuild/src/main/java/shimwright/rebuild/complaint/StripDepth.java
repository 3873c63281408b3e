package shimwright.rebuild.complaint;

/**
 * How far a box must be apart for a look.
 *
 * @param id short
 * @param name in words
 * @param minutes what it takes from {@code after} to here
 * @param after the opening before it, by id; empty for the vehicle, where nothing is taken out
 */
public record StripDepth(String id, String name, double minutes, String after) {}
