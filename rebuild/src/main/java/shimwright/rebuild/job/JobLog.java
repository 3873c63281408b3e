package shimwright.rebuild.job;

import java.util.List;
import java.util.function.Function;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** The append-only log. What {@link #append} has answered is on the disk and stays there. */
public interface JobLog {
    /** The stream of the shop itself: drawer and gauges. */
    String SHOP = "shop";

    /**
     * Keeps an entry: synced before it returns.
     *
     * @param draft the entry; an id that is already kept with the same stream and body answers with the kept entry and
     *     writes nothing, with another body it is refused
     * @param rules what forbids the entry, given the stream as it stands; asked under the writer's lock
     */
    Outcome<Kept> append(Draft draft, Function<List<Kept>, List<Refusal>> rules);

    /** All entries of a stream in order. */
    List<Kept> read(String stream);

    /** All streams that have entries, in order of their first entry. */
    List<String> streams();

    /** The head of the whole log. */
    Head head();

    /** The head of one stream. */
    Head head(String stream);
}
