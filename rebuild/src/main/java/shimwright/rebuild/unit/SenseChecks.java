package shimwright.rebuild.unit;

/** Limits from elsewhere are not trusted: what was read must make sense as well. */
final class SenseChecks {
    private SenseChecks() {}

    static void check(UnitType type, Whereabouts whereabouts, Troubles troubles) {
        if (!whereabouts.sound(type) && troubles.count() == 0) {
            throw new IllegalStateException("unsound without a trouble");
        }
    }
}
