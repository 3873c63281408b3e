package shimwright.mechanics.bearing;

/** Hand of a helix, as of a screw thread. */
public enum Hand {
    RIGHT(1),
    LEFT(-1);

    private final int sign;

    Hand(int sign) {
        this.sign = sign;
    }

    int sign() {
        return sign;
    }
}
