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
public record RemovedParts(String id, String name, List<String> items) {
    public RemovedParts {
        items = List.copyOf(items);
    }

    /** A strip-down as the job log has it, in order; entries that name nothing are left out. Ids are O1, O2 … */
    public static List<RemovedParts> of(List<Entry.TakenOff> entries) {
        List<RemovedParts> offs = new ArrayList<>();
        for (Entry.TakenOff entry : entries) {
            if (!entry.gone().isBlank()) {
                offs.add(new RemovedParts("O" + (offs.size() + 1), entry.gone().strip(), entry.items()));
            }
        }
        return List.copyOf(offs);
    }
}
