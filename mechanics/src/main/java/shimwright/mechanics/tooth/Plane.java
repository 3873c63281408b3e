package shimwright.mechanics.tooth;

/** The plane in which module and pressure angle are measured; for straight teeth both are the same. */
public enum Plane {
    /** Square to the tooth: the tool's own figures, the usual case. */
    NORMAL,
    /** In the plane of rotation. */
    TRANSVERSE
}
