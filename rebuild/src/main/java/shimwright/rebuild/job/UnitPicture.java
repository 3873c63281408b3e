package shimwright.rebuild.job;

/**
 * A picture that goes with a unit type, by the hash of its content.
 *
 * @param about {@code item ID}, {@code step ID} or {@code unit}
 * @param caption in somebody's words; may be empty
 * @param from the shop that it came from; empty where that one does not say
 */
public record UnitPicture(String picture, String about, String caption, String from) {
    /** What is shown of the unit as a whole. */
    public static final String UNIT = "unit";

    /** What is shown of a part. */
    public static String item(String id) {
        return "item " + id;
    }

    /** What is shown of a step. */
    public static String step(String id) {
        return "step " + id;
    }
}
