package shimwright.mechanics.axial.reading;

/** Whether a series of rounds has come to rest. Only a settled series proves anything. */
public enum Seating {
    SETTLED,
    CLIMBING,
    FALLING,
    SCATTERED,
    TOO_FEW
}
