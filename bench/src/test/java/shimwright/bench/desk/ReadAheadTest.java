package shimwright.bench.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.StoreFailure;

/** A page waits for a few earlier boxes and not for many; nothing of them is lost. */
class ReadAheadTest {
    private final CountDownLatch slow = new CountDownLatch(1);
    private final CountDownLatch through = new CountDownLatch(1);
    private final Set<String> known = ConcurrentHashMap.newKeySet();
    private final ReadAhead<String> ahead = new ReadAhead<>(line -> known.contains(line.job()), this::read);

    private static List<JobSummary> jobs(int count) {
        List<JobSummary> jobs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Head head = new Head(i + 1L, "hash-" + i);
            jobs.add(new JobSummary("j" + i, head, "" + i, "", "u", "A", "", true, 0, "", List.of()));
        }
        return jobs;
    }

    /** The second one takes long. */
    private Optional<String> read(JobSummary line) {
        if (line.job().equals("j1") && !known.contains("j1")) {
            try {
                assertThat(slow.await(1, TimeUnit.MINUTES)).isTrue();
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        }
        known.add(line.job());
        if (line.job().equals("j9")) {
            through.countDown();
        }
        return line.job().equals("j3") ? Optional.empty() : Optional.of("of " + line.job());
    }

    @Test
    @Timeout(60)
    void manyAreReadBehindThePageAndGivenInTheirOrderOnceAllAreRead() throws InterruptedException {
        List<JobSummary> ten = jobs(10);
        SoFar<String> first = ahead.of(ten);
        assertThat(first.all()).isFalse();
        assertThat(first.values()).isSubsetOf("of j0");
        assertThat(ahead.of(ten).all()).isFalse();
        slow.countDown();
        assertThat(through.await(1, TimeUnit.MINUTES)).isTrue();
        // none is left to be read, whether or not the thread behind has ended
        SoFar<String> then = ahead.of(ten);
        assertThat(then.all()).isTrue();
        assertThat(then.of().keySet()).containsExactly("j0", "j1", "j2", "j4", "j5", "j6", "j7", "j8", "j9");
    }

    @Test
    @Timeout(60)
    void aFewAreReadInThePage() {
        slow.countDown();
        SoFar<String> all = ahead.of(jobs(6));
        assertThat(all.all()).isTrue();
        assertThat(all.values()).hasSize(5);
    }

    /** One that cannot be read does not keep the others back: who reads it for its page is told. */
    @Test
    @Timeout(60)
    void whatCannotBeReadIsSaidByWhoReadsIt() {
        ReadAhead<String> broken = new ReadAhead<>(line -> false, line -> {
            throw new StoreFailure(Refusal.of("log", "line " + line.number() + " is damaged", "Restore it"));
        });
        assertThatThrownBy(() -> broken.of(jobs(10)))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("line 0");
    }
}
