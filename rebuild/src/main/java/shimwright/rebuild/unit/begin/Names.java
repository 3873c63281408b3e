package shimwright.rebuild.unit.begin;

/** Names of gears in words and in ids. */
final class Names {
    private static final String[] ORDINALS = {"reverse", "1st", "2nd", "3rd", "4th", "5th", "6th", "7th"};

    private Names() {}

    /** The gear in words; 0 is reverse. */
    static String gear(int gear) {
        return gear >= 0 && gear < ORDINALS.length ? ORDINALS[gear] : gear + "th";
    }

    /** The gear in an id; 0 is reverse. */
    static String mark(int gear) {
        return gear == 0 ? "R" : String.valueOf(gear);
    }

    /** The gears of a hub in an id; a gear below 0 is none. */
    static String marks(int[] hub) {
        return mark(hub[0]) + (hub[1] < 0 ? "" : mark(hub[1]));
    }
}
