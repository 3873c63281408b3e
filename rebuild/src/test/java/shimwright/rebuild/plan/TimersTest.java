package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.Timers.Timer;

/** Clocks of the demo unit: sealant on G 20 min from R02 to R04, joined 12; sealant 2 h and silicone 3 h before the air test. */
class TimersTest {
    private static final Instant NOON = Instant.parse("2031-03-03T12:00:00Z");

    private final Map<String, Instant> done = new HashMap<>();

    private List<Timer> running(Duration after) {
        return Timers.running(DemoUnit.A, done, NOON.plus(after));
    }

    @Test
    void nothingDoneNothingRuns() {
        assertThat(running(Duration.ZERO)).isEmpty();
    }

    @Test
    void anOpenWindowRunsFromItsOpeningStepUntilItIsClosed() {
        done.put("R02", NOON);
        Timer sealant = new Timer("anaerobic on face G", NOON, NOON.plus(Duration.ofMinutes(20)), true, "R02", "R04");
        // it stays wet on one face: the cure counts from joining
        assertThat(running(Duration.ofMinutes(5))).containsExactly(sealant);
        // a second window of the same face, from joining
        Instant joined = NOON.plus(Duration.ofMinutes(10));
        Timer cure = new Timer(
                "anaerobic flange sealant for faces F and G cures",
                joined,
                joined.plus(Duration.ofHours(2)),
                false,
                "R03",
                "X05");
        done.put("R03", joined);
        assertThat(running(Duration.ofMinutes(11)))
                .containsExactly(
                        sealant,
                        new Timer("face G joined", joined, joined.plus(Duration.ofMinutes(12)), true, "R03", "R04"),
                        cure);
        // a window that was missed is not forgotten
        assertThat(running(Duration.ofHours(5))).hasSize(2);
        done.put("R04", NOON.plus(Duration.ofMinutes(15)));
        assertThat(running(Duration.ofMinutes(16))).containsExactly(cure);
    }

    @Test
    void aCureIsWaitedForAndThenForgotten() {
        done.put("X01", NOON);
        assertThat(running(Duration.ofHours(1)))
                .containsExactly(new Timer(
                        "neutral silicone for end cap and selector box cures",
                        NOON,
                        NOON.plus(Duration.ofHours(3)),
                        false,
                        "X01",
                        "X05"));
        assertThat(running(Duration.ofHours(3))).isEmpty();
    }

    @Test
    void everyCureRunsForItselfUntilTheStepThatWaitsIsDone() {
        done.put("Q07", NOON);
        done.put("X01", NOON.plus(Duration.ofMinutes(30)));
        assertThat(running(Duration.ofHours(1))).extracting(Timer::step).containsExactlyInAnyOrder("Q07", "X01");
        done.put("X05", NOON.plus(Duration.ofMinutes(40)));
        assertThat(running(Duration.ofHours(1))).isEmpty();
    }
}
