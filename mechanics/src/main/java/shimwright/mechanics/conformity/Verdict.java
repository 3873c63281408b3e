package shimwright.mechanics.conformity;

/** What a measured value proves. */
public enum Verdict {
    /** Proven within the limits. */
    IN,
    /** Proven outside, or the value itself stands outside. */
    OUT,
    /** The uncertainty covers a limit: neither is proven. */
    NOT_PROVEN
}
