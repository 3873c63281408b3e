package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.record.Standings.State;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/**
 * The parts that are in a unit, those that came in the same way together.
 *
 * @param how they came to be in it
 * @param parts each by its name with its number
 * @param renewed true where they are new
 */
public record PartsFitted(String how, List<String> parts, boolean renewed) {
    public PartsFitted {
        parts = List.copyOf(parts);
    }

    private record How(String words, boolean renewed) {}

    /** Every part that was put in and is in the unit as it stands, new ones first. */
    public static List<PartsFitted> of(Unit unit, Job job) {
        Set<String> in = unit.itemsIn(job.stepsDone());
        Map<String, State> states = Standings.byItem(unit, job);
        Map<How, List<String>> grouped = new LinkedHashMap<>();
        unit.type().items().stream()
                .filter(item -> in.contains(item.id()) && !item.trial())
                .forEach(item -> grouped.computeIfAbsent(how(job, item, states.get(item.id())), h -> new ArrayList<>())
                        .add(named(item)));
        return Stream.of(true, false)
                .flatMap(renewed -> grouped.entrySet().stream()
                        .filter(group -> group.getKey().renewed() == renewed)
                        .map(group -> new PartsFitted(group.getKey().words(), group.getValue(), renewed)))
                .toList();
    }

    private static String named(Item item) {
        return item.name()
                + (item.quantity() > 1 ? ", " + item.quantity() + " pieces" : "")
                + (item.part().isBlank() ? "" : " (" + item.part() + ")");
    }

    private static How how(Job job, Item item, @Nullable State state) {
        Optional<Said<Entry.Sent>> came = job.sent().values().stream()
                .filter(sent -> sent.what().items().contains(item.id()) && job.arrived(sent.id()))
                .filter(sent -> !job.supply().sentBack().containsKey(sent.id()))
                .reduce((first, second) -> second);
        if (came.isPresent()) {
            return new How(arrived(job, came.get()), came.get().what().work().isEmpty());
        }
        Optional<Said<Entry.LiesHere>> here = job.supply().here().stream()
                .filter(said -> said.what().items().contains(item.id()))
                .reduce((first, second) -> second);
        if (here.isPresent()) {
            return new How("Lay here: " + here.get().what().measured(), true);
        }
        if (state == State.REPLACE) {
            return new How("To be new; where they came from is not on the record", true);
        }
        if (state == State.REWORK) {
            return new How("Reworked", false);
        }
        return state == null || state == State.NOT_LOOKED_AT || state == State.OPEN
                ? new How("Put back; nobody judged them on this record", false)
                : new How("Looked at and kept", false);
    }

    private static String arrived(Job job, Said<Entry.Sent> sent) {
        Said<Entry.CameBack> came = job.cameBack().get(sent.id());
        String to = sent.what().to();
        return (sent.what().work().isEmpty() ? "Ordered" : "Worked on")
                + (to.isBlank() ? "" : (sent.what().work().isEmpty() ? " from " : " by ") + to)
                + (came == null || came.what().measured().isBlank()
                        ? ""
                        : ": " + came.what().measured());
    }
}
