package shimwright.rebuild.act;

/** Yes or no. */
public enum Answer {
    YES,
    NO
}
