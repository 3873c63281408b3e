package shimwright.rebuild.act;

/** Yes or no. */
public enum YesNo {
    YES,
    NO
}
