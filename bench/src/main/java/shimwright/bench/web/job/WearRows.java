package shimwright.bench.web.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.WearLimit;

/** Small shapes that templates read. */
public final class WearRows {
    private WearRows() {}

    /** One wear check with what was found, and the verdict on it while it stands. */
    public record WearRow(WearLimit wear, List<Job.Said<Entry.Found>> found, Optional<Job.Said<Entry.Judged>> judged) {
        /** Whether what was found last waits for a verdict. */
        public boolean open() {
            return judged.isEmpty()
                    && !found.isEmpty()
                    && Findings.needsVerdict(found.get(found.size() - 1).what());
        }

        /** What it is when new, one size or from one to another. */
        public String asNew() {
            return wear.asNew().stream().map(Quantity::text).collect(Collectors.joining(" to "));
        }
    }
}
