package shimwright.mechanics.fit;

/** Ways to chill the inner part, mildest first. */
public enum Chilling {
    NONE(PressFitSolution.ROOM),
    FREEZER(255.15),
    /** Solid carbon dioxide, −78.5 °C; the part is taken to reach −70 (shop practice). */
    DRY_ICE(203.15),
    /** Liquid nitrogen, −196 °C; the part is taken to reach −190 (shop practice). */
    LIQUID_NITROGEN(83.15);

    private final double reached;

    Chilling(double reached) {
        this.reached = reached;
    }

    /** Temperature the part reaches, K; for {@link #NONE} that of the room. */
    double reached(double room) {
        return this == NONE ? room : Math.min(room, reached);
    }

    /** Words for a sentence. */
    String words() {
        return switch (this) {
            case NONE -> "not chilled";
            case FREEZER -> "from the freezer";
            case DRY_ICE -> "from dry ice";
            case LIQUID_NITROGEN -> "from liquid nitrogen";
        };
    }
}
