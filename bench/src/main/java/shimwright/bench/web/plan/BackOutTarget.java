package shimwright.bench.web.plan;

/**
 * Something one can want to get back to.
 *
 * @param to its address: item:ID, step:ID or clearance:ID
 * @param name what it is
 */
public record BackOutTarget(String to, String name) {
    private static final String ITEM = "item:";

    /** The id of the item that an address names; empty where it names none. */
    public static String itemOf(String address) {
        return address.startsWith(ITEM) ? address.substring(ITEM.length()) : "";
    }
}
