package shimwright.rebuild.act;

import java.util.List;
import shimwright.rebuild.job.Entry;

/**
 * What an act comes to.
 *
 * @param stream where its entries go
 * @param entries at least one, in order; all are kept or none
 * @param said a short sentence of what is kept
 */
public record ActResult(String stream, List<Entry> entries, String said) {
    public ActResult {
        entries = List.copyOf(entries);
        if (entries.isEmpty()) {
            throw new IllegalArgumentException("an act without an entry");
        }
    }
}
