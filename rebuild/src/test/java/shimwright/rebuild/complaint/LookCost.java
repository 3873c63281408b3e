package shimwright.rebuild.complaint;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What an order to look costs, reckoned step by step and not as {@link LookOrder} does. */
final class LookCost {
    private LookCost() {}

    /** Mean minutes until the cause is found by looks in that order; a cause that its look misses counts the whole. */
    static double mean(CauseTables tables, List<Suspect> order) {
        Set<String> made = new LinkedHashSet<>();
        Set<String> looked = new LinkedHashSet<>();
        double until = 0;
        double sum = 0;
        double missed = 0;
        for (Suspect suspect : order) {
            if (looked.add(suspect.look())) {
                until += opened(tables, made, suspect.after()) + suspect.minutes();
            }
            sum += suspect.chance() * suspect.sees() * until;
            missed += suspect.chance() * (1 - suspect.sees());
        }
        return sum + missed * until;
    }

    private static double opened(CauseTables tables, Set<String> made, String depth) {
        if (depth.isEmpty() || !made.add(depth)) {
            return 0;
        }
        StripDepth opening = tables.opening(depth).orElseThrow();
        return opening.minutes() + opened(tables, made, opening.after());
    }
}
