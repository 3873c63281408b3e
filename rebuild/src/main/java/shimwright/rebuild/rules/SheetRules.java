package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.registry.Registry;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.sheet.JobSheets;
import shimwright.rebuild.workbench.Workbench;

/** What forbids keeping a worksheet that was worked out for a job. */
final class SheetRules {
    private SheetRules() {}

    static List<Refusal> worked(Workbench bench, Entry.SheetWorked e) {
        List<Refusal> refusals = new ArrayList<>();
        if (Registry.find(e.sheet()).isEmpty()) {
            refusals.add(new Refusal("sheet", "worksheet", "there is no such worksheet here", "Go back to the step"));
        }
        if (!JobSheets.has(bench, e.about())) {
            refusals.add(new Refusal("about", e.about(), "this unit has no such thing", "Go back to the step"));
        }
        if (!e.step().isEmpty() && bench.unit().findStep(e.step()).isEmpty()) {
            refusals.add(new Refusal("step", "step " + e.step(), "this unit has no such step", "Go back to the plan"));
        }
        return refusals;
    }
}
