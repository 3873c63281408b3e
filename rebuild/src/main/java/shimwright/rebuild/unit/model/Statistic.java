package shimwright.rebuild.unit.model;

/** What of several readings is judged against the limits. */
public enum Statistic {
    /** Every reading by itself. */
    EACH,
    /** The mean of the readings of a piece. */
    MEAN,
    /** Largest less smallest of the readings of a piece. */
    RANGE,
    /** The first reading less the second: a gap from two depths. With two named pieces the first less the second. */
    DIFFERENCE
}
