package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.List;
import shimwright.rebuild.job.Entry;

/**
 * One thing, or several together, that came off in a strip-down.
 *
 * @param id short and unique within the strip-down
 * @param name what came off, in the words of the person
 * @param items ids of the unit file's items that came off with it; may be empty
 */
public record Off(String id, String name, List<String> items) {
    public Off {
        items = List.copyOf(items);
    }

    /** A strip-down as the job log has it, in order; entries that name nothing are left out. Ids are O1, O2 … */
    public static List<Off> of(List<Entry.TakenOff> entries) {
        List<Off> offs = new ArrayList<>();
        for (Entry.TakenOff entry : entries) {
            if (!entry.gone().isBlank()) {
                offs.add(new Off("O" + (offs.size() + 1), entry.gone().strip(), entry.items()));
            }
        }
        return List.copyOf(offs);
    }
}
