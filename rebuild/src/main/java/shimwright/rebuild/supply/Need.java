package shimwright.rebuild.supply;

import java.util.List;

/**
 * Something that a job must have new.
 *
 * @param key part number, or the item's id where it has none
 * @param name in words
 * @param pieces how many
 * @param items of the unit that they are
 * @param why each reason, in words
 * @param check what tells the right one from the likely wrong one; empty where nothing is known
 * @param parts the single parts that it takes the place of
 */
public record Need(
        String key, String name, int pieces, List<String> items, List<String> why, String check, List<String> parts) {
    public Need {
        items = List.copyOf(items);
        why = List.copyOf(why);
        parts = List.copyOf(parts);
    }

    /** What no single part of a unit is said to need. */
    public Need(String key, String name, int pieces, List<String> items, List<String> why, String check) {
        this(key, name, pieces, items, why, check, List.of());
    }

    /** Its part number, where it has one, and its name. */
    public String numbered() {
        return (items.contains(key) ? "" : key + " ") + name;
    }
}
