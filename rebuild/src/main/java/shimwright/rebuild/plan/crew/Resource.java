package shimwright.rebuild.plan.crew;

/**
 * Something that is used and given back: people, a place, a tool.
 *
 * @param id unique within the project
 * @param words what it is, as refusals name it
 * @param capacity how much of it is there at any time, 1 or more
 */
public record Resource(String id, String words, int capacity) {
    public Resource {
        if (capacity < 1) {
            throw new IllegalArgumentException("resource " + id + " of capacity " + capacity);
        }
    }
}
