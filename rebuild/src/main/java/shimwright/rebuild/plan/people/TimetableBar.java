package shimwright.rebuild.plan.people;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.unit.model.Step;

/**
 * One bar of who does what when.
 *
 * @param step the step; empty where the case is turned over
 * @param words what is done
 * @param begin seconds from now
 * @param end seconds from now
 * @param people who does it, 0 for the first
 */
public record TimetableBar(Optional<Step> step, String words, double begin, double end, List<Integer> people) {
    public TimetableBar {
        people = List.copyOf(people);
    }
}
