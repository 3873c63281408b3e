package shimwright.rebuild.part;

import java.util.List;
import java.util.OptionalDouble;
import shimwright.mechanics.quantity.Kind;

/**
 * A part that a standard describes.
 *
 * @param family what it is
 * @param designation as the standard or the trade calls it
 * @param sizes its dimensions; of some not all are known
 * @param standard standard and, where there are several, all of them; empty where the sizes were taken from the call-out
 * @param agreement how far the tables agree
 */
public record StandardPart(Family family, String designation, List<Size> sizes, String standard, Agreement agreement) {
    public StandardPart {
        sizes = List.copyOf(sizes);
    }

    /**
     * One dimension.
     *
     * @param column its column in the table
     * @param words what it is
     * @param value m, rad, m², kg or a plain number
     * @param kind what the value is
     */
    public record Size(String column, String words, double value, Kind kind) {}

    /**
     * How far a row may be trusted.
     *
     * @param sources how many tables agree; 0 where the sizes were taken from the call-out
     * @param single columns, by their short names, that one table alone has
     * @param differs where tables do not agree, and what was kept; may be empty
     */
    public record Agreement(int sources, String single, String differs) {
        /** One sentence for the page and the record. */
        public String sentence() {
            if (sources == 0) {
                return "Sizes as the call-out says; no table has this one.";
            }
            String agree = sources == 1 ? "One table only." : sources + " tables agree.";
            String alone = single.isEmpty() ? "" : " One table alone for " + String.join(", ", single.split(" ")) + ".";
            return agree + alone + (differs.isEmpty() ? "" : " They differ: " + differs + ".");
        }
    }

    /** The value of a column; empty where it is not known. */
    public OptionalDouble size(String column) {
        return sizes.stream()
                .filter(size -> size.column().equals(column))
                .mapToDouble(Size::value)
                .findFirst();
    }
}
