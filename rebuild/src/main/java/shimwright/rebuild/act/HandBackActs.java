package shimwright.rebuild.act;

import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.workbench.Workbench;

/** Hand-back and what comes after. */
public final class HandBackActs {
    private HandBackActs() {}

    /** The unit goes back to its owner. */
    @MakesEntries(Entry.HandedBack.class)
    public record HandBack(
            @ActInput(value = "warranty", missing = "Say what you stand behind and for how long")
            String warranty,

            @ActInput("advice to the owner") String advice,
            @ActInput("remark") String remark)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench, new Entry.HandedBack(warranty, advice, remark), "Handed back. The record is closed");
        }
    }

    /** What became of the unit after. */
    @MakesEntries(Entry.FollowedUp.class)
    public record FollowUp(
            @ActInput(value = "what was said", missing = "Say what the owner said, or what you saw")
            String said,

            @ActInput("remark") String remark)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(bench, new Entry.FollowedUp(said, remark), "Kept with the job");
        }
    }
}
