package shimwright.bench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.log.OpenLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.ShopActs;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Heads;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;

/** What the desk asks of its log: one act is one append, and of a job that goes on it reads only what is new. */
class DeskTest {
    private final List<Integer> appends = new ArrayList<>();
    private final List<String> wholeReads = new ArrayList<>();

    /** The same log, whose appends and reads from the first entry are counted. */
    private JobLog counted(JobLog log) {
        return (JobLog) Proxy.newProxyInstance(
                JobLog.class.getClassLoader(), new Class<?>[] {JobLog.class}, (proxy, method, args) -> {
                    if (method.getName().equals("append") && args.length == 2) {
                        appends.add(((List<?>) args[0]).size());
                    }
                    boolean read = method.getName().equals("read");
                    if (read && (args.length == 1 || args[1].equals(Head.EMPTY)) && !args[0].equals(JobLog.SHOP)) {
                        wholeReads.add((String) args[0]);
                    }
                    try {
                        return method.invoke(log, args);
                    } catch (InvocationTargetException failed) {
                        throw Objects.requireNonNull(failed.getCause());
                    }
                });
    }

    private static Desk.Signed signed(String id) {
        return new Desk.Signed(id, "the bench", UnitSystem.METRIC);
    }

    @Test
    void oneActIsOneAppend(@TempDir Path folder) {
        try (ShopStore store =
                ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            Desk desk = desk(store);
            desk.act(new ShopActs.AddShims("", "a SH52 0.30\nb SH52 0.40\nc SH52 0.50"), signed("list"))
                    .orElseThrow();
            assertThat(appends).containsExactly(3);
            assertThat(desk.act(new ShopActs.AddShims("", "d SH52 0.30\na SH52 0.40"), signed("again"))
                            .isOk())
                    .isFalse();
            assertThat(desk.shop().pieces()).containsOnlyKeys("a", "b", "c");
        }
    }

    @Test
    void ofTwoJobsThatGoOnInTurnOnlyWhatIsNewIsRead(@TempDir Path folder) {
        try (ShopStore store =
                ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            for (String job : List.of("job-1", "job-2")) {
                Entry opened = new Entry.JobOpened(job, "ambleholt-l5-74", "A", "owner", List.of(), Map.of(), "", "");
                store.log()
                        .append(
                                List.of(new Draft(
                                        job, "opened-" + job, Clock.systemUTC().instant(), "the bench", opened)),
                                Heads.ofLog(store.log().head()))
                        .orElseThrow();
            }
            Desk desk = desk(store);
            for (int post = 0; post < 6; post++) {
                if (post == 2) {
                    wholeReads.clear();
                }
                String job = "job-" + (1 + post % 2);
                desk.act(job, new IntakeActs.MakeNote("job", "note " + post), signed("note-" + post))
                        .orElseThrow();
                assertThat(desk.bench(job)).isPresent();
            }
            assertThat(wholeReads).isEmpty();
        }
    }

    /** What waited on a screen is dated when it was typed, never before what is kept, and signed with how much later it came. */
    @Test
    void whatWaitedIsDatedWhenItWasTyped(@TempDir Path folder) {
        Instant now = Instant.parse("2026-11-30T20:00:00Z");
        try (ShopStore store =
                ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow()) {
            Clock clock = Clock.fixed(now, ZoneOffset.UTC);
            Desk desk = new Desk(store.log(), store.pictures(), new UnitShelf(new Shipped(), store.documents()), clock);
            for (long minutes : new long[] {90, 25, 40, 0, 7}) {
                Desk.Signed signed = new Desk.Signed(
                        "waited-" + minutes, "the bench", UnitSystem.METRIC, Duration.ofMinutes(minutes));
                desk.act(new ShopActs.AddShims("", "p" + minutes + " SH52 0.30"), signed)
                        .orElseThrow();
            }
            List<Draft> kept =
                    store.log().read(JobLog.SHOP).stream().map(LogEntry::draft).toList();
            assertThat(kept)
                    .extracting(draft -> Duration.between(draft.at(), now).toMinutes())
                    .containsExactly(90L, 25L, 25L, 0L, 0L);
            assertThat(kept)
                    .extracting(Draft::by)
                    .containsExactly(
                            "the bench, sent 90 min later",
                            "the bench, sent 25 min later",
                            "the bench, sent 40 min later",
                            "the bench",
                            "the bench, sent 7 min later");
        }
    }

    /** The shipped file on the shelf, and no folder. */
    private record Shipped() implements UnitSource {
        @Override
        public UnitShelf.Files files() {
            byte[] text = UnitFiles.example().getBytes(StandardCharsets.UTF_8);
            UnitType type = UnitFiles.read("example", text).outcome().orElseThrow();
            return new UnitShelf.Files(List.of(new UnitShelf.ReadFile("example", text, type)), List.of());
        }

        @Override
        public Outcome<String> put(String type, byte[] content) {
            throw new UnsupportedOperationException("nothing is laid down");
        }

        @Override
        public Map<String, byte[]> shipped() {
            return Map.of();
        }
    }

    private Desk desk(ShopStore store) {
        UnitShelf shelf = new UnitShelf(new Shipped(), store.documents());
        return new Desk(counted(store.log()), store.pictures(), shelf, Clock.systemUTC());
    }
}
