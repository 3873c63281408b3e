package shimwright.rebuild.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * The pieces that are in the unit for good, by shim position: those chosen, or said to be in for a final reading, whichever
 * was said last and for whichever clearance. Trial pieces are none of them.
 */
public final class FittedPieces {
    private static final LastAsked<List<LogEntry>> PUTTING = new LastAsked<>();

    private FittedPieces() {}

    /** As the job stands. */
    public static Map<String, List<PieceIn>> now(Job job) {
        return before(job, Long.MAX_VALUE);
    }

    /**
     * As the job stood just before an entry.
     *
     * @param number of the entry
     */
    public static Map<String, List<PieceIn>> before(Job job, long number) {
        Map<String, List<PieceIn>> in = new LinkedHashMap<>();
        for (LogEntry kept : putting(job)) {
            if (kept.number() >= number) {
                break;
            }
            in.putAll(put(kept.body()));
        }
        return in;
    }

    /** The entries of a job that put pieces in for good and count, in order. */
    static List<LogEntry> putting(Job job) {
        return PUTTING.of(job.entries(), job.entries(), () -> {
            Set<String> mistakes = Mistakes.of(job);
            return job.entries().stream()
                    .filter(kept -> !put(kept.body()).isEmpty()
                            && !mistakes.contains(kept.draft().id()))
                    .toList();
        });
    }

    /** The pieces that an entry puts in for good, by position. */
    static Map<String, List<PieceIn>> put(Entry entry) {
        if (entry instanceof Entry.PackChosen chosen) {
            return Map.of(chosen.position(), chosen.pieces());
        }
        return entry instanceof Entry.PackIn in && in.phase() != Phase.TRIAL ? in.pieces() : Map.of();
    }
}
