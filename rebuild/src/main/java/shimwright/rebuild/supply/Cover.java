package shimwright.rebuild.supply;

import java.util.List;
import java.util.Map;

/**
 * Where what is needed comes from.
 *
 * @param kits how many of each kit, by its number
 * @param singles single parts to buy besides
 * @param without needs that no kit and no list has
 * @param price of all of it; what is in {@code without} is not in it
 * @param surplus pieces in the kits that nothing needs
 */
public record Cover(Map<String, Integer> kits, List<Single> singles, List<Need> without, double price, int surplus) {
    public Cover {
        kits = Map.copyOf(kits);
        singles = List.copyOf(singles);
        without = List.copyOf(without);
    }

    /**
     * A part bought by itself.
     *
     * @param pieces how many, beside what kits bring
     * @param price of one
     * @param from supplier; empty where nobody said
     */
    public record Single(Need need, int pieces, double price, String from) {}
}
