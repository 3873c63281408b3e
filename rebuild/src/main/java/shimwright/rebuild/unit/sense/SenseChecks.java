package shimwright.rebuild.unit.sense;

import shimwright.rebuild.unit.fault.Troubles;
import shimwright.rebuild.unit.fault.Whereabouts;
import shimwright.rebuild.unit.model.UnitType;

/** Limits from elsewhere are not trusted: what was read must make sense as well. */
public final class SenseChecks {
    private SenseChecks() {}

    /** Everything that was read without a problem is judged; what was not is passed over. */
    public static void check(UnitType type, Whereabouts whereabouts, Troubles troubles) {
        Ground ground = new Ground(type, whereabouts, troubles);
        new HeadSense(ground).check();
        new ClearanceSense(ground).check();
        new LimitSense(ground).check();
        new PartSense(ground).check();
        new StepSense(ground).check();
        new VariantSense(ground).check();
    }
}
