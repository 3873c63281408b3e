package shimwright.mechanics.worksheet;

/** How a value of a worksheet is built. */
public enum Shape {
    /** A quantity, a {@code double}. */
    QUANTITY,
    /** A quantity that may be absent, a {@code Double}. */
    OPTIONAL_QUANTITY,
    WHOLE_NUMBER,
    YES_NO,
    CHOICE,
    TEXT,
    LIST,
    RECORD,
    /** A {@link shimwright.mechanics.measure.Budget}; outputs only. */
    BUDGET
}
