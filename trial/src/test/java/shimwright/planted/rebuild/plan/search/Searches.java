package shimwright.planted.rebuild.plan.search;

/** Stands for the search. */
public class Searches {}
