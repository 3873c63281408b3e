package shimwright.mechanics.tooth;

/** Which way the teeth point. */
public enum Side {
    /** A shaft or an outside gear: pins lie outside, the arc is the tooth. */
    EXTERNAL(1),
    /** A hub or an inside gear: pins lie inside, the arc is the space. */
    INTERNAL(-1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** 1 outside, −1 inside. */
    int sign() {
        return sign;
    }
}
