package shimwright.rebuild.act;

import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.workbench.Workbench;

/** Hand-back and what comes after. */
public final class EndActs {
    private EndActs() {}

    /** The unit goes back to its owner. */
    @Makes(Entry.HandedBack.class)
    public record HandBack(
            @Given(value = "warranty", missing = "Say what you stand behind and for how long")
            String warranty,

            @Given("advice to the owner") String advice,
            @Given("remark") String remark)
            implements Act.OfJob {
        @Override
        public Outcome<Decided> on(Workbench bench, Surroundings around) {
            return StoryActs.kept(
                    bench, new Entry.HandedBack(warranty, advice, remark), "Handed back. The record is closed");
        }
    }

    /** What became of the unit after. */
    @Makes(Entry.FollowedUp.class)
    public record FollowUp(
            @Given(value = "what was said", missing = "Say what the owner said, or what you saw")
            String said,

            @Given("remark") String remark)
            implements Act.OfJob {
        @Override
        public Outcome<Decided> on(Workbench bench, Surroundings around) {
            return StoryActs.kept(bench, new Entry.FollowedUp(said, remark), "Kept with the job");
        }
    }
}
