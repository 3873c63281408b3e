package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.edit.Removal;
import shimwright.rebuild.unit.edit.StripDownOrder;

/** The strip-down of a job as a change of its unit file. */
public final class StripDown {
    private StripDown() {}

    /**
     * The order that the strip-down says. An answer that named only what was struck since counts as not given.
     *
     * @param strip what came off, in order, each with its entry
     */
    public static StripDownOrder order(List<Said<Entry.TakenOff>> strip) {
        Map<String, Integer> at = new LinkedHashMap<>();
        List<Removal> off = new ArrayList<>();
        for (Said<Entry.TakenOff> said : strip) {
            Entry.TakenOff one = said.what();
            off.add(new Removal(
                    one.gone(),
                    one.items(),
                    one.inTheWay().stream()
                            .filter(entry -> !entry.equals(Entry.TakenOff.NOTHING))
                            .map(entry -> at.getOrDefault(entry, Removal.STRUCK))
                            .toList(),
                    one.inTheWay().contains(Entry.TakenOff.NOTHING),
                    places(one.asOneWith(), at),
                    new Removal.Found(
                            one.byForce(),
                            one.destroyed(),
                            one.sideUp(),
                            one.fasteners(),
                            one.note(),
                            one.sealedWith())));
            at.put(said.id(), at.size());
        }
        return new StripDownOrder(off);
    }

    private static List<Integer> places(List<String> entries, Map<String, Integer> at) {
        return entries.stream().map(at::get).filter(Objects::nonNull).toList();
    }
}
