package shimwright.rebuild.plan.people;

import java.util.List;
import java.util.Map;
import shimwright.rebuild.unit.model.Step;

/**
 * The rest of a build with so many people, as if it were done in one go.
 *
 * @param persons how many
 * @param seconds until the last step is done
 * @param bound seconds that no way of sharing the work undercuts
 * @param proven true only where bound and seconds are equal
 * @param bounds what each bound alone says, in seconds, by what it rests on
 * @param parts who does what when, by begin
 * @param fetched the steps for which more people are needed than there are, so that help must be fetched
 */
public record CrewPlan(
        int persons,
        double seconds,
        double bound,
        boolean proven,
        Map<Why, Double> bounds,
        List<TimetableBar> parts,
        List<Step> fetched) {
    /** What a bound rests on. */
    public enum Why {
        /** All work, turning with it, shared out evenly. */
        WORK,
        /** What can only be done on the case, one thing after the other, with the cheapest turns. */
        CASE,
        /** What the search proved with turns that take time but no hands; the longest chain of waits is part of it. */
        SEARCH
    }

    /** Seconds by which another way of sharing could be shorter at most. */
    public double gap() {
        return proven ? 0 : Math.max(0, seconds - bound);
    }
}
