package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What was acknowledged is still there after the program was killed. */
class KillTest {
    private static final Logger LOG = LoggerFactory.getLogger(KillTest.class);

    /** Set by {@code -Dshimwright.kills=1000} for a long run. */
    private static final int KILLS = Integer.getInteger("shimwright.kills", 12);

    @Test
    void whatWasAcknowledgedSurvivesEveryKill(@TempDir Path work) throws IOException, InterruptedException {
        nothingIsLost(KILLS, new KillTrials(work, "honest"));
    }

    @Test
    void whatWasAcknowledgedIsInTheDatabaseAfterEveryKill(@TempDir Path work) throws IOException, InterruptedException {
        TestPostgres server = TestPostgres.get();
        nothingIsLost(Math.max(10, KILLS / 2), new KillTrials(work, "honest", number -> server.database()));
    }

    private static void nothingIsLost(int count, KillTrials kills) throws IOException, InterruptedException {
        long start = System.nanoTime();
        kills.run(count);
        String sentence =
                "%d kills in %.1f s: %s".formatted(count, (System.nanoTime() - start) / 1e9, kills.sentence());
        LOG.info(sentence);
        assertThat(kills.notOpened).as(sentence).isEmpty();
        assertThat(kills.lost).as(sentence).isEmpty();
        assertThat(kills.changed).as(sentence).isEmpty();
        assertThat(kills.doubled).as(sentence).isEmpty();
        assertThat(kills.withoutPicture).as(sentence).isEmpty();
        assertThat(kills.leftOver).as(sentence).isEmpty();
        assertThat(kills.acknowledged).isGreaterThan(count);
        assertThat(kills.pictures).isPositive();
    }

    @Test
    void aProgramThatAnswersTooEarlyIsFoundOut(@TempDir Path work) throws IOException, InterruptedException {
        KillTrials kills = new KillTrials(work, "liar");
        kills.runUntil(8, () -> !kills.lost.isEmpty());
        assertThat(kills.lost).isNotEmpty();
        assertThat(kills.changed).isEmpty();
    }
}
