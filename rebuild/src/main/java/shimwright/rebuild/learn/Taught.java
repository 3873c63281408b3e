package shimwright.rebuild.learn;

import java.util.List;
import shimwright.rebuild.job.Job;

/**
 * What jobs that were handed back teach the next.
 *
 * @param memories by the place where they matter
 * @param figures their numbers, to stand in a row with one another
 * @param wished what their clearances took from the drawer and wished for
 * @param outlooks their verdicts, and what they came back for
 */
public record Taught(Memories memories, List<Figure> figures, List<ShimWish> wished, List<Outlook> outlooks) {
    public Taught {
        figures = List.copyOf(figures);
        wished = List.copyOf(wished);
        outlooks = List.copyOf(outlooks);
    }

    /** What a job teaches. */
    public static Taught of(Job job) {
        return new Taught(Memories.of(job), Figure.of(job), ShimWish.of(job), Outlook.of(job));
    }

    /** All of several jobs, in their order. */
    public static Taught joined(List<Taught> all) {
        return new Taught(
                Memories.joined(all.stream().map(Taught::memories).toList()),
                all.stream().flatMap(one -> one.figures().stream()).toList(),
                all.stream().flatMap(one -> one.wished().stream()).toList(),
                all.stream().flatMap(one -> one.outlooks().stream()).toList());
    }
}
