package shimwright.bench.desk;

import java.util.Map;
import shimwright.mechanics.outcome.Outcome;

/** Where the unit files of a shop lie. */
public interface UnitSource {
    /** The files as they lie there now. */
    UnitShelf.Files files();

    /**
     * Lays a unit file there, in place of the one of the same unit type.
     *
     * @param type id of the unit type
     * @param content its bytes
     * @return the name under which it lies there; refused where the disk does not take it
     */
    Outcome<String> put(String type, byte[] content);

    /** The unit files that come with the program, by name: examples to look at and to begin from. */
    Map<String, byte[]> shipped();
}
