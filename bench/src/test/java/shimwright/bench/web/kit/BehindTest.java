package shimwright.bench.web.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class BehindTest {
    private final Behind<String, String> behind = new Behind<>("a test");

    @Test
    void whatTakesLongIsBegunOnceAndThereWhenItIsDone() throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        AtomicInteger begun = new AtomicInteger();
        assertThat(behind.of("job", "a", () -> late(begun, done))).isEmpty();
        assertThat(behind.of("job", "a", () -> late(begun, done))).isEmpty();
        done.countDown();
        assertThat(behind.of("job", "a", () -> "not asked for")).hasValue("late");
        assertThat(begun).hasValue(1);
        assertThat(behind.of("job", "b", () -> "other")).hasValue("other");
        assertThat(behind.of("job", "a", () -> "again")).hasValue("again");
    }

    @Test
    void anotherQuestionAtThePlaceStopsTheFirst() throws InterruptedException {
        CountDownLatch stopped = new CountDownLatch(1);
        assertThat(behind.of("job", "a", () -> untilStopped(stopped))).isEmpty();
        Optional<String> other = behind.of("job", "b", () -> "other");
        assertThat(stopped.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(other.or(() -> behind.of("job", "b", () -> "twice"))).hasValue("other");
    }

    @Test
    void ofManyPlacesTheOldestIsForgotten() {
        AtomicInteger begun = new AtomicInteger();
        for (int i = 0; i < 30; i++) {
            behind.of("job " + i, "a", () -> "" + begun.incrementAndGet());
        }
        assertThat(behind.of("job 29", "a", () -> "anew")).hasValue("30");
        assertThat(behind.of("job 0", "a", () -> "anew")).hasValue("anew");
    }

    @Test
    void aBugIsThrownWhereItIsAskedFor() {
        assertThatThrownBy(() -> behind.of("job", "a", () -> {
                    throw new IllegalArgumentException("a bug");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a bug");
    }

    private static String late(AtomicInteger begun, CountDownLatch done) {
        begun.incrementAndGet();
        try {
            assertThat(done.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
        return "late";
    }

    private static String untilStopped(CountDownLatch stopped) {
        while (!Thread.currentThread().isInterrupted()) {
            Thread.onSpinWait();
        }
        stopped.countDown();
        return "stopped";
    }
}
