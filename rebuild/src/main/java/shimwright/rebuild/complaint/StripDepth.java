package shimwright.rebuild.complaint;

import java.util.List;

/**
 * How far a box must be apart for a look.
 *
 * @param id short
 * @param name in words
 * @param minutes what it takes from {@code after} to here
 * @param after the opening before it, by id; empty for the vehicle, where nothing is taken out
 * @param ends causes whose look cannot be had any more from here on, by id
 */
public record StripDepth(String id, String name, double minutes, String after, List<String> ends) {
    public StripDepth {
        ends = List.copyOf(ends);
    }

    /** One that ends no look. */
    public StripDepth(String id, String name, double minutes, String after) {
        this(id, name, minutes, after, List.of());
    }
}
