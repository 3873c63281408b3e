package shimwright.bench.picture.part;

/** How a part is drawn: what it looks like, whatever its name. */
enum PartForm {
    BALL_BEARING,
    ANGULAR_BEARING,
    ROLLER_BEARING,
    TAPER_BEARING,
    TAPER_CONE,
    TAPER_CUP,
    NEEDLE_CAGE,
    NEEDLE_BUSH,
    NEEDLE_BEARING,
    THRUST_NEEDLES,
    THRUST_BALL,
    LIP_SEAL,
    O_RING,
    SHAFT_RING,
    BORE_RING,
    RING,
    SHIM,
    NUT,
    PLUG,
    GEAR,
    BEVEL_GEAR,
    HUB,
    SLIDING_SLEEVE,
    BLOCKER_RING,
    BALL,
    PIN,
    SPRING_PIN,
    KEY,
    SCREW,
    SOCKET_SCREW,
    SPLINE,
    SHAFT,
    TURNED,
    FLANGE,
    TUBE,
    FORK,
    RAIL,
    LEVER,
    HOUSING,
    PLATE,
    SPRING,
    DETENT,
    HUB_KEYS,
    SWITCH,
    BREATHER,
    MAGNET,
    UNKNOWN;

    /** True where only an outline can be drawn, which says nothing of sizes. */
    boolean outline() {
        return compareTo(FLANGE) >= 0;
    }
}
