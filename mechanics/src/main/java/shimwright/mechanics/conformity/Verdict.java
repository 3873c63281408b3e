package shimwright.mechanics.conformity;

/** The three outcomes of a reading against its limits. */
public enum Verdict {
    /** Proven to lie within the limits. */
    IN,
    /** Outside the limits. */
    OUT,
    /** Inside by its nominal, but the doubt is too large to call it proven. */
    NOT_PROVEN
}
