package shimwright.bench.web.job;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.WearLimit;

/** Small shapes that templates read. */
public final class WearRows {
    private WearRows() {}

    /** One wear check with what was found and decided. */
    public record WearRow(WearLimit wear, List<Job.Said<Entry.Found>> found, Optional<Job.Said<Entry.Judged>> judged) {
        /** What it is when new, one size or from one to another. */
        public String asNew() {
            return wear.asNew().stream().map(Quantity::text).collect(Collectors.joining(" to "));
        }
    }
}
