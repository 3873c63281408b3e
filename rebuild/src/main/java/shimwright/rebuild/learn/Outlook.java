package shimwright.rebuild.learn;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/**
 * A verdict of a job that was handed back, and what that unit came back for.
 *
 * @param job its number
 * @param limit by which it was judged, {@link Entry.Judged#PART}, or empty
 * @param items that the piece is made of, by id; empty where all pieces of the limit were judged alike
 * @param failed items for which the unit came back, where it lay in the part or in the work on it
 */
public record Outlook(String job, String limit, Set<String> items, Entry.Decision decision, Set<String> failed) {
    public Outlook {
        items = Set.copyOf(items);
        failed = Set.copyOf(failed);
    }

    /** The verdicts that stand in a job. */
    static List<Outlook> of(Job job) {
        Set<String> failed = new LinkedHashSet<>();
        job.end().returned().keySet().forEach(id -> {
            Said<Entry.ReturnExplained> why = job.end().explained().get(id);
            if (why != null
                    && (why.what().lies() == Entry.LiesIn.THE_PART || why.what().lies() == Entry.LiesIn.OUR_WORK)) {
                failed.addAll(why.what().items());
            }
        });
        return job.judged().values().stream()
                .map(Said::what)
                .map(judged -> new Outlook(
                        job.opened().number(), judged.limit(), items(judged.piece()), judged.decision(), failed))
                .toList();
    }

    private static Set<String> items(String piece) {
        Set<String> items = new LinkedHashSet<>();
        Stream.of(piece.split("\\+"))
                .filter(part -> !part.isEmpty())
                .map(JudgedPiece::item)
                .forEach(items::add);
        return items;
    }

    /** True where the verdict is on this piece, or on all of its limit. */
    public boolean speaksOf(String of, JudgedPiece piece) {
        return piece.items().stream().anyMatch(items::contains)
                || (items.isEmpty() && !limit.isEmpty() && limit.equals(of));
    }

    /** True where the unit came back for one of the items of this piece. */
    public boolean cameBackFor(JudgedPiece piece) {
        return piece.items().stream().anyMatch(failed::contains);
    }
}
