package shimwright.bench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.sqlite.SummaryFile;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Summaries.Summary;

class SummaryFileTest {
    private final Path folder;

    SummaryFileTest(@TempDir Path folder) {
        this.folder = folder;
    }

    private static Summary summary(String stream, long count, String text) {
        return new Summary(stream, new Head(count, "%064x".formatted(count)), text);
    }

    @Test
    void theLatestOfEachStreamIsThereAgain() {
        Head head = new Head(9, "a".repeat(64));
        try (SummaryFile file = SummaryFile.in(folder, "program 1")) {
            assertThat(file.upTo()).isEqualTo(Head.EMPTY);
            assertThat(file.all()).isEmpty();
            file.keep(new Head(5, "b".repeat(64)), List.of(summary("job-2", 2, "two"), summary("job-1", 3, "one")));
            file.keep(head, List.of(summary("job-2", 6, "two, longer")));
        }
        try (SummaryFile file = SummaryFile.in(folder, "program 1")) {
            assertThat(file.upTo()).isEqualTo(head);
            assertThat(file.all()).containsExactly(summary("job-2", 6, "two, longer"), summary("job-1", 3, "one"));
        }
    }

    @Test
    void anotherProgramAndADamagedFileBeginAnew() throws IOException {
        try (SummaryFile file = SummaryFile.in(folder, "program 1")) {
            file.keep(new Head(5, "b".repeat(64)), List.of(summary("job-2", 2, "two")));
        }
        try (SummaryFile file = SummaryFile.in(folder, "program 2")) {
            assertThat(file.upTo()).isEqualTo(Head.EMPTY);
            assertThat(file.all()).isEmpty();
            file.keep(new Head(5, "b".repeat(64)), List.of(summary("job-2", 2, "two")));
        }
        Files.writeString(folder.resolve("summaries"), "no database at all");
        try (SummaryFile file = SummaryFile.in(folder, "program 2")) {
            assertThat(file.all()).isEmpty();
            file.keep(new Head(5, "b".repeat(64)), List.of(summary("job-2", 2, "two")));
            assertThat(file.all()).hasSize(1);
        }
    }
}
