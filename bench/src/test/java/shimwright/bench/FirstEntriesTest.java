package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What the program does once when it is built goes all the way, so that the classes of an evening's first entries are learned by it. */
class FirstEntriesTest {
    @Test
    void theDemoTakesAllOfThem() throws IOException {
        try (DemoBench bench = DemoBench.fresh()) {
            assertThat(FirstEntries.keep(bench.url("/"))).isEmpty();
            assertThat(bench.page("/job/job-v-0093/record").text()).contains("Step E02 done");
        }
    }
}
