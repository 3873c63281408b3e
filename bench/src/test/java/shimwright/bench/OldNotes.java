package shimwright.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import shimwright.bench.store.log.OpenLog;
import shimwright.bench.store.sqlite.SqliteJobLog;
import shimwright.rebuild.job.Draft;
import shimwright.rebuild.job.Entry;

/** Entries as a program without a guard once kept them. */
final class OldNotes {
    private OldNotes() {}

    static void keep(Path folder, String job, String text) {
        keep(folder, job, new Entry.NoteMade("job", text));
    }

    /** Any entry, whatever the rules of today say of it. */
    static void keep(Path folder, String job, Entry entry) {
        try (SqliteJobLog log = SqliteJobLog.open(folder, OpenLog.Opening.WRITE).orElseThrow()) {
            log.append(
                            new Draft(job, "old-note-1", Instant.parse("2026-01-01T00:00:00Z"), "the bench", entry),
                            stream -> List.of())
                    .orElseThrow();
        }
    }
}
