package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What is measured is an answer and not a refusal, for every worksheet. */
class SheetBenchmarkTest {
    @Test
    void everyWorksheetAnswersItsExample() {
        for (String name : ColdStart.names().split(",")) {
            SheetBenchmark benchmark = new SheetBenchmark();
            benchmark.name = name;
            benchmark.take();
            assertThat(benchmark.answer().isOk()).as(name).isTrue();
        }
    }
}
