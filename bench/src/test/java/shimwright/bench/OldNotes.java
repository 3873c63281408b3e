package shimwright.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;

/** Notes as a program without a guard once kept them. */
final class OldNotes {
    private OldNotes() {}

    static void keep(Path folder, String job, String text) {
        try (SqliteJobLog log = SqliteJobLog.open(folder, OpenLog.Opening.WRITE).orElseThrow()) {
            log.append(
                            new Draft(
                                    job,
                                    "old-note-1",
                                    Instant.parse("2026-01-01T00:00:00Z"),
                                    "the bench",
                                    new Entry.NoteMade("job", text)),
                            stream -> List.of())
                    .orElseThrow();
        }
    }
}
