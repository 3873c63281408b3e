package shimwright.planted.rebuild.rules;

import shimwright.planted.rebuild.plan.Planner;

/** Breaks: no plan is searched while an entry is decided. */
public class SearchesAPlan {
    public int steps() {
        return Planner.lay();
    }
}
