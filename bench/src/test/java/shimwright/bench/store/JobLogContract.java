package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import shimwright.bench.store.log.OpenLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.AppendResult;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.NoteMade;
import shimwright.rebuild.job.Entry.ShimRemoved;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.StoreFailure;

/** What a job log does wherever it lies; each store runs all of it. */
abstract class JobLogContract {
    static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    /** Opens the log, a second time where it was closed before. */
    abstract OpenLog open();

    static Draft note(String stream, String id, String text) {
        return new Draft(stream, id, NOON, "rebuilder", new NoteMade("job", text));
    }

    static Outcome<LogEntry> append(JobLog log, Draft draft) {
        return log.append(draft, stream -> List.of());
    }

    @Test
    void everyTypeOfEntryComesBackAsItWasKept() {
        EntrySamples samples = new EntrySamples(1);
        List<LogEntry> kept = new ArrayList<>();
        try (OpenLog log = open()) {
            for (Class<?> type : EntrySamples.types()) {
                for (int i = 0; i < 5; i++) {
                    Entry entry = samples.entry(type);
                    LogEntry answer = append(log, samples.draft(type.getSimpleName() + i, "job-1", entry))
                            .orElseThrow();
                    assertThat(answer.body()).isEqualTo(entry);
                    kept.add(answer);
                }
            }
        }
        try (OpenLog log = open()) {
            assertThat(Logs.all(log)).isEqualTo(kept);
            assertThat(log.streams()).containsExactly("job-1", JobLog.SHOP);
        }
    }

    @Test
    void aNewLogIsEmpty() {
        try (OpenLog log = open()) {
            assertThat(log.head()).isEqualTo(Head.EMPTY);
            assertThat(log.head("job-1")).isEqualTo(Head.EMPTY);
            assertThat(log.read("job-1")).isEmpty();
            assertThat(log.streams()).isEmpty();
        }
    }

    @Test
    void theHeadsAreThoseOfTheLastEntries() {
        try (OpenLog log = open()) {
            List<LogEntry> kept = Logs.fill(log, 30, 2);
            LogEntry last = kept.get(29);
            assertThat(log.head()).isEqualTo(new Head(30, last.hash()));
            for (String stream : log.streams()) {
                List<LogEntry> entries = log.read(stream);
                assertThat(log.head(stream))
                        .isEqualTo(new Head(
                                entries.size(), entries.get(entries.size() - 1).streamHash()));
                assertThat(entries)
                        .extracting(LogEntry::streamNumber)
                        .isSorted()
                        .endsWith((long) entries.size());
            }
        }
    }

    @Test
    void anEntryPostedTwiceIsOneEntry() {
        try (OpenLog log = open()) {
            LogEntry first = append(log, note("job-1", "a", "wet")).orElseThrow();
            Draft later = new Draft("job-1", "a", NOON.plusSeconds(60), "rebuilder", new NoteMade("job", "wet"));
            assertThat(log.append(later, stream -> List.of(Refusal.at("", "must not be asked", "")))
                            .orElseThrow())
                    .isEqualTo(first);
            assertThat(log.head().count()).isEqualTo(1);
        }
    }

