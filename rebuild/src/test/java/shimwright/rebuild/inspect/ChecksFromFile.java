package shimwright.rebuild.inspect;

import shimwright.rebuild.unit.file.UnitFileTexts;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/** Checks and wear limits read from a unit file, as a shop would write them. */
final class ChecksFromFile {
    private static final String ACCEPTED = "clearance: c}\n";

    private static final String EARLIER = "      - {id: y, what: y as read before, kind: length, upper: 100 mm}\n";

    private ChecksFromFile() {}

    /** The check x of a hold point with these keys. */
    static Check check(String keys) {
        return unit(UnitFileTexts.with(
                        ACCEPTED, ACCEPTED + "      - {id: x, what: x as read, " + keys + "}\n" + EARLIER))
                .holdPoints()
                .get(0)
                .checks()
                .get(1);
    }

    /** The wear limit X1 with these keys. */
    static WearLimit wear(String keys) {
        String fresh = "wear_limits:\n  - {id: X1, what: x as worn, " + keys + ", how: so, origin: invented}\n";
        return unit(UnitFileTexts.with("wear_limits:\n", fresh)).wearLimits().get(0);
    }

    private static UnitType unit(String text) {
        return UnitFiles.read("written.yaml", text).outcome().orElseThrow();
    }
}
