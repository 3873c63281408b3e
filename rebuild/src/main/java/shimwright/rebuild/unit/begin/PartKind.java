package shimwright.rebuild.unit.begin;

/**
 * What a part is, for the usual minutes of fitting it and what it needs.
 *
 * <p>Minutes: common practice, no source; the shop's own times take their place after the first job.
 */
enum PartKind {
    CASTING(5),
    SHAFT(2),
    FIXED_GEAR(2),
    WHEEL(2),
    NEEDLES(2),
    CONE(4),
    BALL(4),
    HUB(4),
    SLEEVE(2),
    RING(1),
    WASHER(1),
    SNAP_RING(2),
    NUT(4),
    SHIM(1),
    CUP(4),
    SEAL(4),
    SMALL(2),
    FORK(3),
    RAIL(4),
    PLUG(1);

    private final int minutes;

    PartKind(int minutes) {
        this.minutes = minutes;
    }

    int minutes() {
        return minutes;
    }

    /** True for what is renewed whenever it has been out. */
    boolean renewed() {
        return this == SEAL || this == SNAP_RING || this == NUT;
    }
}
