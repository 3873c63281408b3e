package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import shimwright.bench.store.DataFolder;
import shimwright.bench.web.shop.Overviews;
import shimwright.rebuild.unit.file.UnitFiles;

/** The overview that is kept between two runs says what the log says, or it does not count. */
class OverviewsTest {
    private static final String BUILD = "shimwright.build";

    private DemoBench bench;

    @BeforeEach
    void start() {
        System.setProperty(BUILD, "one");
        bench = DemoBench.fresh();
    }

    @AfterEach
    void stop() {
        bench.close();
        System.clearProperty(BUILD);
    }

    private Path file() {
        return new DataFolder(bench.folder()).overview();
    }

    private String sources() {
        return Units.in(bench.folder().resolve("units")).fingerprint(System.getProperty(BUILD, ""));
    }

    private String shown() {
        return bench.page("/").body().text();
    }

    @Test
    void theNextStartShowsTheSame() throws IOException {
        String first = shown();
        assertThat(first).contains("V-0093", "V-0091", "Handed back", "Next: ", "loose pieces");
        bench.restart();
        assertThat(Overviews.isOf(file(), sources())).isTrue();
        assertThat(shown()).isEqualTo(first);
        // what is shown is what the file says, not worked out beside it
        bench.close();
        String kept = Files.readString(file(), StandardCharsets.ISO_8859_1);
        Files.writeString(file(), kept.replace("Handed back", "Handed over"), StandardCharsets.ISO_8859_1);
        bench.reopen();
        assertThat(shown()).contains("Handed over");
    }

    @Test
    void anEntryUnitFileOrProgramThatIsNewIsNotMissed() throws IOException {
        shown();
        bench.restart();
        byte[] old = Files.readAllBytes(file());
        bench.post("/drawer", "piece", "d80-99", "family", "SH80", "t1", "1.0", "t2", "1.0", "t3", "1.0");
        String more = shown();
        bench.restart();
        // as after a power cut: the file is one of before the last entry
        bench.close();
        Files.write(file(), old);
        bench.reopen();
        assertThat(shown()).isEqualTo(more);

        String before = sources();
        Path units = Files.createDirectories(bench.folder().resolve("units"));
        Files.writeString(units.resolve("new.yaml"), UnitFiles.starter());
        assertThat(sources()).isNotEqualTo(before);
        assertThat(Overviews.isOf(file(), sources())).isFalse();
        System.setProperty(BUILD, "two");
        assertThat(Overviews.isOf(file(), before)).isTrue();
        assertThat(Overviews.isOf(file(), sources())).isFalse();
        System.clearProperty(BUILD);
        assertThat(sources()).isEmpty();
        assertThat(Overviews.isOf(file(), "")).isFalse();
    }

    /** What is next may change with the hour while something is awaited; the first page after a start does not guess. */
    @Test
    void whatDependsOnTheTimeIsNotKept() {
        bench.post(
                "/job/job-v-0093/orders",
                "entry",
                "overview-order-1",
                "what",
                "drive flange",
                "items",
                "flange",
                "due",
                "2090-01-01");
        assertThat(shown()).contains("Next: ");
        bench.restart();
        assertThat(Overviews.isOf(file(), sources())).isTrue();
        assertThat(shown()).contains("something is awaited: open it");
        for (int tenths = 0; tenths < 600 && !shown().contains("Next: "); tenths++) {
            CompletableFuture.runAsync(() -> {}, CompletableFuture.delayedExecutor(100, TimeUnit.MILLISECONDS))
                    .join();
        }
        assertThat(shown()).contains("Next: ");
    }

    @Test
    void aTornFileIsWorkedOutAnew() throws IOException {
        String first = shown();
        bench.restart();
        bench.close();
        byte[] whole = Files.readAllBytes(file());
        for (int length : new int[] {0, 140, whole.length - 1}) {
            Files.write(file(), Arrays.copyOf(whole, length));
            bench.reopen();
            assertThat(shown()).as("%d of %d bytes", length, whole.length).isEqualTo(first);
            bench.close();
        }
        bench.reopen();
    }
}
