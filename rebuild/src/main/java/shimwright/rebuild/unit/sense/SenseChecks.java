package shimwright.rebuild.unit.sense;

import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.fault.SourcePlaces;
import shimwright.rebuild.unit.model.UnitType;

/** Limits from elsewhere are not trusted: what was read must make sense as well. */
public final class SenseChecks {
    private SenseChecks() {}

    /** Everything that was read without a problem is judged; what was not is passed over. */
    public static void check(UnitType type, SourcePlaces places, ProblemCollector problems) {
        SenseContext context = new SenseContext(type, places, problems, new VariantTypes(type));
        new HeadSense(context).check();
        new ClearanceSense(context).check();
        new SettingOrderSense(context).check();
        new LimitSense(context).check();
        new PartSense(context).check();
        new JointSense(context).check();
        new StepSense(context).check();
        new VariantSense(context).check();
    }
}
