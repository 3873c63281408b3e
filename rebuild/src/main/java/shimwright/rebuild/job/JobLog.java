package shimwright.rebuild.job;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** The append-only log. What {@link #append(List, Heads)} has answered is on the disk and stays there. */
public interface JobLog {
    /** The stream of the shop itself: drawer and gauges. */
    String SHOP = "shop";

    /**
     * Keeps an act: all its entries one behind the other, synced before it returns, or none.
     *
     * <p>An act whose ids are all kept with the same streams and bodies is a post repeated: it answers with the kept
     * entries and writes nothing, whatever the heads. Otherwise it answers {@link AppendResult.Moved} and writes nothing when
     * one of them is not the head any more. Rules are asked before, of an immutable look at those heads.
     *
     * @param act at least one entry, no id twice, of one stream or several
     * @param heads the heads on which it was decided
     * @return refused: an id that is kept with another body, an envelope that cannot be printed, a disk that does not take it
     */
    Outcome<AppendResult> append(List<Draft> act, Heads heads);

    /** The kept entry of an id. */
    Optional<LogEntry> find(String id);

    /**
     * The entries of a stream that follow {@code after}, in order, so that a fold can go on from where it stood.
     *
     * @param after a head that this stream had once; {@link Head#EMPTY} for all entries
     * @throws StoreFailure when they do not follow from it, or one of them not from the one before
     */
    List<LogEntry> read(String stream, Head after);

    /**
     * The entries of all streams that follow {@code after}, in the order of the log: what came since something was worked
     * out, also from other benches.
     *
     * @param after a head that the log had once; {@link Head#EMPTY} for its beginning
     * @param atMost how many, at least 1
     * @throws StoreFailure when they do not follow from it, or one of them not from the one before
     */
    List<LogEntry> since(Head after, int atMost);

    /** All streams that have entries, in order of their first entry. */
    List<String> streams();

    /** The head of the whole log. */
    Head head();

    /** When the last entry of all streams was kept, by the clock of that moment; empty for a log without any. */
    Optional<Instant> lastKept();

    /** The head of one stream. */
    Head head(String stream);

    /** All entries of a stream in order. */
    default List<LogEntry> read(String stream) {
        return read(stream, Head.EMPTY);
    }

    /**
     * Keeps an entry that its own stream alone can forbid.
     *
     * @param rules what forbids the entry, given the stream as it stands; asked again when the stream went on meanwhile
     */
    default Outcome<LogEntry> append(Draft draft, Function<List<LogEntry>, List<Refusal>> rules) {
        while (true) {
            List<LogEntry> stream = read(draft.stream());
            List<Refusal> forbidden = find(draft.id()).isPresent() ? List.of() : rules.apply(stream);
            if (!forbidden.isEmpty()) {
                return Outcome.refused(forbidden);
            }
            Outcome<AppendResult> done = append(List.of(draft), Heads.of(draft.stream(), Head.of(stream)));
            if (!(done instanceof Outcome.Ok<AppendResult> ok)) {
                return Outcome.refused(done.refusals());
            }
            if (ok.value() instanceof AppendResult.Entries kept) {
                return Outcome.ok(kept.entries().get(0));
            }
        }
    }
}
