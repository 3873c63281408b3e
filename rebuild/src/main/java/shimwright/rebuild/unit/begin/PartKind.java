package shimwright.rebuild.unit.begin;

/**
 * What a part is, for the usual minutes of fitting it and for how it is drawn.
 *
 * <p>Minutes: common practice, no source; the shop's own times take their place after the first job.
 */
enum PartKind {
    CASTING(5, "", 0, 0, 0),
    SHAFT(2, "", 0, 0, 0),
    FIXED_GEAR(2, "gear", 16, 30, 70),
    WHEEL(2, "gear", 18, 36, 80),
    NEEDLES(2, "needles", 18, 30, 36),
    CONE(4, "taper_cone", 14, 30, 42),
    BALL(4, "roller_outer", 16, 30, 62),
    HUB(4, "hub", 18, 30, 60),
    SLEEVE(2, "sleeve", 24, 60, 76),
    RING(1, "ring", 6, 54, 62),
    WASHER(1, "washer", 4, 31, 50),
    SNAP_RING(2, "snap_ring", 2, 29, 38),
    NUT(4, "nut", 8, 28, 40),
    SHIM(1, "shim", 1, 44, 60),
    CUP(4, "", 0, 0, 0),
    SEAL(4, "", 0, 0, 0),
    SMALL(2, "", 0, 0, 0),
    FORK(3, "", 0, 0, 0),
    RAIL(4, "", 0, 0, 0),
    PLUG(1, "", 0, 0, 0);

    private final int minutes;
    private final String shape;
    private final int length;
    private final int inner;
    private final int outer;

    PartKind(int minutes, String shape, int length, int inner, int outer) {
        this.minutes = minutes;
        this.shape = shape;
        this.length = length;
        this.inner = inner;
        this.outer = outer;
    }

    int minutes() {
        return minutes;
    }

    /** How it is drawn; empty where it is not. */
    String shape() {
        return shape;
    }

    /** Length along the shaft in the scheme, mm. */
    int length() {
        return length;
    }

    /** Inner and outer diameter in the scheme, mm. */
    String diameters() {
        return inner + " " + outer + " mm";
    }

    /** True for what is renewed whenever it has been out. */
    boolean renewed() {
        return this == SEAL || this == SNAP_RING || this == NUT;
    }
}
