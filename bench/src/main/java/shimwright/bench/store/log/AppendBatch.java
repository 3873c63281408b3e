package shimwright.bench.store.log;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.EntryCodec;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;

/** The entries of one act, made into texts before the writer's lock is taken, and what is done with them inside it. */
public final class AppendBatch {
    private final List<EntryText> entries;

    private AppendBatch(List<EntryText> entries) {
        this.entries = entries;
    }

    /** Refused with every fault of every envelope; bodies that no program could read back are a bug and throw. */
    public static Outcome<AppendBatch> of(List<Draft> drafts) {
        Set<String> ids = new HashSet<>();
        List<Refusal> faults = new ArrayList<>();
        for (Draft draft : drafts) {
            if (!ids.add(draft.id())) {
                throw new IllegalArgumentException("an act with two entries of the id " + draft.id());
            }
            faults.addAll(faults(draft));
        }
        if (ids.isEmpty()) {
            throw new IllegalArgumentException("an act without entries");
        }
        return faults.isEmpty()
                ? Outcome.ok(new AppendBatch(drafts.stream().map(EntryText::of).toList()))
                : Outcome.refused(faults);
    }

    private static List<Refusal> faults(Draft draft) {
        boolean ofShop = draft.body() instanceof Entry.OfShop;
        if (ofShop != draft.stream().equals(JobLog.SHOP)) {
            throw new IllegalArgumentException(
                    EntryCodec.typeOf(draft.body()) + " does not belong to the stream " + draft.stream());
        }
        List<Refusal> faults = new ArrayList<>();
        addUnlessPlain(faults, "entry id", draft.id());
        addUnlessPlain(faults, "job", draft.stream());
        addUnlessPlain(faults, "person", draft.by());
        if (!draft.device().isEmpty()) {
            addUnlessPlain(faults, "device", draft.device());
        }
        return faults;
    }

    private static void addUnlessPlain(List<Refusal> faults, String place, String text) {
        if (text.isBlank()) {
            faults.add(Refusal.at(place, "nothing is given", "Give it"));
        } else if (text.codePoints().anyMatch(c -> Character.isISOControl(c) || isHalfLetter(c))) {
            faults.add(Refusal.at(place, "it holds a character that cannot be printed", "Type it anew"));
        }
    }

    private static boolean isHalfLetter(int codePoint) {
        return Character.getType(codePoint) == Character.SURROGATE;
    }

    /** The hand-backs of an answer. */
    public static List<LogEntry> handedBack(Outcome<AppendResult> answer) {
        return answer instanceof Outcome.Ok<AppendResult> ok && ok.value() instanceof AppendResult.Entries entries
                ? entries.entries().stream()
                        .filter(kept -> kept.body() instanceof Entry.HandedBack)
                        .toList()
                : List.of();
    }

    /** What came of it, and whether there is something to commit. */
    public record Done(Outcome<AppendResult> answer, boolean wrote) {
        private static Done without(Outcome<AppendResult> answer) {
            return new Done(answer, false);
        }
    }

    /** Writes the entries behind the heads as they stand, in a transaction that is the caller's to end. */
    public Done write(Connection database, Heads heads) throws SQLException {
        Optional<Outcome<AppendResult>> repeated = repeated(database);
        if (repeated.isPresent()) {
            return Done.without(repeated.get());
        }
        Head log = Sql.head(database);
        Map<String, Head> streams = new HashMap<>();
        for (String stream : heads.streams().keySet()) {
            streams.put(stream, Sql.head(database, stream));
        }
        List<String> moved = heads.streams().entrySet().stream()
                .filter(supposed -> !supposed.getValue().equals(streams.get(supposed.getKey())))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        if (!moved.isEmpty() || !heads.log().orElse(log).equals(log)) {
            return Done.without(Outcome.ok(new AppendResult.Moved(moved)));
        }
        List<LogEntry> kept = new ArrayList<>();
        for (EntryText entry : entries) {
            Head stream = streams.get(entry.stream());
            EntryRow row = EntryRow.after(log, stream == null ? Sql.head(database, entry.stream()) : stream, entry);
            Sql.insert(database, row);
            kept.add(row.kept());
            log = row.head();
            streams.put(entry.stream(), row.streamHead());
        }
        return new Done(Outcome.ok(new AppendResult.Entries(kept)), true);
    }

    /** The answer to an act of which at least one id is kept already. */
    private Optional<Outcome<AppendResult>> repeated(Connection database) throws SQLException {
        List<EntryRow> before = new ArrayList<>();
        List<Refusal> others = new ArrayList<>();
        for (EntryText entry : entries) {
            Optional<EntryRow> row = Sql.entry(database, entry.id());
            row.ifPresent(before::add);
            if (row.isPresent() && !row.get().written().saysTheSame(entry)) {
                others.add(Refusal.at(
                        "entry " + entry.id(),
                        "an entry of this id is already kept and says something else",
                        "Load the page again and make the entry anew"));
            }
        }
        if (before.isEmpty()) {
            return Optional.empty();
        }
        if (others.isEmpty() && before.size() < entries.size()) {
            others.add(Refusal.at(
                    "entry " + before.get(0).written().id(),
                    "an entry of this id is already kept, and was not kept together with what is posted now",
                    "Load the page again and make the entry anew"));
        }
        return Optional.of(
                others.isEmpty()
                        ? Outcome.ok(new AppendResult.Entries(
                                before.stream().map(EntryRow::kept).toList()))
                        : Outcome.refused(others));
    }
}