    @Test
    void anIdWithAnotherContentIsRefused() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "wet")).orElseThrow();
            for (Draft other : List.of(
                    note("job-1", "a", "dry"),
                    note("job-2", "a", "wet"),
                    new Draft(JobLog.SHOP, "a", NOON, "rebuilder", new ShimRemoved("job", "wet")))) {
                assertThat(append(log, other).refusals())
                        .extracting(Refusal::sentence)
                        .containsExactly("entry a: an entry of this id is already kept and says something else."
                                + " Load the page again and make the entry anew.");
            }
            assertThat(log.head().count()).isEqualTo(1);
        }
    }

    @Test
    void rulesSeeTheStreamAsItStandsAndCanForbid() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "one")).orElseThrow();
            append(log, note("job-2", "b", "other job")).orElseThrow();
            List<LogEntry> seen = new ArrayList<>();
            Outcome<LogEntry> refused = log.append(note("job-1", "c", "two"), stream -> {
                seen.addAll(stream);
                return List.of(Refusal.at("step 7", "not yet", "First step 6"), Refusal.at("", "no", ""));
            });
            assertThat(refused.refusals()).hasSize(2);
            assertThat(seen).extracting(k -> k.draft().id()).containsExactly("a");
            assertThat(log.head().count()).isEqualTo(2);
            assertThat(append(log, note("job-1", "c", "two")).isOk()).isTrue();
        }
    }

    @Test
    void aRuleThatBreaksLeavesTheLogAsItWas() {
        try (OpenLog log = open()) {
            assertThatThrownBy(() -> log.append(note("job-1", "a", "one"), stream -> {
                        throw new IllegalStateException("bug");
                    }))
                    .hasMessage("bug");
            assertThat(append(log, note("job-1", "a", "one")).orElseThrow().number())
                    .isEqualTo(1);
        }
    }

    @Test
    void anEntryThatCouldNotBeReadBackIsNeverWritten() {
        try (OpenLog log = open()) {
            Draft draft = new Draft(
                    JobLog.SHOP,
                    "a",
                    NOON,
                    "rebuilder",
                    new Entry.ShimAdded("s1", "input", "1.05", List.of(Double.NaN), 0));
            assertThatThrownBy(() -> append(log, draft)).isInstanceOf(IllegalStateException.class);
            assertThat(log.head()).isEqualTo(Head.EMPTY);
        }
    }

    @Test
    void allFaultsOfAnEnvelopeComeBackAtOnce() {
        try (OpenLog log = open()) {
            Draft draft = new Draft("job\n1", " ", NOON, "re\ud83dbuilder", new NoteMade("job", "wet"));
            assertThat(append(log, draft).refusals())
                    .extracting(Refusal::place)
                    .containsExactly("entry id", "job", "person");
            assertThatThrownBy(() -> append(log, note(JobLog.SHOP, "a", "wet")))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void eightWritersAtOnceLoseAndDoubleNothing() throws Exception {
        ExecutorService benches = Executors.newFixedThreadPool(8);
        try (OpenLog log = open()) {
            List<Callable<List<LogEntry>>> work = new ArrayList<>();
            for (int w = 0; w < 8; w++) {
                int writer = w;
                work.add(() -> {
                    List<LogEntry> kept = new ArrayList<>();
                    for (int i = 0; i < 40; i++) {
                        // every id is posted by two writers
                        String id = writer / 2 + "-" + i;
                        kept.add(append(log, note("job-" + writer / 4, id, "note " + id))
                                .orElseThrow());
                        assertThat(log.read("job-" + writer / 4)).contains(kept.get(i));
                    }
                    return kept;
                });
            }
            List<LogEntry> answered = new ArrayList<>();
            for (Future<List<LogEntry>> done : benches.invokeAll(work)) {
                answered.addAll(done.get());
            }
            assertThat(log.head().count()).isEqualTo(160);
            assertThat(Logs.all(log)).containsAll(answered).hasSize(160);
        } finally {
            benches.shutdown();
        }
        try (OpenLog log = open()) {
            assertThat(log.head().count()).isEqualTo(160);
        }
    }

    @Test
    void anActOfTwoStreamsIsKeptWholeAndInOrder() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "one")).orElseThrow();
            List<Draft> act = List.of(
                    note("job-1", "b", "two"),
                    new Draft(JobLog.SHOP, "c", NOON, "rebuilder", new ShimRemoved("s1", "lost")),
                    note("job-1", "d", "three"));
            Heads heads = Heads.of("job-1", log.head("job-1")).and(JobLog.SHOP, Head.EMPTY);
            List<LogEntry> kept = entries(log.append(act, heads));
            assertThat(kept).extracting(k -> k.draft().id()).containsExactly("b", "c", "d");
            assertThat(kept).extracting(LogEntry::number).containsExactly(2L, 3L, 4L);
            assertThat(kept).extracting(LogEntry::streamNumber).containsExactly(2L, 1L, 3L);
            assertThat(log.read("job-1")).hasSize(3).endsWith(kept.get(2));
            // posted again after the log went on: the same entries, nothing written
            append(log, note("job-1", "e", "four")).orElseThrow();
            assertThat(entries(log.append(act, heads))).isEqualTo(kept);
            assertThat(log.head().count()).isEqualTo(5);
        }
        try (OpenLog log = open()) {
            assertThat(log.head().count()).isEqualTo(5);
        }
    }

    private static List<LogEntry> entries(Outcome<AppendResult> done) {
        return ((AppendResult.Entries) done.orElseThrow()).entries();
    }

    @Test
    void anActOnAHeadThatMovedIsNotKept() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "one")).orElseThrow();
            Heads job = Heads.of("job-1", log.head("job-1"));
            Heads other = Heads.of("job-2", Head.EMPTY).and("job-1", log.head("job-1"));
            Heads whole = Heads.ofLog(log.head());
            append(log, note("job-2", "b", "elsewhere")).orElseThrow();
            Head before = log.head();
            List<Draft> act = List.of(note("job-1", "c", "two"), note("job-1", "d", "three"));
            assertThat(log.append(act, other).orElseThrow()).isEqualTo(new AppendResult.Moved(List.of("job-2")));
            assertThat(log.append(act, whole).orElseThrow()).isEqualTo(new AppendResult.Moved(List.of()));
            assertThat(log.append(act, Heads.of("job-1", new Head(1, "f".repeat(64))))
                            .orElseThrow())
                    .isEqualTo(new AppendResult.Moved(List.of("job-1")));
            assertThat(log.head()).isEqualTo(before);
            assertThat(entries(log.append(act, job))).hasSize(2);
        }
    }

    @Test
    void anActOfWhichAPartIsKeptIsRefusedWhole() {
        try (OpenLog log = open()) {
            append(log, note("job-1", "a", "one")).orElseThrow();
            assertThat(log.append(List.of(note("job-1", "a", "one"), note("job-1", "b", "two")), Heads.NOTHING)
                            .refusals())
                    .extracting(Refusal::fact)
                    .containsExactly("an entry of this id is already kept, and was not kept together with what is"
                            + " posted now");
            assertThat(log.append(List.of(note("job-1", "b", "two"), note("job-1", "a", "other")), Heads.NOTHING)
                            .refusals())
                    .extracting(Refusal::fact)
                    .containsExactly("an entry of this id is already kept and says something else");
            assertThat(log.find("b")).isEmpty();
            assertThat(log.find("a")).isPresent();
            assertThat(log.head().count()).isEqualTo(1);
        }
    }

    @Test
    void aFoldCanGoOnFromAHeadThatTheStreamHad() {
        try (OpenLog log = open()) {
            List<LogEntry> kept = new ArrayList<>();
            for (String id : List.of("a", "b", "c")) {
                kept.add(append(log, note("job-1", id, id)).orElseThrow());
            }
            assertThat(log.read("job-1", kept.get(0).streamHead())).isEqualTo(kept.subList(1, 3));
            assertThat(log.read("job-1", kept.get(2).streamHead())).isEmpty();
            Head never = new Head(1, "f".repeat(64));
            Head beyond = new Head(9, "f".repeat(64));
            assertThatThrownBy(() -> log.read("job-1", never)).isInstanceOf(StoreFailure.class);
            assertThatThrownBy(() -> log.read("job-1", beyond)).isInstanceOf(StoreFailure.class);
        }
    }

    @Test
    void whatCameSinceAHeadIsReadInTheOrderOfTheLog() {
        try (OpenLog log = open()) {
            List<LogEntry> kept = Logs.fill(log, 12, 6);
            assertThat(log.since(Head.EMPTY, 5)).isEqualTo(kept.subList(0, 5));
            assertThat(log.since(kept.get(4).head(), 100)).isEqualTo(kept.subList(5, 12));
            assertThat(log.since(kept.get(11).head(), 1)).isEmpty();
            Head never = new Head(3, "f".repeat(64));
            assertThatThrownBy(() -> log.since(never, 1)).isInstanceOf(StoreFailure.class);
        }
    }
}
