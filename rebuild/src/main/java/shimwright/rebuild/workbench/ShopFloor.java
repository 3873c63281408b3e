package shimwright.rebuild.workbench;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.job.Shop;

/**
 * The shop outside of any job.
 *
 * @param shop drawer and gauges
 * @param shelf the unit files that a new job can stand on, by the id of the unit type
 * @param jobs ids of all jobs there are
 */
public record ShopFloor(Shop shop, Map<String, PinnedUnit> shelf, Set<String> jobs) {

    /** The unit file of a type; empty where this shop has none. */
    public Optional<PinnedUnit> unit(String type) {
        return Optional.ofNullable(shelf.get(type));
    }
}
