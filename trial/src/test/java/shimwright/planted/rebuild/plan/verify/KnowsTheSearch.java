package shimwright.planted.rebuild.plan.verify;

import shimwright.planted.rebuild.plan.search.Searches;

/** Breaks: the check of plans shares nothing with the search. */
public class KnowsTheSearch {
    public Searches searches = new Searches();
}
