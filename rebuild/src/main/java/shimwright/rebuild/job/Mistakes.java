package shimwright.rebuild.job;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which entries were struck as mistakes. A strike can itself be a mistake and be struck: then what it struck counts again. */
public final class Mistakes {
    private static final LastAsked<Set<String>> LAST = new LastAsked<>();

    private Mistakes() {}

    /** The ids of the entries of a job that do not count, strikes that were struck among them. */
    public static Set<String> of(Job job) {
        return LAST.of(job.entries(), job.entries(), () -> Collections.unmodifiableSet(of(job.entries())));
    }

    /**
     * The ids of the entries of one job that do not count, strikes that were struck among them.
     *
     * @param entries in order
     */
    static Set<String> of(List<LogEntry> entries) {
        Set<String> mistakes = new HashSet<>();
        for (int i = entries.size() - 1; i >= 0; i--) {
            LogEntry kept = entries.get(i);
            if (kept.body() instanceof Entry.EntryStruck struck
                    && !mistakes.contains(kept.draft().id())) {
                mistakes.add(struck.entry());
            }
        }
        return mistakes;
    }
}
